"""Each step of a how-to has a drawing on the phone, and a drop on paper is as wide as its volume says."""

from __future__ import annotations

import re
from pathlib import Path

from tests.support.node_tests import run_node_tests

from broodshelf.care.plan import steps
from broodshelf.languages import say
from broodshelf.model.needs import FAULTS
from broodshelf.model.tasks import TASKS

PHONE = Path(__file__).parents[2] / "pwa"


def all_steps() -> set[str]:
    lists = [value for name, value in vars(steps).items() if name.isupper() and isinstance(value, tuple)]
    told = {code for each in lists for code in each}
    told |= {code for code in steps.PLACES.values() if code is not None}
    told |= {code for row in TASKS.values() for code in row.steps}
    for nest in (
        steps.of_nest(2.0, fills=True),
        steps.of_nest(None, fills=True),
        *map(steps.of_fault, FAULTS),
    ):
        told |= {each["code"] for each in nest}
    return told


def test_every_step_has_a_drawing_and_words_and_nothing_is_drawn_for_no_step():
    drawn = set(
        re.findall(r"^  (\w+): \[", (PHONE / "components/how-to-drawings.js").read_text(), re.MULTILINE)
    )

    assert all_steps() | {"helper_dead"} == drawn
    for code in drawn:
        message = f"reason-{code.replace('_', '-')}"
        assert say("en", message, {"ml": 2}) != message


def test_a_drop_lies_as_wide_as_half_a_ball_of_its_volume(tmp_path):
    """Half a ball holds 2/3 π r³ (Archimedes): 50 µL are 5.76 mm wide."""
    module = (PHONE / "components/true-size.js").read_text()
    formula = re.search(r"export const dropWidthMm = .*;", module)
    assert formula
    script = tmp_path / "drop.test.mjs"
    script.write_text(
        "import assert from 'node:assert'; import { test } from 'node:test';\n"
        f"{formula[0]}\n"
        "test('half a ball', () => {\n"
        "  for (const ul of [20, 50, 1000]) {\n"
        "    const r = dropWidthMm(ul) / 2;\n"
        "    assert.ok(Math.abs((2 / 3) * Math.PI * r ** 3 - ul) < 1e-6);\n"
        "  }\n"
        "  assert.equal(dropWidthMm(50).toFixed(2), '5.76');\n"
        "});\n"
    )
    run_node_tests(script)
