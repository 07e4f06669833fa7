"""What is measured, in the units that the reader chose, else those of their region: the functions of messages.

``DEGREES($c)`` gives a temperature, ``DEGREES_APART($c)`` a difference, ``VOLUME($ml)`` a volume. ``unit: "none"``
leaves the unit of a temperature out, for the first figure of a range. No line breaks before a unit. The same in
``pwa/words/measures.js``.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any, Final

from fluent.runtime.types import FluentNone

from .numbers import number_in_words
from .tags import read_tag

FAHRENHEIT: Final = frozenset({"BS", "BZ", "KY", "PR", "PW", "US"})
"""Where the weather is told in °F (CLDR, unit preferences; from memory)."""
FLUID_OUNCES: Final = frozenset({"PR", "US"})
"""Where kitchens measure in fluid ounces (CLDR, unit preferences; from memory)."""
ML_PER_FL_OZ: Final = 29.5735
LEAST_ML: Final = 5.0
"""What is less is measured with a syringe or counted in drops, and those are marked in mL everywhere."""


def functions(tag: str) -> dict[str, Callable[..., Any]]:
    """Return the functions of a language, by the names that messages call them."""
    return {
        "DEGREES": lambda value, unit="": _of_figure(degrees, value, tag, unit),
        "DEGREES_APART": lambda value: _of_figure(degrees_apart, value, tag),
        "VOLUME": lambda value: _of_figure(volume, value, tag),
    }


def in_fahrenheit(tag: str) -> bool:
    """Return whether temperatures are told in °F."""
    its = read_tag(tag)
    return its.degrees == "f" if its.degrees else its.region in FAHRENHEIT


def in_fluid_ounces(tag: str) -> bool:
    """Return whether volumes are told in fluid ounces, too."""
    its = read_tag(tag)
    return its.volumes == "floz" if its.volumes else its.region in FLUID_OUNCES


def degrees(celsius: float, tag: str, unit: str = "") -> str:
    """Return a temperature, to a tenth of °C or in whole °F. ``unit`` "none": the figure alone."""
    fahrenheit = in_fahrenheit(tag)
    figure = _rounded(celsius * 1.8 + 32, 0, tag) if fahrenheit else _rounded(celsius, 1, tag)
    return figure if unit == "none" else _with(figure, "°F" if fahrenheit else "°C")


def degrees_apart(celsius: float, tag: str) -> str:
    """Return how far two temperatures lie apart, to a tenth."""
    fahrenheit = in_fahrenheit(tag)
    return _with(_rounded(celsius * 1.8 if fahrenheit else celsius, 1, tag), "°F" if fahrenheit else "°C")


def volume(ml: float, tag: str) -> str:
    """Return a volume; where it is said in fluid ounces, mL stand beside them, as a syringe has no others."""
    metric = _with(number_in_words(ml, tag), "mL")
    if ml < LEAST_ML or not in_fluid_ounces(tag):
        return metric
    return f"{_with(_rounded(ml / ML_PER_FL_OZ, 1, tag), 'fl oz')} ({metric})"


def _of_figure(function: Callable[..., str], value: Any, *args: str) -> Any:
    """Let an argument that is missing show as such."""
    return value if isinstance(value, (str, FluentNone)) else function(float(value), *args)


def _rounded(value: float, places: int, tag: str) -> str:
    return number_in_words(math.floor(value * 10**places + 0.5) / 10**places, tag)


def _with(figure: str, unit: str) -> str:
    return f"{figure}\u00a0{unit}"
