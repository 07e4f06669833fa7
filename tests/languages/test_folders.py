"""Every language's folder against English: nothing missing, nothing unused, the same parameters, the plural forms."""

from __future__ import annotations

import pytest
from babel import Locale
from fluent.syntax import FluentParser, FluentSerializer
from tests.languages.resources import OTHERS, SOURCE, Message, read

from broodshelf.languages.bundles import entries_in
from broodshelf.languages.entries import folders
from broodshelf.languages.phone_parts import PARTS
from broodshelf.languages.phones_file import phones_file
from broodshelf.languages.units import functions

OPTIONAL = {"common"}
"""Attributes that a language may lack: not every kind of ant has a common name."""


def test_no_message_is_missing_and_none_is_left_over():
    """One that is left over is misspelt, or gone from English."""
    english = read(SOURCE).keys()

    assert not {tag: english - read(tag).keys() for tag in OTHERS if english - read(tag).keys()}
    assert not {tag: read(tag).keys() - english for tag in OTHERS if read(tag).keys() - english}


def test_a_message_stands_in_the_same_file_in_every_language():
    english = read(SOURCE)

    assert not [
        (tag, name) for tag in OTHERS for name, own in read(tag).items() if own.file != english[name].file
    ]


def test_messages_have_the_same_parameters_attributes_and_functions():
    """A language may choose by what the English comment names, and leave out what only English chooses by."""
    assert not {
        (tag, name): wrong
        for tag in OTHERS
        for name, own in read(tag).items()
        if any(wrong := _differences(own, read(SOURCE)[name]))
    }


def _differences(own: Message, english: Message) -> tuple[frozenset[str], ...]:
    named = {each for each in own.parameters if f"${each}" in english.comment}
    return (
        own.parameters - english.parameters - named - SHARED,
        english.parameters - english.selects_on - own.parameters,
        (own.attributes ^ english.attributes) - OPTIONAL,
        own.functions ^ english.functions,
    )


SHARED = {"n", "food_code", "size_class"}
"""What all messages of a serving get (foods.ftl says so of the group)."""


@pytest.mark.parametrize("tag", folders())
def test_plural_forms_are_those_of_the_language(tag):
    """CLDR's plural rules: all forms that whole numbers up to 1000 have, and none that the language has not."""
    form = Locale.parse(tag).plural_form
    needed, known = {form(n) for n in range(1001)} - {"other"}, {*form.tags, "other"}

    assert not {
        name: each
        for name, message in read(tag).items()
        for each in message.plurals
        if not needed <= each <= known
    }


@pytest.mark.parametrize("tag", folders())
def test_messages_call_only_functions_that_there_are(tag):
    called = {each for message in read(tag).values() for each in message.functions}

    assert called <= functions(tag).keys() | BUILT_IN


BUILT_IN = {"NUMBER"}
"""What every Fluent bundle can do by itself, in Python and on the phone (Project Fluent guide, built-in functions)."""


@pytest.mark.parametrize("tag", folders())
def test_messages_name_only_messages_that_there_are(tag):
    there = read(tag)

    assert not {name: m.references - there.keys() for name, m in there.items() if m.references - there.keys()}


@pytest.mark.parametrize("tag", folders())
def test_the_phones_files_say_what_the_folder_says(tag):
    """It is put together without a parser, so a parser has the last word. What the folder lacks is in English."""
    whole = "".join(phones_file(tag, part).decode() for part in PARTS)
    served = FluentParser(with_spans=False).parse(whole)
    written = FluentSerializer()
    found = {entry.id.name: written.serialize_entry(entry) for entry in served.body}
    asked = {**read(SOURCE), **read(tag)}

    assert found.keys() == entries_in(tag, for_phone=True).keys()
    assert found == {name: asked[name].written for name in found}


def test_what_only_the_server_says_is_not_sent_to_phones():
    served = entries_in(SOURCE, for_phone=True)

    assert "reason-leak" in served
    assert not [name for name in served if name.startswith(("mail-", "command-", "doctor-", "problem-"))]
