"""Which language: of a tag, of a request's header, of a terminal."""

from __future__ import annotations

import pytest

from broodshelf.languages import language_of, of_accepted, of_environment
from broodshelf.languages.choosing import with_units
from broodshelf.languages.pseudo import PSEUDO
from broodshelf.languages.tags import Tag, read_tag
from broodshelf.languages.units import degrees, degrees_apart, volume


@pytest.mark.parametrize(
    ("tag", "found"),
    [
        ("en", "en"),
        ("en-US", "en-US"),
        ("EN_us.UTF-8", "en-US"),
        ("en-Latn-GB", "en-GB"),
        ("tlh", "en"),
        ("", "en"),
        (None, "en"),
        ("../../etc", "en"),
        (PSEUDO, PSEUDO),
        ("de-u-mu-fahrenhe", "de-u-mu-fahrenhe"),
        ("en-us-u-ms-metric-mu-celsius", "en-US-u-ms-metric-mu-celsius"),
        (f"{PSEUDO}-u-mu-celsius", f"{PSEUDO}-u-mu-celsius"),
        ("de-u-hc-h23-mu-kelvin", "de"),
        ("tlh-u-mu-celsius", "en-u-mu-celsius"),
    ],
)
def test_a_tag_has_the_words_of_its_folder_or_english(tag, found):
    assert found == language_of(tag)


def test_the_region_stays_and_decides_on_nothing_but_units():
    assert read_tag("en-US") == Tag("en", "US")
    assert read_tag("en") == Tag("en")
    assert read_tag("en-u-mu-celsius") == Tag("en", degrees="c")
    assert read_tag(f"{PSEUDO}-u-ms-metric") == Tag(PSEUDO, volumes="ml")
    assert read_tag("de-AT-u-ms-ussystem-mu-fahrenhe") == Tag("de", "AT", volumes="floz", degrees="f")


@pytest.mark.parametrize("tag", ["en", "de-AT", f"{PSEUDO}-u-ms-metric", "pl-PL-u-ms-ussystem-mu-celsius"])
def test_a_tag_as_text_is_the_tag_again(tag):
    assert (str(read_tag(tag)), read_tag(str(read_tag(tag)))) == (tag, read_tag(tag))


def test_a_unit_that_this_version_does_not_know_is_left_out():
    assert with_units("de", "k", "gal") == "de"
    assert with_units("de", "k", "floz") == "de-u-ms-ussystem"
    assert with_units(None, None, "gal") is None


@pytest.mark.parametrize(
    ("tag", "warm", "apart", "water"),
    [
        ("en", "22.5 °C", "1 °C", "30 mL"),
        ("en-US", "73 °F", "1.8 °F", "1 fl oz (30 mL)"),
        ("en-US-u-mu-celsius", "22.5 °C", "1 °C", "1 fl oz (30 mL)"),
        ("en-US-u-ms-metric", "73 °F", "1.8 °F", "30 mL"),
        ("de-u-ms-ussystem-mu-fahrenhe", "73 °F", "1,8 °F", "1 fl oz (30 mL)"),
        ("de-u-mu-celsius", "22,5 °C", "1 °C", "30 mL"),
    ],
)
def test_a_unit_that_was_chosen_counts_before_that_of_the_region(tag, warm, apart, water):
    said = degrees(22.5, tag), degrees_apart(1, tag), volume(30, tag)

    assert tuple(each.replace("\u00a0", " ") for each in said) == (warm, apart, water)


@pytest.mark.parametrize(
    ("header", "found"),
    [
        (None, "en"),
        ("tlh, en-GB;q=0.8", "en-GB"),
        ("en;q=0.1, en-US;q=0.9", "en-US"),
        ("en-US-u-mu-celsius", "en-US"),
        ("en-US;q=0", "en"),
        ("nonsense;;q=x,*", "en"),
    ],
)
def test_the_best_of_a_request_that_there_is(header, found):
    """RFC 9110, section 12.5.4."""
    assert found == of_accepted(header)


def test_the_terminals_language_is_the_first_that_is_set():
    """POSIX, section 8.2: LC_ALL before LC_MESSAGES before LANG."""
    assert of_environment({"LC_ALL": "en_US.UTF-8", "LANG": "en_GB"}) == "en-US"
    assert of_environment({"LC_ALL": "", "LANG": "en_GB.UTF-8"}) == "en-GB"
    assert of_environment({"LANG": "C.UTF-8"}) == "en"
