"""docs/care-model.md shows what the code does today."""

from __future__ import annotations

from pathlib import Path

from tests.bench.census_pictures import PICTURE, picture
from tests.care.plan_examples import rows

PAGE = (Path(__file__).parents[2] / "docs/care-model.md").read_text("utf-8")


def test_the_worked_plans_are_what_the_code_makes():
    assert "\n".join(rows()) in PAGE


def test_the_drawing_of_a_founding_is_what_the_code_draws():
    assert PICTURE.read_text("utf-8") == picture()
