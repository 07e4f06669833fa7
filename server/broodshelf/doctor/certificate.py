"""What a phone meets at the public address before its first request: the name, the port, the certificate.

Looked at with this machine's own list of authorities, as a phone looks with its own: what is trusted here because
somebody installed an authority is trusted by a phone only when it has that authority, too.
"""

from __future__ import annotations

import datetime as dt
import socket
import ssl
from dataclasses import dataclass
from typing import Final, Literal
from urllib.parse import urlsplit

from ..languages import Told, told
from .findings import Finding, Level

PATIENCE_S: Final = 5.0
RENEWED_DAYS: Final = 14
"""A certificate of 90 days is renewed when a third of it is left; with less than this nobody renews it (our choice)."""
SHORT_DAYS: Final = 20
"""Certificates of a few days, as an authority of one's own gives them out, are renewed in their last hours."""
EXPIRED, OTHER_NAME = 10, 62
"""OpenSSL's X509_V_ERR_CERT_HAS_EXPIRED and X509_V_ERR_HOSTNAME_MISMATCH (openssl-verification-options(1))."""

Fault = Literal["name", "port", "plain", "expired", "other_name", "authority", "hello"]


@dataclass(frozen=True, slots=True)
class Met:
    """What stands at an https address: a fault, or a trusted certificate with its days left and its whole days."""

    fault: Fault | None
    days_left: float = 0.0
    whole_days: float = 0.0


def meet(host: str, port: int, now_ms: int) -> Met:
    """Shake hands with an https address and leave. Raises nothing: what goes wrong is the answer."""
    try:
        with socket.create_connection((host, port), timeout=PATIENCE_S) as connection:
            return _shake_hands(connection, host, now_ms)
    except socket.gaierror:
        return Met("name")
    except OSError:
        return Met("port")


def _shake_hands(connection: socket.socket, host: str, now_ms: int) -> Met:
    try:
        with ssl.create_default_context().wrap_socket(connection, server_hostname=host) as trusted:
            certificate = trusted.getpeercert() or {}
    except ssl.SSLCertVerificationError as error:
        faults: dict[int, Fault] = {EXPIRED: "expired", OTHER_NAME: "other_name"}
        return Met(faults.get(error.verify_code, "authority"))
    except ssl.SSLError as error:
        plain = error.reason in ("WRONG_VERSION_NUMBER", "HTTP_REQUEST", "PACKET_LENGTH_TOO_LONG")
        return Met("plain" if plain else "hello")
    except OSError:  # it hung up, or kept still
        return Met("hello")
    begins, ends = (ssl.cert_time_to_seconds(str(certificate[name])) for name in ("notBefore", "notAfter"))
    day_s = dt.timedelta(days=1).total_seconds()
    return Met(None, (ends - now_ms / 1000) / day_s, (ends - begins) / day_s)


def look_at(public_url: str, now_ms: int) -> Finding:
    """Say how the certificate of an https address stands, in words that tell what to do."""
    address = urlsplit(public_url)
    host, port = address.hostname or "", address.port or 443
    met = meet(host, port, now_ms)
    if met.fault is not None:
        # from inside a house the name may lead elsewhere than from outside: that alone is no proof
        level: Level = "look" if met.fault in ("name", "port") else "bad"
        return Finding(level, "certificate", _words_of(met.fault, host, port))
    days = int(met.days_left)
    if met.whole_days <= SHORT_DAYS:
        return Finding("good", "certificate", told("doctor-certificate-short"))
    if days < RENEWED_DAYS:
        return Finding("look", "certificate", told("doctor-certificate-late", n=days))
    return Finding("good", "certificate", told("doctor-certificate-good", n=days))


def _words_of(fault: Fault, host: str, port: int) -> Told:
    if fault == "name":
        return told("doctor-certificate-name", host=host)
    if fault == "port":
        return told("doctor-certificate-port", host=host, port=port)
    if fault == "plain":
        return told("doctor-certificate-plain", host=host, port=port)
    if fault == "expired":
        return told("doctor-certificate-expired", host=host)
    if fault == "other_name":
        return told("doctor-certificate-other-name", host=host)
    if fault == "authority":
        return told("doctor-certificate-authority", host=host)
    return told("doctor-certificate-hello", host=host, port=port)
