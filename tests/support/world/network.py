"""What phones and networks do: syncs that are cut, doubled, late, overtaken or killed."""

from __future__ import annotations

import json

from tests.support.world.people import People
from tests.support.world.phones import Tab
from tests.support.world.state import Acknowledged

NO_ANSWER = (0, b"")


class Wire(People):
    """Steps of a world between its phones and the server."""

    def do_sync(self, who: int) -> None:
        self.sync(who)

    def do_lose(self, who: int) -> None:
        self.lose = True
        self.sync(who)
        self.lose = False

    def do_double(self, who: int) -> None:
        self.double = True
        self.sync(who)
        self.double = False

    def do_late(self, which: int) -> None:
        """A request that was sent long ago arrives (again); nobody listens for its answer."""
        if self.sent:
            device, body = self.sent[which % len(self.sent)]
            self.house.send(self.phones[device].device_id, body)

    def do_begin(self, who: int, tab: int) -> None:
        running = self.tabs.pop((who, tab), None)
        if running:
            running.kill()
        self.tabs[who, tab] = self.new_tab(who)

    def do_advance(self, who: int, tab: int, stops: int) -> None:
        for _ in range(stops):
            if not self.advance(who, tab):
                return

    def do_crash(self, who: int, stops: int) -> None:
        """The app is killed: in what it is doing, or after some stops of a sync that it has just begun."""
        running = [key for key in self.tabs if key[0] == who]
        if not running:
            self.do_begin(who, 0)
            self.do_advance(who, 0, stops)
        for key in [key for key in self.tabs if key[0] == who]:
            self.tabs.pop(key).kill()

    def do_page(self, who: int, rows: int) -> None:
        self.phones[who].page = rows

    def do_skew(self, who: int, hours: int) -> None:
        self.phones[who].clock_ahead_ms = hours * 3_600_000

    def do_upgrade(self, who: int) -> None:
        self.phones[who].schema = 2

    def new_tab(self, who: int) -> Tab:
        return Tab(self.phones[who], lambda body: self.network(who, body))

    def advance(self, who: int, tab: int) -> bool:
        """Let a tab run to its next stop; say whether it can go on."""
        running = self.tabs.get((who, tab))
        if running is None or not running.advance():
            self.tabs.pop((who, tab), None)
            return False
        return True

    def sync(self, who: int) -> Tab:
        """Sync in a tab of its own, to the end."""
        tab = self.new_tab(who)
        tab.run()
        return tab

    def network(self, who: int, body: bytes) -> tuple[int, bytes]:
        """Carry a request to the server; remember what the phone is told."""
        device = self.phones[who].device_id
        self.sent = [*self.sent[-7:], (who, body)]
        asked = {op["op_id"]: op for op in json.loads(body)["ops"]}
        self.asked |= asked
        status, text = self.house.send(device, body)
        if status == 200 and self.double:
            status, text = self.house.send(device, body)
        if status == 401:
            return status, text
        assert status == 200, text
        if self.lose:
            self.lose = False
            return NO_ANSWER
        self.contact_ms[who] = self.house.now_ms
        answer = json.loads(text)
        for verdict in answer["answers"]:
            op = asked[verdict["op_id"]]
            if verdict["verdict"] == "applied":
                told = Acknowledged(who, op, self.house.now_ms, answer["epoch"], verdict["rev"])
                self.acknowledged.setdefault(op["op_id"], told)
                self.told[op["op_id"], verdict["rev"]] = told
                self.hear(who, op["op_id"])
            elif verdict["verdict"] == "rejected" and op["op_id"] not in self.replaced:
                # a tab that was frozen may hear it of one that was mended meanwhile
                self.rejected[op["op_id"]] = (who, op)
        return status, text

    def hear(self, who: int, op_id: str) -> None:
        """An operation is applied: from now on its phone can give it back for 30 days.

        What has left the outbox before is in the journal as of then; a frozen tab that sends it again changes nothing.
        """
        if op_id not in self.heard_ms or op_id in self.phones[who].outbox:
            self.heard_ms[op_id] = self.house.now_ms
