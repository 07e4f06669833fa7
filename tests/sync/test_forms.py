"""What a form writes when the record was changed elsewhere while it was open."""

from __future__ import annotations

from pathlib import Path

import pytest
from tests.support.households import by_id, colony
from tests.support.node_tests import run_node_tests


def test_a_form_writes_what_was_changed_in_it_of_the_revision_that_it_was_opened_with():
    run_node_tests(Path(__file__).with_name("run_forms.mjs"))


@pytest.mark.parametrize("opened_before", [True, False])
def test_what_another_keeper_set_while_the_form_was_open_is_met(phone, other, opened_before):
    colony_id = colony(phone)
    phone.sync()
    other.sync()
    opened_rev = phone.heard_rev
    other.write("colony", {"name": "Theirs", "stage": "growing"}, colony_id)
    other.sync()
    phone.sync()
    phone.now_ms += 60_000
    base_rev = opened_rev if opened_before else phone.heard_rev
    saved = phone.write("colony", {"name": "Mine"}, colony_id, base_rev=base_rev)
    phone.sync()
    met = [(each["field"], each["winner"]) for each in phone.verdicts[saved["op_id"]]["conflicts"]]

    assert met == ([("name", "mine")] if opened_before else [])
    stands = by_id(other.sync()["rows"])[colony_id]["set"]
    assert (stands["name"], stands["stage"]) == ("Mine", "growing")
