"""The gates every test passes through do close: each is shown a test it must fail."""

import os
import shutil
import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

import pytest
from PySide6.QtWidgets import QApplication

TESTS = Path(__file__).parent

CASES = """
import logging
import threading

import pytest
from hypothesis import given, strategies
from PySide6.QtCore import QTimer


def test_plain():
    pass


@given(strategies.integers())
def test_plain_property(number):
    assert number == number


def test_skipped():
    pytest.skip("for a reason")


@pytest.mark.xfail
def test_known_fault():
    assert False


@pytest.mark.system("sh", "no-such-command")
def test_needs_by_mark():
    pass


def test_needs_by_fixture(need_tool):
    need_tool("no-such-command")


def test_has_tool(need_tool):
    assert need_tool("sh").endswith("sh")


def test_leaves_thread():
    threading.Thread(target=threading.Event().wait, name="left behind", daemon=True).start()


def test_thread_ends_in_time():
    threading.Timer(0.05, lambda: None).start()


def test_logs():
    logging.getLogger("station.any").warning("the cable is out")


@pytest.mark.expects_log("cable")
def test_logs_as_expected():
    logging.getLogger("station.any").warning("the cable is out")


@pytest.mark.expects_log("cable")
def test_logs_something_else():
    logging.getLogger("station.any").error("the disk is full")


def test_logs_below_warning():
    logging.getLogger("station.any").info("the cable is in")


def test_wish_to_quit(qapp):
    qapp.exit()


def test_loops_go_on_after_it(qtbot):
    heard = []
    QTimer.singleShot(0, lambda: heard.append(True))
    qtbot.waitUntil(lambda: bool(heard))


def test_wait_runs_out(qtbot):
    over = threading.Event()
    thread = threading.Thread(target=over.wait, name="stood still")
    thread.start()
    try:
        qtbot.waitUntil(lambda: False, timeout=1)
    finally:
        over.set()
"""

SKIPPED_FILE = 'import pytest\npytest.importorskip("no_such_module")\n'


def run_cases(folder: Path, chosen: str = "", *, ci: bool) -> dict[str, str]:
    """Run the cases under the project's conftest and settings; return outcome by name."""
    shutil.copy(TESTS / "conftest.py", folder)
    (folder / "test_cases.py").write_text(CASES)
    (folder / "test_skipped_file.py").write_text(SKIPPED_FILE)
    environment = {name: value for name, value in os.environ.items() if name != "CI"}
    subprocess.run(
        [
            *(sys.executable, "-m", "pytest", "-q", "-k", chosen, f"--junitxml={folder}/out.xml"),
            *("-c", TESTS.parent / "pyproject.toml", "--rootdir", folder),
            *("-o", "junit_logging=system-err"),
            *("-p", "no:cacheprovider", "--continue-on-collection-errors", folder),
        ],
        cwd=folder,
        env=environment | ({"CI": "true"} if ci else {}),
        capture_output=True,
        timeout=60,
        check=False,
    )
    outcomes: dict[str, str] = {}
    for case in ElementTree.parse(folder / "out.xml").iter("testcase"):
        verdicts = [child for child in case if child.tag in {"skipped", "failure", "error"}]
        for verdict in verdicts:
            told = (verdict.attrib["message"], verdict.text or "", case.findtext("system-err", ""))
            outcomes[case.attrib["name"]] = " ".join(told)
        if not verdicts:
            outcomes.setdefault(case.attrib["name"], "passed")
    return outcomes


SKIPS = {
    "test_skipped": "for a reason",
    "test_needs_by_mark": "needs no-such-command",
    "test_needs_by_fixture": "needs no-such-command",
    "test_skipped_file": "could not import 'no_such_module'",
}


def test_gates(tmp_path: Path) -> None:
    outcomes = run_cases(tmp_path, ci=False)
    passed = {name for name, outcome in outcomes.items() if outcome == "passed"}
    assert passed == {
        "test_plain",
        "test_plain_property",
        "test_has_tool",
        "test_thread_ends_in_time",
        "test_logs_as_expected",
        "test_logs_below_warning",
        "test_loops_go_on_after_it",
    }
    assert "left a wish to quit" in outcomes["test_wish_to_quit"]
    assert "thread stood still:" in outcomes["test_wait_runs_out"]
    assert "threads running: left behind" in outcomes["test_leaves_thread"]
    assert "WARNING station.any: the cable is out" in outcomes["test_logs"]
    assert "ERROR station.any: the disk is full" in outcomes["test_logs_something_else"]
    for name, reason in SKIPS.items():
        assert reason in outcomes[name]
        assert "nothing may be skipped" not in outcomes[name]


def test_under_ci_a_skip_is_a_failure(tmp_path: Path) -> None:
    outcomes = run_cases(tmp_path, "skipped or needs or plain or known", ci=True)
    assert outcomes["test_plain"] == "passed"
    assert "nothing may be skipped" not in outcomes["test_known_fault"]
    for name, reason in SKIPS.items():
        assert "nothing may be skipped" in outcomes[name]
        assert reason in outcomes[name]


@pytest.mark.gui
def test_screen_is_in_memory_unless_chosen(qapp: QApplication) -> None:
    """The run shows no window by itself; a platform set by hand is kept."""
    chosen = os.environ["QT_QPA_PLATFORM"]
    assert chosen
    assert qapp.platformName() == chosen.partition(":")[0]
