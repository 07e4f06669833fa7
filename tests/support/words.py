"""What the app calls things, read from the phone's own tables of texts, so that a changed word breaks no test."""

from __future__ import annotations

import json
import shutil
import subprocess
from functools import cache
from pathlib import Path

TEXTS = Path(__file__).parents[2] / "pwa/text/en"
FLATTEN = """
const { readdirSync } = await import('node:fs');
const { pathToFileURL } = await import('node:url');
const found = {};
const walk = (value, path) => {
  if (typeof value === 'string') found[path] = value;
  else if (value && typeof value === 'object') {
    for (const [key, each] of Object.entries(value)) walk(each, `${path}.${key}`);
  }
};
for (const name of readdirSync(process.argv[1])) {
  for (const table of Object.values(await import(pathToFileURL(`${process.argv[1]}/${name}`)))) {
    walk(table, name.replace('.js', ''));
  }
}
console.log(JSON.stringify(found));
"""


def text(key: str) -> str:
    """Return a text by its file and its key there, as ``"saving.synced"``."""
    texts = _texts()
    assert key in texts, f"pwa/text/en/ has no text {key}"
    return texts[key]


@cache
def _texts() -> dict[str, str]:
    node = shutil.which("node")
    assert node, "Node is not installed; ./deploy/test installs it (it is a tool for tests only)."
    said = subprocess.run(
        [node, "--experimental-default-type=module", "--input-type=module", "--eval", FLATTEN, str(TEXTS)],
        capture_output=True,
        text=True,
        check=True,
    )
    found: dict[str, str] = json.loads(said.stdout)
    return found
