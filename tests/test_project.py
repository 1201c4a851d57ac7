"""The project as a whole: its pins, its top level, its commands."""

import os
import re
import subprocess
import sys
import tomllib
from fnmatch import fnmatch
from importlib import metadata
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

ROOT = Path(__file__).parent.parent
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
PACKAGES = {"station", "drivers", "labels"}
PINNED = ("requirements.txt", "requirements-test.txt")
MOST_LINES = 400


# --- Pins --------------------------------------------------------------------------------


def pins(file: str) -> dict[str, tuple[Requirement, int]]:
    """Return, by package, the pin in a requirements file and how many hashes it carries."""
    lines = (ROOT / file).read_text(encoding="utf-8").replace("\\\n", " ").splitlines()
    found = {}
    for line in lines:
        if line and not line.lstrip().startswith(("#", "--only-binary :all:")):
            stated, *hashes = line.split("--hash=sha256:")
            requirement = Requirement(stated)
            assert all(re.fullmatch(r"[0-9a-f]{64}", h.strip()) for h in hashes), line
            found[canonicalize_name(requirement.name)] = (requirement, len(hashes))
    return found


@pytest.mark.parametrize("file", PINNED)
def test_every_pin_is_exact_and_hashed(file: str) -> None:
    found = pins(file)
    assert found
    for requirement, hashes in found.values():
        assert re.fullmatch(r"==[^,*]+", str(requirement.specifier)), requirement
        assert hashes >= 1, requirement


@pytest.mark.parametrize("file", PINNED)
def test_pins_name_no_package_index(file: str) -> None:
    text = (ROOT / file).read_text(encoding="utf-8").lower()
    for word in ("http", "://", "index-url", "find-links", "trusted-host", "pypi."):
        assert word not in text


def test_both_files_pin_the_station_alike() -> None:
    run, test = (pins(file) for file in PINNED)
    assert run.items() <= test.items()


@pytest.mark.parametrize(
    ("file", "wanted"),
    [
        ("requirements.txt", PROJECT["project"]["dependencies"]),
        ("requirements.txt", PROJECT["build-system"]["requires"]),
        ("requirements-test.txt", PROJECT["project"]["optional-dependencies"]["test"]),
    ],
    ids=["run", "build", "test"],
)
def test_pins_satisfy_what_the_project_asks(file: str, wanted: list[str]) -> None:
    found = pins(file)
    for text in wanted:
        asked = Requirement(text)
        pin, _ = found[canonicalize_name(asked.name)]
        (version,) = (specifier.version for specifier in pin.specifier)
        assert asked.specifier.contains(version), f"{pin} does not satisfy {asked}"


# --- PySide6 -----------------------------------------------------------------------------

# Each emit, and each call that answers None, must give back the reference it took. Version
# 6.12.0 gives back one too many: under CPython 3.11 the process ends within a minute of work.
REFERENCE_PROBE = """
import sys
from PySide6.QtCore import QCoreApplication, QObject, Signal

application = QCoreApplication([])


class Sender(QObject):
    sent = Signal()


sender = Sender()
before = sys.getrefcount(True), sys.getrefcount(None)
for _ in range(100):
    sender.sent.emit()
    sender.setObjectName("a name")
lost_true = before[0] - sys.getrefcount(True)
lost_none = before[1] - sys.getrefcount(None)
assert lost_true < 5, f"{lost_true} references to True lost in 100 emits"
assert lost_none < 5, f"{lost_none} references to None lost in 100 calls"
"""


def test_pyside6_is_older_than_6_12() -> None:
    (asked,) = (
        requirement.specifier
        for requirement in map(Requirement, PROJECT["project"]["dependencies"])
        if requirement.name == "PySide6-Essentials"
    )
    assert not asked.contains("6.12.0")
    assert asked.contains(metadata.version("PySide6-Essentials"))


if sys.version_info < (3, 12):  # from then on True and None live forever, and nothing shows

    @pytest.mark.gui
    def test_pyside6_keeps_its_references() -> None:
        probe = subprocess.run(
            [sys.executable, "-c", REFERENCE_PROBE],
            capture_output=True,
            text=True,
            timeout=60,
            check=False,
        )
        assert probe.returncode == 0, probe.stderr


# --- The tree ----------------------------------------------------------------------------


def test_import_packages_are_exactly_three() -> None:
    installed = metadata.distribution(PROJECT["project"]["name"]).read_text("top_level.txt")
    assert set((installed or "").split()) == PACKAGES
    assert {path.parent.name for path in ROOT.glob("*/__init__.py")} == PACKAGES


def test_top_level_holds_only_what_belongs_there() -> None:
    ignored = (ROOT / ".gitignore").read_text(encoding="utf-8").split()
    expected = PACKAGES | {
        *("README.md", "DEVELOPERS.md", "pyproject.toml", *PINNED),
        *("tests", "demo_config"),
    }
    found = {
        path.name
        for path in ROOT.iterdir()
        if not path.name.startswith(".")
        and not any(fnmatch(path.name, pattern.rstrip("/")) for pattern in ignored)
    }
    assert found <= expected, f"does not belong at the top: {sorted(found - expected)}"


def test_no_file_is_too_long_to_read() -> None:
    lengths = {
        str(path.relative_to(ROOT)): len(path.read_text(encoding="utf-8").splitlines())
        for package in PACKAGES
        for path in (ROOT / package).rglob("*.py")
    }
    assert lengths
    too_long = {file: length for file, length in lengths.items() if length > MOST_LINES}
    assert not too_long, f"longer than {MOST_LINES} lines: {too_long}"


# --- The two commands --------------------------------------------------------------------

COMMANDS = ("sh .setup/station demo", "sh .setup/station test")


def test_readme_gives_both_commands_on_lines_of_their_own() -> None:
    lines = (ROOT / "README.md").read_text(encoding="utf-8").splitlines()
    first_job, first_test = (
        next(n for n, line in enumerate(lines) if line.strip() == command) for command in COMMANDS
    )
    assert first_job < first_test


def test_contributors_guide_names_the_checks() -> None:
    assert COMMANDS[1] in (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")


def test_build_server_runs_the_second_command_and_nothing_else() -> None:
    script = (ROOT / ".ci/run").read_text(encoding="utf-8")
    (command,) = (line for line in script.splitlines() if line.strip() and not line.startswith("#"))
    assert command == 'exec sh "$(dirname -- "$0")/../.setup/station" test'


if os.name == "posix":

    @pytest.mark.parametrize("arguments", [[], ["--help"], ["nonsense"]])
    def test_wrong_call_of_set_up_shows_both_commands(arguments: list[str]) -> None:
        call = subprocess.run(
            ["sh", ROOT / ".setup/station", *arguments],
            capture_output=True,
            text=True,
            timeout=60,
            check=False,
        )
        assert call.returncode == 2
        assert call.stdout == ""
        for command in COMMANDS:
            assert command in call.stderr
