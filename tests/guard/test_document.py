"""The doors of the views, docs/http-api.md, the table of the guard and the OpenAPI document say the same."""

from __future__ import annotations

import re

import pytest
from flask import Flask
from openapi_spec_validator import OpenAPIV31SpecValidator
from tests.guard.matrix import addresses_of, rows
from tests.support.http_table import PAGE, table, with_table
from tests.support.openapi import document

from broodshelf.model.kinds import KINDS
from broodshelf.web.guard import guarded_views


@pytest.fixture(scope="module")
def made(houses):
    return document(houses.app)


def test_the_document_is_openapi(made):
    assert [str(error) for error in OpenAPIV31SpecValidator(made).iter_errors()] == []


def test_the_table_of_the_page_is_the_one_that_the_doors_of_the_views_make(houses):
    page = PAGE.read_text("utf-8")

    assert page == with_table(page, table(houses.app)), "run: python -m tests.support.http_table"


def test_the_document_names_every_address_of_the_app_and_no_other(houses, made):
    named = {(method.upper(), path) for path, item in made["paths"].items() for method in item}

    assert named == {
        (method, re.sub(r"<(?:path:)?([^>]+)>", r"{\1}", rule)) for method, rule in addresses_of(houses.app)
    }


def test_the_doors_and_the_table_of_the_guard_agree_on_who_may_call(houses):
    doors = {address: view.door for address, view in guarded_views(houses.app).items()}
    for address, row in rows().items():
        method, rule = address.split(" ")[:2]
        door = doors[method, rule]
        says = ("all" if door.who in ("token", "sensor") else door.who, door.after_the_pass)
        assert (address, *says) == (address, row["who"], row.get("after_the_pass", False))


def test_a_view_that_does_not_say_whom_it_is_open_to_stops_the_start():
    app = Flask("unguarded", static_folder=None)
    app.add_url_rule("/api/secrets", view_func=lambda: "")

    with pytest.raises(TypeError, match="/api/secrets"):
        guarded_views(app)


def test_the_document_says_what_an_operation_of_each_kind_may_set(made):
    kinds = {
        each["title"]: each["properties"]["set"]
        for each in made["components"]["schemas"]["Operation"]["oneOf"]
    }

    for name, kind in KINDS.items():
        if kind.group != "derived":
            assert kinds[name]["properties"].keys() == kind.fields.keys()


def test_every_address_that_needs_a_session_says_so_in_the_document(houses, made):
    for method, rule in sorted(addresses_of(houses.app)):
        item = made["paths"][re.sub(r"<(?:path:)?([^>]+)>", r"{\1}", rule)][method.lower()]
        path = re.sub(r"<[^>]+>", "x", rule)
        answer = houses.call(houses.visitors["nobody"], method, path, {} if method != "GET" else None)
        assert (rule, bool(item["security"])) == (rule, answer.status == 401)
    houses.reset()
