"""How well ants are counted on pictures, and how soon: ``python -m tests.bench.count_pictures [accuracy|speed]``.

Accuracy is of rendered tubes (``tests/support/rendered_tubes.py``); the seeds are others than those that constants were
chosen on. A correction takes a false dot away or sets one on an ant that was missed, in random order; whoever sees that
nothing is wrong any more stops. Real photographs could not be had.

Longer than 300 lines because both questions are asked of the same rendered tubes.

Speed is of a picture of 12 megapixels in Chromium, with the noise of a camera. What can be slowed down there is the
page alone: of a worker DevTools says "only supported for pages", and what decodes pictures is slowed down by nothing.
So it is told how many processor seconds all of the renderer took, one after another, which other programs on the
machine do not lengthen much; four times that is what a processor four times slower takes at most, with nothing done at
the same time. How much of it the page and its worker took, which wait for each other, is told beside; the rest are
threads that decode, compile and clean up. The longest task is of the screen as a keeper uses it, slowed down.

Longer than 300 lines because accuracy and speed draw the same tubes and are told together.
"""

from __future__ import annotations

import argparse
import os
import random
import tempfile
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
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
from tests.support.words import text

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


LOOK = """async ({ practised, known }) => {
  const of = (name) => import(`/static/${document.body.dataset.build}/${name}`);
  const [{ keepPicture, smallOf }, { startLooker }, { rowsOf }] = await Promise.all(
    ['screens/taking.js', 'counting/looker.js', 'signals/rows.js'].map(of));
  const looker = startLooker();
  await (practised ? looker.practise() : looker.look(new Blob(), '', {}).catch(() => undefined));
  globalThis.bench = { ...globalThis.bench, looker, look: async () => {
    const small = await smallOf(bench.file, looker);
    await keepPicture(rowsOf('colony')[0].id, small);
    bench.body_px = (await looker.look(small.blob, small.sha256,
      { body_px: known ? bench.body_px : null, frame: null, pale: false })).body_px;
  } };
}"""
FILE = "async () => { globalThis.bench = { file: await (await fetch('/bench.jpg')).blob() }; }"
STEPS = {
    "the worker has practised, the size is guessed": {"practised": True, "known": False},
    "the worker has practised, the size is known": {"practised": True, "known": True},
    "a new worker, the size is guessed": {"practised": False, "known": False},
}
LONG_TASKS = """() => {
  globalThis.long = [];
  new PerformanceObserver((list) => long.push(...list.getEntries().map((each) => each.duration)))
    .observe({ type: 'longtask' });
}"""
LONGEST = "() => new Promise((done) => setTimeout(() => done(Math.max(0, ...long)), 300))"
SLOWER = 4
TURNS = 5


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
        with _page(Path(folder) / "costs", file) as (page, _):
            _costs(page)
        for rate in (1, SLOWER):
            with _page(Path(folder) / f"slower-{rate}", file) as (page, server):
                _longest(page, server, file, rate)


@contextmanager
def _page(data: Path, file: Path) -> Iterator[tuple[Page, Server]]:
    """Yield a phone in a browser of its own, and its server."""
    server = Server(data).start()
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=str(SHELL), args=ARGUMENTS)
        try:
            page = browser.new_context(**PHONE, service_workers="block").new_page()
            page.route("**/bench.jpg", lambda route: route.fulfill(path=file, content_type="image/jpeg"))
            claim_by_hand(page, server)
            yield page, server
        finally:
            browser.close()
            server.stop()


def _costs(page: Page) -> None:
    """Print processor time and memory from the file to the dots."""
    page.evaluate(FILE)
    renderer = _renderer(page)
    held: _Held | None = _Held(renderer)
    for step, how in STEPS.items():
        took = []
        for _ in range(TURNS):
            page.evaluate(LOOK, how)
            page.wait_for_timeout(500)  # what is still compiled and cleaned up belongs to what was before
            waited, cpu_ms, wall_ms = _waited_ms(renderer), _cpu_ms(renderer), time.monotonic()
            page.evaluate("bench.look()")
            wall_ms = 1000 * (time.monotonic() - wall_ms)
            now = _waited_ms(renderer)
            took.append(
                (_cpu_ms(renderer) - cpu_ms, sum(now[each] - waited.get(each, 0) for each in now), wall_ms)
            )
            page.evaluate("bench.looker.end()")
            if held:
                before, most = held.end()
                held = None
        cpu, waited_ms, wall = (sorted(each) for each in zip(*took, strict=True))
        print(
            f"{step}, least and middle of {TURNS}: processor {cpu[0]:.0f} and {cpu[TURNS // 2]:.0f} ms, of that page "
            f"and worker {waited_ms[0]:.0f} and {waited_ms[TURNS // 2]:.0f} ms; at {SLOWER} times slower "
            f"{SLOWER * cpu[0]:.0f} and {SLOWER * cpu[TURNS // 2]:.0f} ms, page and worker alone "
            f"{SLOWER * waited_ms[0]:.0f} and {SLOWER * waited_ms[TURNS // 2]:.0f} ms; by the clock, not slowed "
            f"down, {wall[0]:.0f} and {wall[TURNS // 2]:.0f} ms"
        )
    page.wait_for_timeout(5000)
    later = _mb(renderer)
    for what in most:
        print(f"the renderer held, {what}: {before[what]:.0f} MB before, {most[what]:.0f} MB at most", end="")
        print(f" with one picture, {later[what]:.0f} MB five seconds after the last of {TURNS * len(STEPS)}")


def _longest(page: Page, server: Server, file: Path, rate: int) -> None:
    """Print the longest task of the page while a picture is chosen, made small, kept, looked at and shown with dots."""
    longest = []
    page.context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": rate})
    for _ in range(TURNS):
        page.goto(f"{server.url}/#/shelf")
        page.reload()
        page.get_by_role("link", name="Amber").first.click()
        page.get_by_role("button", name=text("event-kind-count"), exact=True).click()
        field = page.get_by_role("dialog").locator("input[type=file]")
        field.wait_for(state="attached")
        page.wait_for_timeout(1000 * rate)  # what opening the sheet costs belongs to that
        page.evaluate(LONG_TASKS)
        field.set_input_files(file)
        page.locator(".dot-sum strong").wait_for()
        longest.append(page.evaluate(LONGEST))
    longest.sort()
    print(
        f"page slowed down {rate} times: its longest task {longest[0]:.0f} ms, middle {longest[TURNS // 2]:.0f} ms"
    )


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


def _waited_ms(pid: int) -> dict[str, float]:
    """Return the processor time so far of the page's own thread and of each worker's, by the thread's id."""
    spent = {}
    for thread in Path(f"/proc/{pid}/task").iterdir():
        try:
            name = (thread / "comm").read_text().strip()
            if thread.name == str(pid) or name.startswith("DedicatedWorker"):
                spent[thread.name] = int((thread / "schedstat").read_text().split()[0]) / 1e6
        except (FileNotFoundError, ProcessLookupError):
            continue  # it ended
    return spent


def _mb(pid: int) -> dict[str, float]:
    """Return what a process holds: its own; with its part of what several share (PSS); with all of that."""
    parts = {}
    for name in ("status", "smaps_rollup"):
        for line in Path(f"/proc/{pid}/{name}").read_text().splitlines():
            key, _, value = line.partition(":")
            if value.strip().endswith("kB"):
                parts[key] = int(value.split()[0]) / 1024
    return {
        "of its own": parts["RssAnon"] + parts["RssShmem"],
        "with its part of what is shared": parts["Pss"],
        "in all": parts["VmRSS"],
    }


class _Held:
    """Looks every few milliseconds at what a process holds, until ``end``."""

    def __init__(self, pid: int) -> None:
        self._pid, self._over = pid, threading.Event()
        self._before = self._most = _mb(pid)
        self._looking = threading.Thread(target=self._look, daemon=True)
        self._looking.start()

    def _look(self) -> None:
        while not self._over.wait(0.005):
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
