"""Proposed dots on rendered tubes. Seeds below 1,000 were used for choosing constants nowhere."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from tests.support.dots import fit, run
from tests.support.node_tests import run_node_tests
from tests.support.rendered_tubes import Rendered, Scene, render

THRESHOLD = 0.5


def proposed(drawn: Rendered, what: str = "worker", **told) -> list[tuple[float, float]]:
    pixels = np.asarray(drawn.image.convert("L"))
    [answer] = run([(pixels, {"body_px": drawn.body_px, **told})], "propose")
    return [
        (dot["x"], dot["y"]) for dot in answer["made"] if dot["what"] == what and dot["score"] >= THRESHOLD
    ]


def test_the_phones_pure_modules_hold_what_they_promise():
    run_node_tests(Path(__file__).with_name("run_counting.mjs"))


@pytest.mark.parametrize(
    ("ants", "body_px", "most_off"), [(5, 44, 0.2), (20, 40, 0.15), (60, 30, 0.1), (150, 22, 0.1)]
)
def test_a_tube_is_counted_as_it_comes(ants, body_px, most_off):
    drawn = render(Scene(ants, seed=ants, body_px=body_px, width_px=960, height_px=640))
    found = fit(proposed(drawn), drawn.ants, 0.45 * body_px)

    assert found.recall >= 0.94
    assert found.false <= max(1, 0.1 * ants)
    assert abs(found.error) <= most_off


def test_an_empty_tube_with_glare_cotton_and_scratches_has_few_dots():
    drawn = render(Scene(ants=3, seed=77, body_px=36, scratches=12, glare=6, width_px=960, height_px=640))
    found = fit(proposed(drawn), drawn.ants, 16)

    assert found.missed == 0
    assert found.false <= 2


def test_a_frame_leaves_out_what_lies_outside():
    drawn = render(Scene(ants=40, seed=8, body_px=32, width_px=960, height_px=640))
    frame = {"left": 300, "top": 150, "right": 620, "bottom": 500}
    inside = [
        (x, y)
        for x, y in drawn.ants
        if frame["left"] + 16 < x < frame["right"] - 16 and frame["top"] + 16 < y < frame["bottom"] - 16
    ]
    dots = proposed(drawn, frame=frame)

    assert len(inside) >= 3
    assert all(frame["left"] <= x <= frame["right"] and frame["top"] <= y <= frame["bottom"] for x, y in dots)
    assert fit(dots, inside, 14).recall >= 0.85


def test_pale_brood_on_a_dark_ground_is_proposed_apart_from_workers():
    drawn = render(
        Scene(
            ants=12, seed=21, body_px=40, brood=15, dark_ground=True, crowded=0.2, width_px=960, height_px=640
        )
    )
    grains = fit(proposed(drawn, "brood"), drawn.brood, 14)

    assert grains.recall >= 0.7
    assert fit(proposed(drawn), drawn.brood, 6).right == 0


def test_ants_paler_than_their_ground_are_found_where_the_keeper_says_so_and_only_there():
    drawn = render(
        Scene(
            ants=30,
            seed=63,
            body_px=36,
            dark_ground=True,
            pale_ants=True,
            crowded=0.3,
            width_px=960,
            height_px=640,
        )
    )
    inside = {"left": 170, "top": 110, "right": 800, "bottom": 530}  # neither walls nor cotton
    found = fit(proposed(drawn, frame=inside, pale=True), drawn.ants, 16)

    assert found.recall >= 0.85
    assert found.false <= 8  # glare, which lies among them
    assert fit(proposed(drawn, frame=inside), drawn.ants, 9).recall <= 0.3
    assert proposed(drawn, "brood", frame=inside, pale=True) == []
