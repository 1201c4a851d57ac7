"""The command line as a whole: help, wrong calls, faults nobody foresaw, the real entry point."""

import json
import os
import subprocess
import sys
import tomllib
from importlib import import_module
from pathlib import Path

import pytest
import typer

from station.cli.answer import Answer, run_verb
from station.cli.entry import run
from station.errors import BadInput, EnvironmentFault, StationBug

ROOT = Path(__file__).parents[3]
VERBS = (
    "limits", "verdict", "batch", "forecast", "target", "scale-check", "rejects", "trace",
    "journal", "settings",
)  # fmt: skip


def test_help_names_every_verb(station):
    found = station("--help")
    assert found.code == 0
    assert all(verb in found.out for verb in VERBS)


@pytest.mark.parametrize(
    "verb",
    [
        *((verb,) for verb in VERBS),
        ("journal", "verify"),
        ("journal", "rebuild"),
        ("settings", "check"),
    ],
)
def test_every_verb_has_help_and_json(station, verb):
    found = station(*verb, "--help")
    assert found.code == 0
    if verb not in (("journal",), ("settings",)):
        assert "--json" in found.out


@pytest.mark.parametrize("verb", [(), ("journal",), ("settings",)])
def test_no_verb_shows_help_and_is_a_wrong_call(station, verb):
    found = station(*verb)
    assert (found.code, found.err) == (2, "")
    assert "Usage: station" in found.out


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (("weigh",), "No such command 'weigh'"),
        (("limits",), "Missing option '--rules'"),
        (("limits", "--nominal", "1g", "--rules"), "requires an argument"),
        (("limits", "--nomnal", "1g"), "No such option: --nomnal"),
        (("limits", "extra", "--rules", "x", "--nominal", "1g"), "unexpected extra argument"),
    ],
)
def test_a_wrong_call_is_bad_input(station, arguments, words):
    found = station(*arguments)
    assert (found.code, found.out) == (2, "")
    assert words in found.err
    assert "see station --help" in found.err
    assert found.err.count("\n") == 1
    wrapped = station(arguments[0], "--json", *arguments[1:])
    assert wrapped.code == 2
    assert words in wrapped.error["title"]


def test_version(station):
    pyproject = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    assert station("--version").out.strip() == pyproject["project"]["version"]


# --- errors and exit codes ------------------------------------------------------------------------


def _app_that_raises(fault: Exception, *, in_verb: bool) -> typer.Typer:
    app = typer.Typer(pretty_exceptions_enable=False)

    def work() -> Answer:
        raise fault

    @app.command()
    def fail(as_json: bool = typer.Option(False, "--json")) -> None:
        run_verb(as_json, work) if in_verb else work()

    return app


@pytest.mark.parametrize("in_verb", [True, False])
@pytest.mark.parametrize(
    ("fault", "code", "words"),
    [
        (BadInput("lot", "not known"), 2, "lot: not known\n"),
        (EnvironmentFault("disk", "full"), 3, "disk: full\n"),
        (StationBug("a promise was broken"), 3, "a promise was broken\n"),
        (RuntimeError("boom"), 3, "fault of the station, RuntimeError: boom\n"),
        (ZeroDivisionError(), 3, "fault of the station, ZeroDivisionError\n"),
    ],
)
def test_each_kind_of_error_has_its_code_and_no_traceback(capsys, fault, code, words, in_verb):
    app = _app_that_raises(fault, in_verb=in_verb)
    assert run(app, []) == code
    assert capsys.readouterr() == ("", words)
    assert run(app, ["--json"]) == code
    out, err = capsys.readouterr()
    assert (out, json.loads(err)["error"]["exit"]) == ("", code)


# --- the real entry point -------------------------------------------------------------------------


def _process(*arguments: str, **surroundings: str) -> subprocess.CompletedProcess[bytes]:
    clean = {key: value for key, value in os.environ.items() if not key.startswith("STATION_")}
    return subprocess.run(
        [sys.executable, "-m", "station.app.main", *arguments],
        capture_output=True,
        env={**clean, **surroundings},
        cwd=ROOT,
        timeout=60,
    )


def test_the_console_script_points_at_the_entry_point():
    pyproject = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    module, _, function = pyproject["project"]["scripts"]["station"].partition(":")
    assert callable(getattr(import_module(module), function))


def test_a_process_answers_and_leaves_with_the_code():
    verdict = ("verdict", "--rules", "eu-76-211", "--nominal", "250g", "--json", "--net")
    good, short = _process(*verdict, "250g"), _process(*verdict, "231g")
    assert (good.returncode, json.loads(good.stdout)["accepted"], good.stderr) == (0, True, b"")
    assert (short.returncode, json.loads(short.stdout)["verdict"]) == (1, "below T2")
    wrong = _process(*verdict, "heavy", PYTHONIOENCODING="ascii")
    assert (wrong.returncode, wrong.stdout) == (2, b"")
    assert b"is not a mass" in wrong.stderr


def test_a_process_asks_a_record_whatever_the_encoding(packed):
    asked = ("trace", "--lot", "PW/WCA/26326", "--home", str(packed.home))
    page = _process(*asked, PYTHONIOENCODING="ascii")
    assert (page.returncode, page.stderr) == (0, b"")
    assert "─" in page.stdout.decode()


def test_a_process_on_a_missing_home_is_bad_input(tmp_path):
    found = _process("journal", "verify", STATION_HOME=str(tmp_path / "nowhere"))
    assert found.returncode == 2
    assert b"is no folder" in found.stderr
    assert b"Traceback" not in found.stderr
