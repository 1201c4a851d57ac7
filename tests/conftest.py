"""What holds for every test: no screen needed, nothing left running, nothing logged unseen.

Under ``CI=true`` a skipped test is a failed test, so that a missing part of the system cannot
quietly take tests away.
"""

import gc
import logging
import os
import re
import shutil
import sys
import threading
import time
import traceback
from collections.abc import Callable, Generator, Iterator

import pytest
from hypothesis import settings
from pytestqt.exceptions import TimeoutError as WaitRanOut
from pytestqt.qtbot import QtBot

# Read by Qt when the application object is made; without a platform it aborts the whole run.
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["QT_SCALE_FACTOR"] = "1"

IN_CI = os.environ.get("CI") == "true"

settings.register_profile("default", deadline=None)
settings.register_profile("ci", deadline=None, derandomize=True, print_blob=True)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "ci" if IN_CI else "default"))

# Threads that belong to the test tools or to Qt, by the start of their names.
FOREIGN_THREADS = (
    "Dummy-",  # a thread not made by Python (Qt's own) that once ran Python code
    "pydevd.",  # a debugger
)
THREAD_GRACE_S = 2.0


# --- Skips -------------------------------------------------------------------------------


def _demand(tool: str) -> str:
    """Return the path of a command of the system, or skip the test by that command's name."""
    path = shutil.which(tool)
    if path is None:
        pytest.skip(f"needs {tool}; `sh .setup/station test` installs it where it may")
    return path


@pytest.fixture(scope="session")
def need_tool() -> Callable[[str], str]:
    """Give a function: name of a command -> its path; skips the test where it is absent."""
    return _demand


def pytest_runtest_setup(item: pytest.Item) -> None:
    """Skip, by name, tests whose ``system`` or ``window`` mark asks for what is not here."""
    for mark in item.iter_markers("system"):
        for tool in mark.args:
            _demand(tool)
    if item.get_closest_marker("window"):
        _demand("Xvfb")


def _fail_if_skipped(report: pytest.TestReport | pytest.CollectReport) -> None:
    if IN_CI and report.skipped and not hasattr(report, "wasxfail"):
        where = report.longrepr
        reason = where[2] if isinstance(where, tuple) else str(where)
        report.outcome = "failed"
        report.longrepr = f"nothing may be skipped under CI=true. {reason}"


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport() -> Generator[None, pytest.TestReport, pytest.TestReport]:
    """Turn a skipped test into a failed one under CI=true."""
    report = yield
    _fail_if_skipped(report)
    return report


@pytest.hookimpl(wrapper=True)
def pytest_make_collect_report() -> Generator[None, pytest.CollectReport, pytest.CollectReport]:
    """Turn a skipped test file into a failed one under CI=true."""
    report = yield
    _fail_if_skipped(report)
    return report


# --- How long tests wait for Qt, and what everybody did when a wait ran out ---------------

PATIENCE_MS = 60_000
"""Of each wait for a signal, a window or a state that names no time: the 5 s of pytest-qt are soon
over on a machine that others use too, and who is not waited for in vain waits no longer."""

for _wait in (
    *(QtBot.waitSignal, QtBot.waitSignals, QtBot.waitUntil, QtBot.waitCallback),
    *(QtBot.waitActive, QtBot.waitExposed),
):
    _wait.__kwdefaults__["timeout"] = PATIENCE_MS

INNERMOST = 12
"""Calls shown of each thread."""


def _stacks() -> str:
    """What each thread does now, in words."""
    names = {thread.ident: thread.name for thread in threading.enumerate()}
    return "".join(
        f"thread {names.get(ident, ident)}:\n{''.join(traceback.format_stack(frame)[-INNERMOST:])}"
        for ident, frame in sys._current_frames().items()
    )


def _ran_out(fault: WaitRanOut, *words: object) -> None:
    """Tell of a wait at once: whoever waited for a thread may stop it before the report."""
    Exception.__init__(fault, *words)
    sys.stderr.write(f"a wait ran out; {_stacks()}")


WaitRanOut.__init__ = _ran_out


# --- Nothing left running, nothing logged unseen -----------------------------------------


@pytest.fixture(autouse=True)
def _no_thread_left() -> Iterator[None]:
    """Fail a test after which a thread runs that did not run before, daemon or not."""
    before = set(threading.enumerate())
    yield
    left = [
        thread
        for thread in threading.enumerate()
        if thread not in before and not thread.name.startswith(FOREIGN_THREADS)
    ]
    deadline = time.monotonic() + THREAD_GRACE_S
    for thread in left:
        thread.join(max(0.0, deadline - time.monotonic()))
    names = [thread.name for thread in left if thread.is_alive()]
    if names:
        pytest.fail(f"the test left threads running: {', '.join(names)}", pytrace=False)


@pytest.fixture(autouse=True, scope="session")
def _settled() -> Iterator[None]:
    """Leave what all tests loaded out of every search for garbage; that makes one cheap."""
    gc.collect()
    gc.freeze()
    yield
    gc.unfreeze()


@pytest.fixture(autouse=True)
def _windows_end_here(request: pytest.FixtureRequest) -> Iterator[None]:
    """Search for garbage after a test with windows and not in it, where any thread might do it.

    A thread that is not Qt's must not destroy parts of a window: see ``station.screens.sweep``.
    """
    if "qtbot" not in request.fixturenames or not gc.isenabled():
        yield
        return
    gc.disable()
    yield
    gc.collect()
    gc.enable()


@pytest.fixture(autouse=True)
def _loops_go_on(request: pytest.FixtureRequest) -> Iterator[None]:
    """Fail a test after which Qt's loops end as soon as they begin, and let them go on again.

    So they do once a wish to quit is heard while the application itself does not run: no signal
    of another thread and no timer arrives any more, in whatever tests come after.
    """
    yield
    if "qapp" not in request.fixturenames:
        return
    from PySide6.QtCore import QCoreApplication, QEventLoop, QTimer

    loop = QEventLoop()
    QTimer.singleShot(0, loop.quit)
    if loop.exec() == -1:
        QTimer.singleShot(0, lambda: QCoreApplication.exit(0))  # a quit would close windows
        QCoreApplication.exec()
        pytest.fail("the test left a wish to quit behind: no loop of Qt's runs", pytrace=False)


class _Collector(logging.Handler):
    """Keeps the records at WARNING and above."""

    def __init__(self) -> None:
        super().__init__(logging.WARNING)
        self.records: list[logging.LogRecord] = []

    def emit(self, record: logging.LogRecord) -> None:
        self.records.append(record)


@pytest.fixture(autouse=True)
def _no_log_unseen(request: pytest.FixtureRequest) -> Iterator[None]:
    """Fail a test that logs at WARNING or above without an ``expects_log`` mark for it."""
    patterns = [p for mark in request.node.iter_markers("expects_log") for p in mark.args]
    collector = _Collector()
    logging.getLogger().addHandler(collector)
    yield
    logging.getLogger().removeHandler(collector)
    unseen = [
        f"{record.levelname} {record.name}: {record.getMessage()}"
        for record in collector.records
        if not any(re.search(pattern, record.getMessage()) for pattern in patterns)
    ]
    if unseen:
        pytest.fail("the test logged, unexpectedly:\n" + "\n".join(unseen), pytrace=False)
