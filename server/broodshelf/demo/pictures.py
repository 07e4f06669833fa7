"""Pictures for the invented shelf, drawn here: a test tube with its label, its water, its queen and her workers.

Drawings, not photographs, and they say so. The label carries the colony's number and short code, as a printed one does
(pwa/care/short-code.js), so that it can be typed on the demo shelf.
"""

from __future__ import annotations

import io
import random
from typing import Final

import segno
from PIL import Image, ImageDraw

WIDTH_PX: Final = 1200
HEIGHT_PX: Final = 420
_LETTERS: Final = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
_TUBE: Final = (60, 130, 1140, 300)
_WATER_TO_PX: Final = 420
_COTTON_TO_PX: Final = 500
_NEST_TO_PX: Final = 1040


def short_code(record_id: str) -> str:
    """Return the five letters and digits that stand for a colony on a label."""
    value = int(record_id.replace("-", "")[-7:], 16)
    return "".join(_LETTERS[(value >> shift) & 31] for shift in (20, 15, 10, 5, 0))


def tube_picture(name: str, colony_id: str, workers: int, water_share: float, address: str) -> bytes:
    """Return a JPEG of a colony in its tube.

    ``workers``: how many are drawn beside the queen; ``water_share``: 0..1 of a full reservoir; ``address``: where
    its label leads. The same colony is drawn the same way each time.
    """
    chance = random.Random(f"{colony_id} {workers}")  # noqa: S311 - where an ant sits is no secret
    picture = Image.new("RGB", (WIDTH_PX, HEIGHT_PX), (236, 231, 222))
    draw = ImageDraw.Draw(picture)
    draw.rounded_rectangle(_TUBE, 80, fill=(246, 249, 249), outline=(120, 140, 145), width=5)
    water_px = round(70 + (_WATER_TO_PX - 70) * water_share)
    draw.rounded_rectangle((66, 136, max(water_px, 150), 294), 70, fill=(190, 222, 236))
    draw.rounded_rectangle(
        (_WATER_TO_PX, 134, _COTTON_TO_PX, 296), 24, fill=(250, 250, 246), outline=(214, 214, 205)
    )
    draw.rounded_rectangle((_NEST_TO_PX, 134, 1128, 296), 24, fill=(250, 250, 246), outline=(214, 214, 205))
    for _ in range(max(3, workers // 3)):
        x, y = chance.uniform(_COTTON_TO_PX + 30, _COTTON_TO_PX + 210), chance.uniform(235, 282)
        draw.ellipse((x - 7, y - 4, x + 7, y + 4), fill=(240, 234, 214), outline=(206, 196, 168))
    _ant(draw, _COTTON_TO_PX + 150, 215, 3.2, chance)
    for _ in range(workers):
        _ant(
            draw, chance.uniform(_COTTON_TO_PX + 30, _NEST_TO_PX - 30), chance.uniform(160, 275), 1.4, chance
        )
    _label(picture, draw, name, colony_id, address)
    draw.text((24, HEIGHT_PX - 34), "A drawing for the invented shelf", fill=(90, 90, 84), font_size=20)
    made = io.BytesIO()
    picture.save(made, "JPEG", quality=82)
    return made.getvalue()


def _ant(draw: ImageDraw.ImageDraw, x: float, y: float, size: float, chance: random.Random) -> None:
    """Draw three ellipses and six legs, heading left or right."""
    ahead = chance.choice((-1, 1))
    for shift, half_long, half_high in ((-9, 5, 4), (0, 4, 3), (9, 7, 5)):
        at = x + ahead * shift * size
        box = (at - half_long * size, y - half_high * size, at + half_long * size, y + half_high * size)
        draw.ellipse(box, fill=(52, 40, 34))
    for leg in (-4, 0, 4):
        for side in (-1, 1):
            foot = (x + leg * size * 1.8, y + side * 9 * size)
            draw.line((x + leg * size, y, *foot), fill=(52, 40, 34), width=max(1, round(size)))


def _label(picture: Image.Image, draw: ImageDraw.ImageDraw, name: str, colony_id: str, address: str) -> None:
    """Tape a label over the tube: the QR code of the colony's address, its name and its short code."""
    draw.rectangle((90, 20, 520, 190), fill=(255, 255, 255), outline=(200, 200, 194), width=2)
    code = segno.make(address, error="m")
    drawn = io.BytesIO()
    code.save(drawn, kind="png", scale=4, border=1)
    picture.paste(Image.open(drawn).convert("RGB").resize((150, 150)), (100, 30))
    draw.text((265, 50), name, fill=(30, 30, 28), font_size=30)
    draw.text((265, 105), short_code(colony_id), fill=(30, 30, 28), font_size=44)
