"""A picture taken at the shelf without a connection: small, freed of its place, sent later, seen elsewhere."""

from __future__ import annotations

import io
from pathlib import Path

import pytest
from PIL import Image
from playwright.sync_api import Page, expect
from tests.phone.between import between
from tests.phone.conftest import claim, open_colony, worker_ready
from tests.phone.test_story import go, online_again, pair
from tests.support.words import beginning, text

pytestmark = pytest.mark.browser

WAIT_SHOWN = """async (image) => {
  for (let tries = 0; tries < 200 && !(image.complete && image.naturalWidth); tries += 1) {
    await new Promise((done) => setTimeout(done, 50));
  }
  return [image.naturalWidth, image.naturalHeight];
}"""


def take(page: Page, picture: Path) -> None:
    page.get_by_label(text("photo-take")).set_input_files(picture)
    expect(page.get_by_role("region", name=text("photo-title")).locator("img")).to_have_count(1)


def test_a_picture_taken_offline_is_seen_at_once_and_on_the_other_phone_later(phone, server, picture):
    page = phone()
    claim(page, server)
    worker_ready(page)
    open_colony(page, server)
    colony = page.url.rpartition("#")[2]
    page.context.set_offline(True)
    take(page, picture)
    mine = page.get_by_role("region", name=text("photo-title")).locator("img")
    assert mine.evaluate(WAIT_SHOWN) == [1067, 1600]  # upright, the longest side 1,600 px
    page.reload()
    assert mine.evaluate(WAIT_SHOWN) == [1067, 1600]

    with between(page, "/api/photos/"):  # cut in the middle: again, whole
        page.context.set_offline(False)
        page.evaluate("() => window.dispatchEvent(new Event('online'))")
        expect(page.get_by_text(text("saving-offline"))).to_be_visible()
    online_again(page)
    kept = list((server.data / "photos").rglob("*.jpg"))
    other = phone()
    pair(other, page, server)
    go(other, server, f"#{colony}")
    theirs = other.get_by_role("region", name=text("photo-title")).locator("img")

    assert theirs.evaluate(WAIT_SHOWN) == [1067, 1600]
    assert len(kept) == 1
    assert kept[0].stat().st_size <= 300_000
    with Image.open(io.BytesIO(kept[0].read_bytes())) as sent:
        assert not sent.getexif()


@pytest.mark.without_worker
def test_a_file_that_is_no_picture_is_said_and_logs_nothing(phone, server, tmp_path):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    (tmp_path / "broken.jpg").write_bytes(b"not a picture")
    page.get_by_label(text("photo-take")).set_input_files(tmp_path / "broken.jpg")

    expect(page.get_by_text(text("photo-unreadable"))).to_be_visible()
    expect(page.get_by_role("region", name=text("photo-title")).locator("img")).to_have_count(0)
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()


@pytest.mark.without_worker
def test_a_picture_opens_large_and_stands_in_the_diary(phone, server, picture):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    take(page, picture)
    expect(page.get_by_role("region", name=text("colony-diary")).locator("img")).to_have_count(1)
    page.get_by_role("button", name=beginning("photo-large")).click()
    sheet = page.get_by_role("dialog")
    expect(sheet.get_by_role("img", name=beginning("photo-of", name="Amber"))).to_be_visible()
    sheet.get_by_role("button", name=text("photo-remove")).click()
    expect(page.get_by_role("region", name=text("photo-title")).locator("img")).to_have_count(0)
    page.get_by_role("status").get_by_role("button", name=text("round-undo")).click()
    expect(page.get_by_role("region", name=text("photo-title")).locator("img")).to_have_count(1)
    online_again(page)
