"""Making and hashing secrets. 256 bits for tokens; short codes are capped by ``limits`` and expire soon."""

from __future__ import annotations

import hashlib
import secrets

CODE_LETTERS = "BCDFGHJKLMNPQRSTVWXZ23456789"
"""No vowels (no words), no 0, 1, I, O (no mix-ups)."""
CODE_LENGTH = 8


def new_token() -> str:
    """Return a new 256-bit secret as URL-safe text."""
    return secrets.token_urlsafe(32)


def new_code(length: int = CODE_LENGTH) -> str:
    """Return a code for people to type, in groups of four letters, e.g. ``K7RX-2MWD``: about 38 bits."""
    letters = "".join(secrets.choice(CODE_LETTERS) for _ in range(length))
    return "-".join(letters[start : start + 4] for start in range(0, length, 4))


def hash_token(token: str) -> str:
    """Return the SHA-256 of a token, which is all that is kept of it."""
    return hashlib.sha256(token.encode()).hexdigest()


def hash_code(code: str) -> str:
    """Return the SHA-256 of a code as people type it: case, spaces and dashes do not matter."""
    return hash_token("".join(c for c in code.upper() if c.isalnum()))
