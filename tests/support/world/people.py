"""What people do on their phones."""

from __future__ import annotations

from tests.support.world.state import State


class People(State):
    """Steps of a world: ``who`` is a phone, ``which`` one of the records that it shows."""

    def do_log(self, who: int, which: int) -> None:
        self._make(who, "log", which)

    def do_feed(self, who: int, which: int) -> None:
        self._make(who, "feed", which)

    def do_burst(self, who: int, which: int) -> None:
        """A long evening at the shelf: many logs and corrections before the phone gets a connection."""
        for more in range(8):
            self.do_log(who, which + more)
            self.do_feed(who, which + more)
            self.do_amend(who, which * 7 + more)
        self.do_rename(who, which)

    def do_found(self, who: int) -> None:
        self.write(who, "colony", {"name": f"colony {len(self.steps)}"})

    def do_rename(self, who: int, which: int) -> None:
        self._change(who, "rename", which)

    def do_amend(self, who: int, which: int) -> None:
        self._change(who, "amend", which)

    def do_void(self, who: int, which: int) -> None:
        self._change(who, "void", which)

    def do_unvoid(self, who: int, which: int) -> None:
        gone = sorted(
            (ack.op["id"], ack.op["kind"])
            for ack in self.acknowledged.values()
            if ack.op["set"].get("gone") is True
        )
        if gone:
            record, kind = gone[which % len(gone)]
            self.write(who, kind, {"gone": False}, record)

    def do_bad(self, who: int) -> None:
        self.write(who, "colony", {"name": "bad", "queens": -1})

    def do_mend(self, who: int) -> int:
        """A person mends a bad value, or sends again what lacked a parent that has come; under a new ``op_id``.

        What lacked the record that is mended goes again with it. Returns how many go again.
        """
        replaced = self.phones[who].mend()
        for op_id in replaced:
            _, op = self.rejected.pop(op_id)
            self.replaced.add(op_id)
            self.mended.add(op["id"])
            self.acknowledged.pop(op_id, None)
        return len(replaced)

    def _make(self, who: int, what: str, which: int) -> None:
        record_id = self.new_id()
        self.makers[record_id] = who
        self.phones[who].do(what, record_id, which, len(self.steps))

    def _change(self, who: int, what: str, which: int) -> None:
        self.phones[who].do(what, "", which, len(self.steps))
