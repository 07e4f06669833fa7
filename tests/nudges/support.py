"""A household with people, phones that listen, and a sender that only writes down what it is given."""

from __future__ import annotations

import datetime as dt
import json
from base64 import urlsafe_b64encode
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from cryptography.hazmat.primitives import serialization
from cryptography.hazmat.primitives.asymmetric import ec
from flask import Flask
from sqlalchemy import insert, select
from tests.support.households import Requester

from broodshelf.nudges.channels.addresses import Address, Mailbox
from broodshelf.nudges.channels.channel import Channel, Channels, Delivery
from broodshelf.nudges.channels.outcome import Outcome, Sent
from broodshelf.nudges.channels.push.channel import PushChannel
from broodshelf.nudges.channels.push.hosts import PushHosts
from broodshelf.nudges.channels.push.rendering import render
from broodshelf.nudges.channels.push.subscriptions import subscribe
from broodshelf.nudges.channels.push.vapid import load_or_make
from broodshelf.nudges.nudger import Nudger
from broodshelf.nudges.tables import deliveries, nudges, subscriptions
from broodshelf.people.tables import devices
from broodshelf.records.database import reading, writing
from broodshelf.records.home.folder import in_folder
from broodshelf.records.ids import uuid7
from broodshelf.records.store import Ledger
from broodshelf.records.tables import households
from broodshelf.rounds.recompute import touched
from broodshelf.rounds.tables import occurrences

KEY_ID = "present-key-0000"
URL = "https://shelf.example.org"
LOOPBACK = PushHosts(loopback=True)


def ms(text: str) -> int:
    """An instant in ms; text without an offset is UTC."""
    at = dt.datetime.fromisoformat(text)
    return round((at if at.tzinfo else at.replace(tzinfo=dt.UTC)).timestamp() * 1000)


def happened(now_ms: int) -> str:
    return dt.datetime.fromtimestamp(now_ms / 1000, dt.UTC).isoformat(timespec="milliseconds")


def b64(data: bytes) -> str:
    return urlsafe_b64encode(data).rstrip(b"=").decode()


@dataclass
class BrowserKeys:
    """The keys that a browser makes for a subscription."""

    private: ec.EllipticCurvePrivateKey = field(
        default_factory=lambda: ec.generate_private_key(ec.SECP256R1())
    )
    secret: bytes = b"0123456789abcdef"

    @property
    def as_json(self) -> dict[str, str]:
        point = self.private.public_key().public_bytes(
            serialization.Encoding.X962, serialization.PublicFormat.UncompressedPoint
        )
        return {"p256dh": b64(point), "auth": b64(self.secret)}


class Notebook:
    """A channel that answers what it is told to and keeps what it was given, as a phone would get it."""

    def __init__(self) -> None:
        self.sent: list[tuple[str, dict[str, Any], Delivery]] = []
        self.answer: Outcome = Sent()

    def send(self, to: Address, delivery: Delivery, _now_ms: int) -> Outcome:
        self.sent.append((to.endpoint, json.loads(render(delivery.message, delivery.id)), delivery))
        return self.answer

    @property
    def titles(self) -> list[str]:
        return [payload["notification"]["title"] for _, payload, _ in self.sent]

    def take(self) -> list[str]:
        """The titles since the last look."""
        titles = self.titles
        self.sent = []
        return titles


def real_channels(data: Path, mail: Channel[Mailbox] | None = None) -> Channels:
    """The push channel that really sends, to this machine only; with the key in a data folder."""
    push = PushChannel(LOOPBACK, load_or_make(data, in_use=False), "mailto:keeper@example.org")
    return Channels(push, KEY_ID, mail)


class Shelf:
    """One household and a nudger for it; the clock is ``now_ms``."""

    def __init__(self, app: Flask, now_ms: int, data: Path, **house: Any) -> None:
        self.app, self.now_ms = app, now_ms
        self.data = data
        self.notebook = Notebook()
        self.nudger = self.new_nudger()
        self.id = uuid7(now_ms)
        with writing() as connection:
            connection.execute(
                insert(households).values(
                    id=self.id, rev=0, epoch=uuid7(now_ms), purged_rev=0, created_ms=now_ms
                )
            )
            ledger = Ledger(connection, self.id)
            values = {
                "name": "Shelf", "zone": "UTC", "care_hours": ["08:00", "18:30"], "quiet_from": "21:30",
                "quiet_to": "07:30", "patience_hours": 6.0, **house,
            }  # fmt: skip
            ledger.put(self.id, "household", values, now_ms=now_ms)
            ledger.flush()

    @property
    def channels(self) -> Channels:
        """Only the notebook."""
        return Channels(self.notebook, KEY_ID)

    def new_nudger(self, channels: Channels | None = None) -> Nudger:
        """A nudger as after a restart; the caller closes it."""
        return Nudger(
            self.app,
            channels or self.channels,
            public_url=URL,
            clock=lambda: self.now_ms,
            home=in_folder(self.data),
        )

    def at(self, text: str) -> Shelf:
        """Set the clock."""
        self.now_ms = ms(text)
        return self

    def person(self, name: str, *, role: str = "keeper", pass_id: str | None = None, listens: bool = True):
        """Add a person with one phone."""
        phone = Requester(self.id, self.now_ms, role=role)
        with writing() as connection:
            ledger = Ledger(connection, self.id)
            values = {"name": name, "role": role, **({"pass_id": pass_id} if pass_id else {})}
            ledger.put(phone.person_id, "person", values, now_ms=self.now_ms)
            ledger.flush()
            connection.execute(
                insert(devices).values(
                    id=phone.device_id, household_id=self.id, person_id=phone.person_id, pass_id=pass_id,
                    role=role, name=f"{name}'s phone", token_hash=uuid7(self.now_ms), created_ms=self.now_ms,
                    last_seen_ms=self.now_ms,
                )
            )  # fmt: skip
        if listens:
            self.listen(phone, f"http://127.0.0.1:9/{name}")
        return phone

    def listen(self, phone: Requester, endpoint: str, keys: BrowserKeys | None = None) -> None:
        body = {"endpoint": endpoint, "keys": (keys or BrowserKeys()).as_json, "key_id": KEY_ID}
        with writing() as connection:
            subscribe(connection, phone.actor, body, LOOPBACK, KEY_ID, self.now_ms)

    def sync(self, phone: Requester) -> dict[str, Any]:
        phone.now_ms = self.now_ms
        return phone.sync(recompute=touched)

    def log(self, phone: Requester, kind: str, values: dict[str, Any], record_id: str | None = None) -> str:
        """Write a record and sync; events happen now unless they say otherwise."""
        phone.now_ms = self.now_ms
        if kind in ("feeding", "check", "water", "fault", "count", "later", "note") and record_id is None:
            values = {"happened_at": happened(self.now_ms), **values}
        op = phone.write(kind, values, record_id)
        self.sync(phone)
        assert phone.verdicts[op["op_id"]]["verdict"] == "applied", phone.verdicts[op["op_id"]]
        return str(op["id"])

    def colony(self, phone: Requester, name: str = "Amber", protein_days: float = 3) -> str:
        """A colony that was fed and given water just now: protein comes due first, other needs in months."""
        long = dict.fromkeys(("sugar", "glance"), 90)
        colony_id = self.log(
            phone, "colony",
            {"name": name, "stage": "growing", "species_code": "lasius_niger",
             "interval_days": {**long, "protein": protein_days}},
        )  # fmt: skip
        self.log(phone, "water", {"colony_id": colony_id, "action": "refill"})
        for need in ("sugar", "protein"):
            self.log(phone, "feeding", {"colony_id": colony_id, "need": need})
        return colony_id

    def tick(self) -> list[str]:
        """One tick and what it sent: titles."""
        self.nudger.tick(self.now_ms)
        self.nudger.finish()
        return self.notebook.take()

    def occurrences(self, need: str = "protein") -> list[tuple[str, str, str]]:
        """(local date, slot, state) in order of time."""
        with reading() as connection:
            rows = connection.execute(
                select(occurrences).where(occurrences.c.need == need).order_by(occurrences.c.at_ms)
            )
            return [(row.local_date, row.slot, row.state) for row in rows]

    def nudges(self) -> list[tuple[str, str, int]]:
        with reading() as connection:
            rows = connection.execute(select(nudges).order_by(nudges.c.made_ms, nudges.c.id))
            return [(row.local_date, row.slot, row.step) for row in rows]

    def delivery_states(self) -> list[str]:
        with reading() as connection:
            return list(connection.scalars(select(deliveries.c.state).order_by(deliveries.c.made_ms)))

    def endpoints(self) -> list[str]:
        with reading() as connection:
            return list(connection.scalars(select(subscriptions.c.endpoint).order_by(subscriptions.c.id)))
