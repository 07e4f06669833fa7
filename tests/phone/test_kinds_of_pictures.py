"""What a camera or a folder gives: JPEG turned any way, PNG, and what no browser here reads."""

from __future__ import annotations

import re
from pathlib import Path

import numpy as np
import pytest
from PIL import Image
from playwright.sync_api import Page, expect
from tests.phone.conftest import claim, open_colony
from tests.support.words import text

pytestmark = [pytest.mark.browser, pytest.mark.without_worker]

TURNED = {
    1: None,
    2: Image.Transpose.FLIP_LEFT_RIGHT,
    3: Image.Transpose.ROTATE_180,
    4: Image.Transpose.FLIP_TOP_BOTTOM,
    5: Image.Transpose.TRANSPOSE,
    6: Image.Transpose.ROTATE_90,
    7: Image.Transpose.TRANSVERSE,
    8: Image.Transpose.ROTATE_270,
}
"""By what an upright picture becomes one that the orientation of EXIF 2.3, tag 0x112, turns upright again."""
CORNERS = ["red", "green", "blue", "white"]
"""Of the upright picture, as one reads."""

SMALL = """async (address) => {
  const of = (name) => import(`/static/${document.body.dataset.build}/${name}`);
  const [{ smallOf }, { madeSmall }] = await Promise.all(['screens/taking.js', 'counting/small.js'].map(of));
  const file = await (await fetch(address)).blob();
  const seen = async ({ blob, width_px, height_px }) => {
    const picture = await createImageBitmap(blob);
    const pen = new OffscreenCanvas(width_px, height_px).getContext('2d');
    pen.drawImage(picture, 0, 0);
    const corners = [[0.1, 0.1], [0.9, 0.1], [0.1, 0.9], [0.9, 0.9]].map(([x, y]) => {
      const [r, g, b] = pen.getImageData(x * width_px, y * height_px, 1, 1).data;
      return r > 128 && g > 128 ? 'white' : r > 128 ? 'red' : g > 128 ? 'green' : 'blue';
    });
    return [picture.width, picture.height, corners];
  };
  return [await seen(await smallOf(file)), await seen((await madeSmall(file)).small)];
}"""
"""A picture made small, by the worker and by the page."""


def upright(width: int, height: int) -> Image.Image:
    """A picture whose four corners have colours of their own."""
    pixels = np.full((height, width, 3), 255, dtype=np.uint8)
    pixels[: height // 2, : width // 2] = (255, 0, 0)
    pixels[: height // 2, width // 2 :] = (0, 255, 0)
    pixels[height // 2 :, : width // 2] = (0, 0, 255)
    return Image.fromarray(pixels)


def made_small(page: Page, file: Path) -> list:
    """What the app makes of a file: width, height and corners, by the worker and by the page."""
    page.route(
        "**/a-picture", lambda route: route.fulfill(path=file, content_type=f"image/{file.suffix[1:]}")
    )
    made = page.evaluate(SMALL, "/a-picture")
    page.unroute("**/a-picture")
    return made


@pytest.fixture
def colony_page(phone, server) -> Page:
    """A phone that shows a colony."""
    page = phone()
    claim(page, server)
    open_colony(page, server)
    return page


def test_jpeg_of_every_orientation_is_kept_upright_large_or_small(colony_page, tmp_path):
    for width, height, kept in ((3600, 2400, [1600, 1067]), (600, 400, [600, 400])):
        picture = upright(width, height)
        for orientation, turn in TURNED.items():
            file = tmp_path / f"{width}-{orientation}.jpeg"
            exif = Image.Exif()
            exif[0x112] = orientation
            (picture.transpose(turn) if turn is not None else picture).save(file, quality=90, exif=exif)

            assert made_small(colony_page, file) == [[*kept, CORNERS]] * 2, (width, orientation)


def test_png_and_a_jpeg_that_claims_to_be_one_are_read(colony_page, tmp_path):
    plain = tmp_path / "plain.png"
    upright(2400, 1600).save(plain)
    named_wrongly = tmp_path / "other.png"
    upright(2400, 1600).save(named_wrongly, "JPEG")

    for file in (plain, named_wrongly):
        assert made_small(colony_page, file) == [[1600, 1067, CORNERS]] * 2


def test_heic_that_the_browser_cannot_read_is_refused_with_what_to_do_and_nothing_is_kept(
    colony_page, tmp_path
):
    page = colony_page
    picture = tmp_path / "ants.heic"
    picture.write_bytes(b"\x00\x00\x00\x18ftypheic\x00\x00\x00\x00mif1heic" + bytes(64))
    page.get_by_label(text("photo-take")).set_input_files(picture)

    expect(page.get_by_text(text("counting-heic"))).to_be_visible()
    expect(page.get_by_role("region", name=text("photo-title")).locator("img")).to_have_count(0)
    assert re.search("JPEG", text("counting-heic"))
    cut = tmp_path / "cut.jpeg"
    whole = tmp_path / "whole.jpeg"
    upright(2400, 1600).save(whole)
    cut.write_bytes(whole.read_bytes()[:700])
    page.get_by_label(text("photo-take")).set_input_files(cut)
    expect(page.get_by_text(text("photo-unreadable"))).to_be_visible()
    page.get_by_label(text("photo-take")).set_input_files(whole)
    expect(page.get_by_role("region", name=text("photo-title")).locator("img")).to_have_count(1)
