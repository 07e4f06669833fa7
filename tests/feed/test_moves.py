"""Rounds as the same events, however they move."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from broodshelf.feed.moves import Known, follow
from broodshelf.feed.render import Round

NOW_MS = 1_777_636_800_000


def a_round(date: str, slot: str, at_ms: int) -> Round:
    return Round(f"{date}/{slot}", at_ms, (), date, slot)


def told(*rounds: Round, before: list[Known] | None = None, now_ms: int = NOW_MS):
    return follow(before or [], rounds, now_ms)


def test_a_round_that_stays_is_said_the_same_again():
    first, known = told(a_round("2026-05-01", "18:30", 100))
    again, same = told(a_round("2026-05-01", "18:30", 100), before=known, now_ms=NOW_MS + 5)

    assert again == first
    assert same == known
    assert (first[0].sequence, first[0].moved_ms) == (0, None)


def test_another_instant_at_the_same_wall_time_and_another_wall_time_are_moves():
    _, known = told(a_round("2026-05-01", "18:30", 100))
    _, known = told(a_round("2026-05-01", "18:30", 160), before=known, now_ms=1)
    [moved], known = told(a_round("2026-05-01", "19:00", 190), before=known, now_ms=2)

    assert (moved.key, moved.sequence, moved.moved_ms) == ("2026-05-01/18:30", 2, 2)
    assert known[0].slot == "19:00"


def test_a_round_beside_the_first_is_a_new_event():
    _, known = told(a_round("2026-05-01", "18:30", 100))
    (morning, evening), _ = told(
        a_round("2026-05-01", "08:00", 50), a_round("2026-05-01", "18:30", 100), before=known
    )

    assert (morning.key, evening.key) == ("2026-05-01/08:00", "2026-05-01/18:30")
    assert evening.sequence == 0


def test_an_urgent_one_is_never_taken_for_a_round_that_vanished():
    _, known = told(a_round("2026-05-01", "18:30", 100))
    [urgent], _ = told(a_round("2026-05-01", "urgent:fault:1", 90), before=known)

    assert (urgent.key, urgent.sequence) == ("2026-05-01/urgent:fault:1", 0)


def test_a_round_that_comes_back_counts_on():
    _, known = told(a_round("2026-05-01", "18:30", NOW_MS))
    _, known = told(a_round("2026-05-01", "18:30", NOW_MS + 60), before=known)
    _, known = told(before=known)
    [again], _ = told(a_round("2026-05-01", "18:30", NOW_MS + 60), before=known)

    assert again.sequence == 1


def test_what_vanished_over_a_week_ago_is_forgotten():
    _, known = told(a_round("2026-05-01", "18:30", NOW_MS))
    assert told(before=known, now_ms=NOW_MS + 9 * 86_400_000) == ([], [])


ROUNDS = st.lists(
    st.builds(
        a_round,
        st.sampled_from(["2026-05-01", "2026-05-02"]),
        st.sampled_from(["08:00", "12:00", "18:30", "urgent:fault:1", "later:2"]),
        st.integers(0, 5),
    ),
    unique_by=lambda each: each.key,
    max_size=6,
)


@given(ROUNDS, ROUNDS, ROUNDS)
def test_no_two_rounds_share_a_key_and_no_sequence_ever_falls(first, second, third):
    known: list[Known] = []
    highest: dict[str, int] = {}
    for number, rounds in enumerate((first, second, third)):
        followed, known = follow(known, rounds, number)
        assert [each.at_ms for each in followed] == [each.at_ms for each in rounds]
        assert len({each.key for each in followed}) == len(followed)
        for each in followed:
            assert each.sequence >= highest.get(each.key, 0)
            highest[each.key] = each.sequence
