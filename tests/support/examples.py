"""The examples that the pages of docs/ show, to be held against the code."""

from __future__ import annotations

import json
import re
import textwrap
from pathlib import Path
from typing import Any

ROOT = Path(__file__).parents[2]


def json_examples(page: str) -> list[Any]:
    """The JSON blocks of a page of docs/, read without the remarks that explain them."""
    blocks = re.findall(r"```json\n(.*?)```", (ROOT / "docs" / page).read_text(), re.DOTALL)
    return [json.loads(re.sub(r"\s+//.*$", "", block, flags=re.MULTILINE)) for block in blocks]


def inline_json(text: str) -> list[Any]:
    """The JSON objects between backticks in a text; ``{a, b}``, which only names fields, is none."""
    return [json.loads(found) for found in re.findall(r"`(\{\".*?\})`", text)]


def indented_example(page: str, begins: str) -> str:
    """The example of a page of docs/ that is set in by four spaces and begins so, its lines set out again."""
    blocks = re.findall(r"(?:^ {4}.*\n)+", (ROOT / "docs" / page).read_text(), re.MULTILINE)
    found = [textwrap.dedent(block) for block in blocks]
    return next(block for block in found if block.startswith(begins))


def shape(value: Any) -> Any:
    """The fields of a value and of what it holds, without what stands in them; a list is as its first."""
    if isinstance(value, dict):
        return {name: shape(held) for name, held in value.items()}
    if isinstance(value, list):
        return [shape(each) for each in value[:1]]
    return None
