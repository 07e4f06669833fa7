"""The server's own push key (VAPID, RFC 8292): made once, kept in the data folder, readable by its owner only.

A changed key silences every phone without a word, so a key that is missing while phones have subscribed with
it, or that others could have read, stops the start.
"""

from __future__ import annotations

import os
import secrets
from base64 import urlsafe_b64encode
from dataclasses import dataclass
from pathlib import Path
from typing import Final

from cryptography.exceptions import UnsupportedAlgorithm
from cryptography.hazmat.primitives import serialization
from cryptography.hazmat.primitives.asymmetric import ec
from py_vapid import Vapid02

from ....errors import BadSetting
from ....languages import told
from ....records.data_folder import set_aside

FILE_NAME: Final = "vapid.pem"
TOKEN_LASTS_S: Final = 12 * 3600
"""RFC 8292, section 2, allows 24 hours from the request; half of it leaves room for clocks that differ."""
KEY_ID_LENGTH: Final = 16


@dataclass(frozen=True, slots=True)
class VapidKey:
    """The private key, and the public one as browsers want it: 65 bytes in base64url without padding."""

    private: ec.EllipticCurvePrivateKey
    public: str

    @property
    def key_id(self) -> str:
        """The first 16 characters of the public key: enough to tell two keys apart."""
        return self.public[:KEY_ID_LENGTH]

    def authorization(self, origin: str, subject: str, now_ms: int) -> str:
        """Return the ``Authorization`` header for a push service's origin; it holds for 12 hours."""
        claims = {"aud": origin, "sub": subject, "exp": now_ms // 1000 + TOKEN_LASTS_S}
        signer = Vapid02(self.private, {"no-strict": True})  # the settings have checked the subject
        return str(signer.sign(claims)["Authorization"])


def load_or_make(data: Path, *, in_use: bool) -> VapidKey:
    """Return the key of a data folder, making it on first use. ``in_use``: phones have subscribed with one.

    One that is damaged is set aside and replaced: a server that does not start would silence every phone, too, and
    stop everything else. Raises ``BadSetting`` when the file is missing though in use, or readable by others.
    """
    path = data / FILE_NAME
    if not path.exists():
        if in_use:
            raise BadSetting(
                "BROODSHELF_DATA",
                str(data),
                told("setting-key-missing", file=FILE_NAME),
            )
        _make(path)
    if path.stat().st_mode & 0o077:
        raise BadSetting("BROODSHELF_DATA", str(data), told("setting-key-open", file=FILE_NAME))
    private = read_key(path)
    if private is None:
        set_aside(
            path,
            "the push key; phones hear nothing until the app is opened on them, or the old one is put back",
        )
        _make(path)
        private = read_key(path)
    if private is None:
        raise BadSetting("BROODSHELF_DATA", str(data), told("setting-key-wrong", file=FILE_NAME))
    return _with_public(private)


def key_in(pem: bytes) -> VapidKey | None:
    """Return the key in a text, or None where it holds no P-256 key in PEM."""
    try:
        private = serialization.load_pem_private_key(pem, None)
    except (ValueError, TypeError, UnsupportedAlgorithm):
        return None
    if not isinstance(private, ec.EllipticCurvePrivateKey) or not isinstance(private.curve, ec.SECP256R1):
        return None
    return _with_public(private)


def _with_public(private: ec.EllipticCurvePrivateKey) -> VapidKey:
    point = private.public_key().public_bytes(
        serialization.Encoding.X962, serialization.PublicFormat.UncompressedPoint
    )
    return VapidKey(private, urlsafe_b64encode(point).rstrip(b"=").decode())


def read_key(path: Path) -> ec.EllipticCurvePrivateKey | None:
    """Return the key in a file, or None where it holds no P-256 key in PEM."""
    try:
        found = key_in(path.read_bytes())
    except OSError:
        return None
    return None if found is None else found.private


def _make(path: Path) -> None:
    """Write a new key whole or not at all. Of two processes that try at once, one wins and both use its key."""
    pem = ec.generate_private_key(ec.SECP256R1()).private_bytes(
        serialization.Encoding.PEM, serialization.PrivateFormat.PKCS8, serialization.NoEncryption()
    )
    draft = path.with_name(f".{FILE_NAME}.{secrets.token_hex(8)}")
    handle = os.open(draft, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(pem)
            file.flush()
            os.fsync(file.fileno())
        try:
            os.link(draft, path)
        except FileExistsError:
            return
    finally:
        draft.unlink()
