"""The doctor says in words what stands at the https address, fault by fault; every server here is on this machine."""

from __future__ import annotations

import socket
import ssl
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

import pytest
from tests.support.certificates import make_certificate
from tests.support.server import free_port

from broodshelf.doctor.certificate import RENEWED_DAYS, look_at

Serve = Callable[[socket.socket], None]


@contextmanager
def answering(serve: Serve) -> Iterator[int]:
    """Answer one connection after the other until the end; yields the port."""
    with socket.create_server(("127.0.0.1", 0)) as listening:
        over = threading.Event()

        def run() -> None:
            while not over.is_set():
                try:
                    connection, _ = listening.accept()
                except OSError:
                    return
                with connection:
                    serve(connection)

        thread = threading.Thread(target=run)
        thread.start()
        yield listening.getsockname()[1]
        over.set()
        socket.create_connection(listening.getsockname()).close()
        thread.join()


def with_certificate(certificate: Path) -> Serve:
    """Speak TLS with this certificate, and hang up."""
    context = ssl.create_default_context(ssl.Purpose.CLIENT_AUTH)
    context.load_cert_chain(certificate)

    def serve(connection: socket.socket) -> None:
        with suppress(OSError):  # whoever looked did not like it
            context.wrap_socket(connection, server_side=True).close()

    return serve


def speaking_http(connection: socket.socket) -> None:
    connection.recv(4096)
    connection.sendall(b"HTTP/1.1 400 Bad Request\r\nConnection: close\r\n\r\n")


def looked_at(serve: Serve) -> tuple[str, str]:
    with answering(serve) as port:
        found = look_at(f"https://localhost:{port}", round(time.time() * 1000))
    return found.level, found.words.id


@pytest.mark.parametrize(
    ("ends_in_days", "told"),
    [
        (60, ("good", "doctor-certificate-good")),
        (RENEWED_DAYS - 1, ("look", "doctor-certificate-late")),
    ],
)
def test_a_trusted_certificate_is_good_until_nobody_seems_to_renew_it(
    tmp_path, monkeypatch, ends_in_days, told
):
    certificate = make_certificate(tmp_path, begins_in_days=-30, ends_in_days=ends_in_days)
    monkeypatch.setenv("SSL_CERT_FILE", str(certificate))  # as if this machine knew who signed it

    assert looked_at(with_certificate(certificate)) == told


def test_a_certificate_of_a_few_days_is_renewed_in_its_last_hours_and_no_cause_for_alarm(
    tmp_path, monkeypatch
):
    certificate = make_certificate(tmp_path, begins_in_days=-1, ends_in_days=0.3)
    monkeypatch.setenv("SSL_CERT_FILE", str(certificate))

    assert looked_at(with_certificate(certificate)) == ("good", "doctor-certificate-short")


@pytest.mark.parametrize(
    ("name", "ends_in_days", "known", "fault"),
    [
        ("localhost", -0.5, True, "doctor-certificate-expired"),
        ("another.test", 60, True, "doctor-certificate-other-name"),
        ("localhost", 60, False, "doctor-certificate-authority"),
    ],
)
def test_a_certificate_that_no_phone_takes_is_bad_and_says_why(
    tmp_path, monkeypatch, name, ends_in_days, known, fault
):
    certificate = make_certificate(tmp_path, name, begins_in_days=-90, ends_in_days=ends_in_days)
    if known:
        monkeypatch.setenv("SSL_CERT_FILE", str(certificate))

    assert looked_at(with_certificate(certificate)) == ("bad", fault)


def test_plain_http_on_the_https_port_is_named():
    assert looked_at(speaking_http) == ("bad", "doctor-certificate-plain")


def test_a_server_that_hangs_up_is_named():
    assert looked_at(lambda connection: None) == ("bad", "doctor-certificate-hello")


def test_a_port_that_nobody_listens_on_and_a_name_that_nobody_knows_are_named():
    nobody = look_at(f"https://localhost:{free_port()}", 0)
    unknown = look_at("https://shelf.invalid", 0)  # .invalid is never anybody's (RFC 6761)

    assert (nobody.level, nobody.words.id) == ("look", "doctor-certificate-port")
    assert (unknown.level, unknown.words.id) == ("look", "doctor-certificate-name")
