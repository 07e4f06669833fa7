"""Turning codes into words with the one word table. The same in ``pwa/care/words.js``, by shared vectors."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from typing import Any

from .catalogue import words

_PLURAL = re.compile(r"\[(\w+)\|([^|\]]*)\|([^\]]*)\]")
_NAME = re.compile(r"\{(\w+)\}")


def fill(template: str, args: Mapping[str, Any]) -> str:
    """Fill ``{name}`` and ``[n|one|other]`` in a template; an argument that is missing shows as ``?``."""
    chosen = _PLURAL.sub(lambda m: m[2] if args.get(m[1]) == 1 else m[3], template)
    return _NAME.sub(lambda m: _shown(args.get(m[1], "?")), chosen)


def say(section: str, code: str, args: Mapping[str, Any] | None = None) -> str:
    """Return the words for a code of a section; the code itself if the table lacks it."""
    template = words().get(section, {}).get(code)
    return code.replace("_", " ") if template is None else fill(template, args or {})


def say_portion(portion: Mapping[str, Any]) -> str:
    """Return a portion in words, e.g. ``2 extra small crickets, killed and cut``."""
    amount, unit = portion.get("amount"), str(portion.get("unit"))
    food = say("food", str(portion.get("food_code")))
    if unit == "piece" and portion.get("form") == "piece":
        unit = "crumb"  # of what is no animal
    elif unit == "piece" and amount != 1:
        food = _plural(food)
    elif unit in ("seed", "leaf") and amount == 1:
        food = _singular(food)
    size = say("size", portion["size_class"]) if portion.get("size_class") else ""
    form = say("form", portion["form"]) if portion.get("form") else ""
    parts = [_shown(amount), say("unit", unit, {"n": amount}), size, food]
    return " ".join(part for part in parts if part) + (f", {form}" if form else "")


def _plural(food: str) -> str:
    if food.endswith("fly"):
        return food[:-1] + "ies"
    return food + "s"


def _singular(food: str) -> str:
    """Return one of what is counted in seeds or leaves; these foods are named by their plural."""
    return food[:-3] + "f" if food.endswith("leaves") else food.removesuffix("s")


def _shown(value: Any) -> str:
    if isinstance(value, float):
        places = 2 if value == 0 or abs(value) >= 0.1 else min(9, 1 - math.floor(math.log10(abs(value))))
        return f"{value:.{places}f}".rstrip("0").rstrip(
            "."
        )  # what is small keeps two digits, or it would read as none
    return str(value)
