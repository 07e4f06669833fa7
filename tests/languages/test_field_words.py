"""Each field that a person writes, and each word that it may hold, is said in every language."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from pathlib import Path

from tests.architecture.test_words import modules
from tests.support.node_tests import run_node_tests

from broodshelf.care import catalogue
from broodshelf.languages import languages
from broodshelf.languages.phone_parts import KEPT
from broodshelf.languages.phones_file import phones_file
from broodshelf.model.kinds import KINDS, SERVER, forms
from broodshelf.model.kinds.forms import FieldSpec, Form

NEVER_READ = {"every_days", "patience_hours", "reservoir_length_mm", "reservoir_ml", "volume_ml"}
"""No phone writes them, and no phone tells the past of the things that they belong to."""


def test_every_field_and_each_of_its_words_is_said(tmp_path):
    asked = tmp_path / "asked.json"
    asked.write_text(
        json.dumps(
            {
                "fields": sorted({name for _, name, _ in written()} - NEVER_READ),
                "words": {
                    name: sorted(words) for _, name, spec in written() if (words := words_of(spec.form))
                },
                "kinds": sorted({kind for kind, _, _ in written()}),
                "by_form": catalogue.as_json()["fields"],
                "messages": {
                    tag: "".join(phones_file(tag, part).decode() for part in KEPT) for tag in languages()
                },
            }
        )
    )

    run_node_tests(Path(__file__).with_name("run_field_words.mjs"), ASKED=str(asked))


def test_what_needs_no_name_is_written_by_no_phone_and_has_no_past_to_tell():
    named = {word for text in modules().values() for word in re.findall(r"\w+", text)}
    told = {name for kind, name, _ in written() if kind == "colony" or KINDS[kind].group == "event"}

    assert NEVER_READ & (named | told) == set()
    assert {name for _, name, _ in written()} >= NEVER_READ


def written() -> Iterator[tuple[str, str, FieldSpec]]:
    """What people write: kind, name and form of a field."""
    for kind in KINDS.values():
        for name, spec in kind.fields.items():
            if spec.writers != SERVER:
                yield kind.name, name, spec


def words_of(form: Form) -> tuple[str, ...]:
    match form:
        case forms.ListOf(each):
            return words_of(each)
        case forms.Choice(words):
            return words
    return ()
