"""What this process has sent, counted for whoever watches it (Prometheus). No endpoint, person or household in it."""

from __future__ import annotations

from typing import Final

from prometheus_client import CollectorRegistry, Counter, Gauge, Histogram

from ..channels.addresses import MAIL
from ..channels.outcome import Gone, Outcome, RetryLater, Sent
from ..channels.push.hosts import VENDORS

SECONDS: Final = (0.1, 0.25, 0.5, 1, 2, 3, 5, 10, 15, 30, 60, 300, 3600)
"""Bounds around the goals: half within 3 s, all but one of a hundred within 15 s."""


class Measures:
    """Counters of one process, in a registry of their own."""

    def __init__(self) -> None:
        self.registry = CollectorRegistry()
        self._due_to_accepted = Histogram(
            "broodshelf_due_to_accepted_seconds",
            "From a round's hour to the moment when a push service or mail server took the message",
            ["vendor"],
            buckets=SECONDS,
            registry=self.registry,
        )
        self._attempts = Counter(
            "broodshelf_attempts",
            "Messages handed to a vendor, repeats included",
            ["vendor"],
            registry=self.registry,
        )
        self._outcomes = Counter(
            "broodshelf_outcomes", "What came of an attempt", ["vendor", "outcome"], registry=self.registry
        )
        self.oldest_due = Gauge(
            "broodshelf_oldest_due_seconds",
            "How long the oldest nudge or message waits that could go out now",
            registry=self.registry,
        )
        self.last_tick = Gauge(
            "broodshelf_last_tick_timestamp_seconds", "When any nudger last ticked", registry=self.registry
        )

    def attempted(self, host: str, outcome: Outcome, due_ms: int | None, now_ms: int) -> None:
        """Count one attempt. ``due_ms``: when the round was; None for a test message."""
        vendor = vendor_of(host)
        self._attempts.labels(vendor).inc()
        self._outcomes.labels(vendor, _word(outcome)).inc()
        if isinstance(outcome, Sent) and due_ms is not None:
            self._due_to_accepted.labels(vendor).observe(max(0, now_ms - due_ms) / 1000)


def vendor_of(host: str) -> str:
    """Return the vendor of a push host: subdomains and the operator's own hosts would make a label each."""
    known = next((v for v in VENDORS if host == v or host.endswith(f".{v}")), None)
    return known or (MAIL if host == MAIL else "other")


def _word(outcome: Outcome) -> str:
    if isinstance(outcome, Sent):
        return "accepted"
    if isinstance(outcome, Gone):
        return "gone"
    return f"{'later' if isinstance(outcome, RetryLater) else 'refused'}_{outcome.reason}"
