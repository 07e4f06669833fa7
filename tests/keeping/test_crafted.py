"""A crafted archive plants nothing, and a damaged one is refused in a sentence with nothing changed."""

from __future__ import annotations

import io
import tarfile

import pytest
from tests.support.house import House

from broodshelf.cli import main
from broodshelf.errors import CannotKeep
from broodshelf.keeping.backup import backup, restore


@pytest.fixture
def kept(tmp_path, templates):
    """A stopped server, and a sound backup of it as the list of its members."""
    templates.of_an_app("sqlite", tmp_path / "data")
    with House(tmp_path / "data") as house:
        backup(house.settings, tmp_path / "kept.tar.gz")
    with tarfile.open(tmp_path / "kept.tar.gz") as archive:
        members = [(member, archive.extractfile(member).read()) for member in archive]
    return house.settings, members


def packed(path, members):
    with tarfile.open(path, "w:gz") as archive:
        for member, body in members:
            archive.addfile(member, io.BytesIO(body))
    return path


def member(name, kind=tarfile.REGTYPE, link="", body=b"planted"):
    made = tarfile.TarInfo(name)
    made.type, made.linkname, made.size = kind, link, len(body) if kind == tarfile.REGTYPE else 0
    return made, body


def everything(folder):
    return {p.relative_to(folder).as_posix(): p.read_bytes() for p in folder.rglob("*") if p.is_file()}


@pytest.mark.parametrize(
    "planted",
    [
        member("../outside"), member("/tmp/outside-of-it"), member("data/../../outside"),
        member("data/vapid.pem", tarfile.SYMTYPE, "../database"), member("data/photos", tarfile.SYMTYPE, ".."),
        member("data/revoked.jsonl", tarfile.LNKTYPE, "database"), member("data/pipe", tarfile.FIFOTYPE),
        member("data/null", tarfile.CHRTYPE),
    ],
    ids=lambda planted: planted[0].name,
)  # fmt: skip
def test_an_archive_with_links_devices_or_ways_out_is_refused_whole(tmp_path, kept, planted):
    settings, members = kept
    before = everything(tmp_path)
    archive = packed(tmp_path / "crafted.tar.gz", [planted, *members])
    with pytest.raises(CannotKeep, match="does not belong"):
        restore(settings, archive)
    archive.unlink()

    assert everything(tmp_path) == before


def test_what_no_backup_holds_stays_in_the_archive(tmp_path, kept):
    settings, members = kept
    odd = [
        member("data/marks/x.json"), member("data/broodshelf.service"), member("run"), member("data/photos/x/y.jpg"),
        member(f"data/photos/019dd000-0000-7000-8000-000000000001/{'0' * 64}\n.jpg"),
    ]  # fmt: skip
    restore(settings, packed(tmp_path / "crafted.tar.gz", [*odd, *members]))

    assert not [name for name, body in everything(tmp_path / "data").items() if body == b"planted"]


@pytest.mark.parametrize(
    "manifest", [b"", b"[]", b"{", b"[" * 10**5, b'{"format": 1e999}', b"\xff", b'{"format": 9}']
)
def test_a_damaged_manifest_is_refused_in_words(tmp_path, kept, manifest):
    settings, members = kept
    others = [each for each in members if each[0].name != "manifest.json"]
    with pytest.raises(CannotKeep, match="backup"):
        restore(settings, packed(tmp_path / "x.tar.gz", [member("manifest.json", body=manifest), *others]))


def test_damage_anywhere_in_an_archive_is_refused_in_words_and_changes_nothing(
    tmp_path, kept, monkeypatch, capsys
):
    settings, _members = kept
    monkeypatch.setenv("BROODSHELF_DATA", str(settings.data))
    database = (settings.data / "broodshelf.sqlite3").read_bytes()
    sound = (tmp_path / "kept.tar.gz").read_bytes()
    for at in range(0, len(sound), max(1, len(sound) // 12)):
        damaged = bytearray(sound)
        damaged[at : at + 40] = bytes(40)
        (tmp_path / "damaged.tar.gz").write_bytes(damaged)
        status = main(["restore", str(tmp_path / "damaged.tar.gz")])
        said = capsys.readouterr().err

        assert "Traceback" not in said
        assert (status, said.startswith("broodshelf: ")) in {(2, True), (0, False)}
        if status:
            assert (settings.data / "broodshelf.sqlite3").read_bytes() == database


def test_an_archive_that_the_disk_has_no_room_for_is_refused_before_it_is_unpacked(
    tmp_path, kept, monkeypatch
):
    settings, members = kept
    monkeypatch.setattr("broodshelf.keeping.backup.shutil.disk_usage", lambda _: type("", (), {"free": 1000}))
    with pytest.raises(CannotKeep, match="more than the disk has free"):
        restore(settings, packed(tmp_path / "x.tar.gz", members))


def test_lines_of_the_revoked_that_are_damaged_are_carried_over_as_they_are(tmp_path, kept):
    settings, members = kept
    (settings.data / "revoked.jsonl").write_bytes(b'{"a": 1}\n\xff\xfe\n')
    restore(
        settings, packed(tmp_path / "x.tar.gz", [member("data/revoked.jsonl", body=b"\x00\n{}\n"), *members])
    )

    assert (settings.data / "revoked.jsonl").read_bytes() == b'\x00\n{}\n{"a": 1}\n\xff\xfe\n'
