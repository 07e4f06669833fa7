"""How many checked offers it takes to find the best of five foods: the tasting against taking them in turn.

``python -m tests.bench.tasting_offers`` prints the table of docs/care-model/food.md. Both follow the same rules
(offers every three days, one new food a week) and stop alike: when one food is the best with probability 0.9,
or after 200 offers. The acceptances are invented, the same for every colony, and each colony draws its own luck.
"""

from __future__ import annotations

import datetime as dt
import random
import statistics
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from broodshelf.care.feeding.tasting import chance_of_being_best
from broodshelf.care.feeding.trial import Candidate, Offer, Trial, acceptances, suggest
from broodshelf.model.facts import Tally

TRUE_ACCEPTANCE = {"egg": 0.9, "cricket": 0.6, "waxworm": 0.45, "mealworm": 0.3, "silkworm": 0.2}
SURE = 0.9
MOST_OFFERS = 200
EVERY_DAYS = 3
START = dt.date(2026, 3, 2)
POINTS = 128

Chooser = Callable[[Trial, str, random.Random], str | None]


@dataclass(frozen=True)
class Found:
    """What one simulated trial came to."""

    food: str
    offers: int
    right: bool


def by_tasting(trial: Trial, today: str, rng: random.Random) -> str | None:
    return suggest(trial, today=today, states=frozenset(), rng=rng).food_code


def in_turn(trial: Trial, today: str, rng: random.Random) -> str | None:
    """Offer the food that was offered the least; a new one only where the tasting may too."""
    count = {
        c.food_code: sum(1 for o in trial.offers if o.food_code == c.food_code) for c in trial.candidates
    }
    new_days = [min(o.day for o in trial.offers if o.food_code == food) for food, n in count.items() if n]
    may_be_new = not new_days or today >= str(dt.date.fromisoformat(max(new_days)) + dt.timedelta(days=7))
    allowed = [food for food, n in count.items() if n or may_be_new]
    return min(allowed, key=lambda food: count[food])


def one_trial(
    choose: Chooser,
    seed: int,
    likes: Mapping[str, Sequence[Tally]] | None = None,
    shares: Mapping[str, float] = TRUE_ACCEPTANCE,
) -> Found:
    luck, rng = random.Random(seed), random.Random(seed + 1_000_000)
    order = list(shares)
    luck.shuffle(order)
    candidates = [Candidate(food, "bought_or_bred") for food in order]
    offers: list[Offer] = []
    while True:
        trial = Trial(START.isoformat(), candidates, tuple(offers), likes=likes or {})
        chances = chance_of_being_best(acceptances(trial), POINTS)
        leader = max(sorted(chances), key=lambda food: chances[food])
        if chances[leader] >= SURE or len(offers) >= MOST_OFFERS:
            return Found(leader, len(offers), leader == max(shares, key=lambda food: shares[food]))
        today = (START + dt.timedelta(days=EVERY_DAYS * len(offers))).isoformat()
        food = choose(trial, today, rng)
        assert food is not None
        taken = luck.random() < shares[food]
        offers.append(Offer(today, food, "all" if taken else "ignored"))


def likes_of(colonies: int, offers_each: int, seed: int) -> dict[str, list[Tally]]:
    """Return what other colonies of the same kind took before."""
    rng = random.Random(seed)
    return {
        food: [
            Tally(sum(rng.random() < share for _ in range(offers_each)), offers_each) for _ in range(colonies)
        ]
        for food, share in TRUE_ACCEPTANCE.items()
    }


def compare(trials: int, first_seed: int = 1) -> dict[str, list[Found]]:
    """Return the outcome of so many trials: in turn, by tasting, and by tasting with three known likes."""
    seeds = range(first_seed, first_seed + trials)
    return {
        "in turn": [one_trial(in_turn, seed) for seed in seeds],
        "by tasting": [one_trial(by_tasting, seed) for seed in seeds],
        "by tasting, three likes known": [
            one_trial(by_tasting, seed, likes_of(3, 6, seed)) for seed in seeds
        ],
    }


def compare_any(trials: int, first_seed: int = 1) -> dict[str, list[Found]]:
    """Return the same for acceptances drawn anew for each colony, 0 to 1: often two foods are nearly alike."""
    seeds = range(first_seed, first_seed + trials)
    drawn = {seed: random.Random(-seed) for seed in seeds}
    shares = {seed: {food: drawn[seed].random() for food in TRUE_ACCEPTANCE} for seed in seeds}
    return {
        "any foods, in turn": [one_trial(in_turn, seed, shares=shares[seed]) for seed in seeds],
        "any foods, by tasting": [one_trial(by_tasting, seed, shares=shares[seed]) for seed in seeds],
    }


def main() -> None:
    for name, found in {**compare(200), **compare_any(200)}.items():
        offers = [each.offers for each in found]
        right = sum(each.right for each in found)
        print(f"{name:32s} median {statistics.median(offers):5.1f}  mean {statistics.mean(offers):5.1f} offers"
              f"  right in {right} of {len(found)}")  # fmt: skip


if __name__ == "__main__":
    main()
