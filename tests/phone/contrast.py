"""The colours of each look as the style sheet says them, and their contrast by computation."""

from __future__ import annotations

import re
from collections.abc import Mapping
from pathlib import Path
from typing import Final

TOKENS: Final = Path(__file__).parents[2] / "pwa/style/tokens.css"


def contrast(one: str, other: str) -> float:
    """Return the contrast ratio of two ``#rrggbb`` colours, WCAG 2.2 (relative luminance, sRGB)."""
    light, dark = sorted((_luminance(one), _luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def _luminance(colour: str) -> float:
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def tokens() -> Mapping[str, Mapping[str, str]]:
    """Return the colours of each look as ``{look: {token: #rrggbb}}``, read from the style sheet."""
    sheet = TOKENS.read_text()
    blocks = {
        "light": re.search(r":root \{(.*?)\n\}", sheet, re.S),
        "dark": re.search(r':root\[data-look="dark"\] \{(.*?)\}', sheet, re.S),
        "red": re.search(r':root\[data-look="red"\] \{(.*?)\}', sheet, re.S),
    }
    found = {
        look: dict(re.findall(r"--([\w-]+): (#[0-9a-f]{6})\b", match[1]))
        for look, match in blocks.items()
        if match
    }
    return {look: {**found["light"], **own} for look, own in found.items()}
