"""Where a request comes from, as far as limits care: an IPv4 address, or the /64 of an IPv6 one."""

from __future__ import annotations

import ipaddress
import logging
from collections.abc import Iterable
from typing import Any, Final

from werkzeug.middleware.proxy_fix import ProxyFix

from ..logs import say

UNKNOWN: Final = "unknown"
IPV6_PREFIX_BITS: Final = 64
"""A household, or a rented server, is given at least a /64 (RFC 6177): its addresses are one caller's."""
FORWARDING: Final = (
    "HTTP_FORWARDED",
    "HTTP_VIA",
    "HTTP_X_FORWARDED_FOR",
    "HTTP_X_FORWARDED_HOST",
    "HTTP_X_FORWARDED_PROTO",
    "HTTP_X_REAL_IP",
)
"""What a proxy adds, as the keys of a WSGI environment."""


def network_of(address: str | None) -> str:
    """Return whom an address belongs to; whatever is no address shares one name."""
    found = _parsed(address)
    if isinstance(found, ipaddress.IPv6Address):
        return str(ipaddress.ip_network((found, IPV6_PREFIX_BITS), strict=False))
    return UNKNOWN if found is None else str(found)


def is_this_machine(address: str | None) -> bool:
    """Say whether an address is one of this machine's own loop."""
    found = _parsed(address)
    return found is not None and found.is_loopback


def _parsed(address: str | None) -> ipaddress.IPv4Address | ipaddress.IPv6Address | None:
    text = (address or "").strip()
    if text.startswith("["):  # [2001:db8::1]:443, as some proxies write it
        text = text[1:].partition("]")[0]
    elif text.count(":") == 1:
        text = text.partition(":")[0]
    try:
        found = ipaddress.ip_address(text.partition("%")[0])
    except ValueError:
        return None
    if isinstance(found, ipaddress.IPv6Address) and found.ipv4_mapped is not None:
        return found.ipv4_mapped
    return found


def came_through_a_proxy(headers: Iterable[str]) -> bool:
    """Say whether the names of an environment hold one that only a proxy, or a forger, adds."""
    return any(name in headers for name in FORWARDING)


def believe_proxies(wsgi_app: Any, hops: int) -> Any:
    """Return the app behind ``hops`` proxies: the caller is whom the first of them saw.

    Only X-Forwarded-For is believed, and of it the last ``hops`` entries, which those proxies wrote themselves:
    what a visitor sent stands before them. Name and scheme come from the settings and from nowhere else.
    """
    if hops:
        return ProxyFix(wsgi_app, x_for=hops, x_proto=0, x_host=0)
    return _Unbelieving(wsgi_app)


class _Unbelieving:
    """Without proxies nothing that they would add is believed; that one seems to be there is told once."""

    def __init__(self, wsgi_app: Any) -> None:
        self._app, self._told = wsgi_app, False

    def __call__(self, environ: dict[str, Any], start_response: Any) -> Any:
        if not self._told and "HTTP_X_FORWARDED_FOR" in environ:
            self._told = True
            say(
                "requests name a proxy, but BROODSHELF_TRUSTED_PROXY_HOPS is 0: all its visitors share one limit",
                logging.WARNING,
                proxy=network_of(environ.get("REMOTE_ADDR")),
            )
        return self._app(environ, start_response)
