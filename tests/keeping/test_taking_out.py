"""A household leaves with its records and pictures and comes to another server with both."""

from __future__ import annotations

import hashlib
import io

import pytest
from PIL import Image
from tests.support.house import House

from broodshelf.cli import main


def picture(shade: int) -> bytes:
    body = io.BytesIO()
    Image.new("RGB", (8, 6), (shade, 0, 0)).save(body, "JPEG")
    return body.getvalue()


@pytest.mark.parametrize("target", ["taken.zip", "taken"])
def test_records_and_pictures_leave_and_arrive(house: House, tmp_path, monkeypatch, capsys, target):
    body = picture(90)
    sha256 = hashlib.sha256(body).hexdigest()
    phone = house.phone()
    colony = house.new_id()
    phone.write("colony", {"name": "Amber"}, colony)
    seen = {"colony_id": colony, "happened_at": "2026-05-01T12:00:00.000+00:00", "sha256": sha256}
    phone.write("photo", {**seen, "width_px": 8, "height_px": 6}, house.new_id())
    phone.sync()
    assert {each["verdict"] for each in phone.verdicts.values()} == {"applied"}
    house.app.extensions["broodshelf"].photos.keep(house.household_id, sha256, body)
    out = tmp_path / target
    assert main(["household", "export", house.household_id, str(out)]) == 0
    assert "1 pictures" in capsys.readouterr().out

    monkeypatch.setenv("BROODSHELF_DATA", str(tmp_path / "new"))
    monkeypatch.setenv("BROODSHELF_DATABASE_URL", f"sqlite:///{tmp_path / 'new' / 'x.sqlite3'}")
    assert main(["import", str(out), "--yes"]) == 0
    assert "added pictures: 1" in capsys.readouterr().out
    arrived = tmp_path / "new" / "photos" / house.household_id / f"{sha256}.jpg"
    with Image.open(arrived) as drawn:
        assert drawn.size == (8, 6)
    assert main(["import", str(out), "--yes"]) == 0
    assert "added pictures" not in capsys.readouterr().out


def test_pictures_do_not_go_into_one_json_document(house: House, tmp_path, capsys):
    assert main(["household", "export", house.household_id, str(tmp_path / "x.json")]) == 2
    assert "ends in .zip" in capsys.readouterr().err
