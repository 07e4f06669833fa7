"""Who asks, in whose house, and what comes back."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

FAR_ADDRESS = "198.51.100.7"
UNSAFE = ("POST", "PUT", "PATCH", "DELETE")
ROLES = (
    "nobody", "unknown_cookie", "signed_out", "removed_keeper", "idle_keeper", "keeper", "from_elsewhere",
    "stand_in", "early_stand_in", "former_stand_in", "long_gone_stand_in", "taken_back_stand_in",
    "removed_stand_in", "other_keeper", "other_stand_in",
)  # fmt: skip


@dataclass(frozen=True)
class Answer:
    """What came back: status, problem code if any, the whole text and the parsed JSON if it is some."""

    status: int
    code: str
    text: str
    json: Any
    cookie: str | None


@dataclass
class Visitor:
    """Somebody with a cookie or none. ``house`` is whose things are their own."""

    name: str
    house: House
    cookie: str | None = None
    me: dict[str, Any] = field(default_factory=dict)
    from_elsewhere: bool = False

    @property
    def device_id(self) -> str:
        return str(self.me.get("device_id", ""))


@dataclass
class House:
    """One household's things by name: ids, codes, secrets, pictures."""

    mark: str
    things: dict[str, Any] = field(default_factory=dict)
    jpegs: dict[str, bytes] = field(default_factory=dict)
    id: str = ""
