"""The language that nobody speaks: every message has it, longer and mirrored, with its parameters as they were."""

from __future__ import annotations

from fluent.syntax import FluentParser, ast
from tests.languages.resources import SOURCE, read

from broodshelf.languages.bundles import entries_in
from broodshelf.languages.phone_parts import PARTS
from broodshelf.languages.phones_file import phones_file
from broodshelf.languages.pseudo import ENDED, OVERRIDE, PSEUDO, in_pseudo


def test_a_text_is_longer_accented_and_mirrored():
    made = in_pseudo("Last offered a day ago")

    assert len(made) > 1.3 * len("Last offered a day ago")
    assert made.startswith(OVERRIDE)
    assert made.endswith(ENDED)
    assert not any("a" <= char <= "z" for char in made)


def test_every_message_has_it_with_the_same_parameters():
    made = FluentParser().parse("".join(phones_file(PSEUDO, part).decode() for part in PARTS)).body
    english = read(SOURCE)

    assert {entry.id.name for entry in made} == entries_in(SOURCE, for_phone=True).keys()
    assert not [entry for entry in made if isinstance(entry, ast.Junk)]
    for name, text in entries_in(PSEUDO).items():
        assert all(f"${parameter}" in text for parameter in english[name].parameters), name
