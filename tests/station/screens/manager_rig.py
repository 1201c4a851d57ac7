"""A manager's page on a record, with all around it."""

from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from station.app.manager_desk import ManagerDesk
from station.app.places import demo_settings
from station.app.practice_record import PracticeClock
from station.config.load import load
from station.config.packhouse import Role
from station.core.facts import FactRecord
from station.core.pack import Moment
from station.line.product_book import ProductBook
from station.line.state import EntryAnswer
from station.screens.bridge import Bridge
from station.screens.manager import ManagerPage
from station.screens.offer import Person
from station.screens.theme import HOLD_MS, LIGHT
from station.store.at_start import approvals_past

NOW = datetime(2026, 11, 20, 18, tzinfo=UTC)


class Book:
    """Takes entered facts to a book of products, as the line does, and answers."""

    def __init__(self, bridge: Bridge, book: ProductBook) -> None:
        self.bridge, self.book = bridge, book
        self.entered: list[tuple[tuple, str]] = []

    def enter(self, entered, who: str) -> None:
        self.entered.append((entered, who))
        at = Moment(NOW, 0, "Europe/Dublin", 0)
        for fact in entered:
            self.book.noted(FactRecord(fact, at, who, 1))
        self.bridge.enter(EntryAnswer(tuple(fact.uid for fact in entered), True, "recorded"))


class ManagerRig:
    """A page on the record of a folder.

    Args:
        home: folder of the record.
        charts: folder for kept charts.
        house: the settings; those of the demo where None.
    """

    def __init__(self, home: Path, charts: Path, house=None, palette=LIGHT) -> None:
        self.house = house or load(demo_settings(), NOW.date())
        self.clock = PracticeClock("Europe/Dublin", NOW)
        self.book = ProductBook(
            self.house.products,
            approval_needed=self.house.settings.fill.approve_products,
            past=approvals_past(home, self.house.products.values()),
        )
        self.desk = ManagerDesk(self.house, home, self.clock, self.book)
        self.bridge = Bridge()
        self.line = Book(self.bridge, self.book)
        managers = tuple(
            Person(one.id, one.name, str(one.role))
            for one in self.house.people.values()
            if one.role is Role.MANAGER
        )
        self.page = ManagerPage(self.bridge, self.line, self.desk, managers, charts, palette)

    def show(self, wait, size=(1280, 800)) -> None:
        """Show the page; ``wait`` waits until a condition holds."""
        self.page.resize(*size)
        self.page.show()
        wait(lambda: not self.page.looking.busy and self.page.wait_card.isHidden())


def hold(button) -> None:
    """Hold a button long enough."""
    assert button.isEnabled()
    QTest.mousePress(button, Qt.MouseButton.LeftButton)
    QTest.qWait(HOLD_MS + 200)
    QTest.mouseRelease(button, Qt.MouseButton.LeftButton)
