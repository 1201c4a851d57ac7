"""Pictures of every chart in both themes: `python -m tests.station.screens.gallery_charts FOLDER`.

A second argument names the home of a record for the manager's pages; without it the smallest
simulated week is made.
"""

import os
import sys
import tempfile
from datetime import date
from pathlib import Path

from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from station.app.places import demo_settings
from station.app.week.make import Week
from station.app.week.plan import LEAST_BAGS, plan_week
from station.config.load import load
from station.screens.bridge import Bridge
from station.screens.numbers import NumbersPage
from station.screens.theme import PALETTES, register_fonts
from tests.station.screens import numbers_states
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.manager_rig import ManagerRig

SIZE = (1280, 800)
ENDS = date(2026, 11, 20)
TABS, TURNS = 3, (5, 2, 2)
"""Tabs of the manager's page that show charts, and how many looks each has."""


def shoot(widget: QWidget, path: Path) -> None:
    for _ in range(3):  # a page settles its layout in steps
        QApplication.processEvents()
    widget.grab().save(str(path))


def numbers(folder: Path) -> None:
    for theme, palette in PALETTES.items():
        for name in ("safe", "failing", "wandering"):
            source = getattr(numbers_states, name)()
            page = NumbersPage(Bridge(), FakeIntents(), source, folder, palette=palette)
            page.resize(*SIZE)
            page.show()
            settle(page, page._looking)
            page.work_button.click()
            settle(page, page._advising)
            for tab in page.tabs:
                tab.click()
                shoot(page, folder / f"chart_{theme}_numbers_{name}_{tab.text().lower()}.png")
            page.stop()
            page.close()


def manager(folder: Path, home: Path) -> None:
    for theme, palette in PALETTES.items():
        rig = ManagerRig(home, folder / "charts", palette=palette)
        rig.page.resize(*SIZE)
        rig.page.show()
        settle(rig.page, rig.page.looking)
        for at, tab in enumerate(rig.page.tabs):
            tab.click()
            for turn in range(TURNS[at] if at < TABS else 1):
                shoot(rig.page, folder / f"chart_{theme}_manager_{at}_{turn}.png")
                rig.page.turn_button.click()
        rig.page.stop()
        rig.page.close()


def settle(page: QWidget, work) -> None:
    while work.busy:
        QTest.qWait(1)
    QApplication.processEvents()


def main(folder: Path, home: Path | None = None) -> None:
    """Draw all of them."""
    folder.mkdir(parents=True, exist_ok=True)
    application = QApplication.instance() or QApplication([])
    assert application is not None
    register_fonts()
    numbers(folder)
    if home is not None:
        manager(folder, home)
        return
    with tempfile.TemporaryDirectory() as made:
        house = load(demo_settings(), ENDS)
        plan = plan_week(house, LEAST_BAGS, 1, ENDS)
        week = Week(house, Path(made) / "home", plan, seed=1).make()
        manager(folder, week.home)


if __name__ == "__main__":
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    main(Path(sys.argv[1]), Path(sys.argv[2]) if len(sys.argv) > 2 else None)
