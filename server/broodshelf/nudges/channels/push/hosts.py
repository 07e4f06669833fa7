"""Which addresses the server may send a push to. A subscription's address comes from a phone: it is checked first.

Only the hosts of the browsers' push services and those that the operator names are taken. The whole address has
to match one plain pattern, so that no two parsers can read two hosts in it.
"""

from __future__ import annotations

import ipaddress
import re
import socket
from base64 import urlsafe_b64decode
from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache
from typing import Any, Final

from cryptography.hazmat.primitives.asymmetric import ec

from ....errors import BadRequest
from ....languages import Told, told

VENDORS: Final = (
    "fcm.googleapis.com",
    "jmt17.google.com",
    "updates.push.services.mozilla.com",
    "push.apple.com",
    "notify.windows.com",
)
"""The push services of the browsers that are in use; each with its subdomains."""
LONGEST_URL: Final = 2048
_HTTPS: Final = re.compile(
    r"https://((?:[a-z0-9](?:[a-z0-9-]{0,61}[a-z0-9])?\.)+[a-z][a-z0-9-]*)(?::443)?(/[A-Za-z0-9._~%!$&'()*+,;=:@/?-]*)"
)
_LOOPBACK: Final = re.compile(r"http://(127\.0\.0\.1|localhost):(\d{1,5})(/[A-Za-z0-9._~%:/-]*)")
_NAT64: Final = ipaddress.ip_network("64:ff9b::/96")

Resolver = Callable[..., list[tuple[Any, ...]]]


class Blocked(Exception):  # noqa: N818 - an answer, not a failure
    """The address leads where the server must not send. As text it is English, for logs."""

    def __init__(self, why: Told) -> None:
        super().__init__(str(why))
        self.told = why


@dataclass(frozen=True, slots=True)
class Endpoint:
    """A checked push address. ``host`` is the vendor's (with the port on loopback); ``origin`` goes into the token."""

    url: str
    host: str
    origin: str
    path: str


@dataclass(frozen=True, slots=True)
class PushHosts:
    """The policy. ``loopback`` allows plain http on this machine and is for tests only: no setting reaches it."""

    extra: tuple[str, ...] = ()
    loopback: bool = False
    resolve: Resolver = socket.getaddrinfo

    def read(self, url: str) -> Endpoint:
        """Return the checked address; raise ``Blocked`` with the reason for any other."""
        if len(url) > LONGEST_URL:
            raise Blocked(told("problem-push-too-long", most=LONGEST_URL))
        local = _LOOPBACK.fullmatch(url) if self.loopback else None
        if local is not None:
            host = f"{local[1]}:{local[2]}"
            return Endpoint(url, host, f"http://{host}", local[3])
        found = _HTTPS.fullmatch(url)
        if found is None:
            raise Blocked(told("problem-push-not-https"))
        host = found[1]
        if not _covers((*VENDORS, *self.extra), host):
            raise Blocked(told("problem-push-unknown"))
        return Endpoint(url, host, f"https://{host}", found[2])

    def address_for(self, host: str, port: int) -> str:
        """Return what to connect to: the name itself or, for an extra host, an address checked to be public.

        The connection goes to the address that was checked, so a name that changes its mind gains nothing.
        """
        if _covers(VENDORS, host) or (self.loopback and host in ("127.0.0.1", "localhost")):
            return host
        if not _covers(self.extra, host):
            raise Blocked(told("problem-push-unknown"))
        found = [str(info[4][0]) for info in self.resolve(host, port, type=socket.SOCK_STREAM)]
        if not found or not all(is_public(address) for address in found):
            raise Blocked(told("problem-push-private"))
        return found[0]


def is_public(address: str) -> bool:
    """Say whether an IP address, unwrapped from its transition forms, is one of the open internet."""
    ip = ipaddress.ip_address(address.partition("%")[0])
    if isinstance(ip, ipaddress.IPv6Address):
        inner = ip.ipv4_mapped or ip.sixtofour or (ip.teredo[1] if ip.teredo else None)
        if inner is None and ip in _NAT64:
            inner = ipaddress.IPv4Address(int(ip) & 0xFFFF_FFFF)
        if inner is not None:
            ip = inner
    return ip.is_global and not ip.is_multicast


def check_keys(p256dh: str, auth: str) -> None:
    """Raise ``BadRequest`` unless the phone's keys can encrypt; it names the wrong one."""
    wrong = wrong_key(p256dh, auth)
    if wrong is not None:
        why = told(
            "problem-wrong-auth-key" if wrong == "keys.auth" else "problem-wrong-point-key", where=wrong
        )
        raise BadRequest(why, fields={wrong: str(why)})


@lru_cache(maxsize=4096)  # 0.09 ms of each send: tests.bench.sender_rate
def wrong_key(p256dh: str, auth: str) -> str | None:
    """Return which key cannot encrypt, or None: a P-256 point of 65 bytes and a secret of 16 are needed.

    A short secret would be taken by the encryption and never be readable by the phone (RFC 8291, section 3.2).
    """
    secret = _bytes(auth)
    if secret is None or len(secret) != 16:
        return "keys.auth"
    return None if _is_point(_bytes(p256dh)) else "keys.p256dh"


def _is_point(point: bytes | None) -> bool:
    if point is None or len(point) != 65:
        return False
    try:
        ec.EllipticCurvePublicKey.from_encoded_point(ec.SECP256R1(), point)
    except ValueError:
        return False
    return True


def _covers(hosts: tuple[str, ...], host: str) -> bool:
    return any(host == known or host.endswith(f".{known}") for known in hosts)


def _bytes(text: str) -> bytes | None:
    if not re.fullmatch(r"[A-Za-z0-9_-]*", stripped := text.rstrip("=")) or len(stripped) % 4 == 1:
        return None
    return from_base64url(stripped)


def from_base64url(text: str) -> bytes:
    """Return the bytes of base64url text with or without its padding."""
    stripped = text.rstrip("=")
    return urlsafe_b64decode(stripped + "=" * (-len(stripped) % 4))
