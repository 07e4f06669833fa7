"""How well ants are counted on pictures, and how soon: ``python -m tests.bench.count_pictures [accuracy|speed]``.

Accuracy is of rendered tubes (``tests/support/rendered_tubes.py``); the seeds are others than those that constants were
chosen on. A correction takes a false dot away or sets one on an ant that was missed, in random order; whoever sees that
nothing is wrong any more stops. Real photographs could not be had.

Speed is of a picture of 12 megapixels in Chromium, the page's processor slowed down four times. That slows the page
alone, not its workers, so what the worker takes is told as measured and four times as long.
"""

from __future__ import annotations

import argparse
import random
import tempfile
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


TO_DOTS = """async () => {
  const of = (name) => import(`/static/${document.body.dataset.build}/${name}`);
  const [{ takePhoto }, { lookAt }, { findPhoto }, { session }, { rowsOf }] = await Promise.all(
    ['signals/photos.js', 'counting/looker.js', 'database/photos.js', 'signals/session.js', 'signals/rows.js'].map(of));
  const file = await (await fetch('/bench.jpg')).blob();
  const long = [];
  new PerformanceObserver((list) => long.push(...list.getEntries().map((each) => each.duration)))
    .observe({ type: 'longtask' });
  const begin = performance.now();
  const id = await takePhoto(rowsOf('colony')[0].id, file);
  const small = performance.now();
  const { blob } = await findPhoto(session.peek().device_id, id);
  const looker = lookAt(blob);
  const looked = await looker.ask(null, null);
  const end = performance.now();
  const again = await looker.ask(looked.body_px, null);
  const known = performance.now() - end;
  looker.end();
  await new Promise((done) => setTimeout(done, 200));
  return { small_ms: small - begin, dots_ms: end - small, known_ms: known, dots: again.dots.length,
           longest_ms: Math.max(0, ...long) };
}"""


def speed() -> None:
    """Print how long 12 megapixels take to become dots, and what the browser's processes hold meanwhile."""
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        file = Path(folder) / "large.jpg"
        tube = render(Scene(200, seed=20_500, body_px=34)).image
        tube.resize((4000, 3000), Image.Resampling.BICUBIC).save(file, quality=92)
        server = Server(Path(folder) / "data").start()
        browser = playwright.chromium.launch(executable_path=str(SHELL), args=ARGUMENTS)
        try:
            page = browser.new_context(**PHONE, service_workers="block").new_page()
            page.route("**/bench.jpg", lambda route: route.fulfill(path=file, content_type="image/jpeg"))
            claim_by_hand(page, server)
            page.context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": 4})
            before_mb = _held_mb(page)
            found = page.evaluate(TO_DOTS)
            after_mb = _held_mb(page)
        finally:
            browser.close()
            server.stop()
    print(f"12 megapixels made small and kept, page slowed down 4 times: {found['small_ms']:.0f} ms")
    print(f"dots on it with a guess of the size, worker as it is: {found['dots_ms']:.0f} ms")
    print(
        f"dots anew, the size known, worker as it is: {found['known_ms']:.0f} ms; {found['dots']} proposals"
    )
    print(f"longest task of the page: {found['longest_ms']:.0f} ms")
    print(f"most memory of the renderer: {after_mb:.0f} MB, {before_mb:.0f} before")


def _held_mb(page: Page) -> float:
    """Return the most that any renderer has held so far."""
    browser = page.context.browser
    assert browser
    processes = browser.new_browser_cdp_session().send("SystemInfo.getProcessInfo")["processInfo"]
    most = 0.0
    for each in processes:
        if each["type"] == "renderer":
            lines = Path(f"/proc/{each['id']}/status").read_text().splitlines()
            peak = next(line for line in lines if line.startswith("VmHWM"))
            most = max(most, int(peak.split()[1]) / 1024)
    return most


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
