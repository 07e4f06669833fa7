"""The invented shelf says that it is invented and holds what it promises."""

from __future__ import annotations

import io
import json
import subprocess
from pathlib import Path

from PIL import Image
from tests.support.households import NOON_MS

from broodshelf.demo.fill import fill
from broodshelf.demo.pictures import HEIGHT_PX, WIDTH_PX, short_code, tube_picture
from broodshelf.model.kinds import KINDS
from broodshelf.model.tasks import SENSED
from broodshelf.records.database import reading, writing
from broodshelf.records.home.folder import FolderPictures
from broodshelf.records.photo_files import PhotoFiles
from broodshelf.records.store import read_kind, read_record
from broodshelf.sensing.sensors import sensors_of

PWA = Path(__file__).parents[2] / "pwa"


def test_the_invented_shelf_has_four_months_of_history_and_plans(bare_app, tmp_path):
    photos = PhotoFiles(FolderPictures(tmp_path / "photos"))
    with writing() as connection:
        filled = fill(connection, NOON_MS, "http://127.0.0.1:8080")
    household_id = filled.household_id
    filled.keep_pictures(photos)
    with reading() as connection:
        colonies = read_kind(connection, household_id, "colony")
        plans = {p.values["colony_id"]: p.values for p in read_kind(connection, household_id, "plan")}
        events = [name for name, kind in KINDS.items() if kind.group == "event"]
        logged = (record for name in events for record in read_kind(connection, household_id, name))
        log = sorted(logged, key=lambda record: record.happened_ms)
        household = read_record(connection, household_id, household_id)
        passes = read_kind(connection, household_id, "pass")
        places = read_kind(connection, household_id, "place")
        pictures = read_kind(connection, household_id, "photo")
    by_name = {c.values["name"]: c.id for c in colonies}
    tasks = {t["need"]: t for t in plans[by_name["Amber"]]["tasks"]}
    foods = {e.values.get("food_code") for e in log if e.colony_id == by_name["Old Oak"]}
    span_days = (log[-1].happened_ms - log[0].happened_ms) / 86_400_000

    assert household.values["invented"] is True
    assert len(colonies) == len(plans) == 5
    assert span_days > 115
    assert tasks["water"]["urgent"]  # the dry reservoir
    assert "ignored" in {e.values.get("outcome") for e in log if e.colony_id == by_name["Juniper"]}
    assert len(foods & {"cricket", "mealworm", "waxworm", "egg", "fruit_fly"}) == 5
    assert [p.values["name"] for p in passes] == ["Grandpa (invented)"]
    assert {c.values["place_id"] for c in colonies} == {place.id for place in places}
    assert len(plans[by_name["Old Oak"]]["tasting"]) == 5  # what it says of each food of the tasting
    assert len({picture.colony_id for picture in pictures}) == 2
    assert all(photos.read(household_id, picture.values["sha256"]) for picture in pictures)


def test_a_drawn_tube_is_a_picture_that_carries_the_code_under_which_its_label_is_found():
    colony_id = "01890000-0000-7000-8000-0000abcdef12"
    body = tube_picture(
        "1 · Amber", colony_id, 12, 0.5, f"http://127.0.0.1:8080/#/at/{short_code(colony_id)}"
    )

    assert Image.open(io.BytesIO(body)).size == (WIDTH_PX, HEIGHT_PX)
    assert body == tube_picture(
        "1 · Amber", colony_id, 12, 0.5, f"http://127.0.0.1:8080/#/at/{short_code(colony_id)}"
    )


def test_the_code_on_a_drawn_label_is_that_of_the_phone():
    """The same function in both languages, run side by side."""
    ids = ["01890000-0000-7000-8000-0000abcdef12", "019dd000-0000-7000-8000-000000000001"]
    script = (
        f"import {{ shortCode }} from '{(PWA / 'care/short-code.js').as_uri()}';"
        f"console.log(JSON.stringify({json.dumps(ids)}.map(shortCode)))"
    )
    told = subprocess.run(
        ["node", "--input-type=module", "-e", script], capture_output=True, text=True, check=True
    )

    assert json.loads(told.stdout) == [short_code(each) for each in ids]


def test_a_place_has_a_sensor_with_a_fortnight_that_is_over_and_no_alarm_now(bare_app, tmp_path):
    with writing() as connection:
        household_id = fill(connection, NOON_MS, "http://127.0.0.1:8080").household_id
    with reading() as connection:
        days = [record.values for record in read_kind(connection, household_id, "place_day")]
        plans = read_kind(connection, household_id, "plan")
        (sensor,) = sensors_of(connection, household_id)

    assert (
        len(days) == 14
    )  # 13 whole ones and the first, which began within it; the one that runs is not written
    assert max(day["high_c"] for day in days) > 33
    assert min(day["low_c"] for day in days) < 13
    assert "invented" in sensor.name
    assert not {task["what"] for plan in plans for task in plan.values["tasks"]} & SENSED
