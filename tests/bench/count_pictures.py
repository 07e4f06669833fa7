"""How well ants are counted on pictures, and how soon: ``python -m tests.bench.count_pictures [accuracy|speed]``.

Accuracy is of rendered tubes (``tests/support/rendered_tubes.py``); the seeds are others than those that constants were
chosen on. A correction takes a false dot away or sets one on an ant that was missed, in random order; whoever sees that
nothing is wrong any more stops. Real photographs could not be had.

Speed is of a picture of 12 megapixels in Chromium, with the noise of a camera. What can be slowed down there is the
page alone, neither its workers nor what decodes pictures. So it is told how many processor seconds all of the renderer
took, one after another, which other programs on the machine do not lengthen much; four times that is what a processor
four times slower takes at most, with nothing done at the same time. The longest task is of a page slowed down.
"""

from __future__ import annotations

import argparse
import os
import random
import tempfile
import threading
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import numpy as np
from PIL import Image
from playwright.sync_api import Page, sync_playwright
from tests.support.chromium import ARGUMENTS, SHELL
from tests.support.dots import Fit, fit, run
from tests.support.kept_shelf import PHONE, claim_by_hand
from tests.support.rendered_tubes import Rendered, Scene, render
from tests.support.server import Server

BODY_PX = {5: 60, 20: 50, 60: 40, 120: 34, 200: 34, 400: 24}
JUDGED_FROM = 20_000
THRESHOLD = 0.5
CORRECTIONS = 5
KINDS: dict[str, dict[str, Any]] = {
    "plain": {"crowded": 0.4},
    "heaped": {"crowded": 0.9, "blur_px": 1.2},
    "dark ground": {"crowded": 0.5, "dark_ground": True},
    "soft, noisy": {"crowded": 0.5, "blur_px": 2.0, "noise": 0.05},
}


def tubes(seeds: int) -> Iterator[tuple[str, int, Rendered]]:
    """Yield kind, number of ants and picture."""
    for kind, how in KINDS.items():
        for ants, body_px in BODY_PX.items():
            for number in range(seeds):
                seed = JUDGED_FROM + 97 * number + ants
                yield kind, ants, render(Scene(ants, seed, body_px, brood=ants // 4, **how))


def corrected(found: Fit, rng: random.Random) -> float:
    """Return the count's error after at most five corrections, as a share of what is there."""
    wrong = [1] * found.false + [-1] * found.missed
    rng.shuffle(wrong)
    return sum(wrong[CORRECTIONS:]) / max(1, found.right + found.missed)


def accuracy(seeds: int) -> None:
    """Print the table."""
    drawn = list(tubes(seeds))
    asked = [(np.asarray(d.image.convert("L")), {"body_px": d.body_px}) for _, _, d in drawn]
    answers = run(asked, "counted")
    rng = random.Random(1)
    print(
        "| pictures | ants | recall | precision | count off, middle | count off, most | after 5 corrections, most ",
        end="",
    )
    print("| truth in the range |\n|---|---|---|---|---|---|---|---|")
    for kind in KINDS:
        for ants in BODY_PX:
            fits, after, held = [], [], 0
            for (of, number, there), answer in zip(drawn, answers, strict=True):
                if (of, number) != (kind, ants):
                    continue
                made = answer["made"]
                dots = [
                    (dot["x"], dot["y"])
                    for dot in made["dots"]
                    if dot["what"] == "worker" and dot["score"] >= THRESHOLD
                ]
                fits.append(fit(dots, there.ants, 0.45 * there.body_px))
                after.append(abs(corrected(fits[-1], rng)))
                held += made["range"]["low"] <= ants <= made["range"]["high"]
            off = sorted(abs(each.error) for each in fits)
            print(
                f"| {kind} | {ants} | {np.mean([f.recall for f in fits]):.3f} "
                f"| {np.mean([f.precision for f in fits]):.3f} | {100 * off[len(off) // 2]:.0f} % "
                f"| {100 * off[-1]:.0f} % | {100 * max(after):.0f} % | {held} of {len(fits)} |"
            )


STEPS = {
    "made small and kept": """async () => {
      const of = (name) => import(`/static/${document.body.dataset.build}/${name}`);
      const [{ takePhoto }, { lookAt }, { findPhoto }, { session }, { rowsOf }] = await Promise.all(
        ['signals/photos.js', 'counting/looker.js', 'database/photos.js', 'signals/session.js', 'signals/rows.js']
          .map(of));
      const id = await takePhoto(rowsOf('colony')[0].id, bench.file);
      bench.kept = (await findPhoto(session.peek().device_id, id)).blob;
      bench.lookAt = lookAt;
    }""",
    "dots, with the guess of the size": """async () => {
      const looker = bench.lookAt(bench.kept);
      bench.looked = await looker.ask(null, null);
      looker.end();
    }""",
    "dots, in another worker, the size known": """async () => {
      const looker = bench.lookAt(bench.kept);
      await looker.ask(bench.looked.body_px, null);
      looker.end();
    }""",
}
BEFORE = """async () => {
  globalThis.bench = { long: [], file: await (await fetch('/bench.jpg')).blob() };
  new PerformanceObserver((list) => bench.long.push(...list.getEntries().map((each) => each.duration)))
    .observe({ type: 'longtask' });
}"""
LONGEST = "() => new Promise((done) => setTimeout(() => done(Math.max(0, ...bench.long)), 300))"
SLOWER = 4


def speed() -> None:
    """Print what 12 megapixels cost until they are dots, and what the renderer holds meanwhile."""
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "large.jpg"
        tube = render(Scene(200, seed=20_500, body_px=34)).image
        large = np.asarray(tube.resize((4000, 3000), Image.Resampling.BICUBIC), dtype=np.float64)
        noisy = large + np.random.default_rng(1).normal(0, 5, large.shape[:2])[:, :, None]
        Image.fromarray(np.clip(noisy, 0, 255).astype(np.uint8)).save(file, quality=92)
        print(
            f"A picture of 12 megapixels, {file.stat().st_size / 1e6:.1f} MB; load {os.getloadavg()[0]:.0f}"
        )
        _run(file, Path(folder) / "as it is", 1)
        _run(file, Path(folder) / "slowed down", SLOWER)


def _run(file: Path, data: Path, rate: int) -> None:
    """Take the picture and count on it in a browser of its own, whose page is slowed down so many times."""
    server = Server(data).start()
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=str(SHELL), args=ARGUMENTS)
        try:
            page = browser.new_context(**PHONE, service_workers="block").new_page()
            page.route("**/bench.jpg", lambda route: route.fulfill(path=file, content_type="image/jpeg"))
            claim_by_hand(page, server)
            page.evaluate(BEFORE)
            page.context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": rate})
            renderer = _renderer(page)
            held = _Held(renderer)
            took = {}
            for step, how in STEPS.items():
                cpu_ms, wall_ms = _cpu_ms(renderer), time.monotonic()
                page.evaluate(how)
                took[step] = (_cpu_ms(renderer) - cpu_ms, 1000 * (time.monotonic() - wall_ms))
            before, most = held.end()
            longest_ms = page.evaluate(LONGEST)
        finally:
            browser.close()
            server.stop()
    print(f"page slowed down {rate} times: longest task of the page {longest_ms:.0f} ms")
    for step, (cpu_ms, wall_ms) in took.items():
        print(f"  {step}: {wall_ms:.0f} ms by the clock", end="")
        print(
            f", {cpu_ms:.0f} ms of processor, {SLOWER * cpu_ms:.0f} ms at {SLOWER} times slower" * (rate == 1)
        )
    for what in most:
        print(f"  the renderer held, {what}: {before[what]:.0f} MB before, {most[what]:.0f} MB at most")


def _renderer(page: Page) -> int:
    """Return the process id of the page's renderer: the one that has held most."""
    browser = page.context.browser
    assert browser
    processes = browser.new_browser_cdp_session().send("SystemInfo.getProcessInfo")["processInfo"]
    return max(
        (each["id"] for each in processes if each["type"] == "renderer"), key=lambda pid: _mb(pid)["in all"]
    )


def _cpu_ms(pid: int) -> float:
    """Return the processor time that a process has taken so far, all threads, ended ones too."""
    fields = Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()
    return 1000 * sum(map(int, fields[11:13])) / os.sysconf("SC_CLK_TCK")


def _mb(pid: int) -> dict[str, float]:
    """Return what a process holds: its own, and with the browser's program, which all pages share."""
    lines = dict(line.split(":", 1) for line in Path(f"/proc/{pid}/status").read_text().splitlines())
    held = {key: int(lines[key].split()[0]) / 1024 for key in ("RssAnon", "RssShmem", "VmRSS")}
    return {"of its own": held["RssAnon"] + held["RssShmem"], "in all": held["VmRSS"]}


class _Held:
    """Looks every few milliseconds at what a process holds, until ``end``."""

    def __init__(self, pid: int) -> None:
        self._pid, self._over = pid, threading.Event()
        self._before = self._most = _mb(pid)
        self._looking = threading.Thread(target=self._look, daemon=True)
        self._looking.start()

    def _look(self) -> None:
        while not self._over.wait(0.003):
            now = _mb(self._pid)
            self._most = {what: max(value, now[what]) for what, value in self._most.items()}

    def end(self) -> tuple[dict[str, float], dict[str, float]]:
        """Return what it held at first, and at most."""
        self._over.set()
        self._looking.join()
        return self._before, self._most


def main() -> None:
    """Run what was asked for."""
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("what", nargs="?", choices=["accuracy", "speed", "both"], default="both")
    parser.add_argument("--seeds", type=int, default=10)
    told = parser.parse_args()
    if told.what != "speed":
        accuracy(told.seeds)
    if told.what != "accuracy":
        speed()


if __name__ == "__main__":
    main()
