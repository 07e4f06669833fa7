"""Two households on one server, one of which takes on the other's ids: neither hears, sees or moves the other."""

from __future__ import annotations

import datetime as dt
import hashlib

import pytest
from sqlalchemy import and_, select, update
from tests.nudges.support import BrowserKeys
from tests.people.support import apply, let_in, listen, make_pass, open_pass, verdict
from tests.people.test_owners import picture, send
from tests.support.statements import Watch, nameless

from broodshelf.app import create_nudger
from broodshelf.model.gauges import DAY_MS, HOUR_MS
from broodshelf.nudges.tables import nudges
from broodshelf.people.tables import devices
from broodshelf.records.apart import EVERY
from broodshelf.records.database import db
from broodshelf.records.tables import records


@pytest.fixture
def nudger(app):
    made = create_nudger(app)
    yield made
    made.close()


def instant(at_ms: int) -> str:
    return dt.datetime.fromtimestamp(at_ms / 1000, dt.UTC).isoformat(timespec="milliseconds")


def colony(keeper, name: str) -> str:
    """A colony that gets hungry for protein in two days and a half, and for nothing else for months."""
    long = dict.fromkeys(("sugar", "glance"), 90)
    values = {"name": name, "stage": "growing", "species_code": "lasius_niger"}
    made = apply(keeper, "colony", {**values, "interval_days": {**long, "protein": 2.5}})
    now = instant(keeper.clock.now_ms)
    apply(keeper, "water", {"colony_id": made, "happened_at": now, "action": "refill"})
    for need in ("sugar", "protein"):
        apply(keeper, "feeding", {"colony_id": made, "happened_at": now, "need": need})
    return made


def tick(nudger, clock, notebook) -> list[tuple[str, str]]:
    """One tick; where its messages went and what they said."""
    nudger.tick(clock.now_ms)
    nudger.finish()
    told = [
        (endpoint.rpartition("/")[2], payload["notification"]["title"])
        for endpoint, payload, _ in notebook.sent
    ]
    notebook.take()
    return told


def takes_on(stranger, browser, person_id: str):
    """Another household makes a keeper of its own with this id, and lets a phone in as them."""
    apply(stranger, "person", {"name": "Mira too", "role": "keeper"}, person_id, adopt=True)
    return let_in(stranger, browser(), person_id=person_id)


def test_whoever_takes_on_another_households_person_hears_nothing_of_it(
    browser, keeper, clock, nudger, notebook
):
    colony(keeper, "Amber")
    listen(keeper, "http://127.0.0.1:9/mira")
    stranger = browser().claim("Ada")
    listen(takes_on(stranger, browser, keeper.me["person_id"]), "http://127.0.0.1:9/thief")
    clock.now_ms += 3 * DAY_MS

    told = [part for _ in range(24) for part in after_an_hour(nudger, clock, notebook)]
    assert {where for where, _ in told} == {"mira"}
    assert ("mira", "Protein for Amber") in told


def after_an_hour(nudger, clock, notebook):
    clock.now_ms += HOUR_MS
    return tick(nudger, clock, notebook)


def test_two_households_with_the_same_person_are_each_told_of_their_own(
    browser, keeper, clock, nudger, notebook
):
    colony(keeper, "Amber")
    listen(keeper, "http://127.0.0.1:9/mira")
    stranger = browser().claim("Ada")
    colony(stranger, "Birch")
    twin = takes_on(stranger, browser, keeper.me["person_id"])
    listen(twin, "http://127.0.0.1:9/twin")
    apply(stranger, "person", {"gone": True}, stranger.me["person_id"])
    clock.now_ms += 3 * DAY_MS

    told = {part for _ in range(24) for part in after_an_hour(nudger, clock, notebook)}
    assert told == {("mira", "Protein for Amber"), ("twin", "Protein for Birch")}


def test_a_phone_is_numbered_among_those_of_its_own_household(browser, keeper):
    stranger = browser().claim("Ada")
    names = [
        [device["name"] for device in phone.get("/api/devices").json["devices"]]
        for phone in (keeper, stranger)
    ]

    assert names == [["a phone"], ["a phone"]]


@pytest.mark.long
def test_every_statement_of_a_whole_story_names_its_household(app, browser, keeper, clock, nudger, notebook):
    with app.app_context():
        engine = db.engine
    with Watch(engine) as watch:
        amber = colony(keeper, "Amber")
        listen(keeper, "http://127.0.0.1:9/mira", BrowserKeys())
        anton = let_in(keeper, browser(), person_name="Anton")
        listen(anton, "http://127.0.0.1:9/anton")
        pass_id, link = make_pass(keeper, [amber], ends="2026-05-06")
        guest = open_pass(browser(), link)
        listen(guest, "http://127.0.0.1:9/guest")
        now = instant(clock.now_ms)
        body = picture(7)
        shot = {"colony_id": amber, "happened_at": now, "sha256": hashlib.sha256(body).hexdigest()}
        photo = apply(guest, "photo", shot)
        assert send(guest, photo, body).status_code == 200
        put_off = {
            "colony_id": amber,
            "happened_at": now,
            "need": "water",
            "until": instant(clock.now_ms + HOUR_MS),
        }
        apply(guest, "later", put_off)
        apply(keeper, "fault", {"colony_id": amber, "happened_at": now, "fault": "leak"})
        verdict(guest, "colony", {"name": "Mine"}, amber)
        feed = keeper.post("/api/feeds", {"pass_id": None}).json["url"].partition("8080")[2]
        for _ in range(30):
            clock.now_ms += 4 * HOUR_MS
            tick(nudger, clock, notebook)
        apply(anton, "feeding", {"colony_id": amber, "happened_at": instant(clock.now_ms), "need": "protein"})
        for path in (
            feed, feed, "/api/me", "/api/devices", f"/api/passes/{pass_id}", f"/api/records/{amber}/history",
            "/api/records/gone", "/api/larder", "/api/push/health", "/api/mail", "/healthz", "/readyz", "/metrics",
        ):  # fmt: skip
            assert keeper.get(path).status_code in (200, 503), path
        assert keeper.post("/api/push/test").status_code == 200
        delivery = notebook.sent[-1][1]["broodshelf"]["delivery_id"]
        browser().post("/api/push/ack", {"delivery_id": delivery, "shown": True})
        keeper.post("/api/holiday", {"leave_on": "2026-05-20", "return_on": "2026-05-30"})
        keeper.post(f"/api/passes/{pass_id}/revoke")
        apply(keeper, "person", {"gone": True}, anton.me["person_id"])
        keeper.post(f"/api/devices/{guest.me['device_id']}/revoke")
        keeper.post("/api/logout")
        clock.now_ms += 100 * DAY_MS
        for _ in range(3):
            tick(nudger, clock, notebook)

    assert watch.complaints == []
    assert watch.seen > 500


def test_the_watch_sees_what_does_not_keep_households_apart():
    n, d, r = nudges.c, devices.c, records.c
    alone = select(r.id).where(r.id == "x")
    crossed = select(n.id).join(devices, d.person_id == n.person_id).where(d.household_id == "h")
    joined = select(n.id).join(devices, and_(d.household_id == n.household_id, d.person_id == n.person_id))
    inside = select(n.id).where(n.household_id == "h", n.person_id.in_(select(d.person_id)))

    assert nameless(alone, "h") == ["records"]
    assert nameless(alone, EVERY) == []
    assert nameless(crossed, EVERY) == ["nudges"]
    assert nameless(joined, EVERY) == []
    assert nameless(inside, "h") == ["devices"]
    assert nameless(update(devices).where(d.id == "x").values(name=""), EVERY) == ["devices"]
    with_own = update(devices).where(d.household_id == "h", d.id == "x").values(name="")
    assert nameless(with_own, EVERY) == []
