"""A real MQTT broker (mosquitto) on this machine, with TLS and passwords, and a sensor that speaks to it."""

from __future__ import annotations

import shutil
import socket
import subprocess
import time
from pathlib import Path
from types import TracebackType

import paho.mqtt.client as paho
from paho.mqtt.enums import CallbackAPIVersion
from tests.support.certificates import make_certificate
from tests.support.server import free_port

READER, WRITER = ("reader", "of the shelf"), ("sensor", "on the shelf")
"""Invented for this broker, which only this machine can reach."""


class MqttBroker:
    """``with MqttBroker(folder) as broker``: it listens at ``broker.port`` with the certificate ``broker.ca``."""

    def __init__(self, folder: Path) -> None:
        self._folder, self.port = folder, free_port()

    def __enter__(self) -> MqttBroker:
        self._folder.mkdir(exist_ok=True)
        self.ca = make_certificate(self._folder)
        passwords = self._folder / "passwords"
        for number, (user, password) in enumerate((READER, WRITER)):
            made = [
                "mosquitto_passwd",
                "-b",
                *(["-c"] if number == 0 else []),
                str(passwords),
                user,
                password,
            ]
            subprocess.run(made, check=True, capture_output=True)
        (self._folder / "broker.conf").write_text(
            f"listener {self.port} 127.0.0.1\ncertfile {self.ca}\nkeyfile {self.ca}\n"
            f"allow_anonymous false\npassword_file {passwords}\nuser root\n"
        )
        self.start()
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.stop()

    def start(self) -> None:
        """Start, or start again at the same port."""
        found = shutil.which("mosquitto") or shutil.which("mosquitto", path="/usr/sbin:/usr/local/sbin")
        assert found, (
            "mosquitto is missing; deploy/test installs it (Debian and Ubuntu: apt-get install mosquitto)"
        )
        self._log = (self._folder / "broker.log").open("ab")
        command = [found, "-c", str(self._folder / "broker.conf")]
        self._process = subprocess.Popen(command, stdout=self._log, stderr=self._log)
        deadline = time.monotonic() + 20
        while time.monotonic() < deadline and self._process.poll() is None:
            try:
                socket.create_connection(("127.0.0.1", self.port), 1).close()
            except OSError:
                time.sleep(0.05)
            else:
                return
        raise RuntimeError(f"the broker did not start:\n{(self._folder / 'broker.log').read_text()[-2000:]}")

    def stop(self) -> None:
        """End it as a power cut would."""
        self._process.kill()
        self._process.wait(10)
        self._log.close()


class MqttSensor:
    """A sensor that is connected to the broker; ``last_will`` is what the broker says when its line breaks."""

    def __init__(self, broker: MqttBroker, last_will: tuple[str, str] | None = None) -> None:
        self._client = paho.Client(CallbackAPIVersion.VERSION2)
        self._client.tls_set(ca_certs=str(broker.ca))
        self._client.username_pw_set(*WRITER)
        if last_will is not None:
            self._client.will_set(*last_will, qos=1)
        self._client.connect("127.0.0.1", broker.port)
        self._client.loop_start()

    def say(self, topic: str, payload: str, *, retain: bool = False) -> None:
        """Publish and wait until the broker has it."""
        self._client.publish(topic, payload, qos=1, retain=retain).wait_for_publish(10)

    def hang_up(self) -> None:
        """Go in peace: the last will is not told."""
        self._client.disconnect()
        self._client.loop_stop()

    def die(self) -> None:
        """Break the line without a word: the broker tells the last will."""
        line = self._client.socket()
        assert line is not None
        line.shutdown(socket.SHUT_RDWR)
        self._client.loop_stop()
