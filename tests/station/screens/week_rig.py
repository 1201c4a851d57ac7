"""QA and the manager at the station after a simulated week: the real window, pages, PINs, record.

Only the line is missing: what is signed is entered as the line enters it, and refused as it refuses
what nobody signed.
"""

from datetime import timedelta

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from station.access.opening import access_of
from station.app.manager_desk import ManagerDesk
from station.app.places import demo_settings
from station.app.practice_people import demo_pins
from station.app.quality_gates import Follows, quality_gates
from station.config.load import load
from station.config.packhouse import Role
from station.core.pack import Moment
from station.line.messages import Enter
from station.line.product_book import ProductBook
from station.line.signatures import unsigned_words
from station.line.state import EntryAnswer
from station.screens.bridge import Bridge
from station.screens.doors import Door
from station.screens.manager import ManagerPage
from station.screens.offer import LeadOffer, Person
from station.screens.quality import QualityPage, QualitySources
from station.screens.signing import SignedIntents
from station.screens.window import StationWindow
from station.store.writer import StationStore
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.quality_rig import QualityRig

SIGNERS = ("Q01", "M01")


class AfterTheWeek:
    """The evening after: later than everything on record."""

    def __init__(self, last) -> None:
        self.utc, self.looks = last + timedelta(hours=14), 0

    def now(self) -> Moment:
        self.looks += 1
        at = self.utc + timedelta(seconds=self.looks)
        return Moment(at, 0, "Europe/Dublin", self.monotonic_ns())

    def monotonic_ns(self) -> int:
        return 10**15 + self.looks


class WeekRig(QualityRig):
    """The window over a record, which it changes.

    Args:
        home: folder of the record.
        last: time of its last entry.
    """

    def __init__(self, home, last) -> None:
        self.home, self.clock, self.entered = home, AfterTheWeek(last), []
        self.house = load(demo_settings(), last.date())
        settings = self.house.settings
        self.store = StationStore.open(home, settings.site, settings.station, self.clock)
        gates = quality_gates(self.house, home, self.clock, 1)
        self.desks, self.duties = gates.desks, gates.duties
        self._follow = Follows(home).follow
        access = access_of(self.house, home, self.clock, lambda _: None)
        self.signing, self.pins = access.signing, demo_pins(self.house)
        for who in SIGNERS:
            access.credentials.set_pin(who, self.pins[who])
        everybody = tuple(
            Person(one.id, one.name, str(one.role)) for one in self.house.people.values()
        )
        self.bridge, line = Bridge(), FakeIntents()
        line.enter = self.enter
        self.intents = SignedIntents(line, self.signing, self.bridge, everybody)
        sources = QualitySources(*self.desks)
        self.page = QualityPage(self.bridge, self.intents, sources, everybody)
        self.manager = self._manager(everybody)
        doors = (
            Door("QUALITY", Qt.Key.Key_F10, lambda: self.page),
            Door("MANAGER", Qt.Key.Key_F11, lambda: self.manager),
        )
        offer = LeadOffer(tuple(self.house.products.values()), (), everybody)
        self.window = StationWindow(
            self.bridge, self.intents, offer, doors=doors, signing=self.intents
        )
        self.window.resize(1024, 768)
        self.window.show()
        self.window.activateWindow()
        assert QTest.qWaitForWindowActive(self.window)

    def _manager(self, everybody) -> ManagerPage:
        book = ProductBook(self.house.products, approval_needed=False)
        desk = ManagerDesk(self.house, self.home, self.clock, book)
        managers = tuple(one for one in everybody if one.role == Role.MANAGER)
        return ManagerPage(self.bridge, self.intents, desk, managers, self.home / "charts")

    def enter(self, facts, who) -> None:
        """Record what is signed, with what it brings; refuse what is not, as the line does."""
        uids = tuple(fact.uid for fact in facts)
        refused = unsigned_words(Enter(facts, who), self.signing)
        if refused:
            self.bridge.enter(EntryAnswer(uids, False, refused))
        else:
            super().enter(facts, who)

    @property
    def sheet(self):
        return self.window.guard.sheet

    def settle(self) -> None:
        """Sign whatever is asked for, and wait until the record has answered everything."""
        QApplication.processEvents()
        while True:
            QTest.qWait(1)  # the thread that asks the record needs its turn
            working = self.page.busy or self.manager.looking.busy or self.manager.writing.busy
            if self.sheet.isVisible():
                if not self.sheet.work.busy and self.sheet.pad.isEnabled():
                    self._sign_here()
            elif not working and not self.sheet.work.busy:
                break
        QApplication.processEvents()

    def _sign_here(self) -> None:
        if not self.sheet.who:
            touch(self.sheet.tiles.buttons[SIGNERS[0]])
        for digit in self.pins[self.sheet.who]:
            touch(self.sheet.pad.keys[digit])
        touch(self.sheet.pad.keys["SIGN"])

    def open_door(self, key) -> None:
        """Go to a page by its key; whoever is asked for a PIN gives it."""
        QTest.keyClick(self.window, key)
        self.settle()

    def close(self) -> None:
        self.window.close()
        self.store.close()


def touch(button) -> None:
    """Touch a button that can be touched."""
    assert button.isVisible(), button.text()
    assert button.isEnabled(), button.text()
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


def touch_row(table, key) -> None:
    """Touch a row of a table where it stands."""
    place = next(n for n, row in enumerate(table.rows) if row.key == key)
    index = table.model().index(place, 0)
    table.scrollTo(index)
    where = table.visualRect(index).center()
    QTest.mouseClick(table.viewport(), Qt.MouseButton.LeftButton, pos=where)


def write(field, words) -> None:
    """Write into a field that is seen."""
    assert field.isVisible()
    field.clear()
    QTest.keyClicks(field, words)
