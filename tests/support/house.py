"""The whole app in this process with one household, and model phones that speak to it in whole requests."""

from __future__ import annotations

from pathlib import Path
from types import TracebackType

from sqlalchemy import func, select
from tests.support.households import NOON_MS, Requester, make_household

from broodshelf.app import create_app
from broodshelf.people.actor import ActorRole
from broodshelf.people.devices import Owner, Phone, sign_in
from broodshelf.people.households import found_household
from broodshelf.records.database import db, reading, writing
from broodshelf.records.ended import Revocations
from broodshelf.records.epochs import Marks
from broodshelf.records.ids import uuid7
from broodshelf.records.tables import households, records
from broodshelf.settings import from_environment


class House:
    """``with House(folder) as house``: a served household. ``now_ms`` is the server's clock, turned by hand."""

    def __init__(self, folder: Path, database_url: str | None = None, secret: str = "") -> None:
        settings = {"BROODSHELF_DATA": str(folder), "BROODSHELF_SECRET": secret}
        if database_url:
            settings["BROODSHELF_DATABASE_URL"] = database_url
        self.settings = from_environment(settings)
        self.now_ms = NOON_MS
        self.tokens: dict[str, str] = {}

    def __enter__(self) -> House:
        self.start()
        with writing() as connection:
            self.household_id, self.person_id = found_household(
                connection, "Mira", "Shelf", "UTC", self.now_ms
            )
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, tb: TracebackType | None
    ) -> None:
        self.stop()

    def start(self) -> None:
        """Start as a process does: migrations, restored databases, revocations."""
        self.app = create_app(self.settings, lambda: self.now_ms)
        self.context = self.app.app_context()
        self.context.push()

    def stop(self) -> None:
        """Let go of the database, as a process that ends."""
        db.engine.dispose()
        self.context.pop()

    @property
    def marks(self) -> Marks:
        made: Marks = self.app.extensions["broodshelf"].witness.marks
        return made

    @property
    def revocations(self) -> Revocations:
        made: Revocations = self.app.extensions["broodshelf"].witness.revocations
        return made

    def phone(self) -> Requester:
        """Sign in a new phone of the household's keeper."""
        made = Requester(self.household_id, self.now_ms, person_id=self.person_id)
        self.let_in(made.device_id)
        return made

    def let_in(self, device_id: str, person_id: str = "", pass_id: str | None = None) -> None:
        """Give a device a session: of the household's keeper unless told of whom, of a stand-in with a pass."""
        with writing() as connection:
            role: ActorRole = "stand_in" if pass_id else "keeper"
            owner = Owner(self.household_id, person_id or self.person_id, role, pass_id)
            session = sign_in(connection, Phone(device_id, "a phone"), owner, self.now_ms)
        self.tokens[device_id] = session.token

    def post(self, phone: Requester, body: bytes, *, accept: str = "identity") -> bytes:
        """Make a round trip of ``/api/sync``; return the body as sent. Anything but 200 raises."""
        status, answer = self.send(phone.device_id, body, accept=accept)
        assert status == 200, answer[:500]
        return answer

    def send(self, device_id: str, body: bytes, *, accept: str = "identity") -> tuple[int, bytes]:
        """Make a round trip of ``/api/sync``; return status and body."""
        client = self.app.test_client(use_cookies=False)
        with self.app.app_context():  # a context of its own, as each request of a served app has
            answer = client.post(
                "/api/sync",
                data=body,
                headers={
                    "Content-Type": "application/json",
                    "Sec-Fetch-Site": "same-origin",
                    "Accept-Encoding": accept,
                    "Cookie": f"broodshelf_session={self.tokens[device_id]}",
                },
            )
        return answer.status_code, answer.data

    def spare_household(self) -> str:
        """Make another, empty household."""
        with writing() as connection:
            return make_household(connection)

    def rev(self) -> int:
        """Return the household's revision."""
        with reading() as connection:
            return int(
                connection.execute(
                    select(households.c.rev).where(households.c.id == self.household_id)
                ).scalar_one()
            )

    def count_rows(self) -> int:
        """Return how many records the household has."""
        with reading() as connection:
            return int(
                connection.execute(
                    select(func.count()).where(records.c.household_id == self.household_id)
                ).scalar_one()
            )

    def new_id(self) -> str:
        """Return a new identity."""
        return uuid7(self.now_ms)
