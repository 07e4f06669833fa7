"""Pictures by what is wrong with them."""

from __future__ import annotations

import io
from functools import cache
from typing import Any

from PIL import Image


@cache
def pictures() -> dict[str, bytes]:
    """Return pictures by what is wrong with them."""
    good = _jpeg((640, 480))
    wide = io.BytesIO()
    Image.new("L", (5_500, 5_500)).save(wide, "JPEG", quality=1)
    flat = io.BytesIO()
    Image.new("1", (6_000, 6_000)).save(flat, "PNG")
    return {
        "good": good,
        "progressive": _jpeg((1_000, 800), progressive=True),
        "cut": good[: len(good) // 2],
        "head only": good[:30],
        "broken tables": good[:200] + b"\xff" * 100 + good[300:],
        "broken orientation": _jpeg(
            (64, 64), exif=b"Exif\0\0II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0\xff\xff\xff\xff"
        ),
        "broken notes": _jpeg((64, 64), exif=b"Exif\0\0MM\0*\xff\xff\xff\xff" + b"\xff" * 60),
        "many pixels": wide.getvalue(),
        "bomb of another format": flat.getvalue()[:299_000],
        "other format": b"GIF89a" + b"\x01" * 60,
        "nothing": b"",
        "too large": b"\xff\xd8\xff" + b"\0" * 300_000,
        "text": b"<svg xmlns='http://www.w3.org/2000/svg'/>",
    }


def _jpeg(size: tuple[int, int], **options: Any) -> bytes:
    out = io.BytesIO()
    Image.effect_noise(size, 60).convert("RGB").save(out, "JPEG", quality=40, **options)
    return out.getvalue()
