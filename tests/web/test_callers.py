"""Who a request comes from, with and without proxies in front, and whom limits stop."""

from __future__ import annotations

import pytest
from tests.web.conftest import Browser

from broodshelf.app import create_app
from broodshelf.people.limits import MOST_A_MINUTE
from broodshelf.records.database import db
from broodshelf.settings import from_environment
from broodshelf.web.callers import UNKNOWN, is_this_machine, network_of

WRONG = "BBBB-BBBB"


@pytest.mark.parametrize(
    ("address", "network"),
    [
        ("198.51.100.7", "198.51.100.7"),
        ("198.51.100.7:4711", "198.51.100.7"),
        ("::ffff:198.51.100.7", "198.51.100.7"),
        ("2001:db8:1:2:3:4:5:6", "2001:db8:1:2::/64"),
        ("[2001:db8:1:2::9]:443", "2001:db8:1:2::/64"),
        ("2001:db8:1:2::9%eth0", "2001:db8:1:2::/64"),
        ("", UNKNOWN),
        (None, UNKNOWN),
        ("_hidden", UNKNOWN),
        ("1.2.3.4\n", "1.2.3.4"),
        ("9" * 400, UNKNOWN),
    ],
)
def test_a_caller_is_an_ipv4_address_or_the_64_of_an_ipv6_one(address, network):
    assert network_of(address) == network


def test_this_machine_is_its_own_loop_and_nothing_else():
    own = ["127.0.0.1", "127.8.8.8", "::1", "::ffff:127.0.0.1"]
    others = ["::2", "198.51.100.7", "::ffff:198.51.100.7", "", "localhost"]

    assert [is_this_machine(address) for address in own + others] == [True] * 4 + [False] * 5


def guess(browser, address: str, **headers: str) -> int:
    """Try a wrong code of a pass from an address; return the status."""
    browser.address = address
    body = {"code": WRONG, "device": browser.device()}
    return browser.post("/api/passes/open", body, **headers).status_code


@pytest.fixture
def behind_proxies(tmp_path, clock, templates):
    """Make apps behind as many proxies as the test says."""
    made = []

    def make(hops: int):
        templates.of_an_app("sqlite", tmp_path / f"behind-{hops}")
        environment = {
            "BROODSHELF_DATA": str(tmp_path / f"behind-{hops}"),
            "BROODSHELF_TRUSTED_PROXY_HOPS": str(hops),
        }
        made.append(create_app(from_environment(environment), clock))
        return made[-1]

    yield make
    for app in made:
        with app.app_context():
            db.engine.dispose()


@pytest.mark.parametrize(
    ("hops", "forwarded"),
    [
        (0, lambda n: f"203.0.113.{n}"),  # nobody stands in front: the header is the visitor's own
        (
            1,
            lambda n: f"203.0.113.{n}, 198.51.100.7",
        ),  # what the visitor sent stands before the proxy's entry
        (2, lambda n: f"203.0.113.{n}, 198.51.100.7, 192.0.2.1"),
    ],
)
def test_a_guesser_who_forges_forwarding_headers_is_still_counted(behind_proxies, hops, forwarded, clock):
    guesser = Browser(behind_proxies(hops), clock)
    tries = [
        guess(guesser, "127.0.0.1", **{"X-Forwarded-For": forwarded(n), "X-Real-Ip": f"203.0.113.{n}"})
        for n in range(MOST_A_MINUTE + 1)
    ]

    assert tries == [410] * MOST_A_MINUTE + [429]


def test_behind_a_proxy_every_visitor_has_a_limit_of_their_own(behind_proxies, clock):
    visitor = Browser(behind_proxies(1), clock)
    for _ in range(MOST_A_MINUTE + 1):
        last = guess(visitor, "127.0.0.1", **{"X-Forwarded-For": "203.0.113.9"})

    assert last == 429
    assert guess(visitor, "127.0.0.1", **{"X-Forwarded-For": "198.51.100.7"}) == 410


def test_addresses_of_one_64_share_a_limit(browser):
    tries = [guess(browser(), f"2001:db8:1:2::{n:x}") for n in range(MOST_A_MINUTE + 1)]

    assert tries[-1] == 429
    assert guess(browser(), "2001:db8:1:3::1") == 410


def test_strangers_wrong_codes_do_not_stop_a_signed_in_phone_of_the_same_address(browser, keeper):
    stranger = browser()
    for _ in range(MOST_A_MINUTE + 1):
        assert stranger.post("/api/claim/look", {"code": WRONG}).status_code in (410, 429)
        guess(stranger, "127.0.0.1")
    asked = browser("198.51.100.7")
    pairing = asked.post("/api/pairings", {"device": asked.device()}).json

    assert stranger.post("/api/claim/look", {"code": WRONG}).status_code == 429
    assert keeper.post("/api/pairings/look", {"code": pairing["code"]}).status_code == 200
    assert guess(keeper, "127.0.0.1") == 410
    assert keeper.sync().status_code == 200


def test_a_signed_in_phone_that_guesses_is_stopped_wherever_it_comes_from(keeper):
    tries = [guess(keeper, f"198.51.100.{n}") for n in range(MOST_A_MINUTE + 1)]

    assert tries == [410] * MOST_A_MINUTE + [429]


def test_a_proxy_that_nobody_told_us_about_is_told_once(behind_proxies, clock, caplog):
    visitor = Browser(behind_proxies(0), clock)
    for _ in range(3):
        visitor.get("/healthz", **{"X-Forwarded-For": "203.0.113.9"})

    assert caplog.text.count("BROODSHELF_TRUSTED_PROXY_HOPS is 0") == 1
