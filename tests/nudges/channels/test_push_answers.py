"""What a push service's answer means, and how long is waited after a failure."""

from __future__ import annotations

from types import SimpleNamespace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.nudges.support import ms

from broodshelf.nudges.channels.outcome import Gone
from broodshelf.nudges.channels.push.answers import read_answer, wait_s
from broodshelf.nudges.outcomes.waits import back_off_s

NOW_MS = ms("2026-05-01T12:00")


def test_failures_back_off_to_half_an_hour():
    assert [back_off_s(n) for n in (1, 2, 3, 4, 9)] == [30, 120, 480, 1800, 1800]


@pytest.mark.parametrize(
    ("header", "seconds"),
    [
        (None, 60), ("", 60), ("soon", 60), ("-5", 60), ("1.5", 60), ("9" * 5000, 60),
        (" 17 ", 17), ("0", 1), ("99999", 3600), ("Fri, 31 Dec 1999 23:59:59 GMT", 1),
        ("Fri, 31 Dec 9999 23:59:59 GMT", 3600), ("Fri, 31 Dec 99999 23:59:59 GMT", 60),
    ],
)  # fmt: skip
def test_a_retry_after_is_waited_for_an_hour_at_most_and_nonsense_a_minute(header, seconds):
    assert wait_s(header) == seconds


def test_a_retry_after_may_be_a_date(monkeypatch):
    now_s = NOW_MS / 1000
    monkeypatch.setattr("urllib3.util.retry.time", SimpleNamespace(time=lambda: now_s))

    assert wait_s("Fri, 01 May 2026 12:02:00 GMT") == 120


@given(st.text(max_size=40))
def test_whatever_a_retry_after_says_the_wait_is_between_a_second_and_an_hour(header):
    assert 1 <= wait_s(header) <= 3600


def test_every_status_has_a_meaning():
    for status in range(100, 600):
        outcome = read_answer(status, {})
        kept = not isinstance(outcome, Gone)
        assert kept or status in (404, 410), "only these two say that a phone has left for good"
