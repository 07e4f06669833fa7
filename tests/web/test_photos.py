"""Pictures: only pixels are kept, once a hash, for whoever sees their record."""

from __future__ import annotations

import hashlib
import io
import os
import random
import threading
import time

import pytest
from PIL import Image
from tests.support.households import HAPPENED
from tests.support.serving import Serving
from tests.support.sockets import PATIENCE_S, Crowd, get, read_answer, status_of

from broodshelf.model.gauges import DAY_MS
from broodshelf.records.database import reading
from broodshelf.records.home.folder import FolderPictures
from broodshelf.records.ids import uuid7
from broodshelf.records.types import LAST_MS


def jpeg(size=(640, 480), exif: bool = False, seed: int = 1, kind: str = "JPEG") -> bytes:
    drawn, out = Image.new("RGB", size, (40, 80, seed)), io.BytesIO()
    options = {}
    if exif:
        data = Image.Exif()
        data[0x0112] = 6  # lies on its side
        data.get_ifd(0x8825)[2] = (48.0, 12.0, 0.0)  # where it was taken
        options["exif"] = data
    drawn.save(out, kind, **options)
    return out.getvalue()


def put(browser, record_id, body, media_type="image/jpeg"):
    return browser.client.put(
        f"/api/photos/{record_id}",
        data=body,
        content_type=media_type,
        headers={"Sec-Fetch-Site": "same-origin"},
    )


@pytest.fixture
def photo(keeper):
    """Log a picture of a colony; return its record's id."""

    def log(body: bytes, browser=keeper, colony_id: str | None = None) -> str:
        colony = keeper.op("colony", {"name": "Amber"})
        values = {
            "colony_id": colony_id or colony["id"],
            "happened_at": HAPPENED,
            "sha256": hashlib.sha256(body).hexdigest(),
            "width_px": 640,
            "height_px": 480,
        }
        made = keeper.op("photo", values)
        keeper.sync(*([] if colony_id else [colony]), made)
        return str(made["id"])

    return log


def test_a_picture_comes_back_upright_and_without_the_place_it_was_taken_at(keeper, photo):
    body = jpeg((640, 480), exif=True)
    record_id = photo(body)

    assert keeper.get(f"/api/photos/{record_id}").json["code"] == "not_sent_yet"
    assert put(keeper, record_id, body).json == {"stored": True}
    answer = keeper.get(f"/api/photos/{record_id}")
    with Image.open(io.BytesIO(answer.data)) as kept:
        assert kept.size == (480, 640)
        assert not kept.getexif()
    assert answer.content_type == "image/jpeg"


def test_sent_twice_it_is_kept_once(app, keeper, photo, tmp_path):
    body = jpeg()
    for record_id in (photo(body), photo(body)):
        assert put(keeper, record_id, body).status_code == 200
        assert put(keeper, record_id, body).status_code == 200

    assert len(list((tmp_path / "photos").rglob("*.jpg"))) == 1


@pytest.mark.parametrize(
    ("body", "media_type", "refusal"),
    [
        (b"", "image/jpeg", (400, "not_a_photo")),
        (b"<svg onload=alert(1)>", "image/jpeg", (400, "not_a_photo")),
        (jpeg(kind="PNG"), "image/jpeg", (400, "not_a_photo")),
        (jpeg()[:400], "image/jpeg", (400, "not_a_photo")),
        (jpeg((4000, 2100)), "image/jpeg", (400, "not_a_photo")),
        (jpeg(), "image/png", (415, "wrong_media_type")),
        (b"x" * 300_001, "image/jpeg", (413, "too_large")),
    ],
    ids=["empty", "svg", "png", "cut", "too many pixels", "other type", "too large"],
)
def test_what_is_no_photo_is_refused_and_not_kept(keeper, photo, tmp_path, body, media_type, refusal):
    answer = put(keeper, photo(body), body, media_type)

    assert (answer.status_code, answer.json["code"]) == refusal
    assert not list((tmp_path / "photos").rglob("*.*"))


def test_a_picture_that_arrived_damaged_is_refused(keeper, photo):
    assert put(keeper, photo(jpeg()), jpeg(seed=2)).json["code"] == "damaged_photo"


def test_only_who_sees_the_record_sees_the_picture(browser, keeper, photo):
    body = jpeg()
    record_id = photo(body)
    put(keeper, record_id, body)
    other = browser().claim("Ada")
    colony = keeper.op("colony", {"name": "Birch"})
    made = keeper.op(
        "pass",
        {"name": "G", "colony_ids": [colony["id"]], "starts_on": "2026-05-01", "ends_on": "2026-05-02"},
    )
    keeper.sync(colony, made)
    link = keeper.post(f"/api/passes/{made['id']}/link").json
    guest = browser()
    guest.me = guest.post("/api/passes/open", {"code": link["code"], "device": guest.device()}).json
    theirs = photo(body, colony_id=colony["id"])

    assert other.get(f"/api/photos/{record_id}").status_code == 404
    assert put(other, record_id, body).status_code == 404
    assert guest.get(f"/api/photos/{record_id}").status_code == 404
    assert guest.get(f"/api/photos/{theirs}").status_code == 200  # a picture of a colony of the pass


def test_pictures_without_a_record_go_after_four_hundred_days_and_others_stay(app, keeper, photo, clock):
    body = jpeg()
    put(keeper, photo(body), body)
    files = app.extensions["broodshelf"].photos
    household_id = keeper.me["household_id"]
    stray = jpeg(seed=3)
    files.keep(household_id, hashlib.sha256(stray).hexdigest(), stray)
    real_ms = time.time() * 1000
    with app.app_context(), reading() as connection:
        early = files.sweep(connection, round(real_ms) + 399 * DAY_MS)
        late = files.sweep(connection, round(real_ms) + 401 * DAY_MS)

    assert (early, late) == (0, 1)
    assert files.read(household_id, hashlib.sha256(body).hexdigest()) is not None


def test_what_another_process_writes_or_takes_away_meanwhile_is_no_picture_and_goes_when_it_was_left(
    tmp_path,
):
    pictures = FolderPictures(tmp_path)
    household_id, sha256 = uuid7(0), "a" * 64
    pictures.put(household_id, sha256, b"whole", 100)
    folder = tmp_path / household_id
    left, written = folder / "tmpleft", folder / "tmpwritten"
    for half in (left, written):
        half.write_bytes(b"half of a picture")
    os.utime(left, (1, 1))
    for renamed in (
        "tmpgone",
        f"{'b' * 64}.jpg",
    ):  # was listed, and is not there any more when it is looked at
        (folder / renamed).symlink_to("nowhere")

    assert pictures.size_bytes(household_id) == len(b"whole")
    assert list(pictures.older_than(LAST_MS)) == [(household_id, [sha256])]
    pictures.tidy(round(time.time() * 1000))
    assert (left.exists(), written.exists(), pictures.has(household_id, sha256)) == (False, True, True)


def test_random_bytes_never_break_it(keeper, photo):
    chance = random.Random(4)
    whole = bytearray(jpeg((64, 64)))
    for _ in range(25):
        body = bytearray(whole)
        for _ in range(6):
            body[chance.randrange(len(body))] = chance.randrange(256)
        assert put(keeper, photo(bytes(body)), bytes(body)).status_code in (200, 400)


def test_pictures_that_are_hard_to_read_leave_threads_for_everybody_else(app, keeper, photo, monkeypatch):
    body = jpeg()
    record_id = photo(body)
    gate, reading_one = threading.Event(), threading.Event()
    drawing = app.extensions["broodshelf"].photos._drawing

    def hard(_body: bytes) -> bytes:
        reading_one.set()
        gate.wait(PATIENCE_S)
        return body

    monkeypatch.setattr(drawing, "_ask", hard)
    cookie = keeper.client.get_cookie("broodshelf_session").value
    with Serving(app) as serving, Crowd(serving.port) as crowd:
        head = (
            f"PUT /api/photos/{record_id} HTTP/1.1\r\nHost: shelf\r\nSec-Fetch-Site: same-origin\r\n"
            f"Cookie: broodshelf_session={cookie}\r\nContent-Type: image/jpeg\r\nContent-Length: {len(body)}\r\n\r\n"
        )
        crowd.add(1, head.encode() + body)
        assert reading_one.wait(PATIENCE_S)
        crowd.add(12, head.encode() + body)
        others = [read_answer(connection) for connection in crowd.connections[1:]]
        well = status_of(get(serving.port, "/manifest.webmanifest"))
        gate.set()
        first = read_answer(crowd.connections[0])

    assert [status_of(answer) for answer in others] == [503] * 12
    assert all(b"Retry-After: 5" in answer for answer in others)
    assert (well, status_of(first)) == (200, 200)
