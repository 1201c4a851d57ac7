"""Shipping: bags into cases, cases on pallets, pallets to customers; each step by scan."""

from __future__ import annotations

from collections.abc import Callable
from decimal import Decimal

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget
from typing_extensions import override

from station.core.casing import CasedBag
from station.core.facts import Fact
from station.core.mass import Mass, Unit
from station.core.shipping import UnitKind, serials_between
from station.core.shipping_lines import UnitLine
from station.errors import StationError
from station.line.state import EntryAnswer, Intents, LineState
from station.screens.bridge import Bridge
from station.screens.doors import DoorPage
from station.screens.offer import Person
from station.screens.shipping_gather import LONGEST_SCAN, GatherPage
from station.screens.shipping_house import AGAIN, BACK, HousePage
from station.screens.shipping_source import ShippingSource
from station.screens.shipping_words import bag_rows, case_title, unit_row, unit_state, units_title
from station.screens.theme import LIGHT, Palette, Ruler
from station.screens.widgets.number_pad import NumberPad
from station.screens.widgets.sheet import Message, Page, ScanField
from station.screens.widgets.tiles import Tile, Tiles
from station.screens.widgets.touch_button import TouchButton

_TABS = ("CASE", "PALLET", "SHIP", "HOUSE", "WHO")
_HOUSE, _WHO = 3, 4
_TO = ".."
"""Between the first and the last serial of a range that is typed."""
NEXT, OVER = "NEXT CASE", "START OVER"
FILL, CLOSE, SHIP = "FILL CASE", "CLOSE PALLET", "SHIP"
_HERE = "undone on the shipping page"


class ShippingPage(DoorPage):
    """Five pages under their tabs.

    Args:
        bridge: tells who leads and what became of entered facts.
        intents: takes facts to the record.
        source: makes them, and knows what stands in the house.
        people: who may say so.
        palette: colours.
    """

    def __init__(
        self,
        bridge: Bridge,
        intents: Intents,
        source: ShippingSource,
        people: tuple[Person, ...],
        palette: Palette = LIGHT,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(palette, parent)
        self._intents, self._source, self._people = intents, source, people
        self._waiting: frozenset[str] = frozenset()
        self._told = ""
        self._then: Callable[[], None] = self.start_over
        self.who = ""
        """Id of the person who acts."""
        self.bags: tuple[CasedBag, ...] = ()
        self.cases: tuple[UnitLine, ...] = ()
        self.leaving: tuple[UnitLine, ...] = ()
        self.customer = ""
        self.case = GatherPage(palette, "scan the bags", FILL, (OVER, NEXT))
        self.pad = NumberPad(palette)
        self.gross_button = TouchButton(palette, "kg", small="gross weight")
        self.pallet = GatherPage(
            palette, "scan the cases", CLOSE, (OVER,), self._pallet_side(palette)
        )
        customers = source.customers if source.on else ()
        tiles = [Tile(one.code, one.name, one.place) for one in customers]
        self.customers = Tiles(palette, tiles, columns=1)
        self.reference = ScanField(palette, "paper: delivery note 12")
        self.reference.setMaxLength(LONGEST_SCAN)
        self.ship = GatherPage(
            palette, "scan pallets and cases", SHIP, (OVER,), self._ship_side(palette)
        )
        self.house = HousePage(palette)
        self.crew = Tiles(palette, [Tile(one.id, one.name, one.id) for one in people], columns=3)
        self.pages = QStackedWidget()
        crew = Page.around(palette, self.crew)
        for page in (self.case, self.pallet, self.ship, self.house, crew):
            self.pages.addWidget(page)
        self.tabs = tuple(TouchButton(palette, words) for words in _TABS)
        self.back_button = TouchButton(palette, "LEAD", small="F12")
        self.message = Message(palette, 5.0)
        self._compose()
        self._connect(bridge)
        self.go_to(0)

    def _pallet_side(self, palette: Palette) -> QWidget:
        side = QWidget()
        column = QVBoxLayout(side)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.gross_button)
        column.addWidget(self.pad)
        column.addStretch(1)
        self.gross_button.cap_px = Ruler.of(self.screen()).px(6.0)
        return side

    def _ship_side(self, palette: Palette) -> QWidget:
        whom = Page.around(palette, self.customers)
        side = QWidget()
        column = QVBoxLayout(side)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.reference)
        column.addWidget(whom, 1)
        return side

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        gap = ruler.touch(6)
        top = self.head_row((*self.tabs, self.back_button), 4.6)
        for button in (*self.tabs, self.back_button):
            button.setMinimumHeight(ruler.touch())
        for tab in self.tabs:
            tab.setCheckable(True)
        self.message.setMinimumHeight(round(ruler.px(7)))
        whole = QVBoxLayout(self)
        margin = round(ruler.px(7))
        whole.setContentsMargins(margin, margin, margin, margin)
        whole.setSpacing(gap // 2)
        whole.addLayout(top)
        whole.addWidget(self.message)
        whole.addWidget(self.pages, 1)

    def _connect(self, bridge: Bridge) -> None:
        for index, tab in enumerate(self.tabs):
            tab.clicked.connect(lambda _=False, index=index: self.go_to(index))
        self.back_button.clicked.connect(self.left)
        self.case.scanned.connect(self._bag)
        self.pallet.scanned.connect(self._case)
        self.ship.scanned.connect(self._unit)
        self.house.scanned.connect(self._find)
        for page in (self.case, self.pallet, self.ship):
            page.touched.connect(self._act)
        self.house.asked.connect(self._ask)
        self.pad.changed.connect(lambda _: self.refresh())
        self.customers.touched.connect(self._choose_customer)
        self.reference.textChanged.connect(lambda _: self.refresh())
        self.crew.touched.connect(self.choose_person)
        bridge.followed.connect(self.show_state, Qt.ConnectionType.DirectConnection)
        bridge.entered.connect(self.show_answer, Qt.ConnectionType.DirectConnection)

    # --- what the station says ----------------------------------------------------------------

    @Slot(object)
    def show_state(self, state: LineState) -> None:
        """Whoever leads the run acts, until another person is chosen."""
        if not self.who and state.run is not None:
            self.choose_person(state.run.lead)

    @Slot(object)
    def show_answer(self, answer: EntryAnswer) -> None:
        """Say what became of facts of this page."""
        if not self._waiting.intersection(answer.uids):
            return
        self._waiting = frozenset()
        if answer.recorded:
            self.message.say(self._told)
            self._then()
        else:
            self._refuse(answer.words)

    # --- what a person does -------------------------------------------------------------------

    def go_to(self, index: int) -> None:
        """Show one of the pages."""
        self.pages.setCurrentIndex(index)
        for place, tab in enumerate(self.tabs):
            tab.setChecked(place == index)
        self.message.say("")
        self.refresh()
        if index == _HOUSE:
            self._look()
        if not self._source.on:
            self._refuse("the station fills no cases: customers.toml is missing")
        (self.case.scan, self.pallet.scan, self.ship.scan, self.house.scan, self.crew)[
            index
        ].setFocus()

    @Slot(str)
    def choose_person(self, person: str) -> None:
        """Let one person act."""
        self.who = person
        self.crew.check([person])
        name = next((one.name for one in self._people if one.id == person), person)
        self.tabs[_WHO].small = name
        self.tabs[_WHO].update()

    def start_over(self) -> None:
        """Forget what was gathered on the page that is shown."""
        self._forget(self.pages.currentIndex())

    def _forget(self, index: int) -> None:
        if index == 0:
            self.bags = ()
        elif index == 1:
            self.cases, self.pad.digits = (), ""
        else:
            self.leaving, self.customer = (), ""
            self.reference.clear()
            self.customers.check([])
        self.refresh()

    @property
    def gross(self) -> Mass | None:
        """The gross weight on the pad, in tenths of a kilogram; None where none was typed."""
        digits = self.pad.digits
        return Mass(Decimal(digits).scaleb(-1), Unit.KILOGRAM) if digits else None

    @Slot()
    def refresh(self) -> None:
        """Show what was gathered."""
        full = self._source.full(self.bags[0].product) if self.bags else 0
        title = case_title(self.bags, full)
        self.case.show_gathered(title, bag_rows(self.bags), ready=bool(self.bags))
        self.pallet.show_gathered(
            units_title(self.cases, UnitKind.CASE),
            [unit_row(one) for one in self.cases],
            ready=bool(self.cases) and self.gross is not None,
        )
        self.gross_button.setText("kg" if self.gross is None else str(self.gross))
        self.gross_button.update()
        ready = bool(self.leaving and self.customer and self.reference.text().strip())
        rows = [unit_row(one) for one in self.leaving]
        self.ship.show_gathered(units_title(self.leaving, None), rows, ready=ready)

    # --- scans --------------------------------------------------------------------------------

    @Slot(str)
    def _bag(self, text: str) -> None:
        def taken() -> None:
            first, _, last = text.partition(_TO)
            serials: tuple[str, ...] = (self._source.named(text),)
            if last:
                serials = serials_between(first.strip().upper(), last.strip().upper())
            known = {bag.serial for bag in self.bags}
            if twice := known.intersection(serials):
                raise ValueError(f"bag {min(twice)} was scanned already")
            self.bags += self._source.bags(serials)

        self._try(taken)

    @Slot(str)
    def _case(self, text: str) -> None:
        self._try(lambda: self._gather("cases", text))

    @Slot(str)
    def _unit(self, text: str) -> None:
        self._try(lambda: self._gather("leaving", text))

    @Slot(str)
    def _find(self, text: str) -> None:
        self._try(lambda: self.house.choose(self._source.unit(self._source.named(text)).sscc))

    def _gather(self, where: str, text: str) -> None:
        unit = self._source.unit(self._source.named(text))
        there: tuple[UnitLine, ...] = getattr(self, where)
        if any(one.sscc == unit.sscc for one in there):
            raise ValueError(f"{unit.kind} {unit.sscc} was scanned already")
        if unit.undone:
            raise ValueError(f"{unit.sscc} is undone")
        if unit.pallet:
            raise ValueError(f"{unit.sscc} is on pallet {unit.pallet}")
        if unit.shipment:
            raise ValueError(f"{unit.sscc} is gone with {unit.shipment}")
        if unit.held:
            raise ValueError(f"{unit.kind} {unit.sscc}: {unit_state(unit).lower()}, QA decides")
        setattr(self, where, (*there, unit))

    @Slot(str)
    def _choose_customer(self, code: str) -> None:
        self.customer = code
        self.customers.check([code])
        self.refresh()

    # --- acts ---------------------------------------------------------------------------------

    @Slot(str)
    def _act(self, words: str) -> None:
        if words == OVER:
            self.start_over()
        elif words == NEXT:
            self._try(self._next)
        elif words == FILL:
            serials = [bag.serial for bag in self.bags]
            self._enter(lambda: self._source.fill(serials), "Case {} is filled; its label comes.")
        elif words == CLOSE and self.gross is not None:
            gross, cases = self.gross, [one.sscc for one in self.cases]
            words = "Pallet {} is closed; its label comes."
            self._enter(lambda: self._source.stack(cases, gross), words)
        elif words == SHIP:
            units, paper = [one.sscc for one in self.leaving], self.reference.text()
            self._enter(
                lambda: self._source.ship(self.customer, paper, units), "Shipment {} is on record."
            )

    def _next(self) -> None:
        self.bags = self._source.next_case()
        if not self.bags:
            raise ValueError("no labelled bag of the last run is loose")

    @Slot(str, str)
    def _ask(self, words: str, subject: str) -> None:
        if self._waiting:
            return  # what was asked before ends in its own way
        if words == AGAIN:
            self._enter(lambda: self._source.print_again(subject), "A copy of {} comes.")
        else:
            back = words == BACK
            self._enter(lambda: self._source.undo(subject, _HERE, came_back=back), "{} is undone.")
        self._then = self._look

    def _look(self) -> None:
        def look() -> None:
            self.house.show_all(self._source.in_house(), self._source.gone())

        self._try(look)

    def _enter(self, make: Callable[[], tuple[Fact, ...]], told: str) -> None:
        if not self.who:
            self._refuse("who says so? Touch WHO and choose your name")
            return
        if self._waiting:
            return  # touched twice before the line answered: one is meant

        index = self.pages.currentIndex()

        def entered() -> None:
            facts = make()
            self._waiting = frozenset(fact.uid for fact in facts)
            self._told = told.format(facts[-1].subject)
            self._then = lambda: self._forget(index)  # whatever is shown when the line answers
            self.message.say("asked the line …")
            self._intents.enter(facts, self.who)

        self._try(entered)

    def _try(self, what: Callable[[], None]) -> None:
        self.message.say("")
        try:
            what()
        except (ValueError, StationError) as why:
            self._refuse(str(why))
        else:
            self.refresh()

    def _refuse(self, words: str) -> None:
        self.message.say(f"Refused. {words[:1].upper()}{words[1:]}", refused=True)

    # --- Qt -----------------------------------------------------------------------------------

    @override
    def showEvent(self, event: QShowEvent) -> None:
        self.go_to(self.pages.currentIndex())
