"""A long record on the screen: from a touch to the rejects of a day painted, and the first screen.

`python -m tests.campaigns.big_screen --home DIR` asks a folder that
`python -m tests.campaigns.big_store --packs N --home DIR` filled, and prints one JSON document;
`python -m tests.campaigns big-screen --full` makes ten million bags first, the short form 22 000.
The windows open on DISPLAY, as under `xvfb-run -a`; without one on a screen nobody sees.

After one start that does not count `station run` is started five times. Two moments are taken from
its command line on: the end of the painting that says STARTING, and of the card that says what the
station waits for. Then the station's window
opens the page QUALITY: a day's rejects count as painted once Qt has handled the painting of the
table that shows them. Twenty days are touched one after the other, each for the first time, and its
door (F10) opens the page as often. With `--cold` the file's pages are taken out of the system's
cache before each of these. Counted as faults: more than 100 ms until the rejects are painted, more
than 1 s until STARTING and 3 s until the card.
"""

import argparse
import json
import os
import shutil
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import date
from pathlib import Path
from typing import NamedTuple

if not os.environ.get("DISPLAY"):
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["QT_SCALE_FACTOR"] = "1"

from PySide6.QtCore import QEventLoop, Qt, QTimer
from PySide6.QtGui import QPaintEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from drivers.port import PortSettings
from station.app.assembly import Audience, Station
from station.app.places import demo_settings, packhouse
from station.app.qt_side import application, running
from station.app.speed.long_record import last_of, make_long_record
from station.app.station_window import station_window
from station.screens.bridge import Bridge
from station.screens.quality import QualityPage
from station.screens.widgets.touch_button import TouchButton
from station.screens.widgets.touch_table import TableRow, TouchTable
from station.store.engine import database
from tests.end_to_end.line import without_pins

SHORT, FULL = 22_000, 10_000_000
DAYS, SHORT_DAYS, STARTS = 20, 3, 5
MOST_REJECTS_MS, MOST_STARTING_MS, MOST_FIRST_MS = 100.0, 1000.0, 3000.0
PATIENCE_S, START_S = 30.0, 120.0
REJECTS = 1
"""Place of the panel on its page."""
_TOLD = ("starting", "painted")
"""What a start tells, in this order."""
_MS, _FIRST = 1e6, "tests.campaigns.chain.first_screen"


class Shown(NamedTuple):
    """Milliseconds from the command line of `station run`.

    Args:
        starting: until it was painted that the station starts.
        first: until the card was painted that says what it waits for.
    """

    starting: float
    first: float


def first_screens(home: Path, starts: int, warm: int = 1) -> list[Shown]:
    """When each start showed what.

    Args:
        home: folder of the record.
        starts: how many are measured.
        warm: how many go before them.
    """
    with tempfile.TemporaryDirectory(prefix="big-screen-") as folder:
        config = Path(folder) / "config"
        shutil.copytree(demo_settings(), config)
        text = (config / "station.toml").read_text(encoding="utf-8")
        named = next(line for line in text.splitlines() if line.startswith("home = "))
        told = text.replace(named, f'home = "{folder}/home"')  # labels stay out of the user's own
        (config / "station.toml").write_text(told, encoding="utf-8")
        # An installed program has its compiled modules from its first start on.
        compiled = {"PYTHONDONTWRITEBYTECODE": "", "PYTHONPYCACHEPREFIX": f"{folder}/compiled"}
        env = os.environ | (compiled if warm else {})
        return [_first_screen(home, config, env) for _ in range(warm + starts)][warm:]


def _first_screen(home: Path, config: Path, env: dict[str, str]) -> Shown:
    command = [sys.executable, "-m", _FIRST, "--config", str(config), "--home", str(home)]
    began = time.monotonic_ns()
    done = subprocess.run(
        command, env=env, capture_output=True, text=True, timeout=START_S, check=False
    )
    lines = [line.split() for line in done.stdout.splitlines() if line.startswith(_TOLD)]
    told = dict(reversed(lines))  # the first painting of each
    if done.returncode or set(told) != set(_TOLD):
        raise RuntimeError(f"the station did not start: {done.stdout}{done.stderr}")
    return Shown(*((int(told[one]) - began) / _MS for one in _TOLD))


class Painted:
    """How often a table was painted, and the rows that it showed then."""

    def __init__(self) -> None:
        self.count = 0
        self.rows: tuple[TableRow, ...] = ()

    @contextmanager
    def watched(self) -> Iterator[None]:
        """Take in each painting; Qt must not have painted a table before."""
        paint = TouchTable.paintEvent

        def noted(table: TouchTable, event: QPaintEvent) -> None:
            paint(table, event)
            self.count += 1
            self.rows = table.rows

        TouchTable.paintEvent = noted  # type: ignore[method-assign]
        try:
            yield
        finally:
            TouchTable.paintEvent = paint  # type: ignore[method-assign]


def rejects_shown(
    home: Path, newest: date, days: int, *, cold: bool
) -> tuple[list[float], list[float], list[int], list[float]]:
    """Milliseconds until a day's rejects are painted.

    Args:
        home: folder of the record.
        newest: the last day looked at.
        days: how many are looked at, one before the other.
        cold: take the file out of the system's cache before each.

    Returns:
        After a touch of the day, of the door (as F10), how many rejects each day has, and
        milliseconds of the processor that each of these took, all threads together.
    """
    house, painted = without_pins(packhouse(demo_settings())), Painted()
    touched, opened, rows, cpu = [], [], [], list[float]()
    with painted.watched(), application() as qt:
        bridge = Bridge()
        audience = Audience(bridge.publish, bridge.answer, entered=bridge.enter)
        with (
            tempfile.TemporaryDirectory(prefix="big-screen-") as folder,
            running(
                station := Station(
                    house, home, PortSettings("none"), Path(folder) / "labels", audience
                )
            ),
        ):
            window = station_window(bridge, station, house)
            page = next(door.page for door in window.doors if door.name == "QUALITY")
            assert isinstance(page, QualityPage)
            window.resize(1280, 800)
            window.show()
            page.go_to(REJECTS)
            page.rejects.day = newest

            def until(act: Callable[[], None]) -> float:
                if cold:
                    _out_of_cache(home)
                panel, count = page.rejects, painted.count
                began, worked = time.monotonic_ns(), time.process_time_ns()
                before = panel.rows  # each reading makes them anew
                act()
                _handle(
                    qt,
                    lambda: (
                        panel.rows is not before
                        and painted.rows is panel.table.rows
                        and painted.count > count
                    ),
                )
                cpu.append((time.process_time_ns() - worked) / _MS)
                return (time.monotonic_ns() - began) / _MS

            def touch(button: TouchButton) -> None:
                QTest.mouseClick(button, Qt.MouseButton.LeftButton)

            def enter() -> float:
                window.show_lead()
                touch(window.lead.more_button)
                return until(lambda: touch(window.lead.doors["QUALITY"]))

            enter()
            for _ in range(days):
                touched.append(until(lambda: touch(page.rejects.before_button)))
                rows.append(len(page.rejects.table.rows))
                opened.append(enter())
            window.close()
            window.deleteLater()
    return touched, opened, rows, cpu


def _handle(qt: QApplication, over: Callable[[], bool]) -> None:
    """Let Qt work until something is so, waiting for events in between."""
    awake = QTimer()  # events may be over before the loop waits for the next
    awake.start(200)
    end = time.monotonic() + PATIENCE_S
    while not over():
        if time.monotonic() > end:
            raise TimeoutError(f"nothing was shown within {PATIENCE_S:g} s")
        qt.processEvents(QEventLoop.ProcessEventsFlag.WaitForMoreEvents)
    awake.stop()


def _out_of_cache(home: Path) -> None:
    with database(home).open("rb") as file:
        os.posix_fadvise(file.fileno(), 0, 0, os.POSIX_FADV_DONTNEED)


def measured(
    home: Path,
    packs: int,
    newest: date,
    days: int = DAYS,
    starts: tuple[int, int] = (STARTS, 1),
    *,
    cold: bool,
) -> dict:
    """Measure a folder; return the document that is printed.

    Args:
        home: folder of the record.
        packs: bags in it.
        newest: its last whole day.
        days: how many days before it are looked at.
        starts: how many are measured, and how many go before them.
        cold: read the disk, not the cache.
    """
    shown = first_screens(home, *starts)
    touched, opened, rows, cpu = rejects_shown(home, newest, days, cold=cold)
    faults = []
    began, first = [one.starting for one in shown], [one.first for one in shown]
    for words, found, most in (
        ("STARTING", began, MOST_STARTING_MS),
        ("the first screen", first, MOST_FIRST_MS),
    ):
        if max(found) > most:
            faults.append(f"{words} was there after {max(found):.0f} ms, allowed are {most:g}")
    for words, found in (("after a touch of the day", touched), ("after the door", opened)):
        if max(found) > MOST_REJECTS_MS:
            faults.append(
                f"the rejects were painted {max(found):.0f} ms {words}, allowed are"
                f" {MOST_REJECTS_MS:g}"
            )
    return {
        "packs": packs,
        "window": os.environ.get("DISPLAY") or "offscreen",
        "cold": cold,
        "rejects_a_day": {"least": min(rows), "most": max(rows)},
        "day_touched_ms": figures(touched),
        "door_touched_ms": figures(opened),
        "processor_ms": figures(cpu),
        "starting_ms": figures(began),
        "first_screen_ms": figures(first),
        "faults": faults,
    }


def figures(found: list[float]) -> dict:
    """How many, the middle one and the largest."""
    middle = statistics.median(found)
    return {"count": len(found), "p50": round(middle, 1), "max": round(max(found), 1)}


def _told(document: dict) -> int:
    print(json.dumps(document, indent=2))
    return len(document["faults"])


def run(full: bool) -> int:
    """Make a record and measure it; return the number of faults."""
    with tempfile.TemporaryDirectory(prefix="big-screen-") as folder:
        home = Path(folder) / "home"
        home.mkdir()
        record = make_long_record(demo_settings(), home, FULL if full else SHORT)
        return _told(
            measured(home, record.packs, record.day, DAYS if full else SHORT_DAYS, cold=False)
        )


def main() -> int:
    """Measure a folder that is there."""
    parser = argparse.ArgumentParser(prog="python -m tests.campaigns.big_screen")
    parser.add_argument("--home", type=Path, required=True)
    parser.add_argument("--days", type=int, default=DAYS)
    parser.add_argument("--cold", action="store_true", help="read the disk, not the cache")
    given = parser.parse_args()
    record = last_of(demo_settings(), given.home)
    return _told(measured(given.home, record.packs, record.day, given.days, cold=given.cold))


if __name__ == "__main__":
    sys.exit(1 if main() else 0)
