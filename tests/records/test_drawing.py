"""A picture costs its own request time and nobody else's, whatever it holds."""

from __future__ import annotations

import io
import sys
import threading
from pathlib import Path

import pytest
from PIL import Image

from broodshelf.errors import BadRequest, Unavailable
from broodshelf.records import draw_anew as program
from broodshelf.records import drawing as room
from broodshelf.records.drawing import Drawing

HOUSE, OTHER, THIRD = "house", "other", "third"
PATIENCE_S = 20


def jpeg(size: tuple[int, int] = (640, 480), **options: object) -> bytes:
    out = io.BytesIO()
    Image.new("RGB", size, (40, 80, 9)).save(out, "JPEG", **options)
    return out.getvalue()


def many_scans(size: tuple[int, int], count: int) -> bytes:
    """A progressive picture whose last scan stands there ``count`` more times."""
    whole = jpeg(size, progressive=True, quality=10)
    last = whole[whole.rindex(program.SCAN) : -2]
    return whole[:-2] + last * count + whole[-2:]


def stand_in(code: str) -> Drawing:
    """A drawing whose process runs ``code`` in place of the real program."""
    begin = "import signal, sys, time; given, taken = sys.stdin.buffer, sys.stdout.buffer;"
    return Drawing((sys.executable, "-I", "-c", begin + code))


def test_a_picture_comes_back_as_a_picture_and_the_process_stays_for_the_next():
    drawing = Drawing()
    for size in ((1000, 10), (10, 1000), (3200, 2400)):
        with Image.open(io.BytesIO(drawing.draw(HOUSE, jpeg(size)))) as drawn:
            assert drawn.size == ((1600, 1200) if size[0] == 3200 else size)
    first = drawing._process
    drawing.draw(HOUSE, jpeg())

    assert first is not None
    assert drawing._process is first


def test_an_ordinary_progressive_picture_is_taken():
    assert Drawing().draw(HOUSE, jpeg(progressive=True)).startswith(b"\xff\xd8")


def test_a_small_file_of_a_thousand_scans_is_refused_before_it_is_read():
    body = many_scans((2600, 2600), 1_600)
    assert len(body) < 100_000
    with pytest.raises(BadRequest, match="too many scans"):
        Drawing().draw(HOUSE, body)


@pytest.mark.parametrize("body", [b"", b"\xff\xd8", jpeg()[:300], jpeg((4000, 2100)), b"GIF89a" + bytes(90)])
def test_what_is_no_picture_is_refused_and_the_next_is_drawn_by_the_same_process(body):
    drawing = Drawing()
    with pytest.raises(BadRequest) as caught:
        drawing.draw(HOUSE, body)
    process = drawing._process

    assert caught.value.problem_code == "not_a_photo"
    assert drawing.draw(HOUSE, jpeg())
    assert drawing._process is process


def test_a_picture_that_takes_too_much_processor_time_is_refused_for_good_and_the_next_is_drawn():
    spinning = stand_in("given.read(9); signal.setitimer(signal.ITIMER_PROF, 0.05)\nwhile True: pass")
    with pytest.raises(BadRequest, match="too long"):
        spinning.draw(HOUSE, b"seven b")
    spinning._command = Drawing()._command

    assert spinning.draw(HOUSE, jpeg())


def test_the_program_bounds_its_own_time_and_memory(tmp_path: Path):
    """The real program, with a decoder that spins and one that takes all memory, in place of the picture's."""
    for name, code, wanted in (
        ("spin", "while True: pass", BadRequest),
        ("eat", "return b'x' * (2 * m.MOST_MEMORY_BYTES)", BadRequest),
    ):
        script = tmp_path / f"{name}.py"
        script.write_text(
            "import importlib.util, sys\n"
            f"spec = importlib.util.spec_from_file_location('program', {program.__file__!r})\n"
            "m = importlib.util.module_from_spec(spec); spec.loader.exec_module(m)\n"
            "m.MOST_CPU_S = 0.05\n"
            f"def spoilt(*_args, **_more):\n    {code}\n"
            "m.Image.open = spoilt\n"
            "m.serve()\n"
        )
        with pytest.raises(wanted):
            Drawing((sys.executable, "-I", str(script))).draw(HOUSE, jpeg())


def test_a_process_that_was_killed_or_hangs_is_made_good_and_the_picture_may_be_sent_again(monkeypatch):
    monkeypatch.setattr(room, "PATIENCE_S", 0.3)
    for code in ("signal.raise_signal(signal.SIGKILL)", "time.sleep(60)"):
        spoilt = stand_in(code)
        with pytest.raises(Unavailable) as caught:
            spoilt.draw(HOUSE, b"x" * 200_000)
        assert caught.value.status == 503
        assert caught.value.retry_after_s == 5
        monkeypatch.setattr(room, "PATIENCE_S", PATIENCE_S)
        spoilt._command = Drawing()._command
        assert spoilt.draw(HOUSE, jpeg())
        monkeypatch.setattr(room, "PATIENCE_S", 0.3)


def test_a_process_that_ended_for_want_of_work_is_started_again_without_anybody_noticing():
    drawing = Drawing()
    drawing.draw(HOUSE, jpeg())
    first = drawing._process
    assert first is not None
    assert first.stdin is not None
    first.stdin.close()  # as if its minute were over
    assert first.wait(PATIENCE_S) == 0

    assert drawing.draw(HOUSE, jpeg())


def test_a_full_queue_is_told_at_once_and_no_household_fills_it_alone():
    gate = threading.Event()
    drawing = Drawing()
    asked = threading.Event()

    def ask(_body: bytes) -> bytes:
        asked.set()
        gate.wait(PATIENCE_S)
        return b"drawn"

    drawing._ask = ask  # type: ignore[method-assign]
    results: list[bytes] = []
    waiting = [
        threading.Thread(target=lambda h=house: results.append(drawing.draw(h, b"")))
        for house in (HOUSE, OTHER)
    ]
    waiting[0].start()
    assert asked.wait(PATIENCE_S)
    with pytest.raises(Unavailable):
        drawing.draw(HOUSE, b"")
    waiting[1].start()
    while len(drawing._inside) < 2:
        gate.wait(0.005)
    with pytest.raises(Unavailable) as caught:
        drawing.draw(THIRD, b"")
    gate.set()
    for thread in waiting:
        thread.join(PATIENCE_S)

    assert (caught.value.problem_code, caught.value.retry_after_s) == ("busy", 5)
    assert results == [b"drawn", b"drawn"]
    assert drawing.draw(THIRD, b"") == b"drawn"
