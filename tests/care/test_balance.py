"""The balance of protein and sugar over weeks, and when it is warned of."""

from __future__ import annotations

from tests.support.said import say

from broodshelf.care.feeding.balance import balance_warning
from broodshelf.model.facts import Event
from broodshelf.model.gauges import DAY_MS


def diet(
    protein_mg: float, sugar_mg_: float, every_days: float = 3, outcome: str | None = None, days: int = 30
):
    """Return a log of feedings with their content, and what tells the content."""
    log: list[Event] = []
    for n in range(int(days / every_days)):
        at_ms = round(n * every_days * DAY_MS)
        log.append(Event(f"f{n}", "feeding", at_ms, {"need": "protein", "content": (protein_mg, sugar_mg_)}))
        if outcome:
            checked = {"feeding_id": f"f{n}", "outcome": outcome}
            removed = {"feeding_id": f"f{n}", "leftovers_removed": True}  # says nothing of what became of it
            log += [Event(f"c{n}", "check", at_ms + 1, checked), Event(f"r{n}", "check", at_ms + 2, removed)]
    return log, 30 * DAY_MS, lambda event: event.values["content"]


def test_three_weeks_of_more_protein_than_sugar_warn():
    """Dussutour & Simpson 2012: high protein shortened workers' lives."""
    warning = balance_warning(*diet(2.0, 1.0))

    assert warning == {
        "code": "protein_outweighs_sugar",
        "args": {"weeks": 3, "protein_mg": 14, "sugar_mg": 7},
    }
    assert "Dussutour" in say("reason", warning["code"], warning["args"])


def test_more_sugar_than_protein_does_not_warn():
    assert balance_warning(*diet(1.0, 2.0)) is None


def test_a_short_log_or_one_with_a_hole_never_warns():
    log, now_ms, content = diet(2.0, 1.0)

    assert balance_warning([e for e in log if e.happened_ms > now_ms - 20 * DAY_MS], now_ms, content) is None
    holed = [e for e in log if not 10 * DAY_MS < e.happened_ms < 20 * DAY_MS]
    assert balance_warning(holed, now_ms, content) is None
    assert balance_warning(log, now_ms + 8 * DAY_MS, content) is None


def test_what_is_not_known_to_the_gram_never_warns():
    log, now_ms, _ = diet(2.0, 1.0)

    assert balance_warning(log, now_ms, lambda event: None) is None


def test_what_was_ignored_was_not_eaten():
    assert balance_warning(*diet(2.0, 1.0, outcome="ignored")) is None
    assert balance_warning(*diet(2.0, 1.0, outcome="some"))["args"]["protein_mg"] == 7
