"""What the server says over HTTP comes in the language that the request asks for."""

from __future__ import annotations

import pytest
from tests.nudges.test_languages import not_translated
from tests.people.support import apply

from broodshelf import errors
from broodshelf.languages.phones_file import names_of
from broodshelf.languages.pseudo import PSEUDO
from broodshelf.languages.saying import knows

PROBLEMS = [
    each for each in vars(errors).values() if isinstance(each, type) and issubclass(each, errors.Problem)
]


@pytest.mark.parametrize("kind", PROBLEMS, ids=lambda kind: kind.__name__)
def test_every_kind_of_problem_has_a_title_which_is_its_first_line(kind):
    assert knows(kind.title_id())
    if kind is not errors.Problem:
        assert kind().body()["title"] == kind.__doc__.strip().splitlines()[0]


def test_a_problem_is_told_in_the_language_of_the_request(browser):
    english = browser().get("/api/me").json
    other = browser().get("/api/me", **{"Accept-Language": f"{PSEUDO}, en;q=0.5"}).json

    assert english["detail"]
    assert other["code"] == english["code"]
    assert not not_translated(other["detail"] + other["title"])


def test_what_a_form_lacks_is_told_in_the_language_of_the_request(keeper):
    answer = keeper.client.post(
        "/api/reckon/sugar_water",
        json={"percent": 99},
        headers={"Sec-Fetch-Site": "same-origin", "Accept-Language": PSEUDO},
    )

    assert answer.status_code == 400
    assert not not_translated(answer.json["detail"].replace("% by mass", ""))


def test_calculators_ask_and_answer_in_the_language_of_the_request(keeper):
    asked = keeper.get("/api/reckon", **{"Accept-Language": PSEUDO}).json["calculators"]

    for each in asked:
        assert not not_translated(each["title"] + each["formula"] + each["limits"])
        assert not [one["what"] for one in each["inputs"] if not_translated(one["what"])]


def test_each_language_has_its_file_among_those_of_the_build(app, browser):
    shell = app.extensions["broodshelf"].shell
    there = [name for name in shell.files if name.endswith(".ftl")]
    ahead = shell.ahead["files"]

    assert {*names_of("en").values()} <= {*there}
    assert not [name for name in ahead if name.endswith(".ftl")]  # a phone keeps its own language only
    for name in [*there, *names_of(PSEUDO).values()]:
        answer = browser().get(f"/static/{shell.build}/{name}")
        assert answer.status_code == 200
        assert answer.content_type == "text/plain; charset=utf-8"
        assert ("reason-leak=" in answer.text) == name.endswith("/first.ftl")
        assert "#" not in answer.text


def test_a_calculator_answers_in_the_units_of_whoever_asks(keeper):
    asked = {"percent": 25, "ml": 100}
    de = {"Accept-Language": "de"}
    before = keeper.client.post("/api/reckon/sugar_water", json=asked, headers={**SAME, **de}).json["lines"]
    apply(keeper, "person", {"volumes": "floz", "degrees": "f"}, keeper.me["person_id"])
    after = keeper.client.post("/api/reckon/sugar_water", json=asked, headers={**SAME, **de}).json["lines"]

    assert "fl oz" not in " ".join(before)
    assert "3,4\u00a0fl oz (100\u00a0mL)" in " ".join(after)
    assert "68\u00a0°F" in " ".join(after)


SAME = {"Sec-Fetch-Site": "same-origin"}
