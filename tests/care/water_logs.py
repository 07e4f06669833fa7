"""Logs of one tube, as short as a test wants to write them: a day and what was read or done."""

from __future__ import annotations

from tests.support.tubes import ROOM, TUBE

from broodshelf.care.water.reservoir import reservoir
from broodshelf.model.facts import Event, Place, Vessel
from broodshelf.model.gauges import DAY_MS

START_MS = 1_777_636_800_000
REFILL = {"action": "refill"}


def mm(level: float) -> dict:
    return {"action": "read", "level_mm": level}


def eye(reading: str) -> dict:
    return {"action": "read", "reading": reading}


def log(*entries: tuple[float, dict], kind: str = "water") -> list[Event]:
    return [
        Event(f"e{number}", kind, START_MS + round(day * DAY_MS), values)
        for number, (day, values) in enumerate(entries)
    ]


def water(*entries: tuple[float, dict], vessel: Vessel = TUBE, place: Place = ROOM):
    return reservoir(log(*entries), vessel, place, START_MS)


def codes(known) -> list[str]:
    return [r["code"] for r in known.reasons]


STEADY = [(0, REFILL), (7, mm(48)), (14, mm(44)), (21, mm(40)), (28, mm(36))]  # 4 mm a week from 52
LEAKING = [*STEADY, (35, mm(20))]
