"""The app shell: the phone's files under one build id, with what the worker fetches ahead.

No bundler: the modules of the start are joined when the server starts (``join``), and ``index.html`` gets an import
map that leads their addresses and the names of the libraries there, so every other script is served as it is written,
compact, and imports what it names. The style sheets are served as one. For the worker the scripts off the start path
also lie in parcels.
"""

from __future__ import annotations

import base64
import hashlib
import json
import posixpath
import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cached_property
from html import escape
from pathlib import Path
from typing import Final

from ..languages import languages, say
from ..languages.phone_parts import KEPT
from .compact import compact, ways
from .join import PAGE, SHARED, WORKER, join_start
from .parcels import DECODER, NOT_AHEAD, goes_in_a_parcel, make_parcels

TYPES: Final[Mapping[str, str]] = {
    ".html": "text/html; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".mjs": "text/javascript; charset=utf-8",
    ".css": "text/css; charset=utf-8",
    ".svg": "image/svg+xml",
    ".png": "image/png",
    ".json": "application/json",
    ".ftl": "text/plain; charset=utf-8",
    ".txt": "text/plain; charset=utf-8",
    ".webmanifest": "application/manifest+json",
}
LIBRARIES: Final[Mapping[str, str]] = {
    "preact": "vendor/preact.mjs",
    "preact/hooks": "vendor/hooks.mjs",
    "htm": "vendor/htm.module.js",
    "@preact/signals": "vendor/signals.module.js",
    "@preact/signals-core": "vendor/signals-core.module.js",
    "qr": "vendor/qr/index.js",
    "qr/decode.js": "vendor/qr/decode.js",
}
AT_ROOT: Final = frozenset({"index.html", WORKER, "manifest.webmanifest"})
START_PATH: Final = (SHARED, PAGE)
"""The scripts that the page asks for by itself."""
NOT_SHIPPED: Final = (".d.ts", ".md", "jsconfig.json")
STYLES: Final = tuple(
    f"style/{name}.css"
    for name in (
        *("tokens", "base", "frame", "cards", "controls", "tube", "sheets", "photos"),
        *("round", "shelf", "diary", "charts", "labels", "surroundings"),
    )
)
"""In this order: of two rules that weigh the same the later one holds."""


@dataclass(frozen=True, slots=True)
class File:
    """A static file: its body and its type. It is compressed when somebody first wants it so, and then kept."""

    body: bytes
    media_type: str
    _compressed: dict[str, bytes | None] = field(default_factory=dict, compare=False, repr=False)

    def compressed(self, way: str) -> bytes | None:
        """Return the body in a ``Content-Encoding`` of ``compact.ways``; None where that is not smaller."""
        if way not in self._compressed:
            body = self.body if self.media_type == TYPES[".png"] else ways()[way](self.body)
            self._compressed[way] = body if len(body) < len(self.body) else None
        return self._compressed[way]


class Shell:
    """The phone's files, read once. ``folder`` is ``pwa/`` of the checkout or of the installed package.

    With ``worker_on`` False the page registers no worker and the worker's address serves one that takes
    itself away.
    """

    def __init__(self, folder: Path, extra: Mapping[str, bytes], *, worker_on: bool = True) -> None:
        self.folder = folder
        self._pages: dict[str, File] = {}
        self._worker_on = worker_on
        files = {
            p.relative_to(folder).as_posix(): p.read_bytes() for p in sorted(folder.rglob("*")) if p.is_file()
        }
        files = {
            name: body for name, body in files.items() if not name.endswith(NOT_SHIPPED) and name[0] != "."
        }
        files["style.css"] = b"".join(files.pop(name) for name in STYLES)
        self._sources = {**files, **extra}
        scripts = {name: body.decode() for name, body in files.items() if name.endswith((".js", ".mjs"))}
        joined = join_start(scripts, LIBRARIES)
        self.joined = {name: each.members for name, each in joined.items()}
        self._served = compact(
            {**self._sources, **{name: each.text().encode() for name, each in joined.items()}}
        )
        digest = hashlib.sha256()
        for name, body in sorted(self._served.items()):
            digest.update(f"{name}\0{len(body)}\0".encode() + body)
        self.build = digest.hexdigest()[:16]
        self.files = {
            name: make_file(name, body) for name, body in self._served.items() if name not in AT_ROOT
        }

    @cached_property
    def import_map(self) -> str:
        """The only inline script of the app; the content security policy allows it by its hash."""
        here = f"/static/{self.build}/"
        file_of = {module: file for file in START_PATH for module in self.joined[file]}
        names = {**LIBRARIES, **{here + module: module for module in file_of if module != PAGE}}
        imports = {name: here + file_of.get(module, module) for name, module in names.items()}
        return json.dumps({"imports": imports}, separators=(",", ":"))

    @property
    def import_map_hash(self) -> str:
        """The hash for ``script-src``."""
        return "sha256-" + base64.b64encode(hashlib.sha256(self.import_map.encode()).digest()).decode()

    def page(self, language: str) -> File:
        """Return the page for a phone that wants this language: it names the messages that will be asked for."""
        if language not in self._pages:
            self._pages[language] = self._made_page(language)
        return self._pages[language]

    def _made_page(self, language: str) -> File:
        preloads = "\n".join(
            f'<link rel="modulepreload" href="/static/{self.build}/{name}">' for name in START_PATH
        )
        page = self._sources["index.html"].decode()
        page = page.replace("{{worker}}", "on" if self._worker_on else "off")
        page = page.replace("{{languages}}", " ".join(languages())).replace("{{language}}", language)
        page = page.replace("{{words}}", " ".join(KEPT))
        for part, message in (("{{opening}}", "frame-opening"), ("{{description}}", "frame-description")):
            page = page.replace(part, escape(say(language, message)))
        page = page.replace("{{import_map}}", self.import_map).replace("{{preloads}}", preloads)
        return make_file("index.html", page.replace("{{build}}", self.build).encode())

    @cached_property
    def _kept(self) -> list[str]:
        """What a phone may need. A joined module also stands at its own address, for pages without the import map."""
        members = {module for members in self.joined.values() for module in members}
        return sorted(name for name in self.files if name in START_PATH or name not in members)

    @cached_property
    def parcels(self) -> dict[str, File]:
        """The scripts off the start path once more, many in one file."""
        bodies = {name: self.files[name].body for name in self._kept}
        return {name: make_file(name, body) for name, body in make_parcels(bodies, START_PATH).items()}

    @cached_property
    def ahead(self) -> dict[str, list[str] | str]:
        """The addresses of what the worker keeps: single files, parcels, and the decoder where it is needed.

        Of the messages a phone keeps its own language, which only the phone knows.
        """
        here = f"/static/{self.build}/"
        single = [
            here + name
            for name in self._kept
            if name in START_PATH
            or not (goes_in_a_parcel(name) or name.startswith((*NOT_AHEAD, DECODER)) or name.endswith(".ftl"))
        ]
        return {
            "files": ["/", "/manifest.webmanifest", *single],
            "languages": [*languages()],
            "words": [*KEPT],
            "parcels": [here + name for name in self.parcels],
            "decoder": here + DECODER,
        }

    @cached_property
    def worker(self) -> File:
        """The service worker, always at the same address, with its build id and what it fetches ahead."""
        if not self._worker_on:
            return make_file("worker.js", Path(__file__).with_name("worker_off.js").read_bytes())
        script = self._served["worker.js"].decode().replace("{{build}}", self.build)
        script = re.sub(r"""(['"])\{\{ahead}}\1""", lambda _: json.dumps(self.ahead), script)
        return make_file("worker.js", script.encode())

    @cached_property
    def manifest(self) -> File:
        """The web app manifest."""
        script = self._sources["manifest.webmanifest"].decode().replace("{{build}}", self.build)
        return make_file("manifest.webmanifest", script.encode())


def find_folder() -> Path:
    """Return the folder of the phone's files: beside ``server/`` in a checkout, inside the package in a wheel."""
    package = Path(__file__).resolve().parents[1]
    for folder in (package / "pwa", package.parents[1] / "pwa"):
        if (folder / "index.html").is_file():
            return folder
    raise FileNotFoundError(
        "The phone's files (pwa/) are not where this package expects them; install it again."
    )


def make_file(name: str, body: bytes) -> File:
    """Return a file with its type."""
    return File(body, TYPES.get(posixpath.splitext(name)[1], "application/octet-stream"))
