"""Who may call an address, and with what: said once at its view and checked before the view runs.

    @blueprint.post("/pairings/look")
    @open_to("keeper", body=bodies.CODE)
    def look_pairing(actor: Actor, body: Given) -> Response:

The view gets the ids of its path, each of them a UUID, and what it names of ``actor`` and ``body``. The table in
docs/http-api.md is made from these words and the views' docstrings; tests/guard/addresses.toml says by hand what must
come out.
"""

from __future__ import annotations

import hmac
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import update_wrapper
from inspect import signature
from typing import Any, Final, Literal

from flask import Flask, request
from flask.typing import ResponseReturnValue

from ..errors import BadRequest, NotFound
from ..languages import told
from ..people.actor import Actor
from ..records.types import is_uuid
from . import parts as p
from .callers import came_through_a_proxy, is_this_machine
from .request_body import Body

Who = Literal["all", "token", "session", "keeper", "operator", "sensor"]
WHO: Final[Mapping[Who, str]] = {
    "all": "anybody; where a code, a secret or an id is sent, that is what lets in",
    "token": "whoever knows the address, which is the secret",
    "session": "a phone that is let in, a keeper's or a stand-in's",
    "keeper": "a keeper's phone",
    "sensor": "a sensor with its token (`Authorization: Bearer`); pages of other sites cannot send one",
    "operator": "this machine, or whoever has the operator's token; for others there is no such page",
}
Given = dict[str, Any]
"""The fields of a body that its schema let through."""


@dataclass(frozen=True, slots=True)
class Door:
    """What an address asks of a request. ``after_the_pass``: a stand-in whose pass has just ended may still."""

    who: Who
    body: Body | None = None
    after_the_pass: bool = False


class Guarded:
    """A view behind its door."""

    def __init__(self, view: Callable[..., ResponseReturnValue], door: Door) -> None:
        update_wrapper(self, view)
        self._view, self.door = view, door
        self._takes = signature(view).parameters

    def __call__(self, **in_path: str) -> ResponseReturnValue:
        """Answer a request, or raise why it is refused: first who asks, then what is asked for, then what is sent."""
        actor = _admitted(self.door)
        for name, value in in_path.items():
            if name.endswith("_id") and not is_uuid(value):
                raise BadRequest(told("problem-address-not-a-uuid"), fields={"id": "not a UUID"})
        body = None if self.door.body is None else self.door.body.read()
        known = {"actor": actor, "body": body}
        return self._view(**in_path, **{name: known[name] for name in self._takes if name in known})


def open_to(
    who: Who, *, body: Body | None = None, after_the_pass: bool = False
) -> Callable[[Callable[..., ResponseReturnValue]], Guarded]:
    """Let only ``who`` call the view, with this ``body`` (None where nothing is read)."""
    return lambda view: Guarded(view, Door(who, body, after_the_pass))


def guarded_views(app: Flask) -> dict[tuple[str, str], Guarded]:
    """Return the view of every verb and rule; HEAD goes with GET. Raises ``TypeError`` for one without a door."""
    found = {}
    for rule in app.url_map.iter_rules():
        view = app.view_functions[rule.endpoint]
        if not isinstance(view, Guarded):
            raise TypeError(f"{rule.rule} does not say whom it is open to.")
        for method in (rule.methods or set()) - {"HEAD", "OPTIONS"}:
            found[method, rule.rule] = view
    return found


def _admitted(door: Door) -> Actor | None:
    """Return who asks, None where that is of no account. Raises for those whom the door is not open to."""
    if door.who == "keeper":
        return p.keeper()
    if door.who == "session":
        return p.actor(after_the_pass=door.after_the_pass)
    if door.who == "operator" and not (_has_token() or _from_this_machine()):
        raise NotFound
    return None


def _has_token() -> bool:
    token = p.parts().settings.metrics_token
    scheme, _, given = request.headers.get("Authorization", "").partition(" ")
    return bool(token) and scheme == "Bearer" and hmac.compare_digest(given.encode(), token.encode())


def _from_this_machine() -> bool:
    """Behind a proxy on this machine every visitor would seem to come from here: who came through one did not."""
    return is_this_machine(request.remote_addr) and not came_through_a_proxy(request.environ)
