"""The field merge, case by case. Rules: docs/sync.md, "Merge"."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from broodshelf.records.merge import Asked, corrected_ms, merge

VECTORS = json.loads((Path(__file__).parents[2] / "fixtures/conformance/merge.json").read_text())


def asked(name: str, **how: int | None) -> Asked:
    """A phone's wish for another name."""
    return Asked(fields={"name": name}, device_id="d1", **how)


@pytest.mark.parametrize("case", VECTORS["cases"], ids=lambda case: case["name"])
def test_vector(case):
    merged = merge(
        case["present"],
        {name: tuple(stamp) for name, stamp in case["stamps"].items()},
        Asked(
            fields=case["asked"],
            base_rev=case["base_rev"],
            made_ms=case["made_ms"],
            device_id=case["device"],
        ),
    )

    assert case["wins"] == merged.wins
    assert case["meets"] == {m.field: m.winner for m in merged.meetings}


def test_a_time_in_the_future_is_clamped_to_the_servers():
    assert corrected_ms(made_at_ms=5_000, skew_ms=0, server_now_ms=2_000) == 2_000


def test_skew_is_server_minus_device_and_is_added():
    assert corrected_ms(made_at_ms=5_000, skew_ms=-4_000, server_now_ms=2_000) == 1_000


def test_what_a_phone_sends_again_does_not_beat_what_it_set_later_itself():
    stamps = {"name": (3, 900, "d1")}
    merged = merge({"name": "B"}, stamps, asked("A", base_rev=None, made_ms=100))

    assert (merged.wins, merged.past, merged.meetings) == ({}, {"name": "A"}, [])


def test_of_a_phone_whose_clock_is_ahead_the_later_still_wins_though_both_count_as_now():
    stamps = {"name": (3, 1_001, "d1")}
    merged = merge({"name": "A"}, stamps, asked("B", base_rev=None, made_ms=1_000, said_ms=9_000))

    assert merged.wins == {"name": "B"}
    assert merged.made_ms == 1_002


def test_what_takes_the_place_of_a_value_is_stamped_after_it_whatever_a_clock_says():
    stamps = {"name": (3, 900, "d2")}
    merged = merge({"name": "A"}, stamps, asked("B", base_rev=3, made_ms=100))

    assert merged.made_ms == 901
