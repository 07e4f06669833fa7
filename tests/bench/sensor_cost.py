"""What a hundred sensors cost that send one reading a minute: ``python -m tests.bench.sensor_cost``.

The whole app answers whole requests (token, JSON, limits, storing, commit), in this process and without a network, on
SQLite with full durability. Processor time by the system's count of this process; the baseline inserts the same rows.
"""

from __future__ import annotations

import logging
import tempfile
import time
from pathlib import Path

from sqlalchemy import insert
from tests.web.conftest import Browser, Clock

from broodshelf.app import create_app
from broodshelf.records.database import db, writing
from broodshelf.records.ids import uuid7
from broodshelf.sensing.tables import readings
from broodshelf.settings import from_environment

SENSORS, MINUTES, MINUTE_MS = 100, 10, 60_000


def main() -> None:
    """Print the processor time of a reading, what a hundred a minute take of a core, and the ratio to bare inserts."""
    logging.disable(logging.INFO)
    with tempfile.TemporaryDirectory() as folder:
        clock = Clock()
        app = create_app(from_environment({"BROODSHELF_DATA": str(Path(folder))}), clock)
        keeper = Browser(app, clock).claim()
        places = [keeper.op("place", {"name": f"Place {number}"}) for number in range(10)]
        assert keeper.sync(*places).status_code == 200
        made = [
            keeper.post(
                "/api/sensors", {"place_id": places[number % 10]["id"], "name": f"{number}"}
            ).get_json()
            for number in range(SENSORS)
        ]
        client = app.test_client()
        began_s, began_cpu_s = time.perf_counter(), time.process_time()
        for _ in range(MINUTES):
            clock.now_ms += MINUTE_MS
            for sensor in made:
                body = {"temperature": 24.5, "humidity": 50}
                answer = client.post(
                    "/api/readings", json=body, headers={"Authorization": f"Bearer {sensor['token']}"}
                )
                assert answer.status_code == 200, answer.text
        cpu_s, took_s = time.process_time() - began_cpu_s, time.perf_counter() - began_s
        bare_s = _bare(app, keeper.me["household_id"], made[0]["id"], clock.now_ms)
        with app.app_context():
            db.engine.dispose()
    each_ms = 1000 * cpu_s / (SENSORS * MINUTES)
    print(
        f"{SENSORS * MINUTES:,} readings, each in a request of its own: {each_ms:.2f} ms of the processor each"
    )
    print(
        f"a hundred sensors once a minute: {100 * SENSORS * each_ms / MINUTE_MS:.2f} % of a core (limit 1 %)"
    )
    ratio = cpu_s / bare_s
    print(f"{ratio:.1f} times a bare insert and commit of each row; {took_s:.2f} s on the clock")


def _bare(app, household_id: str, sensor_id: str, from_ms: int) -> float:
    began_s = time.process_time()
    with app.app_context():
        for number in range(SENSORS * MINUTES):
            row = {"household_id": household_id, "sensor_id": sensor_id, "at_ms": from_ms + 1 + number}
            with writing() as connection:
                connection.execute(
                    insert(readings).values(**row, place_id=uuid7(from_ms), temperature_c=24.5)
                )
    return time.process_time() - began_s


if __name__ == "__main__":
    main()
