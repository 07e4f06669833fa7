"""How ants live, by group of genera: what the census goes by before a colony has said anything about itself.

Degree-days are reckoned from days at 25 °C. Only the Argentine ant is measured stage by stage over many temperatures
and *Lasius niger* stage by stage at one; every other group rests on one total or on common practice, which its
``source`` says and ``measured`` tells the screens. Laying and lives are common practice unless a source is named.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property
from itertools import accumulate
from typing import Final

STAGES: Final = ("eggs", "small_larvae", "large_larvae", "pupae")
REFERENCE_C: Final = 25.0
WITHIN_CV: Final = 0.15
"""How far the ways of single ants of one colony differ (Fowler et al. 1993: 25 to 54 days as extremes, 2 to 2.5 SD)."""
SURVIVAL: Final = 0.5
"""Of eggs that become workers with care: 0.55 *Camponotus kiusiuensis* (Ito 1988), else common practice."""


@dataclass(frozen=True, slots=True)
class StageTime:
    """A stage of the brood: no development at or below ``threshold_c``, done after ``degree_days`` above it."""

    threshold_c: float
    degree_days: float


@dataclass(frozen=True, eq=False)
class LifeGroup:
    """What is known of a group. Ranges hold 80 of 100 colonies.

    ``spread``: between colonies, as a factor on the time from egg to worker; ``low_c..high_c``: where brood does well;
    ``first_brood``: workers of the first brood; ``life_days``: of a worker at 25 °C; ``eggs_per_worker``: laid a day
    for each worker while the queen has room; ``most_eggs``: of one queen in a day; ``first_pace``: how much faster the
    first brood develops; ``step_days``: of one step of the reckoning; ``step_pace``: so much slower a first brood goes
    by these steps, or its first worker would come sooner than single ants do; ``winter_larvae``: old larvae outlive a
    rest.
    """

    code: str
    eggs: StageTime
    larvae: StageTime
    pupae: StageTime
    spread: float
    low_c: float
    high_c: float
    first_brood: tuple[float, float]
    life_days: tuple[float, float]
    eggs_per_worker: float
    most_eggs: float
    step_days: int
    source: str
    measured: bool = False
    first_pace: float = 1.0
    step_pace: float = 1.0
    winter_larvae: bool = True

    @cached_property
    def times(self) -> tuple[StageTime, StageTime, StageTime, StageTime]:
        """The four stages of ``STAGES``: half of the larval time is that of small larvae."""
        half = StageTime(self.larvae.threshold_c, self.larvae.degree_days / 2)
        return self.eggs, half, half, self.pupae

    @property
    def usual_c(self) -> float:
        """Return a temperature at which it is kept well."""
        return self.low_c + 0.6 * (self.high_c - self.low_c)

    @cached_property
    def chain(self) -> tuple[int, int, int, int]:
        """Into how many equal steps each stage is divided.

        A chain of k steps of which a share p moves on at a time spreads the way by sqrt((1 - p) / k) of its length; p
        is so large that this is ``WITHIN_CV`` at its usual warmth.
        """
        ways = [
            stage.degree_days / (self.usual_c - stage.threshold_c) / self.step_days for stage in self.times
        ]
        share = 1 / (1 + WITHIN_CV**2 * sum(ways))
        eggs, small, large, pupae = (max(1, round(share * way)) for way in ways)
        return eggs, small, large, pupae

    @cached_property
    def spans(self) -> tuple[tuple[int, int], ...]:
        """Where each stage begins and ends among the steps of the whole chain."""
        ends = tuple(accumulate(self.chain))
        return tuple(zip((0, *ends[:-1]), ends, strict=True))


def _at_25_c(threshold_c: float, days: tuple[float, float, float]) -> tuple[StageTime, StageTime, StageTime]:
    eggs, larvae, pupae = (StageTime(threshold_c, (25 - threshold_c) * took) for took in days)
    return eggs, larvae, pupae


LIFE_GROUPS: Final[Mapping[str, LifeGroup]] = {
    group.code: group
    for group in (
        LifeGroup(
            "lasius", StageTime(14, 11 * 16.4), StageTime(17, 8 * 9.1), StageTime(14, 11 * 19.5),
            spread=1.25, low_c=19, high_c=28, first_brood=(5, 20), life_days=(365, 730), eggs_per_worker=0.14,
            most_eggs=60, step_days=3, measured=True, first_pace=45 / 39, step_pace=0.95,
            source="Lasius niger at 25 °C, Matte & Billen 2021 Asian Myrmecol. 13:e013003, second-hand: 13.5 days as "
            "eggs, 7.5 as larvae, 16 as pupae for the first of a first brood; larvae rest at 17 °C (Kipyatkov et al. "
            "2004, abstract); the other threshold, the middle of a brood and later broods: common practice",
        ),
        LifeGroup(
            "tetramorium", *_at_25_c(14, (10, 13, 15)), spread=1.5, low_c=21, high_c=31, first_brood=(5, 20),
            life_days=(100, 400), eggs_per_worker=0.24, most_eggs=80, step_days=2, step_pace=0.94,
            source="Tetramorium and Pheidole, 38 days at 25 °C: common practice, no source",
        ),
        LifeGroup(
            "solenopsis", *_at_25_c(16, (9, 13.5, 13.5)), spread=1.4, low_c=24, high_c=32, first_brood=(10, 25),
            life_days=(60, 120), eggs_per_worker=0.33, most_eggs=1000, step_days=2, step_pace=0.9,
            source="36 days at 25 °C: common practice; growth of 0.04 a day, Markin, Dillier & Collins 1973; first "
            "brood from memory (Markin, Collins & Dillier 1972)",
        ),
        LifeGroup(
            "linepithema", StageTime(11.26, 276.3), StageTime(15.92, 524.6), StageTime(17.31, 99.9), spread=1.6,
            low_c=21, high_c=30, first_brood=(5, 20), life_days=(150, 300), eggs_per_worker=0.2, most_eggs=19,
            step_days=7, step_pace=0.91, measured=True,
            source="Abril, Oliveras & Gómez 2010 J. Insect Sci. 10:97, stage by stage, second-hand; eggs: Keller 1988",
        ),
        LifeGroup(
            "monomorium", *_at_25_c(16, (7.5, 21.5, 9)), spread=1.4, low_c=24, high_c=30, first_brood=(5, 20),
            life_days=(60, 120), eggs_per_worker=0.25, most_eggs=30, step_days=3, step_pace=0.93,
            source="Monomorium pharaonis 38 days (Peacock & Baxter 1950, second-hand; 25 to 54 days, Fowler et al. "
            "1993); laying and Tapinoma: common practice",
        ),
        LifeGroup(
            "camponotus", *_at_25_c(13, (25, 14, 23)), spread=1.35, low_c=21, high_c=30, first_brood=(3, 12),
            life_days=(365, 1000), eggs_per_worker=0.08, most_eggs=25, step_days=5, step_pace=0.94,
            source="Camponotus japonicus: egg 25 days, egg to worker about 60, temperature not stated (Japanese Ant "
            "Image Database); the rest: common practice",
        ),
        LifeGroup(
            "formica", *_at_25_c(13, (10, 13, 17)), spread=1.5, low_c=19, high_c=28, first_brood=(3, 12),
            life_days=(365, 700), eggs_per_worker=0.12, most_eggs=60, step_days=3, winter_larvae=False,
            source="40 days at 25 °C: common practice, no source; no larvae over winter: Lopatina 2018, from memory",
        ),
        LifeGroup(
            "myrmica", *_at_25_c(10.24, (15, 29, 16)), spread=1.6, low_c=15, high_c=25, first_brood=(2, 8),
            life_days=(365, 1000), eggs_per_worker=0.07, most_eggs=15, step_days=5, step_pace=0.96,
            source="threshold from Q10 3.1 at 15 to 25 °C, Elmes & Wardlaw 1983; 60 days at 25 °C: common practice",
        ),
        LifeGroup(
            "messor", *_at_25_c(14, (14, 15, 16)), spread=1.5, low_c=22, high_c=32, first_brood=(4, 12),
            life_days=(200, 600), eggs_per_worker=0.14, most_eggs=80, step_days=3, step_pace=0.9,
            source="Messor and Pogonomyrmex, 45 days at 25 °C: common practice, no source",
        ),
        LifeGroup(
            "slow_hunters", *_at_25_c(14, (28, 32, 35)), spread=1.6, low_c=20, high_c=28, first_brood=(2, 8),
            life_days=(300, 900), eggs_per_worker=0.05, most_eggs=5, step_days=7, step_pace=0.97,
            source="ponerines and Myrmecia, 95 days at 25 °C: common practice, no source",
        ),
        LifeGroup(
            "other", *_at_25_c(13, (14, 20, 18)), spread=1.7, low_c=20, high_c=29, first_brood=(3, 15),
            life_days=(150, 700), eggs_per_worker=0.12, most_eggs=40, step_days=4, step_pace=0.95,
            source="no figures for this genus: a middle of the groups, common practice, no source",
        ),
    )
}  # fmt: skip
"""Every group by its code."""

_BY_GENUS: Final[Mapping[str, str]] = {
    genus: group
    for group, genera in {
        "lasius": "lasius",
        "tetramorium": "tetramorium pheidole crematogaster",
        "solenopsis": "solenopsis carebara",
        "linepithema": "linepithema iridomyrmex",
        "monomorium": "monomorium tapinoma",
        "camponotus": "camponotus polyrhachis colobopsis",
        "formica": "formica",
        "myrmica": "myrmica manica temnothorax leptothorax",
        "messor": "messor pogonomyrmex",
        "slow_hunters": "myrmecia harpegnathos odontomachus rhytidoponera ponera diacamma",
    }.items()
    for genus in genera.split()
}
"""Genera without figures of their own stand with a relative of like pace: common practice, no source."""


def life_group(genus: str | None) -> LifeGroup:
    """Return the group of a genus; ``other`` for all the rest."""
    return LIFE_GROUPS[_BY_GENUS.get(genus or "", "other")]
