"""From logs over the wire to the plan that comes back."""

from __future__ import annotations

import datetime as dt

from broodshelf.model.gauges import DAY_MS


def at(now_ms: int) -> str:
    return dt.datetime.fromtimestamp(now_ms / 1000, dt.UTC).isoformat(timespec="milliseconds")


def plan_of(browser, colony_id: str) -> dict:
    rows = browser.sync().json["rows"]
    return next(r["set"] for r in rows if r["kind"] == "plan" and r["set"]["colony_id"] == colony_id)


def colony_in_a_place(keeper, **place) -> tuple[str, str]:
    made = keeper.op("place", {"name": "Cabinet", "place_type": "cabinet", **place})
    colony = keeper.op(
        "colony",
        {"name": "Amber", "species_code": "lasius_niger", "stage": "growing", "place_id": made["id"]},
    )
    keeper.sync(made, colony)
    return made["id"], colony["id"]


def test_a_hot_reading_of_a_place_is_urgent_for_every_colony_in_it(keeper, clock):
    place_id, colony_id = colony_in_a_place(keeper, day_temp_c=25)
    reading = {"place_id": place_id, "happened_at": at(clock()), "temperature_c": 34.5}
    keeper.sync(keeper.op("climate", reading))
    first = plan_of(keeper, colony_id)["tasks"][0]

    assert (first["urgent"], first["reasons"][0]["code"]) == (True, "too_hot")


def test_a_cold_reading_stops_the_protein_and_says_why(keeper, clock):
    place_id, colony_id = colony_in_a_place(keeper, day_temp_c=25)
    assert "protein" in {g["need"] for g in plan_of(keeper, colony_id)["gauges"]}
    keeper.sync(
        keeper.op("climate", {"place_id": place_id, "happened_at": at(clock()), "temperature_c": 9.0})
    )
    plan = plan_of(keeper, colony_id)

    assert "protein" not in {g["need"] for g in plan["gauges"]}
    assert "too_cold_for_protein" in {n["code"] for n in plan["notices"]}


def test_a_suspected_leak_asks_for_a_look_today_and_is_not_urgent(keeper, clock):
    _, colony_id = colony_in_a_place(keeper, day_temp_c=24, humidity_pct=50)
    vessel = keeper.op("vessel", {"vessel_code": "tube_16x150"})
    keeper.sync(vessel, keeper.op("colony", {"vessel_id": vessel["id"]}, colony_id))
    start_ms = clock() - 35 * DAY_MS
    # half a millimetre a day for four weeks, then three millimetres a day
    levels = [(0, 52), (7, 48.5), (14, 45), (21, 41.5), (28, 38), (31, 26), (35, 12)]
    for day, level_mm in levels:
        values = {"action": "read", "level_mm": level_mm, "happened_at": at(start_ms + day * DAY_MS)}
        keeper.sync(keeper.op("water", {"colony_id": colony_id, **values}))
    tasks = [t for t in plan_of(keeper, colony_id)["tasks"] if t["key"].startswith("leak:")]

    assert [t["urgent"] for t in tasks] == [False]
    assert tasks[0]["reasons"][0]["code"] == "leak_suspected"


def test_all_that_got_of_a_lot_that_was_given_before_its_hold_are_watched(keeper, clock):
    names = ("Amber", "Birch", "Cedar")
    colonies = {
        name: keeper.op("colony", {"name": name, "species_code": "lasius_niger", "stage": "growing"})
        for name in names
    }
    caught = at(clock() - 5 * DAY_MS)[:10]
    spiders = {"food_code": "web_spider", "origin": "wild_web_spider", "got_on": caught}
    lot, bought = (
        keeper.op("lot", spiders),
        keeper.op("lot", {"food_code": "cricket", "origin": "bought_or_bred"}),
    )
    keeper.sync(*colonies.values(), lot, bought)

    def feed(name, lot, days_ago=0, **more):
        values = {"colony_id": colonies[name]["id"], "need": "protein", "lot_id": lot["id"], **more}
        keeper.sync(keeper.op("feeding", {**values, "happened_at": at(clock() - days_ago * DAY_MS)}))

    feed("Amber", lot, food_code="web_spider")
    feed("Cedar", bought, food_code="cricket")
    feed("Birch", lot, 4, food_code="web_spider", despite=["wild_web_spider"])  # told later than Amber's
    plans = {r["set"]["colony_id"]: r["set"] for r in keeper.sync().json["rows"] if r["kind"] == "plan"}
    watched = {
        name: {t["key"].split(":")[0] for t in plans[colonies[name]["id"]]["tasks"]} & {"risk_look"}
        for name in names
    }

    assert watched == {"Amber": {"risk_look"}, "Birch": {"risk_look"}, "Cedar": set()}
