"""The way back into a shelf when no phone is signed in any more: the link that ``broodshelf pair`` prints."""

from __future__ import annotations

import re

import pytest
from playwright.sync_api import expect
from tests.phone.conftest import claim
from tests.support.words import text

from broodshelf.cli import main

pytestmark = pytest.mark.browser


def test_the_printed_link_knows_whom_it_lets_in_and_asks_for_no_name(phone, server, monkeypatch, capsys):
    claim(phone(), server)
    for name, value in server.environment().items():
        monkeypatch.setenv(name, value)
    assert main(["pair"]) == 0
    printed = capsys.readouterr().out
    link = re.search(r"http\S+/#/claim/(\S+)", printed)
    assert link, printed
    new = phone()
    new.goto(f"{server.url}/#/claim/{link[1]}")
    expect(new.get_by_role("heading", name=text("start-known", name="Mira"))).to_be_visible()
    expect(new.get_by_label(text("start-your-name"))).to_have_count(0)
    new.get_by_role("button", name=text("start-come-in")).click()

    expect(new.get_by_role("heading", name=text("round-title"))).to_be_visible()
    expect(new.get_by_role("link", name="Amber").first).to_be_visible()
