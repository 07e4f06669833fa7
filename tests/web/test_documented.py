"""What the pages show is what a server takes and gives: operations, answers, a sensor's line, Prometheus' lines."""

from __future__ import annotations

import re
import shlex

import pytest
import yaml
from tests.support.examples import ROOT, indented_example, inline_json, json_examples
from tests.support.households import HAPPENED
from tests.web.test_sensors import Sensor, place_of

from broodshelf.settings import from_environment


def test_the_operation_and_the_answer_that_the_page_on_sync_shows_are_a_servers(keeper):
    shown_operation, shown_request, shown_answer = json_examples("sync.md")[:3]
    operation = keeper.op("colony", {"name": "Amber"})

    renamed = {**keeper.op("colony", {"name": "Umber"}, operation["id"]), "made_at": operation["made_at"] + 1}

    answer = keeper.sync(operation, renamed).get_json()

    assert set(shown_operation) == set(operation) | {"adopt"}
    asked = {**shown_request, "device": keeper.me["device_id"], "epoch": None, "cursor": None}
    assert keeper.post("/api/sync", asked).status_code == 200
    assert set(shown_answer) == set(answer)
    assert set(answer["answers"][0]) <= set(shown_answer["answers"][0])
    row = next(row for row in answer["rows"] if row["id"] == operation["id"])
    assert set(row) == set(shown_answer["rows"][0])


def test_the_plan_that_the_page_on_http_shows_has_the_fields_of_a_plan(keeper):
    shown = next(example for example in json_examples("http-api.md") if "gauges" in example)

    answer = keeper.sync(keeper.op("colony", {"name": "Amber", "species_code": "lasius_niger"})).get_json()

    plan = next(row for row in answer["rows"] if row["kind"] == "plan")["set"]
    assert set(shown) == set(plan)
    assert set(shown["gauges"][0]) == set(plan["gauges"][0])
    assert set(shown["tasks"][0]) == set(plan["tasks"][0])


def answers_to_a_question() -> list[dict]:
    """The logs with which a keeper answers what the census asks, as the page on the plan gives them."""
    page = (ROOT / "docs/http-api.md").read_text()
    text = page[page.index("`asks`: the brood") : page.index("`why`: the observations")]
    yes, not_yet, cannot_see = inline_json(text)
    return [yes, {**yes, "set": not_yet}, cannot_see]


@pytest.mark.parametrize("log", answers_to_a_question(), ids=["yes", "not yet", "cannot see"])
def test_the_answers_that_the_page_gives_to_the_question_for_brood_are_taken(keeper, log):
    colony = keeper.op("colony", {"name": "Amber", "species_code": "lasius_niger", "stage": "founding"})
    answer = keeper.op(log["kind"], {"colony_id": colony["id"], "happened_at": HAPPENED, **log["set"]})

    verdicts = [each["verdict"] for each in keeper.sync(colony, answer).get_json()["answers"]]

    assert verdicts == ["applied", "applied"]


def test_the_line_that_sends_a_reading_is_taken_as_the_page_shows_it(keeper):
    """curl's -H and -d as its manual has them; the token comes from the variable that the page names."""
    line = shlex.split(indented_example("sensors.md", "curl ").replace("\\\n", " "))
    url = next(word for word in line if word.startswith("https://"))
    headers = dict(line[n + 1].split(": ") for n, word in enumerate(line) if word == "-H")
    sensor = Sensor(keeper, place_of(keeper))
    headers["Authorization"] = headers["Authorization"].replace("$TOKEN", sensor.token)

    path = re.sub(r"https://[^/]+", "", url)
    answer = sensor.client.post(path, data=line[line.index("-d") + 1], headers=headers)

    assert answer.get_json() == {"stored": 1, "known": 0, "refused": []}


def test_prometheus_finds_the_numbers_where_the_page_sends_it(keeper):
    """Prometheus asks for /metrics of each target unless it is told otherwise (its page "Configuration")."""
    (job,) = yaml.safe_load(indented_example("self-hosting.md", "scrape_configs"))["scrape_configs"]
    (targets,) = job["static_configs"]
    settings = from_environment({})

    assert set(job) == {"job_name", "static_configs"}
    assert targets == {"targets": [f"{settings.host}:{settings.port}"]}
    assert keeper.client.get("/metrics", environ_base={"REMOTE_ADDR": settings.host}).status_code == 200


def test_the_numbers_that_the_page_explains_are_there(keeper):
    page = (ROOT / "docs/self-hosting.md").read_text()
    explained = set(re.findall(r"`(broodshelf_\w+)`", page))
    told = keeper.client.get("/metrics", environ_base={"REMOTE_ADDR": "127.0.0.1"}).text

    assert "broodshelf_due_to_accepted_seconds" in explained
    assert {name for name in explained if f"# TYPE {name.removesuffix('_total')}" not in told} == set()
