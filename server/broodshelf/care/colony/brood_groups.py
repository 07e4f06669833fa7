"""How much warmth brood needs: thresholds and degree-days from egg to worker, by group of genera.

A stage needs ``degree_days`` above ``threshold_c``. ``low_share`` and ``high_share`` say how far colonies and
sources differ. Only the Argentine ant is measured stage by stage over many temperatures; the other groups lean
on one or two published figures, and each ``source`` says which and what is only common practice.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Final

from ..catalogue import Species

STAGES: Final = ("eggs", "larvae", "pupae")


@dataclass(frozen=True, slots=True)
class Stage:
    """One stage of the brood: no development at or below ``threshold_c``, done after ``degree_days`` above it."""

    threshold_c: float
    degree_days: float


@dataclass(frozen=True, slots=True)
class BroodGroup:
    """A group of genera with its stages, its spread, and the temperatures to which its figures hold."""

    code: str
    eggs: Stage
    larvae: Stage
    pupae: Stage
    low_share: float
    high_share: float
    low_c: float
    high_c: float
    source: str

    def stage(self, name: str) -> Stage:
        """Return a stage by its name: ``eggs``, ``larvae`` or ``pupae``."""
        return {"eggs": self.eggs, "larvae": self.larvae, "pupae": self.pupae}[name]


def _one_threshold(
    code: str, threshold_c: float, days_at: float, days: tuple[float, float, float], spread: tuple[float, float],
    range_c: tuple[float, float], source: str,
) -> BroodGroup:  # fmt: skip
    """Build a group from days of egg, larva and pupa at one temperature and one threshold for all three."""
    eggs, larvae, pupae = (Stage(threshold_c, share * (days_at - threshold_c)) for share in days)
    return BroodGroup(code, eggs, larvae, pupae, *spread, *range_c, source)


GROUPS: Final[Mapping[str, BroodGroup]] = {
    group.code: group
    for group in (
        # Rates 1/days against temperature, least squares over 21, 24, 26, 28 and 30 °C; the larval time at 26 °C
        # (85.3 days, longer than at 24 °C) breaks the order of the table and is left out.
        # tests/care/test_brood.py draws the same lines from fixtures/published/brood_argentine_ant.json.
        BroodGroup(
            "argentine", Stage(11.26, 276.3), Stage(15.92, 524.6), Stage(17.31, 99.9), 0.5, 1.2, 21, 30,
            "Abril, Oliveras & Gómez 2010 J. Insect Sci. 10:97, stage times read second-hand; the low end: other "
            "data, half as many degree-days over the same threshold (Hartley & Lester 2003, from memory)",
        ),
        # (25 - 10.24) / (15 - 10.24) = 3.1: a line with this threshold has the published Q10 between its ends.
        _one_threshold(
            "myrmica", 10.24, 22, (16, 32, 17), (0.65, 1.5), (15, 25),
            "threshold from Q10 3.1 at 15 to 25 °C, Elmes & Wardlaw 1983 Insectes Soc.; species differ by 1.5 "
            "there; 65 days at 22 °C: common practice, no source",
        ),
        # Egg to pupa 30 days at 25 °C; no hatching at 15 °C; larvae stop at 20 °C; queens die at 30 °C.
        _one_threshold(
            "lasius", 15, 25, (11, 19, 17), (0.8, 1.6), (20.5, 29),
            "Lasius japonicus, Sociobiology 2015 and Nakamura et al. 2017 Appl. Entomol. Zool. 52:107 (abstracts); "
            "how the 30 days divide, and the pupal time: common practice, no source",
        ),
        _one_threshold(
            "formica", 13, 25, (8, 10, 14), (0.75, 1.6), (19, 29),
            "common practice, no source; the fastest genus in the review Kipyatkov & Lopatina 2015 Eur. J. "
            "Entomol. (abstract)",
        ),
        _one_threshold(
            "camponotus", 13, 25, (25, 12, 23), (0.7, 1.4), (20, 30),
            "Camponotus japonicus: egg 25 days, egg to worker about 60 days, Japanese Ant Image Database; its "
            "temperature is not stated, 25 °C, the threshold and the rest are common practice, no source",
        ),
        _one_threshold(
            "fire_ant", 15.9, 28, (8.5, 13.5, 12.5), (0.6, 1.6), (24, 32),
            "Solenopsis invicta: egg 7-10, larva 12-15, pupa 9-16 days (Vinson 1997, second-hand; temperature not "
            "stated, 28 °C assumed); threshold lent by the Argentine ant",
        ),
        _one_threshold(
            "monomorium", 15.9, 27, (7.5, 21.5, 9), (0.65, 1.45), (24, 30),
            "Monomorium pharaonis: 38 days (Peacock & Baxter 1950, second-hand), 25 to 54 days (Fowler et al. 1993 "
            "J. Appl. Entomol. 116:90); threshold lent by the Argentine ant",
        ),
        _one_threshold(
            "slow_hunters", 14, 25, (28, 32, 35), (0.7, 1.6), (20, 28),
            "Myrmecia and ponerine hunters: common practice, no source",
        ),
        _one_threshold(
            "other", 13, 25, (14, 20, 18), (0.6, 1.8), (20, 29),
            "no figures for this genus: a middle of the groups above, common practice, no source",
        ),
    )
}  # fmt: skip
"""Every group by its code."""

_BY_GENUS: Final[Mapping[str, str]] = {
    "linepithema": "argentine",
    "iridomyrmex": "argentine",
    "myrmica": "myrmica",
    "manica": "myrmica",
    "temnothorax": "myrmica",
    "lasius": "lasius",
    "tetramorium": "lasius",
    "formica": "formica",
    "camponotus": "camponotus",
    "polyrhachis": "camponotus",
    "solenopsis": "fire_ant",
    "pheidole": "fire_ant",
    "carebara": "fire_ant",
    "monomorium": "monomorium",
    "myrmecia": "slow_hunters",
    "harpegnathos": "slow_hunters",
    "odontomachus": "slow_hunters",
    "rhytidoponera": "slow_hunters",
}
"""Genera without figures of their own stand with a relative of like pace: common practice, no source."""


def brood_group(species: Species) -> BroodGroup:
    """Return the group of a species by its genus; ``other`` for all the rest."""
    return GROUPS[_BY_GENUS.get(species.genus or "", "other")]
