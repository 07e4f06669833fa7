"""How warm a place was: drawn from its days, with what suits its colony, and the same figures in a table."""

from __future__ import annotations

import datetime as dt
import json
import urllib.request

import pytest
from playwright.sync_api import Page, expect
from tests.phone.conftest import claim, open_colony
from tests.phone.inside import wait_synced
from tests.phone.test_charts import log_counts
from tests.phone.test_places import add_place
from tests.phone.test_story import go
from tests.support.server import Server
from tests.support.words import beginning, like, text

pytestmark = pytest.mark.browser


def measure(page: Page, server: Server, days: int) -> None:
    """Give the only place a sensor that measured so many whole days: 20 °C by night, 26 °C by day, on one day 31 °C."""
    token = page.evaluate(
        """async () => {
          const at = (name) => import(`/static/${document.body.dataset.build}/${name}.js`);
          const [{ post }, { rowsOf }] = [await at('signals/people'), await at('signals/rows')];
          return (await post('/api/sensors', { place_id: rowsOf('place')[0].id, name: 'Board', unit: 'C' })).token;
        }"""
    )
    now = dt.datetime.now(dt.UTC)
    first = now.replace(hour=0, minute=0, second=0, microsecond=0) - dt.timedelta(days=days)
    hot = (now - dt.timedelta(days=3)).date()
    readings = []
    for hour in range(24 * days + now.hour + 1):
        at = first + dt.timedelta(hours=hour)
        by_day = 31 if at.date() == hot else 26
        warmth = by_day if 6 <= at.hour < 18 else 20
        readings.append({"at_s": int(at.timestamp()), "temperature": warmth, "humidity": 48})
    body = json.dumps({"readings": readings}).encode()
    heads = {"Authorization": f"Bearer {token}", "Content-Type": "application/json"}
    urllib.request.urlopen(urllib.request.Request(f"{server.url}/api/readings", body, heads))
    server.stop()
    server.start()  # its first tick writes the days that are over
    page.reload()
    expect(page.locator("main:not(.plain) h1").first).to_be_visible()


def set_up_cabinet(page: Page, server: Server) -> None:
    """Add a place that is set to 25 °C; the server knows it, too."""
    add_place(page, server, "Bookcase", "25")
    expect(page.get_by_text(text("place-day", warm="25 °C"))).to_be_visible()
    wait_synced(page)


def move_into_cabinet(page: Page, server: Server) -> None:
    """Add a place that is set to 25 °C, and let the only colony stand in it."""
    set_up_cabinet(page, server)
    open_colony(page, server)
    change = page.get_by_role("button", name=text("colony-change"))
    change.click()
    page.get_by_role("combobox", name=text("place-stands")).select_option("Bookcase")
    page.get_by_role("button", name=text("colony-form-save")).click()
    expect(change).to_be_visible()  # saved


def wait_for_days(page: Page) -> None:
    """Wait until the phone has the days that the server wrote."""
    page.wait_for_function(
        """async () => {
          const at = (name) => import(`/static/${document.body.dataset.build}/${name}.js`);
          const [{ openStore }, { syncNow }] = [await at('signals/session'), await at('signals/sync')];
          await syncNow();
          return (await openStore().ofKind('place_day')).length >= 9;
        }""",
        timeout=60_000,
    )


def open_chart(page: Page, server: Server) -> None:
    go(page, server, "#/places")
    page.get_by_role("button", name=text("place-chart")).click()


@pytest.mark.without_worker
def test_a_place_is_drawn_from_its_days_with_what_suits_its_colony_and_a_table(phone, server):
    page = phone()
    claim(page, server)
    move_into_cabinet(page, server)
    measure(page, server, days=10)
    wait_for_days(page)
    open_chart(page, server)
    chart = page.get_by_role("img", name=beginning("climate-temperature"))
    expect(chart).to_be_visible()
    page.get_by_text(text("part-table")).click()
    rows = [row.replace("\xa0", " ") for row in page.get_by_role("row").all_inner_texts()]
    told = (chart.get_attribute("aria-label") or "").replace("\xa0", " ")

    assert text("climate-summary", mean="?", low="20 °C", high="31 °C").partition("?")[2] in told
    expect(page.get_by_text(like("climate-comfort"))).to_be_visible()
    assert any(text("climate-basis-measured") in row and "31 °C" in row for row in rows)
    assert any(text("climate-basis-assumed") in row and "25 °C" in row for row in rows)
    page.get_by_role("button", name=text("climate-humidity")).click()
    expect(
        page.get_by_role(
            "img", name=f"{text('climate-humidity')}. {beginning('climate-summary', mean='48 %')}"
        )
    ).to_be_visible()
    page.get_by_role("button", name=text("climate-span-of-year")).click()
    expect(page.get_by_role("columnheader", name=text("climate-week"))).to_be_visible()


@pytest.mark.without_worker
def test_the_growth_of_a_colony_has_the_warmth_of_its_place_behind_it(phone, server):
    page = phone()
    claim(page, server)
    colony_id = page.url.rpartition("/")[2]
    move_into_cabinet(page, server)
    now = dt.datetime.now(dt.UTC)
    log_counts(
        page, colony_id, {(now - dt.timedelta(days=ago)).isoformat(): n for ago, n in ((12, 20), (0, 24))}
    )
    measure(page, server, days=10)
    wait_for_days(page)
    go(page, server, f"#/colony/{colony_id}")
    page.get_by_text(text("colony-charts")).click()

    chart = page.get_by_role("img", name=text("chart-growth-words", first=20, last=24))
    expect(chart.locator("path.trough")).to_have_count(1)
    told = (chart.get_attribute("aria-label") or "").replace("\xa0", " ")
    assert text("chart-behind", low="23 °C", high="25.5 °C") in told


@pytest.mark.without_worker
def test_without_a_sensor_a_place_shows_what_is_set_as_assumed(phone, server):
    page = phone()
    claim(page, server)
    add_place(page, server, "Bookcase", "25")
    open_chart(page, server)

    chart = page.get_by_role(
        "img", name=f"{text('climate-temperature')}. {beginning('climate-summary', mean='25 °C')}"
    )
    expect(chart).to_be_visible()
    expect(chart.locator("path.guess")).to_have_count(1)
    expect(chart.locator("path.band")).to_have_count(0)
    page.get_by_role("button", name=text("climate-humidity")).click()
    expect(page.get_by_text(text("climate-nothing"))).to_be_visible()


@pytest.mark.without_worker
def test_a_file_of_a_sensor_is_looked_at_and_taken_in_and_saved_again(phone, server, tmp_path):
    page = phone()
    claim(page, server)
    set_up_cabinet(page, server)
    table = tmp_path / "log.csv"
    table.write_text(
        "Taken at;Degrees;Damp\n05.01.2026 12:00;21,5;40\n05.01.2026 12:30;22,5;42\nsoon;20;40\n"
    )
    page.get_by_role("button", name=text("place-sensors")).click()
    page.get_by_role("button", name=text("sensor-file")).click()
    page.get_by_label(text("climate-file")).set_input_files(table)
    page.get_by_label(text("climate-humidity-column")).select_option("Damp")
    page.get_by_role("button", name=text("climate-date-form-dmy")).click()
    page.get_by_role("button", name=text("climate-look")).click()
    seen = page.get_by_role("status").filter(has_text=like("climate-found", rows=2))
    expect(seen).to_contain_text(text("climate-range", low="21.5 °C", high="22.5 °C"))
    expect(seen).to_contain_text(text("climate-new-hours-all", hours=1))
    expect(seen).to_contain_text(
        text("climate-bad-line", line=4, why=text("problem-row-no-time", cell="soon"))
    )
    page.get_by_role("button", name=text("climate-take")).click()
    expect(page.get_by_text(text("climate-taken", hours=1))).to_be_visible()
    with page.expect_download() as download:
        page.get_by_role("link", name=text("climate-give-out")).click()
    saved = download.value.path().read_text().splitlines()

    assert saved[0] == "time,temperature_c,least_c,most_c,humidity_pct"
    assert saved[1].endswith(",22.0,21.5,22.5,41.0")
    assert len(saved) == 2
