"""Which push addresses and keys are taken."""

from __future__ import annotations

import socket

import pytest
from tests.nudges.support import BrowserKeys, b64

from broodshelf.errors import BadRequest
from broodshelf.nudges.channels.push.hosts import Blocked, PushHosts, check_keys, is_public


@pytest.mark.parametrize(
    "url",
    [
        "https://fcm.googleapis.com/fcm/send/abc:DEF-_1",
        "https://updates.push.services.mozilla.com/wpush/v2/gAAA",
        "https://web.push.apple.com/QGuQyavXutnMH",
        "https://wns2-by3p.notify.windows.com/w/?token=BQYAAA%3d%3d",
        "https://fcm.googleapis.com:443/x",
    ],
)
def test_the_browsers_push_services_are_taken(url):
    assert PushHosts().read(url).url == url


@pytest.mark.parametrize(
    "url",
    [
        "http://fcm.googleapis.com/x", "https://fcm.googleapis.com:8443/x", "https://u:p@fcm.googleapis.com/x",
        "https://fcm.googleapis.com.evil.example/x", "https://evilfcm.googleapis.com.example/x",
        "https://evil.example/fcm.googleapis.com/", "https://fcm.googleapis.com./x", "https://127.0.0.1/x",
        "https://fcm.googleapis.com\\@evil.example/x", "https://fcm.googleapis.com/x\nHost: evil",
        "https://fcm.googleapis.com", "https://fcm.googleapis.com/x#y", "https://notapple.com/x",
        "https://xpush.apple.com/x", "http://127.0.0.1:80/x", "https://fcm.googleapis.com/" + "a" * 2048, "",
    ],
)  # fmt: skip
def test_every_other_address_is_refused(url):
    with pytest.raises(Blocked):
        PushHosts().read(url)


def test_the_owner_can_allow_a_host_and_with_it_its_subdomains():
    hosts = PushHosts(extra=("push.example.org",))

    assert hosts.read("https://a.push.example.org/x").host == "a.push.example.org"
    with pytest.raises(Blocked):
        hosts.read("https://example.org/x")


@pytest.mark.parametrize(
    ("address", "public"),
    [
        ("93.184.215.14", True), ("2606:4700:4700::1111", True), ("10.0.0.1", False), ("192.168.1.1", False),
        ("127.0.0.1", False), ("169.254.169.254", False), ("100.64.0.1", False), ("0.0.0.0", False),
        ("224.0.0.1", False), ("::1", False), ("fe80::1%eth0", False), ("fd00::1", False),
        ("::ffff:10.0.0.1", False), ("::ffff:93.184.215.14", True), ("2002:0a00:0001::", False),
        ("64:ff9b::0a00:0001", False), ("64:ff9b::5db8:d70e", True),
    ],
)  # fmt: skip
def test_which_addresses_are_of_the_open_internet(address, public):
    """Special-purpose ranges: IANA registries (RFC 6890); NAT64 prefix: RFC 6052; 6to4: RFC 3056."""
    assert is_public(address) is public


def test_an_extra_host_with_one_private_address_among_public_ones_is_blocked():
    def resolve(*_args, **_kwargs):
        return [(0, 0, 0, "", (a, 443)) for a in ("93.184.215.14", "10.0.0.1")]

    with pytest.raises(Blocked, match="private"):
        PushHosts(extra=("push.example.org",), resolve=resolve).address_for("push.example.org", 443)


def test_a_host_that_is_not_allowed_is_not_even_looked_up():
    def resolve(*_args, **_kwargs):
        raise AssertionError("looked up")

    with pytest.raises(Blocked):
        PushHosts(resolve=resolve).address_for("evil.example", 443)


def test_loopback_is_for_tests_and_off_by_default():
    assert PushHosts(loopback=True).read("http://127.0.0.1:8123/x").origin == "http://127.0.0.1:8123"
    assert PushHosts() == PushHosts(loopback=False, resolve=socket.getaddrinfo)


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("p256dh", b64(b"\x04" + b"\x01" * 64)),  # not on the curve
        ("p256dh", b64(b"\x04" * 33)),
        ("p256dh", "not base64url!"),
        ("auth", b64(b"12345")),
        ("auth", b64(b"1" * 17)),
        ("auth", ""),
    ],
)
def test_keys_that_a_phone_could_never_decrypt_with_are_named(field, value):
    keys = {**BrowserKeys().as_json, field: value}
    with pytest.raises(BadRequest) as refused:
        check_keys(keys["p256dh"], keys["auth"])

    assert list(refused.value.fields) == [f"keys.{field}"]


def test_good_keys_are_taken_with_and_without_padding():
    keys = BrowserKeys().as_json

    check_keys(keys["p256dh"], keys["auth"])
    check_keys(keys["p256dh"] + "=", keys["auth"] + "==")
