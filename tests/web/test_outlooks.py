"""Looking ahead over the whole shelf, and the calculators over HTTP."""

from __future__ import annotations

import pytest

from broodshelf.care.calculators import CALCULATORS


@pytest.fixture
def shelf(keeper):
    """One young colony in a tube and six crickets."""
    vessel = keeper.op("vessel", {"vessel_code": "tube_16x150"})
    colony = keeper.op(
        "colony",
        {"name": "Amber", "species_code": "lasius_niger", "stage": "growing", "vessel_id": vessel["id"]},
    )
    lot = keeper.op(
        "lot",
        {
            "food_code": "cricket",
            "origin": "bought_or_bred",
            "amount": 6,
            "unit": "piece",
            "use_by": "2026-06-30",
        },
    )
    keeper.sync(vessel, colony, lot)
    return colony["id"]


def test_the_larder_says_what_runs_out_and_what_to_buy_by_when(keeper, shelf):
    outlooks = {o["food_code"]: o for o in keeper.get("/api/larder").json["outlooks"]}

    # about 60 workers eat a cricket or two every 2 to 4 days; the sugar is not in the house
    assert "2026-05-04" < outlooks["cricket"]["runs_out"] < "2026-06-15"
    assert (
        outlooks["cricket"]["buy_by"]
        <= outlooks["cricket"]["runs_out_early"]
        <= outlooks["cricket"]["runs_out"]
    )
    assert [r["code"] for r in outlooks["sugar_water"]["reasons"]] == ["larder_out"]


def test_a_lot_shrinks_by_the_feedings_since_its_amount_was_written_down(keeper, shelf, clock):
    def fed(amount, unit, lot, at="2026-05-01T14:30:00+02:00"):
        values = {"colony_id": shelf, "need": "sugar", "amount": amount, "unit": unit, "happened_at": at}
        return keeper.op("feeding", values | ({"lot_id": lot["id"]} if lot else {}))

    def left(lot):
        found = {each["lot_id"]: each for each in keeper.get("/api/larder").json["left"]}
        return found.get(lot["id"])

    batch = keeper.op("lot", {"food_code": "sugar_water", "origin": "home_mixed", "amount": 10, "unit": "ml"})
    nameless = keeper.op("lot", {"food_code": "honey_water", "origin": "home_mixed"})
    keeper.sync(batch, nameless)
    clock.now_ms += 2 * 3_600_000  # the feedings below happened after the lot was written down
    voided = fed(4, "ml", batch)
    keeper.sync(
        fed(20, "drop", batch),
        fed(0.5, "ml", batch),
        voided,
        keeper.op("feeding", {"gone": True}, voided["id"]),
        fed(3, "piece", batch),  # a slip: nothing to take from mL
        fed(2, "ml", None),
        fed(9, "ml", batch, at="2026-04-30T13:00:00+02:00"),  # before there was a batch
    )

    assert left(batch) == {"lot_id": batch["id"], "amount": 8.5, "given": 1.5}  # a drop is 0.05 mL
    assert left(nameless) is None

    keeper.sync(keeper.op("lot", {"amount": 6}, batch["id"]))
    assert left(batch) == {"lot_id": batch["id"], "amount": 6, "given": 0}

    clock.now_ms += 3_600_000
    keeper.sync(fed(7, "ml", batch, at="2026-05-01T16:30:00+02:00"))
    assert left(batch)["amount"] == 0


def test_a_lot_does_not_shrink_by_what_may_be_a_repeat_until_it_is_confirmed(keeper, shelf, clock):
    lot = keeper.op(
        "lot", {"food_code": "mealworm", "origin": "bought_or_bred", "amount": 10, "unit": "piece"}
    )
    keeper.sync(lot)
    clock.now_ms += 2 * 3_600_000
    fed = {"colony_id": shelf, "need": "protein", "amount": 3, "unit": "piece", "lot_id": lot["id"]}
    fed |= {"happened_at": "2026-05-01T14:30:00+02:00", "task_key": f"protein:{shelf}:1"}
    one, other = keeper.op("feeding", fed), keeper.op("feeding", fed)
    rows = {row["id"]: row["set"] for row in keeper.sync(one, other).json["rows"]}
    repeat = next(i for i in (one["id"], other["id"]) if rows[i].get("possible_repeat"))
    left = [next(x["amount"] for x in keeper.get("/api/larder").json["left"] if x["lot_id"] == lot["id"])]
    keeper.sync(keeper.op("feeding", {"confirmed": True}, repeat))
    left.append(next(x["amount"] for x in keeper.get("/api/larder").json["left"] if x["lot_id"] == lot["id"]))

    assert left == [7, 4]


def test_a_weekend_needs_nobody_and_two_months_need_a_visit(keeper, shelf):
    def away(leave_on, return_on):
        answer = keeper.post("/api/holiday", {"leave_on": leave_on, "return_on": return_on})
        return answer.json["colonies"][0]

    short, long = away("2026-05-02", "2026-05-04"), away("2026-05-02", "2026-07-02")

    assert short["verdict"] == "nobody_after_top_up"  # nothing was ever fed: once before leaving
    assert {each["need"] for each in short["top_up"]} == {"sugar", "protein"}
    assert long["verdict"] == "visit"
    assert long["visit_every_days"] >= 5
    assert (
        keeper.post("/api/holiday", {"leave_on": "2026-05-02", "return_on": "2026-05-01"}).status_code == 400
    )
    assert keeper.post("/api/holiday", {"leave_on": "soon"}).json["fields"].keys() >= {
        "leave_on",
        "return_on",
    }


def test_every_calculator_is_listed_and_answers_with_its_defaults(keeper):
    listed = keeper.get("/api/reckon").json["calculators"]

    assert [each["code"] for each in listed] == list(CALCULATORS)
    for each in listed:
        assert keeper.post(f"/api/reckon/{each['code']}").json["lines"]
    assert (
        keeper.post("/api/reckon/sugar_water", {"percent": 20, "ml": 50}).json["lines"][0] == "Sugar: 10.8 g"
    )
    # CRC: 20 % w/w sucrose has 216.2 g/L at 20 °C


@pytest.mark.parametrize(
    ("code", "body", "status"),
    [
        ("horoscope", {}, 404), ("sugar_water", {"percent": 99}, 400), ("sugar_water", {"percent": "20"}, 400),
        ("sugar_water", {"percent": True}, 400), ("sugar_water", {"salt": 1}, 400), ("prey", {"majors": 1}, 400),
        ("brood", {"species": "unicorn"}, 400), ("brood", {"day_c": 44}, 400), ("dilute", {"food": []}, 400),
    ],
)  # fmt: skip
def test_wrong_inputs_are_named(keeper, code, body, status):
    answer = keeper.post(f"/api/reckon/{code}", body)

    assert answer.status_code == status
    assert answer.json["detail"]
