"""Run by ``compact``: minify what stands on the input, ``[[name, media type, text], …]``, into ``{name: text}``."""

from __future__ import annotations

import json
import sys

import minify

json.dump({name: minify.string(kind, text) for name, kind, text in json.load(sys.stdin)}, sys.stdout)
