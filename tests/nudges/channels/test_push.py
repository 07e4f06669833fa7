"""The push channel against a push service that behaves and misbehaves."""

from __future__ import annotations

import json
import socket
from base64 import urlsafe_b64decode
from collections.abc import Iterator
from dataclasses import replace

import http_ece
import pytest
from cryptography.hazmat.primitives.asymmetric import ec
from hypothesis import given, settings
from hypothesis import strategies as st
from py_vapid import Vapid02
from tests.nudges.push_service import PushService
from tests.nudges.support import LOOPBACK, BrowserKeys, ms
from urllib3 import Timeout

from broodshelf.nudges.channels.addresses import Phone
from broodshelf.nudges.channels.channel import Delivery
from broodshelf.nudges.channels.outcome import Gone, Refused, RetryLater, Sent
from broodshelf.nudges.channels.push import channel as channel_module
from broodshelf.nudges.channels.push.channel import PushChannel
from broodshelf.nudges.channels.push.hosts import PushHosts
from broodshelf.nudges.channels.push.rendering import render
from broodshelf.nudges.channels.push.vapid import load_or_make
from broodshelf.nudges.messages import of_test

NOW_MS = ms("2026-05-01T12:00")
DELIVERY = Delivery("d", of_test("https://shelf.example.org"), 3600, True, "a round")
KEYS = BrowserKeys()


def raw(text: str) -> bytes:
    return urlsafe_b64decode(text + "=" * (-len(text) % 4))


@pytest.fixture
def service() -> Iterator[PushService]:
    with PushService() as made:
        yield made


@pytest.fixture
def channel(tmp_path) -> PushChannel:
    return PushChannel(LOOPBACK, load_or_make(tmp_path, in_use=False), "mailto:keeper@example.org")


def phone(endpoint: str) -> Phone:
    keys = KEYS.as_json
    return Phone(endpoint, keys["p256dh"], keys["auth"])


def test_the_message_of_rfc_8291_appendix_a_is_sent_byte_for_byte(channel, service, monkeypatch):
    """RFC 8291, section 5 and appendix A: keys, salt and message as printed there."""
    server_key = ec.derive_private_key(
        int.from_bytes(raw("yfWPiYE-n46HLnH0KqZOF1fJJU3MYrct3AELtAQ-oRw")), ec.SECP256R1()
    )
    monkeypatch.setattr("pywebpush.ec.generate_private_key", lambda *_a: server_key)
    monkeypatch.setattr("http_ece.os.urandom", lambda _n: raw("DGv6ra1nlYgDCS1FRnbzlw"))
    monkeypatch.setattr(channel_module, "render", lambda *_a: b"When I grow up, I want to be a watermelon")
    browser = Phone(
        service.url("/ok"),
        "BCVxsr7N_eNgVRqvHtD0zTZsEc6-VV-JvLexhqUzORcxaOzi6-AYWXvTBHm4bjyPjs7Vd8pZGH6SRpkNtoIAiw4",
        "BTBZMqHH6r4Tts7J_aSIgg",
    )
    expected = raw(
        "DGv6ra1nlYgDCS1FRnbzlwAAEABBBP4z9KsN6nGRTbVYI_c7VJSPQTBtkgcy27ml"
        "mlMoZIIgDll6e3vCYLocInmYWAmS6TlzAC8wEqKK6PBru3jl7A_yl95bQpu6cVPT"
        "pK4Mqgkf1CXztLVBSt2Ks3oZwbuwXPXLWyouBWLVWGNWQexSgSxsj_Qulcy4a-fN"
    )
    channel.send(browser, DELIVERY, NOW_MS)

    assert expected == service.taken[0].body


def test_the_phone_can_read_what_the_push_service_got(channel, service):
    outcome = channel.send(phone(service.url("/ok")), DELIVERY, NOW_MS)
    [taken] = service.taken
    read = http_ece.decrypt(
        taken.body, private_key=KEYS.private, auth_secret=KEYS.secret, version="aes128gcm"
    )

    assert outcome == Sent()
    assert read == render(DELIVERY.message, DELIVERY.id)
    assert taken.headers["Content-Encoding"] == "aes128gcm"
    assert taken.headers["TTL"] == "3600"
    assert taken.headers["Urgency"] == "high"
    assert len(taken.headers["Topic"]) == 32
    assert len(taken.body) <= 4096


def test_the_token_names_origin_subject_and_twelve_hours_and_is_kept_for_six(channel, service):
    for hours in (0, 5.9, 6.1):
        channel.send(phone(service.url("/ok")), DELIVERY, NOW_MS + round(hours * 3_600_000))
    tokens = [taken.headers["Authorization"] for taken in service.taken]
    claims = json.loads(raw(tokens[0].partition("t=")[2].partition(",")[0].split(".")[1]))

    assert claims == {
        "aud": service.url(""),
        "sub": "mailto:keeper@example.org",
        "exp": NOW_MS // 1000 + 12 * 3600,
    }
    assert Vapid02.verify(tokens[0])
    assert tokens[0] == tokens[1] != tokens[2]


def test_each_push_service_gets_a_token_for_its_own_origin(channel, service):
    with PushService() as other:
        channel.send(phone(service.url("/ok")), DELIVERY, NOW_MS)
        channel.send(phone(other.url("/ok")), DELIVERY, NOW_MS)

        assert service.taken[0].headers["Authorization"] != other.taken[0].headers["Authorization"]


@pytest.mark.parametrize(
    ("path", "outcome"),
    [
        ("/status/200", Sent()),
        ("/status/201", Sent()),
        ("/status/202", Sent()),
        ("/status/404", Gone()),
        ("/status/410", Gone()),
        ("/status/413", Refused("too_large")),
        ("/status/400", Refused("status_400", suspect=True)),
        ("/status/401", Refused("status_401", suspect=True)),
        ("/status/403", Refused("status_403", suspect=True)),
        ("/redirect/302", Refused("status_302", suspect=True)),
        ("/redirect/307", Refused("status_307", suspect=True)),
        ("/status/500", RetryLater("status_500")),
        ("/status/502", RetryLater("status_502")),
        ("/status/503", RetryLater("status_503", 60, vendor=True)),
        ("/retry/17", RetryLater("status_429", 17, vendor=True)),
        ("/retry/99999", RetryLater("status_429", 3600, vendor=True)),
        ("/retry/date", RetryLater("status_429", 3600, vendor=True)),
        ("/retry/soon", RetryLater("status_429", 60, vendor=True)),
        ("/reset", RetryLater("network", vendor=True)),
    ],
)
def test_what_an_answer_means(channel, service, path, outcome):
    assert channel.send(phone(service.url(path)), DELIVERY, NOW_MS) == outcome
    assert [taken.path for taken in service.taken if taken.path == "/internal"] == []


def test_a_push_service_that_does_not_answer_is_given_up_on(channel, service, monkeypatch):
    monkeypatch.setattr(channel_module, "TIMEOUT", Timeout(0.2, 0.2))

    assert channel.send(phone(service.url("/slow")), DELIVERY, NOW_MS) == RetryLater("network", vendor=True)


def test_nothing_listening_is_a_network_failure(channel):
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port = probe.getsockname()[1]

    assert channel.send(phone(f"http://127.0.0.1:{port}/x"), DELIVERY, NOW_MS) == RetryLater(
        "network", vendor=True
    )


def test_a_proxy_or_password_of_the_surroundings_is_not_used(channel, service, monkeypatch):
    for name in ("http_proxy", "HTTP_PROXY", "all_proxy"):
        monkeypatch.setenv(name, "http://127.0.0.1:9")

    assert channel.send(phone(service.url("/ok")), DELIVERY, NOW_MS) == Sent()


def test_broken_keys_are_refused_without_a_request(channel, service):
    for p256dh in ("AAAA", "", "B" + "A" * 86):
        outcome = channel.send(Phone(service.url("/ok"), p256dh, KEYS.as_json["auth"]), DELIVERY, NOW_MS)
        assert outcome == Refused("bad_keys", suspect=True)
    assert service.taken == []


def test_no_log_line_holds_an_endpoint(channel, service, caplog):
    with caplog.at_level("DEBUG", logger="broodshelf"):
        for path in (
            "/status/403/secret-endpoint",
            "/reset/secret-endpoint",
            "/redirect/307/secret-endpoint",
        ):
            channel.send(phone(service.url(path)), DELIVERY, NOW_MS)
        channel.send(phone("https://elsewhere.example/secret-endpoint"), DELIVERY, NOW_MS)
    lines = " ".join(f"{record.getMessage()} {getattr(record, 'values', '')}" for record in caplog.records)

    assert lines.count("push not taken") == 4
    assert "secret-endpoint" not in lines


def test_a_clock_that_differs_from_the_push_services_is_said(channel, service, caplog):
    service.now_ms = NOW_MS + 90_000
    with caplog.at_level("INFO", logger="broodshelf"):
        channel.send(phone(service.url("/ok")), DELIVERY, NOW_MS)
        service.now_ms = NOW_MS + 20_000
        channel.send(phone(service.url("/ok")), DELIVERY, NOW_MS)

    assert [r.values["seconds"] for r in caplog.records if "clock" in r.getMessage()] == [90]


@pytest.mark.parametrize(("asked", "given"), [(5, "300"), (7200, "7200"), (999_999, "86400")])
def test_the_time_to_live_stays_between_five_minutes_and_a_day(channel, service, asked, given):
    channel.send(phone(service.url("/ok")), replace(DELIVERY, useful_s=asked, urgent=False), NOW_MS)

    assert service.taken[0].headers["TTL"] == given
    assert service.taken[0].headers["Urgency"] == "normal"


HOST = st.sampled_from(
    [
        "fcm.googleapis.com", "web.push.apple.com", "updates.push.services.mozilla.com", "wns2-by3p.notify.windows.com",
        "fcm.googleapis.com.", "fcm.googleapis.com.evil.example", "evilpush.apple.com.example", "x@evil",
        "127.0.0.1", "localhost", "[::1]", "169.254.169.254", "0x7f000001", "2130706433", "push.apple.comm",
        "xn--fcm-abc.googleapis.com", "fcm。googleapis.com", "FCM.googleapis.com", "googleapis.com", "", "apple.com",
        "user@fcm.googleapis.com", "fcm.googleapis.com:8443", "fcm.googleapis.com:443", "fcm.googleapis.com%2eevil",
        "evil.example\\.push.apple.com", "evil.example#.push.apple.com", "evil.example?.push.apple.com",
    ]
)  # fmt: skip


ENDPOINT = st.one_of(
    st.text(max_size=80),
    st.builds(
        "{}{}{}".format,
        st.sampled_from(
            ["https://", "http://", "https:/", "//", "ftp://", "HTTPS://", "https:\\\\", " https://"]
        ),
        HOST,
        st.one_of(st.just("/x"), st.text(max_size=30).map(lambda t: f"/{t}"), st.text(max_size=10)),
    ),
)


ALLOWED = (
    "fcm.googleapis.com",
    "push.apple.com",
    "services.mozilla.com",
    "notify.windows.com",
    "jmt17.google.com",
)


@pytest.fixture(scope="module")
def strict_channel(tmp_path_factory) -> PushChannel:
    key = load_or_make(tmp_path_factory.mktemp("key"), in_use=False)
    return PushChannel(PushHosts(), key, "mailto:keeper@example.org")


@settings(max_examples=400, deadline=None)
@given(endpoint=ENDPOINT)
def test_no_endpoint_opens_a_socket_to_a_host_that_is_not_a_push_service(strict_channel, endpoint):
    asked: list[str] = []

    def resolve(host, *_a, **_k):
        asked.append(str(host))
        raise socket.gaierror("no names in tests")

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(socket, "getaddrinfo", resolve)
        patch.setattr(socket.socket, "connect", lambda _self, where: asked.append(str(where)))
        outcome = strict_channel.send(phone(endpoint), DELIVERY, NOW_MS)

    assert all(host.endswith(ALLOWED) for host in asked)
    if not asked:
        assert outcome == Refused("blocked_host", suspect=True)


def test_an_extra_host_is_reached_at_the_address_that_was_checked(tmp_path, monkeypatch):
    """A name that answers public once and private the second time gains nothing."""
    answers = iter(["93.184.215.14", "127.0.0.1", "127.0.0.1"])
    connected: list[object] = []

    def resolve(_host, _port, **_kwargs):
        return [(socket.AF_INET, socket.SOCK_STREAM, 6, "", (next(answers), 443))]

    def connect(where, *_args, **_kwargs):
        connected.append(where)
        raise OSError("no network in tests")

    monkeypatch.setattr("urllib3.util.connection.create_connection", connect)
    hosts = PushHosts(extra=("push.example.org",), resolve=resolve)
    strict = PushChannel(hosts, load_or_make(tmp_path, in_use=False), "mailto:keeper@example.org")
    first = strict.send(phone("https://push.example.org/x"), DELIVERY, NOW_MS)
    second = strict.send(phone("https://push.example.org/x"), DELIVERY, NOW_MS)

    assert connected == [("93.184.215.14", 443)]
    assert first == RetryLater("network", vendor=True)
    assert second == Refused("blocked_address", suspect=True)
