"""Counted from a picture: dots come by themselves, are put right by tap and key, and are kept with the picture."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from playwright.sync_api import Locator, Page, expect
from tests.phone.conftest import claim, open_colony, worker_ready
from tests.phone.inside import run, wait_synced
from tests.support.rendered_tubes import Scene, render
from tests.support.words import text

pytestmark = pytest.mark.browser

ANTS = 24
FORGET_PICTURES = """
  const { openStore } = await at('session');
  const { inTransaction } = await import(`/static/${document.body.dataset.build}/database/open.js`);
  await inTransaction(openStore().name, ['photos'], 'readwrite', (tx) => tx.objectStore('photos').clear());
"""


@pytest.fixture(scope="session")
def tube(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A rendered tube with 24 ants."""
    file = tmp_path_factory.mktemp("tubes") / "tube.jpg"
    render(Scene(ANTS, seed=3, body_px=56, crowded=0.2, scratches=2, glare=1)).image.save(file, quality=90)
    return file


def take(page: Page, picture: Path) -> None:
    page.get_by_label(text("photo-take")).set_input_files(picture)
    expect(page.get_by_role("region", name=text("photo-title")).locator("li img")).to_have_count(1)


def open_count(page: Page, label: str = "counting-open") -> Locator:
    page.locator(".photo-button").first.click()
    sheet = page.get_by_role("dialog")
    sheet.get_by_role("button", name=text(label)).click()
    expect(sheet.locator(".dot-sum strong")).to_be_visible(timeout=30_000)
    return sheet


def number(sheet: Locator) -> int:
    return int(re.match(r"\d+", sheet.locator(".dot-sum").inner_text())[0])


def tap(sheet: Locator, x: float, y: float) -> None:
    """Tap a place of the picture, in shares of its sides."""
    box = sheet.locator(".dot-stage").bounding_box()
    sheet.locator(".dot-stage").click(position={"x": x * box["width"], "y": y * box["height"]})


def kept(page: Page, kind: str) -> list[dict]:
    """What waits or was stored of a kind, as this phone holds it."""
    return page.evaluate(
        """async (kind) => {
          const [{ openStore }, { outbox }] = await Promise.all(['signals/session.js', 'signals/rows.js'].map((n) =>
            import(`/static/${document.body.dataset.build}/${n}`)));
          const waiting = outbox.peek().map((entry) => entry.op).filter((op) => op?.kind === kind);
          return [...(await openStore().ofKind(kind)), ...waiting].map((row) => row.set);
        }""",
        kind,
    )


def test_ants_are_counted_offline_put_right_kept_and_found_again(phone, server, tube):
    page = phone()
    claim(page, server)
    worker_ready(page)
    open_colony(page, server)
    page.context.set_offline(True)
    take(page, tube)
    sheet = open_count(page)
    proposed = number(sheet)
    assert abs(proposed - ANTS) <= 3

    tap(sheet, 0.1, 0.05)  # beside the tube: no ant, so a dot is set there
    expect(sheet.locator(".dot-sum")).to_contain_text(str(proposed + 1))
    tap(sheet, 0.1, 0.05)
    expect(sheet.locator(".dot-sum")).to_contain_text(str(proposed))
    tap(sheet, 0.1, 0.05)
    sheet.get_by_role("button", name=text("counting-keep")).click()
    expect(sheet.get_by_text(text("counting-kept"))).to_be_visible()

    [photo] = [row for row in kept(page, "photo") if row.get("dots")]
    [count] = [row for row in kept(page, "count") if row.get("photo_id")]
    assert photo["dots_number"] == count["workers"] == proposed + 1
    assert count["workers_at_least"] <= count["workers_low"] <= count["workers"] <= count["workers_high"]
    [drawn] = [dot[:2] for dot in photo["dots"] if dot[2] == 2]
    assert drawn == pytest.approx([1000, 500], abs=40)

    page.context.set_offline(False)
    page.reload()
    again = open_count(page, "counting-again")
    assert number(again) == proposed + 1


@pytest.mark.without_worker
def test_dots_are_stepped_through_moved_and_removed_by_keys_and_said_aloud(phone, server, tube):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    take(page, tube)
    sheet = open_count(page)
    before = number(sheet)
    stage = sheet.get_by_role("application")
    all_dots = re.search(r"\d+", stage.get_attribute("aria-label"))[0]
    stage.focus()
    page.keyboard.press("PageDown")
    said = sheet.locator("p[aria-live]")
    expect(said).to_contain_text(re.compile(rf"1 of {all_dots}"))
    page.keyboard.press("PageDown")
    expect(said).to_contain_text(re.compile(rf"2 of {all_dots}"))
    page.keyboard.press("Delete")
    expect(sheet.locator(".dot-sum")).to_contain_text(str(before - 1))
    page.keyboard.press("Enter")
    expect(sheet.locator(".dot-sum")).to_contain_text(str(before))
    page.keyboard.press("ArrowRight")
    page.keyboard.press("Backspace")
    expect(sheet.locator(".dot-sum")).to_contain_text(str(before - 1))
    assert sheet.locator("[role=status][aria-live=polite]").count() == 1


@pytest.mark.without_worker
def test_the_slider_filters_at_once_and_the_frame_leaves_out(phone, server, tube):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    take(page, tube)
    sheet = open_count(page)
    usual = number(sheet)
    slider = sheet.get_by_label(text("counting-plain"))
    slider.fill("0.9")
    strict = number(sheet)
    slider.fill("0.25")
    assert strict < usual <= number(sheet)
    slider.fill("0.5")
    sheet.get_by_role("button", name=text("counting-sets-frame")).click()
    corner = sheet.get_by_role("button", name=text("counting-corner", which="second"))
    corner.focus()
    for _ in range(40):
        page.keyboard.press("ArrowLeft")
    expect(sheet.locator(".dot-sum")).not_to_contain_text(str(usual))
    assert number(sheet) < usual


@pytest.mark.without_worker
def test_the_next_picture_begins_with_the_frame_and_two_pictures_are_a_strip(phone, server, tube):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    for turn in range(2):
        page.get_by_label(text("photo-take")).set_input_files(tube)
        expect(page.locator(".photo-button")).to_have_count(turn + 1)
        sheet = open_count(page)
        if turn == 0:
            sheet.get_by_role("button", name=text("counting-sets-frame")).click()
            sheet.get_by_role("button", name=text("counting-corner", which="first")).focus()
            page.keyboard.press("ArrowRight")
            page.keyboard.press("ArrowDown")
        sheet.get_by_role("button", name=text("counting-keep")).click()
        expect(sheet.get_by_text(text("counting-kept"))).to_be_visible()
        sheet.get_by_role("button", name=text("frame-close")).click()
    frames = [row["dots_frame"] for row in kept(page, "photo") if row.get("dots_frame")]
    assert frames[0] == frames[1] != [0, 0, 10_000, 10_000]

    page.get_by_text(text("counting-growth")).click()
    expect(page.locator(".dot-strip canvas")).to_have_count(2)
    with page.expect_download() as download:
        page.get_by_role("button", name=text("counting-strip")).click()
    assert download.value.suggested_filename == "broodshelf-growth.jpg"
    with page.expect_download(timeout=30_000) as film:
        page.get_by_role("button", name=text("counting-film")).click()
    assert re.fullmatch(r"broodshelf-growth\.(webm|mp4)", film.value.suggested_filename)
    assert Path(film.value.path()).stat().st_size > 2_000


@pytest.mark.without_worker
def test_a_count_whose_picture_does_not_come_is_shown_as_it_was_and_cannot_be_kept_again(phone, server, tube):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    take(page, tube)
    sheet = open_count(page)
    tap(sheet, 0.1, 0.05)
    counted = number(sheet)
    keep = sheet.get_by_role("button", name=text("counting-keep"))
    keep.click()
    expect(sheet.get_by_text(text("counting-kept"))).to_be_visible()
    sheet.get_by_role("button", name=text("frame-close")).click()
    wait_synced(page)
    run(page, FORGET_PICTURES)

    page.route("**/api/photos/*", lambda route: route.abort())
    open_count(page, "counting-again")
    expect(sheet.get_by_role("alert")).to_have_text(text("part-needs-server"))
    assert number(sheet) == counted
    expect(keep).to_be_disabled()

    sheet.get_by_role("button", name=text("frame-close")).click()
    page.unroute_all()
    page.route("**/api/photos/*", lambda route: route.fulfill(body="no picture", content_type="image/jpeg"))
    open_count(page, "counting-again")
    expect(sheet.get_by_role("alert")).to_have_text(text("counting-failed"))
    assert number(sheet) == counted
    expect(keep).to_be_enabled()  # it is there, and its dots can be set by hand
