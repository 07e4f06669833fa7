"""The examples that the pages of docs/ show, to be held against the code."""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Any

ROOT = Path(__file__).parents[2]


def json_examples(page: str) -> list[Any]:
    """The JSON blocks of a page of docs/, read without the remarks that explain them."""
    blocks = re.findall(r"```json\n(.*?)```", (ROOT / "docs" / page).read_text(), re.DOTALL)
    return [json.loads(re.sub(r"\s+//.*$", "", block, flags=re.MULTILINE)) for block in blocks]
