"""Requests to an app in this process, on a clock that is turned by hand."""

from __future__ import annotations

import contextlib
import datetime as dt
import itertools
import json
from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any
from urllib.parse import unquote_to_bytes

from flask import Flask
from tests.support.two_houses.visitors import FAR_ADDRESS, Answer, Visitor

from broodshelf.model.gauges import DAY_MS
from broodshelf.records.ids import uuid7


@dataclass(frozen=True)
class Way:
    """What a request says of its body, where it comes from and what else its head says."""

    content_type: str = "application/json"
    address: str = FAR_ADDRESS
    headers: Mapping[str, str] = field(default_factory=dict)


JSON_FROM_AFAR = Way()


class Asking:
    """Makes requests as any visitor; those of a phone need nothing else."""

    app: Flask

    def __init__(self, now_ms: int) -> None:
        self.now_ms = now_ms
        self._numbers = itertools.count(1)

    def call(
        self,
        who: Visitor,
        method: str,
        path: str,
        body: Any = None,
        way: Way = JSON_FROM_AFAR,
    ) -> Answer:
        """Make a request as somebody. ``body``: bytes as they are, anything else as JSON."""
        sent = {"Sec-Fetch-Site": "cross-site" if who.from_elsewhere else "same-origin"}
        if who.cookie is not None:
            sent["Cookie"] = f"broodshelf_session={who.cookie}"
        data = body if isinstance(body, bytes) or body is None else json.dumps(body).encode()
        with self.app.app_context():  # a context of its own, as each request of a served app has
            answer = self.app.test_client(use_cookies=False).open(
                "/",
                environ_overrides=_as_a_server_reads(path),
                method=method,
                data=data,
                content_type=way.content_type if data is not None else None,
                headers={**sent, **way.headers},
                environ_base={"REMOTE_ADDR": way.address},
            )
            raw = answer.get_data()
        parsed = None
        with contextlib.suppress(ValueError):
            parsed = json.loads(raw)
        code = parsed.get("code", "") if isinstance(parsed, dict) else ""
        cookie = None
        for line in answer.headers.getlist("Set-Cookie"):
            name, _, rest = line.partition("=")
            cookie = rest.partition(";")[0] if name == "broodshelf_session" else cookie
        return Answer(answer.status_code, str(code), raw.decode("utf-8", "replace"), parsed, cookie)

    def post(self, who: Visitor, path: str, body: Any = None) -> Any:
        """Make a request that has to be taken; return its JSON."""
        answer = self.call(who, "POST", path, {} if body is None else body)
        assert answer.status == 200, (path, answer.text)
        if answer.cookie:
            who.cookie, who.me = answer.cookie, answer.json
        return answer.json

    def sync(self, who: Visitor, *ops: dict[str, Any]) -> list[dict[str, Any]]:
        """Make a round trip that has to be taken; return the verdicts."""
        body = {"device": who.device_id, "epoch": None, "cursor": None, "schema": 1, "ops": list(ops)}
        answers: list[dict[str, Any]] = self.post(who, "/api/sync", body)["answers"]
        return answers

    def op(
        self, who: Visitor, kind: str, values: dict[str, Any], record_id: str | None = None, **more: Any
    ) -> dict[str, Any]:
        """Return an operation as that visitor's phone would make it."""
        return {
            "op_id": uuid7(self.now_ms), "kind": kind, "id": record_id or uuid7(self.now_ms), "set": values,
            "made_at": self.now_ms, "skew_ms": 0, "base_rev": 0, "base_epoch": who.me.get("epoch"),
            "n": next(self._numbers), **more,
        }  # fmt: skip

    def happened(self, days: float = 0.0) -> str:
        """An instant so many days from now."""
        at = dt.datetime.fromtimestamp((self.now_ms + days * DAY_MS) / 1000, dt.UTC)
        return at.isoformat(timespec="milliseconds")

    def new_device(self) -> dict[str, str]:
        """A phone that nobody has seen."""
        return {"id": uuid7(self.now_ms), "name": "a phone"}


def _as_a_server_reads(path: str) -> dict[str, str]:
    """Return what a server makes of the path in a request's first line, whatever it is; the client would tidy it."""
    before, _, query = path.partition("?")
    return {
        "PATH_INFO": unquote_to_bytes(before).decode("latin-1"),
        "QUERY_STRING": query,
        "RAW_URI": path,
        "REQUEST_URI": path,
    }
