"""What a restore may take for good (docs/sync.md, "What a restore can lose")."""

from __future__ import annotations

from tests.support.world.state import Acknowledged, State

JOURNAL_MS = 30 * 86_400_000
CLOCKS_MS = 3 * 86_400_000
"""How much less a phone whose clock was set by a day and back may keep."""


class Excuses(State):
    """Says of an operation whether a restore may have taken its traces, or all that it made."""

    def excused(self, told: Acknowledged) -> bool:
        """A revoked phone cannot give back what a restore took."""
        return told.phone in self.revoked and any(told.op["op_id"] in back.taken for back in self.restores)

    def too_old_to_send_again(self, told: Acknowledged) -> bool:
        """A restore of an older backup takes the traces of what had left its phone's journal by the last contact."""
        op_id = told.op["op_id"]
        return any(
            op_id in back.taken
            and back.taken[op_id] <= back.contact_ms.get(told.phone, 0) - JOURNAL_MS + CLOCKS_MS
            for back in self.restores
        )

    def held_by_nobody(self, told: Acknowledged) -> bool:
        """Stand-ins offer nothing: their older logs come back only from a keeper's phone that held them."""
        holders = [
            {who for who, ids in back.copies.items() if told.op["id"] in ids}
            for back in self.restores
            if told.op["op_id"] in back.taken
        ]
        alone = any(each <= self.revoked for each in holders)
        return told.phone == self.stand_in and alone and self.too_old_to_send_again(told)
