"""Tube labels: drawn on the phone, seen by a camera or typed, they open the colony's log without a connection."""

from __future__ import annotations

from pathlib import Path

import pytest
import segno
from playwright.sync_api import Page, Playwright, expect
from tests.phone.conftest import claim, worker_ready
from tests.phone.test_story import go
from tests.support.chromium import ARGUMENTS, CHROMIUM
from tests.support.words import labelled, text

pytestmark = pytest.mark.browser

FRAME_PX = 480


def code_on_the_label(page: Page, url: str) -> str:
    page.goto(f"{url}/#/labels")
    code = page.get_by_role("listitem").filter(has_text="Amber").locator(".code").inner_text()
    assert len(code) == 5
    return code


def film_of(text: str, path: Path) -> None:
    """Write a short YUV4MPEG2 film of a QR code, as the camera of Chromium's tests reads it."""
    matrix = [list(row) for row in segno.make(text, error="m").matrix_iter(scale=8, border=4)]
    side = len(matrix)
    offset = (FRAME_PX - side) // 2
    light, dark = 235, 16  # the ends of the video range, ITU-R BT.601
    luma = bytearray([light]) * (FRAME_PX * FRAME_PX)
    for y, row in enumerate(matrix):
        for x, module in enumerate(row):
            if module:
                luma[(y + offset) * FRAME_PX + x + offset] = dark
    frame = b"FRAME\n" + bytes(luma) + bytes([128]) * (FRAME_PX * FRAME_PX // 2)
    path.write_bytes(f"YUV4MPEG2 W{FRAME_PX} H{FRAME_PX} F10:1 Ip A1:1 C420\n".encode() + frame * 4)


def test_a_code_typed_without_a_connection_opens_that_colonys_log(phone, server):
    page = phone()
    claim(page, server)
    code = code_on_the_label(page, server.url)
    worker_ready(page)
    page.context.set_offline(True)
    go(page, server, "#/at")
    page.get_by_label(text("label-typed")).fill(f" {code[:2].lower()}-{code[2:].lower()} ")
    page.get_by_role("button", name=text("label-open")).click()
    expect(page.get_by_role("dialog", name=labelled(text("event-kind-feeding"), "Amber"))).to_be_visible()
    page.get_by_role("button", name=text("log-go")).click()

    expect(page.get_by_text(text("saving-waiting", count=1))).to_be_visible()
    expect(
        page.get_by_role("region", name=text("colony-diary")).get_by_role("listitem").first
    ).to_contain_text(text("round-by", who="Mira"))


@pytest.mark.without_worker
def test_a_code_of_another_shelf_says_so_and_opens_nothing(phone, server):
    page = phone()
    claim(page, server)
    go(page, server, "#/at/00000")

    expect(page.get_by_text(text("label-unknown"))).to_be_visible()
    expect(page.get_by_role("dialog")).to_have_count(0)


def test_a_label_before_the_camera_opens_that_colonys_log_without_a_connection(
    playwright: Playwright, server, tmp_path
):
    film = tmp_path / "label.y4m"
    film_of("not a label of ours", film)
    browser = playwright.chromium.launch(
        executable_path=str(CHROMIUM),
        args=[
            *ARGUMENTS, "--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream",
            f"--use-file-for-fake-video-capture={film}",
        ],
    )  # fmt: skip
    try:
        page = browser.new_page(viewport={"width": 390, "height": 844})
        page.set_default_timeout(15_000)
        claim(page, server)
        film_of(f"{server.url}/#/at/{code_on_the_label(page, server.url)}", film)
        worker_ready(page)
        page.context.set_offline(True)
        go(page, server, "#/at")
        page.get_by_role("button", name=text("label-start")).click()

        expect(page.get_by_role("dialog", name=labelled(text("event-kind-feeding"), "Amber"))).to_be_visible()
    finally:
        browser.close()
