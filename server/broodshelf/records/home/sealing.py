"""Sealing what must not be readable in a database or its backups: AES and HMAC by Fernet of the package cryptography.

The secret comes from the environment and is never stored. Several may be given: the first seals, all of them open.
"""

from __future__ import annotations

from base64 import urlsafe_b64encode
from collections.abc import Sequence
from typing import Final

from cryptography.fernet import Fernet, InvalidToken, MultiFernet
from cryptography.hazmat.primitives.hashes import SHA256
from cryptography.hazmat.primitives.kdf.hkdf import HKDF

PURPOSE: Final = b"broodshelf: keys at rest, 1"


class Seal:
    """Seals and opens with these secrets, the newest first; there is at least one."""

    def __init__(self, secrets: Sequence[str]) -> None:
        self._newest, *_ = keys = [Fernet(_key(secret)) for secret in secrets]
        self._all = MultiFernet(keys)

    def close(self, text: str) -> str:
        """Seal a text with the newest secret."""
        return self._newest.encrypt(text.encode()).decode()

    def open(self, sealed: str) -> str | None:
        """Return the text, None if none of the secrets opens it."""
        try:
            return self._all.decrypt(sealed).decode()
        except InvalidToken:
            return None

    def is_newest(self, sealed: str) -> bool:
        """Say whether a text is sealed with the newest secret."""
        try:
            self._newest.decrypt(sealed)
        except InvalidToken:
            return False
        return True


def _key(secret: str) -> bytes:
    """Make a key of a secret (HKDF, RFC 5869). The secret has to be random: nothing here slows down who guesses."""
    return urlsafe_b64encode(HKDF(SHA256(), 32, salt=None, info=PURPOSE).derive(secret.encode()))
