"""The sections of docs/measurements.md: what each asks, the command that answers, what we want of the answer."""

from __future__ import annotations

import sys
from dataclasses import dataclass


@dataclass(frozen=True)
class Measurement:
    """One section of the page: what it asks, the command that answers, and what we want of the answer."""

    name: str
    title: str
    command: str
    goals: str
    quick: bool = True
    says_how_far: bool = False
    """It prints how far it has come, line after line, and the last line is the figure."""

    def figure(self, printed: str) -> str:
        """What of a run's output goes on the page."""
        printed = printed.strip()
        return printed.splitlines()[-1] if self.says_how_far and printed else printed

    @property
    def arguments(self) -> list[str]:
        """The command as a list, run by the Python that runs this."""
        return [sys.executable, *self.command.split()[1:]]


MANY_HOMES = (
    "a log at 50 a second p99 at most 150 ms, also in a care hour and while 20 phones take everything; a nudge p99 at "
    "most 15 s after it was due; no large table read from end to end; cost and memory do not grow with the households"
)
MEASUREMENTS = (
    Measurement(
        "many-homes",
        "Many households on one PostgreSQL that commits to the disk",
        "python -m tests.bench.many_homes 50 500",
        MANY_HOMES,
        quick=False,
    ),
    Measurement(
        "most-homes",
        "5,000 households on one PostgreSQL that commits to the disk",
        "python -m tests.bench.many_homes 5000",
        MANY_HOMES,
        quick=False,
    ),
    Measurement(
        "bytes",
        "What a phone downloads",
        "python -m tests.bench.phone_cost --bytes",
        "the app without charts and labels at most 90 kB with brotli, with one language 100 kB",
    ),
    Measurement(
        "sync",
        "A round trip on the server",
        "python -m tests.bench.sync_cost",
        "1,000 logs at most 4 times their bare inserts and 150 ms; one log does not grow with the log; "
        "a first pull of 10,000 rows in at most 12 requests and 0.6 MB",
    ),
    Measurement(
        "phone-sync",
        "A round trip in a phone's store",
        "python -m tests.bench.phone_sync",
        "first pull at most 1.5 times the bare work; one log on the disk p95 at most 3 ms",
    ),
    Measurement(
        "phone",
        "The phone on a long shelf",
        "python -m tests.bench.phone_cost --events 100000",
        "offline start at most 1.0 s; tap to saved and painted p95 at most 50 ms; cold load at most 3 s",
    ),
    Measurement(
        "full-shelf",
        "A full shelf: 8 colonies, a tap, a full outbox, the diary",
        "python -m tests.bench.full_shelf --events 20000 --years 1",
        "tap to saved and painted p95 at most 50 ms; offline start at most 1.0 s; no task over 50 ms in the diary",
    ),
    Measurement(
        "many-colonies",
        "A fuller shelf: 40 colonies, two years",
        "python -m tests.bench.full_shelf --colonies 40 --events 58400 --years 2",
        "as on the shelf of 8 colonies",
    ),
    Measurement(
        "history",
        "A long diary",
        "python -m tests.bench.history_cost",
        "no task over 50 ms while it is scrolled",
    ),
    Measurement(
        "plan",
        "A plan",
        "python -m tests.bench.plan_cost",
        "grows less than the log does; the census 0.5 ms where it is unchanged, 8 ms with a new observation",
    ),
    Measurement(
        "census",
        "Do the census's ranges come true?",
        "python -m tests.bench.census_calibration 300",
        "72 to 88 of 100 ranges of 80 % hold the truth; where there are three counts a range is at most 0.67 times as "
        "wide as that of a line through them",
        quick=False,
    ),
    Measurement(
        "count-accuracy",
        "Ants counted on rendered pictures",
        "python -m tests.bench.count_pictures accuracy --seeds 5",
        "after five corrections at most 10 % off up to 60 ants, 20 % up to 200; 80 of 100 ranges hold the truth",
    ),
    Measurement(
        "count-speed",
        "A picture of 12 megapixels until it is dots",
        "python -m tests.bench.count_pictures speed",
        "1.5 s of a processor four times slower; the renderer holds at most 150 MB; no task of the page over 50 ms",
    ),
    Measurement(
        "start", "Start and memory of the server", "python -m tests.bench.start_cost", "ready within 2 s"
    ),
    Measurement(
        "tick",
        "A tick of the nudger",
        "python -m tests.bench.tick_cost 1000000",
        "select and claim at most 2 times the bare statements",
    ),
    Measurement(
        "burst",
        "10,000 rounds due at once",
        "python -m tests.bench.burst",
        "p99 from due to accepted at most 15 s",
    ),
    Measurement(
        "slow-push",
        "A push service that takes 100 ms",
        "python -m tests.bench.burst 3000 100",
        "at least 300 nudges a second",
    ),
    Measurement(
        "sender",
        "Sends in one process",
        "python -m tests.bench.sender_rate",
        "at least 0.9 of bare encryption and POST",
    ),
    Measurement(
        "killed-nudgers",
        "Nudgers killed at random",
        "python -m tests.bench.killed_nudgers",
        "none lost; a killed lane repeats at most one",
        quick=False,
    ),
    Measurement(
        "zones",
        "Every care hour in every zone",
        "python -m tests.bench.every_day",
        "none differs",
        quick=False,
    ),
    Measurement(
        "long-sync",
        "The search for a lost log, SQLite",
        "python -m tests.bench.long_sync --operations 1000000 --seed 30000000 --tries 0",
        "1,000,000 operations, nothing breaks",
        quick=False,
        says_how_far=True,
    ),
    Measurement(
        "long-sync-postgresql",
        "The search for a lost log, PostgreSQL",
        "python -m tests.bench.long_sync --operations 1000000 --engine postgresql --seed 40000000 --tries 0",
        "1,000,000 operations, nothing breaks",
        quick=False,
        says_how_far=True,
    ),
    Measurement(
        "long-kills",
        "Servers killed under a real browser",
        "python -m tests.bench.long_kills --kills 200",
        "each log once",
        quick=False,
    ),
    Measurement(
        "long-fuzz",
        "Random requests",
        "python -m tests.bench.long_fuzz --requests 20000",
        "nothing breaks",
        quick=False,
    ),
)
