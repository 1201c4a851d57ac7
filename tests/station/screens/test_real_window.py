"""Numbers reach the pixels of a real window system."""

import os
import re
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

pytestmark = [pytest.mark.window, pytest.mark.gui]
ROOT = Path(__file__).parents[3]
COUNT = 60


@pytest.fixture
def display() -> Iterator[str]:
    """Name of a display of our own."""
    read, write = os.pipe()
    command = ["Xvfb", "-displayfd", str(write), "-screen", "0", "1280x800x24", "-nolisten", "tcp"]
    server = subprocess.Popen(command, pass_fds=(write,), stderr=subprocess.DEVNULL)
    os.close(write)
    with os.fdopen(read) as told:
        number = told.readline().strip()
    yield f":{number}"
    server.terminate()
    server.wait(10)


def test_numbers_are_painted_in_time(display: str) -> None:
    result = subprocess.run(
        [sys.executable, "-m", "tests.station.screens.measure", str(COUNT)],
        cwd=ROOT,
        env={**os.environ, "DISPLAY": display, "QT_QPA_PLATFORM": "xcb"},
        capture_output=True,
        text=True,
        timeout=90,
        check=True,
    )
    alone = re.search(r"alone: n=(\d+) p50=([\d.]+) ", result.stdout)
    assert alone is not None, result.stdout + result.stderr
    # A frame is 16.7 ms; the bound leaves room for a machine that does other work.
    assert int(alone[1]) >= COUNT * 0.8
    assert float(alone[2]) < 33.4
