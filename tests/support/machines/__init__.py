"""Several machines with nothing in common but a database: their processes, phones that log, a push service."""

from __future__ import annotations

from tests.support.machines.keepers import Keeper, new_keeper, noon_zone
from tests.support.machines.processes import Process, ask, wait_for
from tests.support.machines.push_service import PushService

__all__ = ["Keeper", "Process", "PushService", "ask", "new_keeper", "noon_zone", "wait_for"]
