"""A damaged file in the data folder is named, set aside and survived; what was revoked stays revoked."""

from __future__ import annotations

import json
import os
import stat
import subprocess

import pytest
from tests.support.house import House

from broodshelf.cli import main
from broodshelf.doctor import examine
from broodshelf.records.database import writing
from broodshelf.records.ended import Revocations
from broodshelf.records.home.folder import FolderPictures
from broodshelf.records.home.taken_files import TakenFiles
from broodshelf.records.ids import uuid7
from broodshelf.records.photo_files import PhotoFiles
from broodshelf.records.store import Ledger

NOISE = b"\x00\xff\xfe{]" * 40


@pytest.fixture
def house(tmp_path, templates):
    templates.of_an_app("sqlite", tmp_path / "data")
    with House(tmp_path / "data") as made:
        yield made


def restarted(house: House) -> House:
    house.stop()
    house.start()
    return house


def aside(house: House) -> list[str]:
    return sorted(
        p.relative_to(house.settings.data).as_posix() for p in house.settings.data.rglob("*.damaged-*")
    )


def told(house: House) -> dict[str, str]:
    return {finding.about: str(finding.words) for finding in examine(house.settings, house.now_ms)}


@pytest.mark.parametrize(
    "name", ["taken/0123", "photos/stranger", "builds/0123456789abcdef.zip", "marks/x.json"]
)
@pytest.mark.parametrize("as_folder", [False, True], ids=["file", "folder"])
def test_strange_and_damaged_files_stop_neither_the_start_nor_what_reads_them(house, name, as_folder):
    path = house.settings.data / name
    path.parent.mkdir(exist_ok=True)
    if as_folder:
        path.mkdir()
        (path / "inner\n").write_bytes(NOISE)
    else:
        path.write_bytes(NOISE)
    os.utime(path, (1, 1))
    restarted(house)
    journal = TakenFiles(house.settings.data)
    journal.taken("a")

    assert journal.among(["a", "b"]) == {"a"}
    journal.tidy(10**15)
    assert house.app.extensions["broodshelf"].past_builds.find("0123456789abcdef", "x") is None
    assert house.app.test_client().get("/").status_code == 200


@pytest.mark.parametrize("name", ["taken", "marks", "builds"])
def test_a_file_where_a_folder_belongs_is_set_aside(house, name):
    house.stop()
    folder = house.settings.data / name
    subprocess.run(["rm", "-rf", str(folder)], check=True)
    folder.write_bytes(NOISE)
    house.start()
    TakenFiles(house.settings.data)
    house.marks.note(house.household_id, 1, uuid7(1))

    assert aside(house) == [f"{name}.damaged-1"]
    assert (house.settings.data / aside(house)[0]).read_bytes() == NOISE
    assert name in told(house)["set_aside"]


def test_pictures_with_odd_names_are_left_alone(tmp_path, house):
    photos = tmp_path / "photos"
    inner = photos / house.household_id
    inner.mkdir(parents=True)
    for odd in (
        photos / "x\n",
        inner / ("0" * 64 + "\n.jpg"),
        inner / "note.txt",
        photos / os.fsdecode(b"\xff"),
    ):
        odd.write_bytes(b"x")
        os.utime(odd, (1, 1))
    old = inner / f"{'0' * 64}.jpg"
    old.write_bytes(b"x")
    os.utime(old, (1, 1))
    with writing() as connection:
        swept = PhotoFiles(FolderPictures(photos)).sweep(connection, house.now_ms)

    assert swept == 1
    assert not old.exists()
    assert len(list(inner.iterdir())) == 2


@pytest.mark.parametrize(
    "damaged",
    [lambda body: body[:-100], lambda body: body[:2_000] + bytes(20) + body[2_020:]],
    ids=["its end is missing", "a file in it is another"],
)
def test_a_damaged_build_of_our_own_is_written_anew(house, damaged):
    [build] = (house.settings.data / "builds").glob("*.zip")
    sound = build.read_bytes()
    build.write_bytes(damaged(sound))
    restarted(house)

    assert build.read_bytes() == sound
    assert aside(house) == [f"builds/{build.name}.damaged-1"]


def test_a_damaged_push_key_is_set_aside_and_replaced(house):
    key = house.settings.data / "vapid.pem"
    before = house.app.extensions["broodshelf"].pusher.key.public
    key.write_bytes(key.read_bytes()[:60])
    assert "no phone hears yet" in told(house)["push_key"]
    assert aside(house) == []
    restarted(house)

    assert house.app.extensions["broodshelf"].pusher.key.public != before
    assert aside(house) == ["vapid.pem.damaged-1"]
    assert stat.S_IMODE(key.stat().st_mode) == 0o600


@pytest.mark.parametrize("content", [NOISE, b"[]", b'{"rev": "x", "epoch": 1}', b"[" * 100_000, b""])
def test_a_damaged_mark_begins_a_new_epoch_and_loses_nothing(house, content):
    mark = house.settings.data / "marks" / f"{house.household_id}.json"
    phone = house.phone()
    phone.write("colony", {"name": "Amber"})
    phone.take(json.loads(house.post(phone, json.dumps(phone.request()).encode())))
    epoch = phone.epoch
    mark.write_bytes(content)
    assert str(mark) in told(house)["marks"]
    restarted(house)
    phone.take(json.loads(house.post(phone, json.dumps(phone.request()).encode())))

    assert phone.epoch != epoch
    assert house.marks.read(house.household_id) is not None
    assert aside(house) == [f"marks/{mark.name}.damaged-1"]
    assert [values["name"] for values in phone.values().values() if "name" in values].count("Amber") == 1


def revoked_lines(path) -> list[str]:
    return [entry.id for entry in Revocations(path).read()]


def test_of_a_damaged_list_of_the_revoked_all_that_can_be_read_stays_revoked(house):
    ids = [uuid7(house.now_ms + n) for n in range(5)]
    for revoked in ids:
        house.revocations.add("device", house.household_id, revoked, house.now_ms)
    path = house.revocations.path
    lines = path.read_bytes().splitlines(keepends=True)
    lines[1] = b"\x00" * len(lines[1]) + b"\n"  # a block that never reached the disk
    lines[2] = b"garbage " + lines[2][:-15] + b"\n"  # cut in its time: what was revoked can still be read
    lines[3] = lines[3].replace(b'"at_ms": 1777636800000', b'"at_ms": "soon"')
    path.write_bytes(b"".join(lines))
    damaged = path.read_bytes()
    assert told(house)["revoked"].startswith("3 lines")
    assert path.read_bytes() == damaged, "the doctor changes nothing"
    restarted(house)

    assert revoked_lines(path) == [ids[0], ids[2], ids[3], ids[4]]
    assert house.revocations.unreadable() == 0
    assert aside(house) == ["revoked.jsonl.damaged-1"]
    assert (house.settings.data / "revoked.jsonl.damaged-1").read_bytes() == damaged


@pytest.mark.parametrize("damage", ["noise", "folder"])
def test_what_the_database_knows_as_revoked_is_written_into_a_list_that_is_lost(house, damage):
    phone = house.phone()
    with writing() as connection:
        connection.exec_driver_sql("UPDATE devices SET revoked_ms = 1777636800000")
    path = house.revocations.path
    path.unlink(missing_ok=True)
    if damage == "folder":
        path.mkdir()
    else:
        path.write_bytes(NOISE + b"\n" + NOISE + b"\n")
    restarted(house)

    assert revoked_lines(path) == [phone.device_id]


def test_a_line_that_a_crash_cut_swallows_no_later_revocation(house):
    first, second = uuid7(1), uuid7(2)
    house.revocations.add("device", house.household_id, first, house.now_ms)
    path = house.revocations.path
    path.write_bytes(path.read_bytes() + b'{"what": "dev')
    assert house.revocations.unreadable() == 0
    house.revocations.add("device", house.household_id, second, house.now_ms)

    assert revoked_lines(path) == [first, second]


def test_a_damaged_database_gets_a_sentence_from_every_command(tmp_path, monkeypatch, capsys):
    monkeypatch.setenv("BROODSHELF_DATA", str(tmp_path))
    monkeypatch.setenv("BROODSHELF_PORT", "9")
    (tmp_path / "broodshelf.sqlite3").write_bytes(b"SQLite format 3\0" + NOISE * 50)
    written = [["export", str(tmp_path / "x.json")], ["backup", str(tmp_path / "b")]]
    for command in (["serve"], ["pair"], ["migrate"], *written):
        status = main(command)
        said = capsys.readouterr().err
        assert (command[0], status) == (command[0], 2)
        assert said.startswith("broodshelf: ")
        assert "Traceback" not in said
    assert main(["doctor"]) == 1
    assert "damaged" in capsys.readouterr().out


def test_the_data_folder_and_what_is_in_it_are_its_owners_only_whatever_the_umask(tmp_path, monkeypatch):
    data = tmp_path / "data"
    kept = tmp_path / "b.tar.gz"
    monkeypatch.setenv("BROODSHELF_DATA", str(data))
    for command in (["pair"], ["backup", str(kept)]):
        ours = os.umask(0)
        try:
            main(command)
        finally:
            os.umask(ours)
    modes = {path: stat.S_IMODE(path.stat().st_mode) for path in [data, *data.rglob("*"), kept]}

    assert modes[data] == 0o700
    assert len(modes) > 5
    assert {path: oct(mode) for path, mode in modes.items() if mode & 0o077} == {}


def test_what_others_could_read_is_closed_at_the_next_start(house):
    house.settings.data.chmod(0o755)
    (house.settings.data / "broodshelf.sqlite3").chmod(0o644)
    restarted(house)

    assert stat.S_IMODE(house.settings.data.stat().st_mode) == 0o700
    assert stat.S_IMODE((house.settings.data / "broodshelf.sqlite3").stat().st_mode) == 0o600


def test_a_damaged_export_gets_a_sentence(tmp_path, capsys, monkeypatch):
    monkeypatch.setenv("BROODSHELF_DATA", str(tmp_path / "data"))
    with House(tmp_path / "data") as house:
        assert house.household_id
    whole = tmp_path / "x.zip"
    assert main(["export", str(whole)]) == 0
    raw = bytearray(whole.read_bytes())
    encrypted = raw.copy()
    for at in (i for i in range(len(raw) - 4) if raw[i : i + 4] in (b"PK\x03\x04", b"PK\x01\x02")):
        encrypted[at + (6 if raw[at + 2] == 3 else 8)] |= 1
    turned = raw.copy()
    turned[60:90] = bytes(30)
    for bad in (encrypted, turned, raw[:-40], raw[:200], b"", b"PK", b"[" * 10**6, b'{"a":1e999}'):
        whole.write_bytes(bad)
        capsys.readouterr()
        assert main(["import", str(whole)]) == 2
        assert capsys.readouterr().err.startswith("broodshelf: ")


def test_ids_with_a_line_break_of_an_older_server_spoil_no_answer_and_no_plan(house):
    """SQLite took them; no operation can name such a record now, so no phone is given it."""
    phone = house.phone()
    amber = phone.write("colony", {"name": "Amber"})["id"]
    phone.take(json.loads(house.post(phone, json.dumps(phone.request()).encode())))
    odd_id, odd_device = f"{uuid7(1)}\n", f"{uuid7(2)}\n"
    with writing() as connection:
        ledger = Ledger(connection, house.household_id)
        values = {"colony_id": amber, "happened_at": "2026-05-01T11:00:00Z", "need": "sugar"}
        ledger.put(odd_id, "feeding", values, now_ms=house.now_ms, device_id=odd_device, person_id=odd_device)
        ledger.put(
            uuid7(3), "feeding", values, now_ms=house.now_ms, device_id=odd_device, person_id=odd_device
        )
        ledger.flush()
    restarted(house)
    log = phone.write(
        "feeding", {"colony_id": amber, "happened_at": "2026-05-01T11:30:00Z", "need": "protein"}
    )
    phone.take(json.loads(house.post(phone, json.dumps(phone.request()).encode())))

    fed = [row for row in phone.rows().values() if row["kind"] == "feeding"]
    assert phone.verdicts[log["op_id"]]["verdict"] == "applied"
    assert len(fed) == 2
    assert odd_device in [row["by"] for row in fed]
    [plan] = [row["set"] for row in phone.rows().values() if row["kind"] == "plan"]
    assert {"code": "plan_failed", "args": {}} not in plan["notices"]
