"""The calculators: the same registry for the command line and the app."""

from __future__ import annotations

import re

import pytest

from broodshelf.care.calculators import CALCULATORS, calculator
from broodshelf.care.calculators.model import Line, Refused
from broodshelf.care.colony.census.groups import LIFE_GROUPS
from broodshelf.cli import main
from broodshelf.languages import languages, say, say_code
from broodshelf.languages.calculating import input_id, why_refused
from broodshelf.languages.saying import knows, message_id
from broodshelf.model.quantities import OutOfRange


@pytest.mark.parametrize("code", CALCULATORS)
def test_every_calculator_works_with_what_it_begins_with_and_says_where_it_comes_from(code):
    each = CALCULATORS[code]
    lines = each.run({})

    for section in ("reckon", "reckon_formula", "reckon_source", "reckon_limits"):
        assert knows(message_id(section, code)), f"nothing is said of {section} {code}"
    assert all(knows(input_id(code, each.name)) for each in each.inputs)
    assert lines
    assert all(knows(message_id(line.section, line.code)) for line in lines)
    assert not any("?" in in_words(line) or "{" in in_words(line) for line in lines)


def in_words(line: Line) -> str:
    return say_code("en", line.section, line.code, line.args)


@pytest.mark.parametrize("code", CALCULATORS)
def test_numbers_outside_their_limits_are_refused_by_name(code):
    for each in CALCULATORS[code].inputs:
        if each.kind == "number":
            for wrong in (each.low - 1, each.high + 1, float("nan")):
                with pytest.raises(OutOfRange, match=f"^{each.name} is"):
                    CALCULATORS[code].run({each.name: wrong})


def test_a_tube_cannot_hold_more_water_than_it_is_long():
    with pytest.raises(OutOfRange) as refused:
        CALCULATORS["tube_water"].run({"length_mm": 100, "reservoir_mm": 101})

    assert (refused.value.name, refused.value.high) == ("reservoir_mm", 100)
    assert CALCULATORS["tube_water"].run({"length_mm": 100, "reservoir_mm": 100})


def test_parts_must_say_by_what():
    with pytest.raises(Refused) as refused:
        CALCULATORS["sugar_water"].run({"sugar_parts": 1, "water_parts": 3})

    assert "by mass (25 %) or by volume (22.1 %)" in str(why_refused("sugar_water", refused.value))


def test_a_molarity_stands_for_a_strength():
    # CRC Handbook, 102nd ed.: 0.5 mol/L is 16.09 % by mass, by interpolation
    lines = {line.code: line.args for line in CALCULATORS["sugar_water"].run({"mol_per_l": 0.5})}

    assert (lines["strength"]["percent"], lines["strength"]["mol_per_l"]) == (16.1, "0.500")


def test_eggs_of_a_founding_queen_say_how_many_workers_to_hope_for():
    # Ito 1988 (abstract): losses of 25.3, 19.4, 3.9 and 4.2 % leave 55.4 %, give or take 7.5 %
    lines = {line.code: line for line in CALCULATORS["brood"].run({"eggs": 20})}

    assert lines["first_workers"].args == {"eggs": 20, "low": 10, "best": 11, "high": 13}
    assert "Of 20 eggs about 11 become workers, 10 to 13" in in_words(lines["first_workers"])
    assert "first_workers" not in {line.code for line in CALCULATORS["brood"].run({})}


@pytest.mark.parametrize("given", [{"food": "gravel"}, {"strngth": 20.0}])
def test_an_unknown_choice_or_input_is_refused(given):
    with pytest.raises(Refused) as refused:
        CALCULATORS["dilute"].run(given)

    assert re.search(r"must be one of|has no input", str(why_refused("dilute", refused.value)))


def test_an_unknown_calculator_is_refused_with_the_list():
    assert calculator("sugar-water") is CALCULATORS["sugar_water"]
    with pytest.raises(ValueError, match="sugar_water"):
        calculator("horoscope")


def test_two_readings_of_ones_own_vessel_replace_the_estimate():
    # k = ln((95-20)/(61-20))/30 = 0.02013; from 61 to 30 °C: ln(41/10)/k = 70.1 min
    lines = CALCULATORS["cooling"].run({"from_c": 95.0, "room_c": 20.0, "later_c": 61.0, "later_min": 30.0})

    assert lines[0].args == {"low": 71, "best": 71, "high": 71}


def test_the_command_line_prints_result_formula_source_and_limits(capsys):
    status = main(["reckon", "sugar-water", "--percent", "25", "--ml", "100"])
    out = capsys.readouterr().out

    assert status == 0
    assert "Sugar: 27.6 g" in out  # 100 mL x 1.1036 g/mL (CRC, mean of 24 and 26 %) x 25 %
    assert "how:" in out
    assert "from: CRC Handbook" in out
    assert "limits:" in out


def test_the_command_line_refuses_what_is_out_of_range_in_words(capsys):
    status = main(["reckon", "sugar-water", "--percent", "80"])

    assert status == 2
    assert "strength is 80 % by mass; it must lie between" in capsys.readouterr().err


def test_the_command_line_speaks_the_terminals_language(capsys, monkeypatch):
    monkeypatch.setenv("LC_ALL", "de_DE.UTF-8")

    assert main(["reckon", "sugar-water", "--percent", "25", "--ml", "100"]) == 0
    assert "27,6 g" in capsys.readouterr().out
    assert main(["reckon", "sugar-water", "--percent", "80"]) == 2
    assert "must lie" not in capsys.readouterr().err


def test_prey_for_a_colony_comes_in_words(capsys):
    assert main(["reckon", "prey", "--workers", "200", "--worker-mm", "4", "--in-tube"]) == 0
    assert "medium crickets, killed" in capsys.readouterr().out


@pytest.mark.parametrize("group", LIFE_GROUPS.values(), ids=lambda group: group.code)
def test_what_brood_begins_with_is_said_in_every_language(group):
    """In English as the plan has it for phones of an earlier version; names, years and journals in all of them."""
    said = {
        tag: say(tag, message_id("brood-source", group.code)).replace(chr(0xA0), " ") for tag in languages()
    }
    published = set(re.findall(r"[A-Z][a-z]+ & [A-Z][a-z]+ [0-9]{4}|[A-Z][a-z]+ [0-9]{4}", group.source))

    assert said["en"] == group.source
    assert not {(tag, each) for tag, text in said.items() for each in published if each not in text}
    assert len({*said.values()}) == len(said)


def test_a_brood_calculator_names_its_source_in_the_language_that_is_asked():
    lines = CALCULATORS["brood"].run({"species": "lasius_niger"})
    said = [say_code("de", line.section, line.code, line.args) for line in lines]

    assert any("Matte & Billen 2021" in line and "aus zweiter Hand" in line for line in said)
