"""Blobs: the phone's differences of Gaussians against scikit-image, and open pictures with numbers that are known.

The pictures are those that scikit-image's package itself holds (skimage.data). coins: 24 Greek coins from Pompeii, in
four rows of six (Brooklyn Museum, no known copyright restrictions; counted by eye). chessboard_GRAY: 8 x 8 squares, so
32 dark ones by construction.
"""

from __future__ import annotations

import math
from pathlib import Path

import numpy as np
import pytest
from PIL import Image
from skimage import data
from skimage.feature import blob_dog, blob_log
from skimage.transform import resize
from tests.support.dots import fit, run
from tests.support.rendered_tubes import Scene, render

RATIO = 1.6
LEAST = 0.02
TUBE = Scene(ants=30, seed=5, body_px=30, width_px=480, height_px=320)


def pictures() -> dict[str, np.ndarray]:
    """Pictures in which what is looked for is bright, as bytes."""
    coins = data.coins()
    tube = np.asarray(render(TUBE).image.convert("L"))
    galaxies = (resize(data.hubble_deep_field(), (436, 500), anti_aliasing=True).mean(axis=2) * 255).astype(
        np.uint8
    )
    return {"coins": coins, "galaxies": galaxies, "retina": 255 - data.microaneurysms(), "tube": 255 - tube}


def ours(pixels: np.ndarray, low_px: float, high_px: float, ratio: float) -> list[tuple[float, float, float]]:
    told = {"low_px": low_px, "high_px": high_px, "ratio": ratio, "least": LEAST}
    [answer] = run([(pixels, told)], "blobs")
    return [(blob["x"], blob["y"], blob["sigma_px"]) for blob in answer["made"]]


def inside(
    blobs: list[tuple[float, float, float]], shape: tuple[int, ...], edge_px: float
) -> list[tuple[float, ...]]:
    return [b for b in blobs if edge_px <= b[0] < shape[1] - edge_px and edge_px <= b[1] < shape[0] - edge_px]


@pytest.mark.parametrize("name", ["coins", "galaxies", "retina", "tube"])
def test_the_same_blobs_are_found_as_by_scikit_image(name):
    """At least 97 of 100 each way within 1 px, and of these all but one in 50 at the same scale, away from the edge.

    The rest: blurs are cut off at three deviations here and at four there, and what lies at the threshold.
    """
    pixels = pictures()[name]
    theirs = blob_dog(
        pixels / 255,
        min_sigma=2,
        max_sigma=12,
        sigma_ratio=RATIO,
        threshold=LEAST,
        overlap=1,
        exclude_border=False,
    )
    sigmas = sorted({round(s, 3) for s in theirs[:, 2]})
    mine = ours(pixels, 2, max(sigmas), RATIO)
    edge_px = 6
    there = inside([(x, y, s) for y, x, s in theirs], pixels.shape, edge_px)
    here = inside(mine, pixels.shape, edge_px)
    places = fit([b[:2] for b in here], [b[:2] for b in there], 1.0)
    same_size = sum(
        any(abs(x - u) <= 1 and abs(y - v) <= 1 and s == pytest.approx(t, rel=0.01) for u, v, t in there)
        for x, y, s in here
    )

    assert len(there) >= 10
    assert places.recall >= 0.97
    assert places.precision >= 0.97
    assert same_size >= 0.95 * len(here)


def test_the_sizes_agree_with_the_laplacian():
    """skimage.feature.blob_log on round spots of known radius: both say sigma = radius / sqrt(2) within a step."""
    pixels = np.zeros((160, 400))
    rows, columns = np.mgrid[0:160, 0:400]
    radii = {(60, 80): 6, (160, 80): 9, (290, 80): 14}
    for (x, y), radius in radii.items():
        pixels[np.hypot(columns - x, rows - y) <= radius] = 1
    spots = (pixels * 255).astype(np.uint8)
    theirs = blob_log(pixels, min_sigma=3, max_sigma=14, num_sigma=23, threshold=0.2)
    mine = ours(spots, 3, 14, 1.2)

    for (x, y), radius in radii.items():
        found = max((b for b in mine if abs(b[0] - x) < 3 and abs(b[1] - y) < 3), key=lambda b: b[2])
        log = max(b[2] for b in theirs if abs(b[1] - x) < 3 and abs(b[0] - y) < 3)
        assert log == pytest.approx(radius / np.sqrt(2), rel=0.1)
        # a difference of blurs sigma and 1.2 sigma stands for a Laplacian between them
        assert found[2] * np.sqrt(1.2) == pytest.approx(log, rel=0.2)


def counted(pixels: np.ndarray, low_px: float, high_px: float, share: float) -> int:
    told = {"low_px": low_px, "high_px": high_px, "ratio": RATIO, "least": 0.01}
    [answer] = run([(pixels, told)], "blobs")
    plain = [b for b in answer["made"] if b["strength"] >= share * answer["made"][0]["strength"]]
    apart: list[dict[str, float]] = []  # a blob whose middle lies in a stronger one is part of it
    for b in plain:
        if all(math.hypot(a["x"] - b["x"], a["y"] - b["y"]) > math.sqrt(2) * a["sigma_px"] for a in apart):
            apart.append(b)
    return len(apart)


def test_twenty_four_coins_are_counted():
    assert 23 <= counted(data.coins(), 10, 26, 0.3) <= 25


def test_the_thirty_two_dark_squares_of_a_chessboard_are_counted():
    with Image.open(Path(data.__file__).with_name("chessboard_GRAY.png")) as board:
        squares = np.pad(255 - np.asarray(board.convert("L")), 25)  # nothing around it, as on a table

    assert counted(squares, 7, 12, 0.6) == 32
