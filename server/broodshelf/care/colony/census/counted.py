"""How many workers and how much brood: from what the keeper saw last, as coarse as it was seen.

A field that a count leaves open keeps what an earlier count said; brood that was added since is added. All coarse
figures: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Final

from ....model.facts import Event, tells
from ....model.gauges import DAY_MS
from ....model.kinds.log import Boost, Count
from ....model.kinds.plan import Reason
from ....model.quantities import Estimate
from ....model.tasks import reason
from ..counted_workers import workers_in

OLD_CENSUS_DAYS: Final = 60.0
"""After this a count is called old: a young colony may well have doubled since (common practice, no source)."""

_STAGE_WORKERS: Final[Mapping[str, Estimate]] = {
    "founding": Estimate.exactly(0),
    "nanitics": Estimate(3, 8, 20),
    "growing": Estimate(20, 60, 300),
    "mature": Estimate(100, 500, 5_000),
}
_UNKNOWN_WORKERS: Final = Estimate(0, 0, 20)
_BROOD_PER_WORKER: Final[Mapping[str, Estimate]] = {
    "none": Estimate.exactly(0),
    "seen": Estimate(0.03, 0.2, 0.7),
    "few": Estimate(0.03, 0.1, 0.2),
    "some": Estimate(0.15, 0.3, 0.6),
    "many": Estimate(0.4, 0.7, 1.5),
}
_LEAST_BROOD: Final[Mapping[str, Estimate]] = {
    "none": Estimate.exactly(0),
    "seen": Estimate(1, 5, 15),
    "few": Estimate(1, 3, 6),
    "some": Estimate(4, 8, 15),
    "many": Estimate(10, 18, 40),
}
"""What the words mean beside a queen alone or a handful of workers."""
_COUNTED_IN: Final = frozenset({"count", "boost"})
_IN_ORDER: Final = tuple(_LEAST_BROOD).index
_BROOD: Final = ("eggs", "larvae", "pupae")
USUAL_BOOST: Final = 10.0
"""Added brood whose number nobody wrote down (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Brood:
    """Brood as it was seen (``none`` to ``many``, None: nobody looked) and how many that may be."""

    eggs: str | None
    larvae: str | None
    pupae: str | None
    eggs_n: Estimate
    larvae_n: Estimate
    pupae_n: Estimate
    larvae_ms: int | None = None
    """When somebody last looked for larvae, or added some; None: nobody did."""

    @property
    def all_pupae(self) -> bool:
        """Say whether pupae were seen and no larvae: such a colony may refuse protein in good health."""
        return self.larvae == "none" and self.pupae not in (None, "none")


@dataclass(frozen=True, slots=True)
class Census:
    """The colony as last seen.

    ``basis`` is ``exact``, ``range``, ``coarse``, ``stage`` or ``unknown``; ``counted_ms`` when workers were
    last seen (None: never); ``fell_to_zero``: workers were seen before and the last look found none.
    """

    workers: Estimate
    brood: Brood
    basis: str
    counted_ms: int | None = None
    fell_to_zero: bool = False

    def age_days(self, now_ms: int) -> float | None:
        """Return the age of the workers' count in days, at least 0; None if there is none."""
        return None if self.counted_ms is None else max(0, now_ms - self.counted_ms) / DAY_MS

    def reasons(self, now_ms: int) -> tuple[Reason, ...]:
        """Return what a person should know about the count: that it is old, guessed or fell to nothing."""
        made: list[Reason] = []
        age = self.age_days(now_ms)
        if self.basis == "unknown":
            made.append(reason("census_unknown"))
        elif age is None and self.workers.high > 0:  # that a founding queen has no workers yet is no guess
            made.append(reason("census_guessed", workers=round(self.workers.best)))
        elif age is not None and age > OLD_CENSUS_DAYS:
            made.append(reason("census_old", days=round(age)))
        if self.fell_to_zero:
            made.append(reason("workers_fell_to_zero"))
        return tuple(made)


def census_of(events: Sequence[Event], stage: str | None) -> Census:
    """Return the census from the log (in the order in which things happened), else from the stage.

    One pass from the latest event, ended as soon as nothing is open. Brood seen more than 60 days before the last
    look counts as not seen: it has hatched or gone. A last look that found no workers is believed, and
    ``fell_to_zero`` tells that there were some. Raises ``OutOfRange`` for counts that are
    negative, not finite or above a million.
    """
    workers: Estimate | None = None
    basis, counted_ms, fell_to_zero = "stage", None, False
    seen: dict[str, str] = {}
    seen_ms: dict[str, int] = {}
    added: dict[str, float] = {}
    oldest_brood_ms: float | None = None
    for event in reversed(events):
        if event.kind not in _COUNTED_IN:
            continue
        if tells(event, Boost) and event.happened_ms >= events[-1].happened_ms - OLD_CENSUS_DAYS * DAY_MS:
            stage_added, number = event.said.brood, event.said.number
            if stage_added in _BROOD and stage_added not in seen:
                added[stage_added] = added.get(stage_added, 0.0) + (USUAL_BOOST if number is None else number)
                seen_ms.setdefault(stage_added, event.happened_ms)
        if not tells(event, Count):
            continue
        count = event.said
        if oldest_brood_ms is None:
            oldest_brood_ms = event.happened_ms - OLD_CENSUS_DAYS * DAY_MS
        brood_is_closed = len(seen) == len(_BROOD) or event.happened_ms < oldest_brood_ms
        if brood_is_closed and workers is not None and (workers.high > 0 or fell_to_zero):
            break
        if workers is None:
            if (found := workers_in(count)) is not None:
                (workers, basis), counted_ms = found, event.happened_ms
        elif workers.high == 0 and not fell_to_zero:
            earlier = workers_in(count)
            fell_to_zero = earlier is not None and earlier[0].best > 0
        if not brood_is_closed:
            for field, word in zip(_BROOD, (count.eggs, count.larvae, count.pupae), strict=True):
                if field not in seen and word is not None and word in _LEAST_BROOD:
                    seen[field] = word
                    seen_ms.setdefault(field, event.happened_ms)
    if workers is None:
        workers = _STAGE_WORKERS.get(stage or "", _UNKNOWN_WORKERS)
        basis = "stage" if stage in _STAGE_WORKERS else "unknown"
    brood = _brood(seen, added, workers, seen_ms.get("larvae"))
    return Census(workers, brood, basis, counted_ms, fell_to_zero)


def _brood(
    seen: Mapping[str, str], added: Mapping[str, float], workers: Estimate, larvae_ms: int | None
) -> Brood:
    words = [_word(seen.get(field), added.get(field)) for field in _BROOD]
    numbers = []
    for field in _BROOD:
        number = _number(seen.get(field), workers)
        numbers.append(number.plus(Estimate.exactly(added[field])) if field in added else number)
    return Brood(words[0], words[1], words[2], numbers[0], numbers[1], numbers[2], larvae_ms)


def _word(seen: str | None, added: float | None) -> str | None:
    """Return the word for brood that was seen and added to: at least the one that fits the number added."""
    if added is None:
        return seen
    least = max((word for word in _LEAST_BROOD if _LEAST_BROOD[word].low <= added), key=_IN_ORDER)
    return least if seen is None else max(seen, least, key=_IN_ORDER)


def _number(coarse: str | None, workers: Estimate) -> Estimate:
    """Return how many a word stands for in this colony; unseen brood may be anything from none to many."""
    if coarse is None:
        return Estimate(0, _number("some", workers).best, _number("many", workers).high)
    share, least = _BROOD_PER_WORKER[coarse], _LEAST_BROOD[coarse]
    return Estimate(
        max(least.low, share.low * workers.low),
        max(least.best, share.best * workers.best),
        max(least.high, share.high * workers.high),
    )
