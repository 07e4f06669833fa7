"""Does the whole plan find what an invented colony eats, within 8 checks, or say that it cannot?"""

from __future__ import annotations

import random

import pytest
from tests.care.plan_learning_simulation import APPETITES, SIZES, Colony, told, verdict
from tests.support.said import say, words

from broodshelf.model.facts import Event
from broodshelf.model.gauges import DAY_MS

pytestmark = pytest.mark.long

RUNS = 40
FIRST = 20
"""Of the runs so many alone."""
SUGAR_IS_CLAIMED = {(300, 1.0): FIRST, (8, 1.0): 0}
"""By how many of the first runs, by workers and appetite."""


@pytest.mark.parametrize("appetite", APPETITES)
@pytest.mark.parametrize("workers", SIZES)
@pytest.mark.parametrize("need", ["protein", "sugar"])
def test_after_eight_checks_the_median_plan_is_right_within_a_fifth_or_says_that_it_cannot_know(
    need, workers, appetite
):
    """Seeded. A plan that claims a figure must be right; where most plans claim none, they say why.

    Protein is learnt in every size and sugar from the size on that empties a drop: one holds 17 mg, which is what 60
    workers use in five days, so only whether they empty it can be seen. Of 2,000 who eat three times the usual half are
    served twelve pieces of something small, as many as are ever laid out, and eat them all: a bound is what shows.
    """
    found = verdict(need, workers, appetite, RUNS)
    first = verdict(need, workers, appetite, FIRST)

    assert sum(found.said.values()) == RUNS
    assert "nothing" not in found.said  # 8 checks are never passed over in silence
    if found.claims >= RUNS / 2:
        assert found.median == pytest.approx(appetite, rel=0.2)
    else:
        few_shown = (workers, appetite) in ((60, 0.3), (60, 3.0), (2_000, 3.0))
        assert found.said.get("appetite_hidden") == RUNS or few_shown
    if need == "protein":
        bounds = first.said.get("appetite_at_least", 0)
        assert first.claims + (bounds if (workers, appetite) == (2_000, 3.0) else 0) > FIRST / 2
    elif (workers, appetite) in SUGAR_IS_CLAIMED:
        assert first.claims == SUGAR_IS_CLAIMED[workers, appetite]
    elif (workers, appetite) == (60, 0.3):
        assert first.said["appetite_at_most"] > FIRST / 2


def test_what_cannot_be_learnt_is_said_in_words_and_the_plan_stays_with_the_usual():
    """Eight workers, drop after drop: something is always left, whatever they drink."""

    colony = Colony(8, 1.0, random.Random(1))
    for n in range(8):
        at_ms = 1_777_636_800_000 + 4 * n * DAY_MS
        drop = {"need": "sugar", "food_code": "sugar_water", "amount": 1, "unit": "drop", "form": "drop"}
        colony.log.append(Event(f"f{n}", "feeding", at_ms, drop))
        seen = {"feeding_id": f"f{n}", "need": "sugar", "outcome": "some"}
        colony.log.append(Event(f"k{n}", "check", at_ms + 2 * DAY_MS, seen))

    assert told(colony, "sugar", at_ms + 3 * DAY_MS) == ("appetite_hidden", 1.0)
    assert say("reason", "appetite_hidden") == words()["reason"]["appetite_hidden"]
