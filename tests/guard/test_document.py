"""The routes, docs/http-api.md, the table of the guard and the OpenAPI document say the same."""

from __future__ import annotations

import re

import pytest
from openapi_spec_validator import OpenAPIV31SpecValidator
from tests.guard.matrix import rows
from tests.support.openapi import document, documented, plain, routes

from broodshelf.model.kinds import KINDS
from broodshelf.web.bodies import BODIES


@pytest.fixture(scope="module")
def made(houses):
    return document(houses.app)


def test_the_document_is_openapi(made):
    assert [str(error) for error in OpenAPIV31SpecValidator(made).iter_errors()] == []


def test_the_page_names_every_address_of_the_app_and_no_other(houses):
    served = {(method, plain(rule)) for method, rule in routes(houses.app)}

    assert {(row.method, row.path) for row in documented()} == served


def test_the_document_names_every_address_of_the_app_and_no_other(houses, made):
    named = {(method.upper(), path) for path, item in made["paths"].items() for method in item}

    assert named == {
        (method, re.sub(r"<(?:path:)?([^>]+)>", r"{\1}", rule)) for method, rule in routes(houses.app)
    }


def test_the_page_and_the_table_of_the_guard_agree_on_who_may_call():
    says = {(row.method, row.path): row.who for row in documented()}
    for address, row in rows().items():
        method, rule = address.split(" ")[:2]
        word = says[method, plain(rule)]
        assert (address, "all" if word == "token" else word) == (address, row["who"])


def test_every_body_stands_at_an_address_that_takes_one(houses):
    served = {f"{method} {rule}" for method, rule in routes(houses.app)}

    assert BODIES.keys() <= served


def test_the_document_says_what_an_operation_of_each_kind_may_set(made):
    kinds = {
        each["title"]: each["properties"]["set"]
        for each in made["components"]["schemas"]["Operation"]["oneOf"]
    }

    for name, kind in KINDS.items():
        if kind.group != "derived":
            assert kinds[name]["properties"].keys() == kind.fields.keys()


def test_every_address_that_needs_a_session_says_so_in_the_document(houses, made):
    for method, rule in routes(houses.app):
        item = made["paths"][re.sub(r"<(?:path:)?([^>]+)>", r"{\1}", rule)][method.lower()]
        path = re.sub(r"<[^>]+>", "x", rule)
        answer = houses.call(houses.visitors["nobody"], method, path, {} if method != "GET" else None)
        assert (rule, bool(item["security"])) == (rule, answer.status == 401)
    houses.reset()
