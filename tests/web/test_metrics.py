"""Who may read the numbers, and what they say."""

from __future__ import annotations

import pytest
from prometheus_client.parser import text_string_to_metric_families
from tests.nudges.support import BrowserKeys

from broodshelf.app import create_app, create_nudger
from broodshelf.errors import BadSetting
from broodshelf.nudges.channels.outcome import Gone, RetryLater, Sent
from broodshelf.nudges.outcomes.measures import Measures, vendor_of
from broodshelf.records.database import db
from broodshelf.settings import from_environment

TOKEN = "a-token-made-for-this-test"


class Polite:
    """A channel that takes everything."""

    def send(self, *_args: object) -> Sent:
        return Sent()


@pytest.fixture
def app(tmp_path, clock, templates):
    templates.of_an_app("sqlite", tmp_path)
    environment = {"BROODSHELF_DATA": str(tmp_path), "BROODSHELF_METRICS_TOKEN": TOKEN}
    made = create_app(from_environment(environment), clock, push_channel=Polite())
    yield made
    with made.app_context():
        db.engine.dispose()


def status(browser, address: str, **headers: str) -> int:
    return browser.client.get("/metrics", headers=headers, environ_base={"REMOTE_ADDR": address}).status_code


def test_this_machine_or_the_token_opens_the_page_and_for_others_there_is_none(browser):
    visitor = browser()
    assert status(visitor, "127.0.0.1") == status(visitor, "::1") == 200
    assert status(visitor, "192.0.2.7") == status(visitor, "") == 404
    assert status(visitor, "192.0.2.7", Authorization=f"Bearer {TOKEN}") == 200
    assert status(visitor, "192.0.2.7", Authorization="Bearer wrong") == 404
    assert status(visitor, "192.0.2.7", Authorization=TOKEN) == 404


@pytest.mark.parametrize("header", ["X-Forwarded-For", "Forwarded", "Via", "X-Real-Ip"])
def test_a_visitor_through_a_proxy_on_this_machine_is_not_this_machine(browser, header):
    assert status(browser(), "127.0.0.1", **{header: "127.0.0.1"}) == 404


def test_without_a_token_an_empty_one_opens_nothing(tmp_path, clock, templates):
    templates.of_an_app("sqlite", tmp_path / "other")
    made = create_app(from_environment({"BROODSHELF_DATA": str(tmp_path / "other")}), clock)
    answer = made.test_client().get(
        "/metrics", headers={"Authorization": "Bearer "}, environ_base={"REMOTE_ADDR": "192.0.2.7"}
    )
    with made.app_context():
        db.engine.dispose()

    assert answer.status_code == 404


def test_a_short_token_is_refused_and_not_repeated():
    with pytest.raises(BadSetting) as caught:
        from_environment({"BROODSHELF_METRICS_TOKEN": "hunter2"})
    assert "hunter2" not in str(caught.value)


def samples(browser) -> dict[tuple[str, tuple[str, ...]], float]:
    text = browser.get("/metrics").text
    return {
        (sample.name, tuple(sorted(sample.labels.values()))): sample.value
        for family in text_string_to_metric_families(text)
        for sample in family.samples
    }


def test_a_round_that_was_sent_shows_in_the_numbers(app, keeper, clock):
    endpoint = "https://updates.push.services.mozilla.com/wpush/v2/secret"
    key_id = keeper.me["vapid_public_key"][:16]
    subscribed = keeper.client.put(
        "/api/push/subscription",
        json={"endpoint": endpoint, "keys": BrowserKeys().as_json, "key_id": key_id},
        headers={"Sec-Fetch-Site": "same-origin"},
    )
    assert subscribed.status_code == 200, subscribed.text
    keeper.sync(keeper.op("colony", {"name": "Amber", "stage": "growing", "species_code": "lasius_niger"}))
    nudger = create_nudger(app)
    for hours in (4.5, 13.5, 10.5):  # 18:30 in Vienna, 08:00 and 18:30 of the next day
        clock.now_ms += round(hours * 3_600_000)
        nudger.tick(clock.now_ms)
        nudger.finish()
    nudger.close()
    found = samples(keeper)
    vendor = "updates.push.services.mozilla.com"
    sent = found["broodshelf_outcomes_total", ("accepted", vendor)]

    assert sent >= 1
    assert found["broodshelf_attempts_total", (vendor,)] == sent
    assert found["broodshelf_due_to_accepted_seconds_count", (vendor,)] == sent
    assert found["broodshelf_oldest_due_seconds", ()] == 0
    assert found["broodshelf_last_tick_timestamp_seconds", ()] == clock.now_ms / 1000
    text = keeper.get("/metrics").text
    assert not any(secret in text for secret in ("secret", keeper.me["household_id"], keeper.me["person_id"]))


def test_outcomes_are_counted_by_vendor_and_only_first_deliveries_have_a_due_time():
    measures = Measures()
    for host, outcome, due_ms in (
        ("fcm.googleapis.com", Sent(), 1000), ("fcm.googleapis.com", Sent(), None),
        ("web.push.apple.com", Gone(), 1000), ("web.push.apple.com", RetryLater("status_429", 3), 1000),
    ):  # fmt: skip
        measures.attempted(host, outcome, due_ms, 3000)
    value = measures.registry.get_sample_value

    assert value("broodshelf_due_to_accepted_seconds_sum", {"vendor": "fcm.googleapis.com"}) == 2.0
    assert value("broodshelf_due_to_accepted_seconds_count", {"vendor": "fcm.googleapis.com"}) == 1
    apple = {"vendor": "push.apple.com"}
    assert value("broodshelf_attempts_total", apple) == 2
    assert value("broodshelf_outcomes_total", {**apple, "outcome": "later_status_429"}) == 1
    assert value("broodshelf_outcomes_total", {**apple, "outcome": "gone"}) == 1


def test_hosts_share_their_vendors_label_and_unknown_ones_share_one():
    hosts = ("wns2-by3p.notify.windows.com", "push.example.org", "mail", "evilpush.apple.com.example")
    assert [vendor_of(host) for host in hosts] == ["notify.windows.com", "other", "mail", "other"]
