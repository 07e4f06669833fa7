"""What is deployed can do as little as it needs: exact files, few rights, an end for every wait."""

from __future__ import annotations

import re
import subprocess
import tomllib
from importlib.metadata import distribution
from pathlib import Path
from typing import Any

import pytest
import yaml
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

ROOT = Path(__file__).parents[2]
DEPLOY = ROOT / "deploy"
LOCKS = sorted((DEPLOY / "locks").glob("*.txt"))
MOST_EXPOSURE = 2.0
"""Of systemd's ten."""


def exposure(unit: Path) -> float:
    """How much a service may do, by systemd's own judgement, from 0 to 10."""
    told = subprocess.run(
        ["systemd-analyze", "security", "--offline=true", "--no-pager", str(unit)],
        capture_output=True,
        text=True,
        check=True,
    ).stdout
    found = re.search(r"Overall exposure level for \S+: ([0-9.]+)", told)
    assert found, told
    return float(found[1])


@pytest.mark.parametrize("name", ["broodshelf.service", "broodshelf-nudger.service"])
def test_a_service_may_do_little_and_less_than_without_its_limits(tmp_path: Path, name):
    unit = DEPLOY / name
    bare = tmp_path / name
    bare.write_text(
        re.sub(r"^(SystemCall|Restrict|Protect)\w+=.*\n", "", unit.read_text(), flags=re.MULTILINE)
    )

    assert exposure(unit) <= MOST_EXPOSURE < exposure(bare)


@pytest.fixture(scope="module")
def compose() -> dict[str, Any]:
    return yaml.safe_load((DEPLOY / "compose.yaml").read_text())


@pytest.mark.parametrize("name", ["broodshelf", "broodshelf-2", "postgresql", "proxy"])
def test_a_container_has_no_rights_of_root_and_a_root_that_it_cannot_write(compose, name):
    service = compose["services"][name]

    assert service["cap_drop"] == ["ALL"]
    assert service.get("cap_add", []) == (["NET_BIND_SERVICE"] if name == "proxy" else [])
    assert "no-new-privileges:true" in service["security_opt"]
    assert service["read_only"] is True
    assert all("noexec" in entry and "size=" in entry for entry in service["tmpfs"])
    assert service["pids_limit"] and service["mem_limit"]


def test_the_server_is_reached_through_the_proxy_only_and_trusts_it_alone(compose):
    server = compose["services"]["broodshelf"]

    assert "ports" not in server
    assert server["environment"]["BROODSHELF_TRUSTED_PROXY_HOPS"] == "1"


def test_the_image_runs_as_a_user_without_rights_and_keeps_its_data_to_itself():
    recipe = (DEPLOY / "Dockerfile").read_text()
    last_user = re.findall(r"^USER (\S+)$", recipe, re.MULTILINE)

    assert last_user == ["broodshelf"]
    assert "chmod 0700 /data" in recipe


def locked(path: Path) -> dict[str, tuple[str, int]]:
    """Each package of a lock with its version and the number of its hashes."""
    found: dict[str, tuple[str, int]] = {}
    for block in re.split(r"\n(?=\S)", path.read_text().strip()):
        head = re.match(r"([A-Za-z0-9._-]+)(?:\[[a-z,]+\])?==([^\s;\\]+)", block)
        assert head, block
        found[canonicalize_name(head[1])] = (head[2], len(re.findall(r"--hash=sha256:[0-9a-f]{64}\b", block)))
    return found


def pinned() -> dict[str, str]:
    lines = (DEPLOY / "constraints.txt").read_text().splitlines()
    pairs = (line.split("==") for line in lines if line and not line.startswith("#"))
    return {canonicalize_name(name): version for name, version in pairs}


def test_there_is_a_lock_for_each_thing_that_is_installed():
    assert {path.stem for path in LOCKS} == {"build", "compact", "serve", "serve-postgresql", "test"}


@pytest.mark.parametrize("path", LOCKS, ids=lambda path: path.stem)
def test_every_package_is_the_exact_version_with_the_hashes_of_its_files(path):
    versions = pinned()
    for name, (version, hashes) in locked(path).items():
        assert versions.get(name) == version, f"{name}: run deploy/lock"
        assert hashes >= 1, name


@pytest.mark.parametrize("path", LOCKS, ids=lambda path: path.stem)
def test_a_lock_names_no_place_to_fetch_from(path):
    assert "://" not in path.read_text()
    assert not re.search(r"^--|^-[a-z]", path.read_text(), re.MULTILINE)


@pytest.mark.parametrize(
    ("lock", "extras"),
    [("serve", []), ("serve-postgresql", ["postgresql"]), ("test", ["dev", "postgresql", "compact"])],
)
def test_a_lock_holds_what_the_package_asks_for(lock, extras):
    project = tomllib.loads((ROOT / "pyproject.toml").read_text())["project"]
    asked = [
        *project["dependencies"],
        *(line for extra in extras for line in project["optional-dependencies"][extra]),
    ]
    wanted = {canonicalize_name(Requirement(line).name): Requirement(line) for line in asked}
    wanted.pop("broodshelf", None)
    held = locked(DEPLOY / "locks" / f"{lock}.txt")

    assert wanted.keys() <= held.keys(), "run deploy/lock"
    assert [name for name, asked in wanted.items() if not asked.specifier.contains(held[name][0])] == []


def test_what_the_packages_of_the_server_ask_for_is_locked_with_them():
    """Each installed package's own requirements, as far as they count on this machine."""
    held = locked(DEPLOY / "locks/serve.txt")
    lacking = {
        (name, asked.name)
        for name in held
        for line in _requires(name)
        if (asked := Requirement(line)) and (asked.marker is None or asked.marker.evaluate({"extra": ""}))
        if canonicalize_name(asked.name) not in held
    }

    assert lacking == set()


def _requires(name: str) -> list[str]:
    try:
        return distribution(name).requires or []
    except ModuleNotFoundError:  # for another system than this one
        return []


@pytest.mark.parametrize("name", ["common.sh", "install"])
def test_nothing_is_installed_without_its_hash(name):
    """Every call of pip that may fetch compares hashes; the others may not fetch."""
    text = (DEPLOY / name).read_text().replace("\\\n", " ")
    calls = re.findall(r"-m pip (?:install|wheel) .*", text)

    assert calls
    for call in calls:
        assert "--no-deps" in call
        assert "--require-hashes" in call or "--no-index" in call


def test_the_guide_says_that_the_settings_are_for_the_service_alone():
    guide = (ROOT / "docs/self-hosting.md").read_text()

    assert "install -m 0600 /dev/null /etc/broodshelf.env" in guide
