"""docs/care-model/energy.md says what the code gives."""

from __future__ import annotations

from pathlib import Path

import pytest
from tests.bench.plan_learning import cell
from tests.care.appetite_simulation import share_within
from tests.care.energy_examples import table
from tests.support.said import words

DOC = (Path(__file__).parents[2] / "docs" / "care-model" / "energy.md").read_text("utf-8")


@pytest.mark.parametrize("line", table())
def test_the_worked_examples_are_those_of_the_code(line):
    assert line in DOC.splitlines()


def test_the_first_line_of_the_simulation_is_that_of_the_code():
    row = next(line for line in DOC.splitlines() if line.startswith("| as the learner believes |"))

    assert row.split("|")[2].strip() == f"{share_within(0.3):.0%}"
    assert row.split("|")[5].strip() == f"{share_within(1.0):.0%}"
    assert row.split("|")[8].strip() == f"{share_within(3.0):.0%}"


def test_every_reason_of_the_energetics_has_its_words():
    """The codes as they stand in the document's list."""
    codes = DOC.split("## Reason codes")[1].split("`")[1::2]

    assert len(codes) >= 15
    assert set(codes) <= set(words()["reason"])


@pytest.mark.parametrize("need", ["protein", "sugar"])
def test_a_line_of_the_whole_plan_simulation_is_that_of_the_code(need):
    """One cell of the table of ``tests.bench.plan_learning``: forty plans of 300 workers with the usual appetite."""
    row = next(line for line in DOC.splitlines() if line.startswith(f"| {need}, 300 |"))

    assert row.split("|")[3].strip() == cell(need, 300, 1.0)
