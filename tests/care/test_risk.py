"""After risk: what was given despite a refusal comes out at once, and its eaters are watched for eight days.

The days are published times to death: reference in ``risk.WATCH_DAYS``. Holds: common practice, no source.
"""

from __future__ import annotations

import pytest
from tests.support.said import words

from broodshelf.care.catalogue import foods, origins
from broodshelf.care.feeding.food_origin import origin_verdict
from broodshelf.care.plan.make import make_plan
from broodshelf.care.plan.risk import WATCH_DAYS, risky_lots
from broodshelf.model.facts import ColonyState, Event, Lot, Vessel
from broodshelf.model.gauges import DAY_MS

NOW_MS = 1_777_636_800_000  # 2026-05-01T12:00:00Z
LOT = "l"


def at(days_ago: float, kind: str, event_id: str, **values) -> Event:
    return Event(event_id, kind, NOW_MS - round(days_ago * DAY_MS), values)


def fed(days_ago: float, **values) -> Event:
    return at(days_ago, "feeding", "f", **{"need": "protein", "food_code": "roach_nymph", **values})


def spider_lot(got_on: str) -> Lot:
    return Lot(LOT, "web_spider", "wild_web_spider", got_on)


def tasks(*events: Event, now_ms: int = NOW_MS, **values) -> dict[str, object]:
    count = at(60, "count", "n", workers=60, larvae="some")
    state = ColonyState(
        "c", "lasius_niger", stage="growing", vessel=Vessel("nest_small"),
        events=tuple(sorted((count, *events), key=lambda e: e.happened_ms)), **values,
    )  # fmt: skip
    return {t.key.what: t for t in make_plan(state, now_ms).tasks if t.key.what in WATCHED}


WATCHED = ("leftovers", "risk_look")
REFUSED = [
    pytest.param(
        fed(0.1, origin="home_cockroach", despite=["home_cockroach"]), (), id="a cockroach from a home"
    ),
    pytest.param(fed(0.1, origin="home_cockroach"), (), id="told by its origin alone"),
    pytest.param(fed(0.1, origin="unknown"), (), id="nobody knows what it is"),
    pytest.param(
        fed(0.1, food_code="web_spider", lot_id=LOT),
        (spider_lot("2026-04-30"),),
        id="a spider before its hold",
    ),
    pytest.param(fed(0.1, food_code="web_spider", origin="wild_web_spider"), (), id="a spider never held"),
]
FINE = [
    pytest.param(fed(0.1, origin="bought_or_bred"), (), id="bought"),
    pytest.param(
        fed(0.1, food_code="web_spider", lot_id=LOT), (spider_lot("2026-04-20"),), id="after its hold"
    ),
    pytest.param(
        fed(0.1, food_code="web_spider", lot_id="gone", origin="wild_web_spider"),
        (),
        id="of a lot that is used up",
    ),
    pytest.param(
        fed(0.1, food_code="honey", need="sugar", despite=["hot_syrup"]), (), id="hot syrup is no poison"
    ),
]


@pytest.mark.parametrize(("feeding", "lots"), REFUSED)
def test_what_was_given_despite_a_refusal_comes_out_at_once_and_is_looked_at_the_next_day(feeding, lots):
    found = tasks(feeding, lots=lots)
    out, look = found["leftovers"], found["risk_look"]

    assert (out.urgent, out.due_at_ms, out.reasons[0]["code"]) == (True, feeding.happened_ms, "risk_out")
    assert look.due_at_ms == feeding.happened_ms + DAY_MS
    assert look.suggested == {"kind": "check", "set": {"need": "glance"}}
    assert {r["code"] for r in (*out.reasons, *look.reasons)} <= words()["reason"].keys()


@pytest.mark.parametrize(("feeding", "lots"), FINE)
def test_what_was_not_refused_is_not_watched(feeding, lots):
    found = tasks(feeding, lots=lots)

    assert "risk_look" not in found
    assert not found["leftovers"].urgent


def test_it_is_looked_at_daily_for_eight_days_and_then_no_more():
    # Klotz et al. 1997: half of the workers dead at 8 days at a weak dose; Rust et al. 2004: 1 to 4 days at strong ones
    given = fed(0, origin="home_cockroach")
    log, asked = [given], []
    for day in range(1, 15):
        now_ms = given.happened_ms + day * DAY_MS
        look = tasks(*log, now_ms=now_ms).get("risk_look")
        if look is not None and look.due_at_ms <= now_ms:
            asked.append(day)
            log.append(Event(f"k{day}", "check", now_ms, {"need": "glance"}))

    assert asked == list(range(1, WATCH_DAYS + 1)) == list(range(1, 9))


def test_a_watch_that_nobody_kept_ends_too():
    given = fed(0, origin="home_cockroach")

    assert "risk_look" in tasks(given, now_ms=given.happened_ms + 8 * DAY_MS)
    assert tasks(given, now_ms=given.happened_ms + 10 * DAY_MS).keys() <= {"leftovers"}
    assert not tasks(given, now_ms=given.happened_ms + 10 * DAY_MS)["leftovers"].urgent


def test_taken_out_it_is_no_longer_asked_for_but_still_watched():
    out = at(0.05, "check", "k", feeding_id="f", need="leftovers", leftovers_removed=True)
    found = tasks(fed(0.1, origin="home_cockroach"), out)

    assert found.keys() == {"risk_look"}


def test_a_colony_that_got_the_same_lot_is_watched_too():
    mine = fed(2, food_code="web_spider", lot_id=LOT, origin="wild_web_spider")
    others = at(
        3, "feeding", "o", need="protein", food_code="web_spider", lot_id=LOT, despite=["wild_web_spider"]
    )
    risky = risky_lots([mine, others], {}, 0)

    assert risky == {LOT}
    assert tasks(mine, risky_lots=risky).keys() == set(WATCHED)
    assert "risk_look" not in tasks(mine)


@pytest.mark.parametrize(
    ("food", "origin"), [("web_spider", "wild_web_spider"), ("hunting_spider", "wild_hunter")]
)
def test_spiders_are_foods_of_the_larder_with_one_origin_and_its_hold(food, origin):
    assert foods()[food].origin == origin
    assert origins()[origin]["verdict"] == "hold"
    assert not origin_verdict(origin, got_on="2026-05-01", today="2026-05-02").offerable
    assert "reezing kills mites, it does not clear poison" in words()["origin_why"][origin]


def test_no_plan_suggests_a_spider_that_is_not_in_the_house():
    state = ColonyState(
        "c", "lasius_niger", stage="growing", refused_foods=frozenset(foods()) - {"web_spider"}
    )

    assert all((t.portion or {}).get("food_code") != "web_spider" for t in make_plan(state, NOW_MS).tasks)
