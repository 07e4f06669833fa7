"""Two households of which the first has something of all that an answer can tell: to look at answers, not at doors.

Beside what an address can name: a shelf with plans, a larder, measured hours and days, a phone that fell silent, and
changes where two phones met.
"""

from __future__ import annotations

import dataclasses
import zoneinfo
from pathlib import Path
from typing import Any

from tests.support.two_houses import TwoHouses, Visitor
from tests.support.two_houses.asking import Way

from broodshelf.records.database import writing
from broodshelf.records.store import Ledger
from broodshelf.sensing.days import write_days
from broodshelf.sensing.intake import note_away
from broodshelf.sensing.sensors import sensors_of
from broodshelf.settings import BrokerSettings

TASTED = ("fruit_fly", "cricket")
"""A plan draws by lot which of them is next."""


class LivedIn(TwoHouses):
    """``with LivedIn(folder) as made``: as ``TwoHouses``, with more in the first household."""

    def __init__(self, folder: Path) -> None:
        super().__init__(folder)
        broker = BrokerSettings("home", "127.0.0.1", 9, tls=True)
        self.settings = dataclasses.replace(self.settings, brokers=(broker,), signup="open")

    def fill(self) -> None:
        """Fill as usual, then live there for a while."""
        super().fill()
        self._keep_ants(self.visitors["keeper"], self.alpha.things)
        self._meet(self.visitors["keeper"], self.visitors["spare_keeper"], self.alpha.things)
        self._measure(self.visitors["keeper"], self.alpha.things)
        for role in ("keeper", "stand_in"):
            heard = self.post(self.visitors[role], "/api/push/test")["delivery_id"]
            self.post(self.visitors[role], "/api/push/ack", {"delivery_id": heard, "shown": True})
        for _ in range(2):  # taken by the push service, and never heard of again
            self.now_ms += 1_000
            self.post(self.visitors["stand_in"], "/api/push/test")

    def _keep_ants(self, keeper: Visitor, things: dict[str, Any]) -> None:
        """Colonies with plans, tastings that run and wait, and lots that spoil, whichever food a plan draws."""
        colony, vessel, place = things["colony"], things["vessel"], things["place"]
        soon = {"origin": "bought_or_bred", "amount": 500, "unit": "piece", "use_by": self.happened(3)[:10]}
        flies, crickets = (self.op(keeper, "lot", {"food_code": food, **soon}) for food in TASTED)
        grown = {"species_code": "lasius_niger", "stage": "growing", "queens": 1}
        founding = {
            "name": "Alpha founding", "species_code": "lasius_niger", "stage": "founding", "queens": 1,
            "founded_on": self.happened(-20)[:10], "vessel_id": vessel, "place_id": place,
        }  # fmt: skip
        sprays = self.op(
            keeper, "colony", {**grown, "name": "Alpha that sprays", "species_code": "formica_fusca"}
        )
        tastings = (
            {"name": "Alpha tasting", "colony_ids": [colony], "started_on": self.happened(-5)[:10]},
            {"name": "Alpha of June", "colony_ids": [sprays["id"]], "started_on": self.happened(31)[:10]},
        )
        past = {"colony_id": colony, "happened_at": self.happened(-30), "photo_id": things["photo"]}
        lately = {"colony_id": colony, "happened_at": self.happened(-2)}
        given = {
            "need": "protein",
            "lot_id": flies["id"],
            "food_code": TASTED[0],
            "amount": 3,
            "unit": "piece",
        }
        self.now_ms += 60_000  # a feeding takes from a lot what happens after that was written down
        now = {"colony_id": colony, "happened_at": self.happened()}
        self._store(
            keeper,
            self.op(keeper, "vessel", {"vessel_code": "tube_16x150", "has_outworld": True}, vessel),
            self.op(keeper, "colony", grown, colony),
            self.op(keeper, "colony", founding),
            sprays,
            flies,
            crickets,
            *(self.op(keeper, "tasting", {**each, "food_codes": [*TASTED]}) for each in tastings),
            self.op(keeper, "count", {**past, "workers": 30, "pupae": "some", "larvae": "few"}),
            self.op(keeper, "count", {**lately, "workers": 45, "eggs": "many"}),
            self.op(keeper, "water", {**lately, "action": "refill", "reading": "full"}),
            self.op(keeper, "feeding", {**now, **given}),
        )

    def _meet(self, one: Visitor, other: Visitor, things: dict[str, Any]) -> None:
        """Let two phones change the same, so that its history tells of what lost."""
        for who, name in ((one, "Alpha amber"), (other, "Alpha umber")):
            self.now_ms += 1_000
            self._store(who, self.op(who, "colony", {"name": name}, things["colony"]))

    def _measure(self, keeper: Visitor, things: dict[str, Any]) -> None:
        """Sensors that were heard, went away, say nonsense and speak to a broker; hours and days of their place."""
        topic = f"broodshelf/{self.alpha.id}/shelf"
        behind = {"broker": "home", "topic": topic, "temperature_path": "t", "humidity_path": "h"}
        place = {"place_id": things["place"]}
        self.post(keeper, "/api/sensors", {**place, "name": "Alpha behind a broker", **behind})
        away = self.post(keeper, "/api/sensors", {**place, "name": "Alpha away"})
        wrong = self.post(keeper, "/api/sensors", {**place, "name": "Alpha wrong"})
        hours = [
            {"temperature": 20 + hour % 24 / 4, "at_s": self.now_ms / 1000 - hour * 3600, **humid}
            for hour in range(60)
            for humid in ({"humidity": 55.0} if hour % 2 else {},)
        ]
        for token, sent in (
            (things["sensor_token"], {"readings": hours}),
            (away["token"], {"humidity": 50.0, "at_s": self.now_ms / 1000 - 80 * 3600}),
            (wrong["token"], {"temperature": 85.0}),
        ):
            nobody = Visitor("a sensor", self.alpha)
            headers = {"Authorization": f"Bearer {token}"}
            answer = self.call(nobody, "POST", "/api/readings", sent, Way(headers=headers))
            assert answer.status == 200, answer.text
        with writing() as connection:
            found = next(one for one in sensors_of(connection, self.alpha.id) if one.id == away["id"])
            note_away(connection, found, self.now_ms)
            ledger = Ledger(connection, self.alpha.id)
            write_days(ledger, zoneinfo.ZoneInfo("UTC"), self.now_ms)
            ledger.flush()

    def _store(self, who: Visitor, *ops: dict[str, Any]) -> None:
        answers = self.sync(who, *ops)
        assert {each["verdict"] for each in answers} == {"applied"}, answers
