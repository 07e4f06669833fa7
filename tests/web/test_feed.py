"""A calendar feed by its secret address: who makes it, what it shows, when it ends."""

from __future__ import annotations

from ical.calendar_stream import IcsCalendarStream
from tests.support.households import HAPPENED

from broodshelf.model.gauges import DAY_MS

GROWING = {"stage": "growing", "species_code": "lasius_niger"}


def path_of(answer):
    assert answer.status_code == 200, answer.text
    return answer.json["url"].removeprefix("http://127.0.0.1:8080")


def events(answer):
    assert answer.status_code == 200, answer.text
    return IcsCalendarStream.calendar_from_ics(answer.text).events


def shelf_of_two(keeper):
    amber = keeper.op("colony", {"name": "Amber", **GROWING})
    ink = keeper.op("colony", {"name": "Ink", **GROWING})
    keeper.sync(amber, ink)
    return amber["id"], ink["id"]


def test_a_feed_shows_the_rounds_and_stays_the_same_until_something_is_logged(keeper, browser, clock):
    amber, _ink = shelf_of_two(keeper)
    path = path_of(keeper.post("/api/feeds", {"pass_id": None}))
    calendar_app = browser()

    first = calendar_app.get(path)
    clock.now_ms += 3_600_000
    again = calendar_app.get(path)
    assert first.content_type == "text/calendar; charset=utf-8"
    assert first.headers["Cache-Control"] == "private, no-cache"
    assert "Amber" in first.text and "Ink" in first.text
    assert again.data == first.data
    assert calendar_app.get(path, **{"If-None-Match": first.headers["ETag"]}).status_code == 304
    assert calendar_app.client.head(path).headers["ETag"] == first.headers["ETag"]

    keeper.sync(keeper.op("fault", {"colony_id": amber, "happened_at": HAPPENED, "fault": "leak"}))
    changed = calendar_app.get(path)
    assert changed.headers["ETag"] != first.headers["ETag"]
    assert any(event.summary.startswith("Now: ") for event in events(changed))


def test_a_pass_feed_shows_its_colonies_and_dates_only_and_ends_with_the_pass(keeper, browser):
    amber, _ink = shelf_of_two(keeper)
    made = keeper.op(
        "pass", {"name": "G", "colony_ids": [amber], "starts_on": "2026-05-01", "ends_on": "2026-05-20"}
    )
    keeper.sync(made)
    path = path_of(keeper.post("/api/feeds", {"pass_id": made["id"]}))
    shown = browser().get(path)

    assert "Amber" in shown.text and "Ink" not in shown.text
    assert all("2026-05-01" <= event.dtstart.date().isoformat() <= "2026-05-20" for event in events(shown))

    keeper.post(f"/api/passes/{made['id']}/revoke")
    assert browser().get(path).status_code == 404
    assert keeper.post("/api/feeds", {"pass_id": made["id"]}).status_code == 403


def test_an_address_ends_when_made_again_revoked_or_a_year_old(keeper, browser, clock):
    shelf_of_two(keeper)
    old = path_of(keeper.post("/api/feeds", {"pass_id": None}))
    new = path_of(keeper.post("/api/feeds", {"pass_id": None}))
    assert (browser().get(old).status_code, browser().get(new).status_code) == (404, 200)

    keeper.post("/api/feeds/revoke", {"pass_id": None})
    assert browser().get(new).status_code == 404

    last = path_of(keeper.post("/api/feeds", {"pass_id": None}))
    clock.now_ms += 366 * DAY_MS
    assert browser().get(last).status_code == 404


def test_guessing_addresses_is_slowed_down(browser):
    answers = [browser().get(f"/feed/guess-{n}.ics").status_code for n in range(25)]
    assert answers == [404] * 20 + [429] * 5


def test_a_feed_of_another_household_cannot_be_made(keeper, browser):
    amber, _ = shelf_of_two(keeper)
    made = keeper.op(
        "pass", {"name": "G", "colony_ids": [amber], "starts_on": "2026-05-01", "ends_on": "2026-05-20"}
    )
    keeper.sync(made)
    stranger = browser().claim("Ada")
    assert stranger.post("/api/feeds", {"pass_id": made["id"]}).status_code == 404
    assert stranger.post("/api/feeds", {"pass_id": "x"}).status_code == 400
    assert stranger.post("/api/feeds", {"pass_id": 3}).status_code == 400


def test_a_round_that_moves_stays_the_same_event_and_its_sequence_rises(keeper, browser, clock):
    keeper.sync(keeper.op("colony", {"name": "Amber", **GROWING}))
    path = path_of(keeper.post("/api/feeds", {"pass_id": None}))
    house_id, calendar_app = keeper.me["household_id"], browser()
    seen = []
    for change in (
        {"care_hours": ["08:00", "18:30"]},
        {"care_hours": ["08:00", "19:15"]},
        {"zone": "Europe/Lisbon"},
        {"zone": "Europe/Lisbon"},
    ):
        clock.now_ms += 60_000
        keeper.sync(keeper.op("household", change, house_id))
        answer = calendar_app.get(path)
        assert calendar_app.get(path).data == answer.data
        evening = [
            e for e in events(answer) if e.dtstart.date().isoformat() == "2026-05-01" and e.dtstart.hour > 14
        ]
        assert len(evening) == 1
        seen.append(evening[0])

    assert len({event.uid for event in seen}) == 1
    # 18:30 and 19:15 in Vienna (UTC+2), 19:15 in Lisbon (UTC+1 in May)
    assert [event.dtstart.strftime("%H:%M") for event in seen] == ["16:30", "17:15", "18:15", "18:15"]
    assert [event.sequence for event in seen] == [0, 1, 2, 2]
    assert seen[1].last_modified > seen[0].last_modified
    assert seen[3].last_modified == seen[2].last_modified
