"""fixtures/conformance against Python, and against the phone's modules under Node."""

from __future__ import annotations

import json
from dataclasses import asdict
from pathlib import Path

import pytest
from tests.care.gauges_by_event import apply_event
from tests.care.round_cases import round_cases
from tests.support.node_tests import run_node_tests

from broodshelf.care import catalogue
from broodshelf.care.calculators import CALCULATORS
from broodshelf.care.feeding.food_origin import origin_verdict
from broodshelf.care.feeding.sugar_water import WATER_G_PER_ML, recipe
from broodshelf.model.facts import Event
from broodshelf.model.gauges import Gauge, due_at_ms, level_at

ROOT = Path(__file__).parents[2]


def vectors(name: str) -> dict:
    return json.loads((ROOT / f"fixtures/conformance/{name}.json").read_text())


GAUGES = vectors("gauges")


@pytest.mark.parametrize("case", GAUGES["cases"], ids=lambda case: case["name"])
def test_gauge(case):
    gauge = Gauge(**{**GAUGES["gauge"], "reasons": (), **case["change"]})
    for number, event in enumerate(case["events"]):
        logged = Event(f"e{number}", event["kind"], event["happened_ms"], event["values"])
        gauge = apply_event(gauge, logged)

    assert case["level"] == level_at(gauge, case["at_ms"])
    assert case["due_at_ms"] == due_at_ms(gauge)


@pytest.mark.parametrize(
    "case", vectors("origin")["cases"], ids=lambda case: f"{case['origin']} {case['today']}"
)
def test_origin(case):
    got = origin_verdict(case["origin"], got_on=case["got_on"], today=case["today"])

    assert (case["verdict"], case["until"]) == (got.verdict, got.until)


@pytest.mark.parametrize("case", vectors("mixing")["cases"], ids=lambda case: f"{case['percent_ww']} %")
def test_mixing(case):
    mass_g = case["sugar_g"] * 100 / case["percent_ww"]
    made = recipe(case["percent_ww"], mass_g=mass_g)

    assert made.sweet_g == pytest.approx(case["sugar_g"], rel=0.001)
    assert made.water_g / WATER_G_PER_ML == pytest.approx(case["water_ml"], rel=0.001)
    assert made.volume_ml == pytest.approx(case["total_ml"], rel=0.001)


def test_the_phone_passes_the_same_vectors(tmp_path):
    (tmp_path / "catalogue.json").write_text(json.dumps(catalogue.as_json()))
    (tmp_path / "plans.json").write_text(json.dumps(round_cases()))
    asked = [{"calculator": code, **asdict(one)} for code, each in CALCULATORS.items() for one in each.inputs]
    (tmp_path / "inputs.json").write_text(json.dumps(asked))
    origins = [
        (code, food.origin or food.usual_origin, [food.origin] if food.origin else [*catalogue.origins()])
        for code, food in catalogue.foods().items()
    ]
    (tmp_path / "origins.json").write_text(json.dumps(origins))
    given = {
        name.upper(): str(tmp_path / f"{name}.json") for name in ("inputs", "catalogue", "plans", "origins")
    }
    run_node_tests(Path(__file__).with_name("run_vectors.mjs"), **given)
