"""What lies in a data folder with SQLite lies in the database with PostgreSQL, and several machines share it.

Longer than 300 lines because both homes are held to one port, thing by thing.
"""

from __future__ import annotations

import hashlib
import io
import json
import os
from base64 import b64encode, urlsafe_b64decode, urlsafe_b64encode
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from cryptography.hazmat.primitives.serialization import Encoding, NoEncryption, PrivateFormat
from PIL import Image
from sqlalchemy import select, text
from tests.support.house import House
from tests.support.households import NOON_MS

from broodshelf.cli import main
from broodshelf.errors import BadSetting
from broodshelf.keeping.dumps import run
from broodshelf.nudges.channels.push.vapid import load_or_make
from broodshelf.people.settling import Watch
from broodshelf.people.tables import devices
from broodshelf.records.database import reading, writing
from broodshelf.records.home.ending import note_ended
from broodshelf.records.home.sealing import Seal
from broodshelf.records.home.shared import SharedNotes
from broodshelf.records.home.taking_over import PUT_AWAY
from broodshelf.web.parts import Parts
from broodshelf.web.shell import Shell, find_folder

SECRET, NEWER = "an-invented-secret-of-the-tests", "an-invented-newer-secret"


@pytest.fixture
def url(templates, tmp_path) -> str:
    return templates.of_an_app("postgresql", tmp_path)


@contextmanager
def machine(folder: Path, url: str, secret: str = SECRET) -> Iterator[House]:
    """A machine with a data folder of its own on a database that others share."""
    made = House(folder, url, secret)
    made.start()
    try:
        yield made
    finally:
        made.stop()


def parts(house: House) -> Parts:
    made: Parts = house.app.extensions["broodshelf"]
    return made


def picture(shade: int = 90) -> tuple[str, bytes]:
    """A small JPEG and its hash."""
    body = io.BytesIO()
    Image.new("RGB", (40, 30), (shade, 60, 30)).save(body, "JPEG")
    return hashlib.sha256(body.getvalue()).hexdigest(), body.getvalue()


def found(house: House) -> str:
    """Found the household and return its id."""
    from broodshelf.people.households import found_household

    with house.app.app_context(), writing() as connection:
        house.household_id, house.person_id = found_household(connection, "Mira", "Shelf", "UTC", NOON_MS)
    return house.household_id


def test_machines_with_empty_folders_have_one_push_key_that_no_dump_shows(tmp_path, url):
    with machine(tmp_path / "a", url) as a, machine(tmp_path / "b", url) as b:
        assert parts(a).pusher.key.public == parts(b).pusher.key.public
        with reading() as connection:
            kept = connection.scalar(text("SELECT text FROM server_notes WHERE name = 'push_key'"))

    assert "PRIVATE" not in kept
    assert not list(tmp_path.glob("*/vapid.pem"))


def test_a_machine_without_the_secret_or_with_another_is_told_so(tmp_path, url):
    with machine(tmp_path / "a", url):
        pass
    for secret in ("", "quite-another-secret-of-the-tests"):
        with (
            pytest.raises(BadSetting, match="BROODSHELF_SECRET") as refused,
            machine(tmp_path / "b", url, secret),
        ):
            pass
        assert SECRET not in str(refused.value)


def test_a_sealed_key_taken_out_of_the_database_is_of_no_use_without_the_secret(tmp_path, url):
    with machine(tmp_path / "a", url) as a:
        key = parts(a).pusher.key.private
        with reading() as connection:
            sealed = SharedNotes("push_key").read(connection)["sealed"]
    pem = key.private_bytes(Encoding.PEM, PrivateFormat.PKCS8, NoEncryption()).decode()
    number = key.private_numbers().private_value.to_bytes(32, "big")
    opened = urlsafe_b64decode(sealed)

    assert Seal([SECRET]).open(sealed) == pem  # with it, it is all there
    for text_or_bytes in (number, b64encode(number).rstrip(b"="), pem.encode()[30:60], SECRET.encode()):
        assert text_or_bytes not in sealed.encode() + opened
    for guess in ("", SECRET[:-1], SECRET.upper(), parts(a).pusher.key.key_id, sealed):
        assert Seal([guess]).open(sealed) is None
    for place in (0, 1, 9, len(opened) // 2, len(opened) - 1):  # nor can it be bent into another one
        bent = bytearray(opened)
        bent[place] ^= 1
        assert Seal([SECRET]).open(urlsafe_b64encode(bent).decode()) is None


@pytest.mark.parametrize(
    ("secret", "said"),
    [
        ("", "the push key lies sealed in the database"),
        (
            "quite-another-secret-of-the-tests",
            "was sealed with another secret; give that one behind the new one",
        ),
    ],
)
def test_start_and_doctor_say_what_is_missing_where_the_secret_is_not_the_right_one(
    tmp_path, url, monkeypatch, capsys, secret, said
):
    with machine(tmp_path / "a", url):
        pass
    monkeypatch.setenv("BROODSHELF_DATA", str(tmp_path / "b"))
    monkeypatch.setenv("BROODSHELF_DATABASE_URL", url)
    monkeypatch.setenv("BROODSHELF_SECRET", secret)
    assert main(["serve"]) == 2
    refused = capsys.readouterr().err

    assert said in refused
    assert "BROODSHELF_SECRET" in refused
    assert not secret or secret not in refused
    assert main(["doctor"]) == 1
    assert said in capsys.readouterr().out


def test_a_second_machine_without_any_secret_is_refused_instead_of_making_a_second_key(tmp_path, url):
    with machine(tmp_path / "a", url, ""):
        assert (tmp_path / "a" / "vapid.pem").exists()
    with pytest.raises(BadSetting, match="BROODSHELF_SECRET"), machine(tmp_path / "b", url, ""):
        pass
    with pytest.raises(BadSetting, match="BROODSHELF_SECRET"), machine(tmp_path / "b", url, SECRET):
        pass  # the key still lies on the first machine, which has to bring it
    assert not (tmp_path / "b" / "vapid.pem").exists()


def test_a_secret_is_changed_by_giving_the_new_one_before_the_old_once(tmp_path, url):
    with machine(tmp_path / "a", url) as a:
        public = parts(a).pusher.key.public
    with machine(tmp_path / "a", url, f"{NEWER} {SECRET}") as a:
        assert parts(a).pusher.key.public == public
    with machine(tmp_path / "b", url, NEWER) as b:
        assert parts(b).pusher.key.public == public
    with pytest.raises(BadSetting), machine(tmp_path / "b", url, SECRET):
        pass


def test_what_lay_in_the_folder_of_the_only_machine_is_taken_over_once_and_none_of_it_is_lost(tmp_path, url):
    data = tmp_path / "a"
    sha256, body = picture()
    old = Shell(find_folder(), {"catalogue.json": b"{}"})
    with machine(data, url, "") as a:
        household_id = found(a)
        key = load_or_make(data, in_use=True).public
        (data / "photos" / household_id).mkdir(parents=True)
        (data / "photos" / household_id / f"{sha256}.jpg").write_bytes(body)
        (data / "photos" / ("0" * 8)).mkdir()
        (data / "builds").mkdir()
        (data / "builds" / f"{old.build}.zip").write_bytes(_packed(old))
        os.utime(data / "builds" / f"{old.build}.zip", (NOON_MS / 1000, NOON_MS / 1000))
        (data / "taken").mkdir()
        (data / "taken" / "0123").write_text("one\ntwo\n")
        (data / "kept.json").write_text(json.dumps({"backup_ms": 5}))
        a.revocations.add("device", household_id, household_id, NOON_MS)
    for _ in range(2):  # a second start finds nothing more to do
        with machine(data, url):
            pass
    with machine(tmp_path / "b", url) as b:
        made = parts(b)
        assert made.pusher.key.public == key
        assert made.photos.read(household_id, sha256) == body
        assert made.past_builds.find(old.build, "catalogue.json").body == b"{}"
        assert made.home.taken.among(["one", "two", "three"]) == {"one", "two"}
        assert made.home.kept.read()["backup_ms"] == 5
        with reading() as connection:
            assert [e.id for e in made.home.endings.all_of(connection)] == [household_id]

    assert not (data / "vapid.pem").exists()
    assert (data / PUT_AWAY / "photos" / household_id / f"{sha256}.jpg").read_bytes() == body
    assert load_or_make(data / PUT_AWAY, in_use=True).public == key


def _packed(shell: Shell) -> bytes:
    from broodshelf.web.past_builds import _packed as pack

    return pack(shell)


def test_what_one_machine_keeps_another_has_at_once(tmp_path, url):
    sha256, body = picture()
    with machine(tmp_path / "a", url) as a, machine(tmp_path / "b", url) as b:
        household_id = found(a)
        with a.app.app_context():
            parts(a).photos.keep(household_id, sha256, body)
            parts(a).home.taken.taken("x")
        with b.app.app_context():
            assert parts(b).photos.read(household_id, sha256)
            assert parts(b).home.taken.among(["x", "y"]) == {"x"}
            parts(b).home.taken.tidy(NOON_MS + 10**12)
        with a.app.app_context():
            assert parts(a).home.taken.among(["x"]) == set()
        assert parts(a).home.pictures.put(household_id, "f" * 64, body, most_bytes=len(body)) is False


def _dump(url: str, file: Path) -> None:
    run("pg_dump", "--format=custom", "--enable-row-security", f"--file={file}", database=url)


def _put_back(url: str, file: Path) -> None:
    """Load a dump over the present database, as an operator does by hand."""
    run("pg_restore", "--clean", "--if-exists", "--no-owner", "--single-transaction", str(file), database=url)


def _epoch(house: House) -> str:
    with house.app.app_context(), reading() as connection:
        return str(connection.scalar(text("SELECT epoch FROM households")))


def _is_revoked(house: House, device_id: str) -> bool:
    with house.app.app_context(), reading() as connection:
        return connection.scalar(select(devices.c.revoked_ms).where(devices.c.id == device_id)) is not None


def test_a_database_that_is_put_back_under_running_machines_is_noticed_and_what_was_ended_stays_ended(
    tmp_path, url
):
    with machine(tmp_path / "a", url) as a, machine(tmp_path / "b", url) as b:
        found(a)
        b.household_id = a.household_id
        phone = a.phone()
        watches = [Watch(each.app, parts(each).witness, lambda: NOON_MS) for each in (a, b)]
        before = _epoch(a)
        _dump(url, tmp_path / "dump")
        with a.app.app_context(), writing() as connection:
            connection.execute(devices.update().values(revoked_ms=NOON_MS))
            note_ended(connection, "device", a.household_id, [phone.device_id], NOON_MS)
        for watch, each in zip(watches, (a, b), strict=True):
            with each.app.app_context():
                watch.look()
        assert _epoch(a) == before  # nothing has happened yet
        _put_back(url, tmp_path / "dump")
        assert not _is_revoked(a, phone.device_id)

        with b.app.app_context():
            watches[1].look()  # it never heard of the revocation, but begins a new epoch
        after = _epoch(b)
        with a.app.app_context():
            watches[0].look()

        assert after != before
        assert _epoch(a) == after  # one new epoch for one restore
        assert _is_revoked(b, phone.device_id)


def test_a_restore_by_command_keeps_what_was_ended_and_pictures_that_came_since_the_backup(
    tmp_path, url, monkeypatch
):
    (early, first), (late, second) = picture(20), picture(200)
    monkeypatch.setenv("BROODSHELF_DATA", str(tmp_path / "a"))
    monkeypatch.setenv("BROODSHELF_DATABASE_URL", url)
    monkeypatch.setenv("BROODSHELF_SECRET", SECRET)
    with machine(tmp_path / "a", url) as a:
        household_id, device_id = found(a), a.phone().device_id
        with a.app.app_context():
            parts(a).photos.keep(household_id, early, first)
            assert main(["backup", str(tmp_path / "kept.tar.gz")]) == 0
            parts(a).photos.keep(household_id, late, second)
            with writing() as connection:
                note_ended(connection, "device", household_id, [device_id], NOON_MS)
    assert main(["restore", str(tmp_path / "kept.tar.gz")]) == 0
    with machine(tmp_path / "c", url) as c:
        assert all(parts(c).photos.read(household_id, each) for each in (early, late))
        assert _is_revoked(c, device_id)
        assert SharedNotes("kept").read()["backup_ms"]
