"""The lead's panel: start a run from product and lots, end it, go on after a stop."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QShowEvent
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget
from typing_extensions import override

from station.line.state import Intents, LineState, Phase, RunAnswer
from station.screens.bridge import Bridge
from station.screens.door_grid import DoorGrid
from station.screens.doors import Door
from station.screens.language_page import LanguagePage
from station.screens.lead_pages import CrewPage, LotsPage, ProductPage, RunPage
from station.screens.offer import (
    Draft,
    LeadOffer,
    Person,
    choice,
    lacking,
    with_lot,
    with_product,
)
from station.screens.theme import LIGHT, Face, Palette, Ruler
from station.screens.tongue import mark
from station.screens.widgets.sheet import Message, Text
from station.screens.widgets.touch_button import TouchButton

__all__ = ["LeadOffer", "LeadPanel", "Person"]

STEPS = (mark("1 PRODUCT"), mark("2 LOTS"), mark("3 CREW"))


class LeadPanel(QWidget):
    """Three steps to a run; then the run with its end.

    Args:
        bridge: tells the newest state and the line's answers.
        intents: what a lead may ask of the line.
        offer: what there is to choose from.
        palette: colours.
        in_doubt: serials of labels nobody knows the fate of, to be read here.

    Signals:
        left: the lead wants the packer's screen back.
    """

    left = Signal()

    def __init__(
        self,
        bridge: Bridge,
        intents: Intents,
        offer: LeadOffer,
        palette: Palette = LIGHT,
        in_doubt: tuple[str, ...] = (),
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self._intents = intents
        self._palette = palette
        self._offer = offer
        self.draft = Draft()
        self._phase = Phase.CLOSED
        self._has_run = False
        self.products = ProductPage(palette, offer)
        self.lots = LotsPage(palette)
        self.crew = CrewPage(palette, offer)
        self.run = RunPage(palette)
        self.pages = QStackedWidget()
        self.door_grid = DoorGrid(palette)
        self.languages = LanguagePage(palette)
        for page in (
            *(self.products, self.lots, self.crew, self.run),
            *(self.door_grid, self.languages),
        ):
            self.pages.addWidget(page)
        self.steps = tuple(TouchButton(palette, step) for step in STEPS)
        self.more_button = TouchButton(palette, "MORE")
        self.more_button.setCheckable(True)
        self.more_button.hide()
        self.back_button = TouchButton(palette, "PACKER", small="F2")
        self.start_button = TouchButton(palette, "START RUN")
        self.end_button = TouchButton(palette, "END RUN", small="hold down", hold=True)
        self.resume_button = TouchButton(palette, "GO ON", small="after a stop")
        self.title = Text(palette, "Start a run", Face.VERB, 9.0)
        self.summary = Text(palette, "", Face.TEXT, 4.6)
        self.message = Message(palette, 5.4)
        self.message.setAccessibleName("answer")
        self.set_in_doubt(in_doubt)
        self._compose()
        self._connect(bridge)
        self._refresh()

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        gap = ruler.touch(6)
        top = QHBoxLayout()
        top.setSpacing(gap)
        for step in self.steps:
            step.setCheckable(True)
            step.cap_px = ruler.px(5.2)
            top.addWidget(step, 2)
        self.more_button.cap_px = ruler.px(5.2)
        top.addWidget(self.more_button, 1)
        top.addWidget(self.back_button, 1)
        side = QVBoxLayout()
        side.setSpacing(round(ruler.px(3)))
        side.addWidget(self.title)
        side.addWidget(self.summary)
        side.addStretch(1)
        side.addWidget(self.message)
        for button in (self.start_button, self.resume_button, self.end_button):
            button.cap_px = ruler.px(7.0)
            button.setMinimumHeight(ruler.touch(34))
            side.addWidget(button)
        side.setSpacing(gap)
        whole = QGridLayout(self)
        margin = round(ruler.px(7))
        whole.setContentsMargins(margin, margin, margin, margin)
        whole.setSpacing(gap)
        whole.addLayout(top, 0, 0, 1, 2)
        whole.addWidget(self.pages, 1, 0)
        whole.addLayout(side, 1, 1)
        whole.setColumnStretch(0, 7)
        whole.setColumnStretch(1, 3)
        whole.setRowStretch(1, 1)

    @property
    def doors(self) -> dict[str, TouchButton]:
        """Buttons of the doors behind MORE, by name."""
        return self.door_grid.buttons

    def add_door(self, door: Door) -> TouchButton:
        """Return the button of one more door."""
        self.more_button.show()
        return self.door_grid.add(door)

    def _connect(self, bridge: Bridge) -> None:
        for step in self.steps:
            step.clicked.connect(self._go_to_step)
        self.products.touched.connect(self._choose_product)
        self.lots.touched.connect(self._choose_lot)
        self.crew.changed.connect(self._choose_crew)
        self.start_button.clicked.connect(self._start)
        self.end_button.held.connect(self._end)
        self.resume_button.clicked.connect(self._resume)
        self.back_button.clicked.connect(self.left)
        self.more_button.clicked.connect(self._show_more)
        self.door_grid.language_button.clicked.connect(self._show_languages)
        bridge.followed.connect(self.show_state, Qt.ConnectionType.DirectConnection)
        bridge.answered.connect(self.show_answer, Qt.ConnectionType.DirectConnection)

    # --- what the line says -----------------------------------------------------------------

    @Slot(object)
    def show_state(self, state: LineState) -> None:
        """Follow the line: a run that is open is shown, not chosen."""
        had_run, self._has_run, self._phase = self._has_run, state.run is not None, state.phase
        self.run.show_state(state)
        if had_run != self._has_run:
            if not self._looks_behind:  # whoever went on to the doors meanwhile stays there
                self.pages.setCurrentWidget(self.run if self._has_run else self.products)
            self._refresh()
        self.resume_button.setEnabled(self._phase is Phase.STOPPED)

    @Slot(object)
    def show_answer(self, answer: RunAnswer) -> None:
        """Say what became of what was asked."""
        self._say(answer.words, refused=not answer.started)
        if answer.started and self._has_run:
            self.draft = replace(self.draft, lots=(), order="")
            self._refresh()

    def set_in_doubt(self, serials: tuple[str, ...]) -> None:
        """Show which labels are in doubt."""
        self.run.set_in_doubt(serials)

    def set_offer(self, offer: LeadOffer) -> None:
        """Offer other products, lots or people; what is chosen and still there stays chosen."""
        self._offer = offer
        self.products.set_offer(offer)
        self.crew.set_offer(offer)
        known = {lot.code for lot in offer.lots}
        product = self.draft.product if self.draft.product in offer.products else None
        lots = tuple(code for code in self.draft.lots if code in known and product is not None)
        self.draft = replace(self.draft, product=product, lots=lots)
        self.lots.show_lots(self.draft, offer)
        self._refresh()

    # --- what the lead chooses --------------------------------------------------------------

    @Slot()
    def _go_to_step(self) -> None:
        index = self.steps.index(self.sender()) if self.sender() in self.steps else 0
        self.pages.setCurrentIndex(index)
        self._refresh()

    @Slot()
    def _show_more(self) -> None:
        """Show all doors, or what was to be done here again."""
        before = self.run if self._has_run else self.products
        self.pages.setCurrentWidget(before if self._looks_behind else self.door_grid)
        self._refresh()

    @property
    def _looks_behind(self) -> bool:
        """Whether what is behind MORE is shown."""
        return self.pages.currentWidget() in (self.door_grid, self.languages)

    @Slot()
    def _show_languages(self) -> None:
        self.pages.setCurrentWidget(self.languages)

    @Slot(str)
    def _choose_product(self, code: str) -> None:
        product = next(product for product in self._offer.products if product.code == code)
        self.draft = with_product(self.draft, product)
        self._say("")
        self.pages.setCurrentWidget(self.lots)
        self.lots.show_lots(self.draft, self._offer)
        self._refresh()
        self.lots.scan.setFocus()

    @Slot(str)
    def _choose_lot(self, code: str) -> None:
        self.draft, refusal = with_lot(self.draft, code, self._offer)
        self._say(refusal, refused=bool(refusal))
        self._refresh()

    @Slot(str, str, str)
    def _choose_crew(self, lead: str, operator: str, order: str) -> None:
        self.draft = replace(self.draft, lead=lead, operator=operator, order=order)
        self._say("")
        self._refresh()

    @Slot()
    def _start(self) -> None:
        missing = lacking(self.draft, self._offer)
        if missing:
            self._say(missing, refused=True)
            return
        self._say("asked the line …")
        self._intents.start_run(choice(self.draft))

    @Slot()
    def _end(self) -> None:
        self._intents.end_run(self.run.lead)

    @Slot()
    def _resume(self) -> None:
        self._intents.resume(self.run.lead)

    # --- showing it -------------------------------------------------------------------------

    def _say(self, words: str, *, refused: bool = False) -> None:
        words = words[:1].upper() + words[1:]
        self.message.say(f"Refused. {words}" if refused and words else words, refused=refused)

    def _refresh(self) -> None:
        draft, open_run = self.draft, self._has_run
        for index, step in enumerate(self.steps):
            step.setEnabled(not open_run)
            step.setChecked(not open_run and self.pages.currentIndex() == index)
        self.more_button.setChecked(self._looks_behind)
        self.start_button.setVisible(not open_run)
        self.end_button.setVisible(open_run)
        self.resume_button.setVisible(open_run)
        self.resume_button.setEnabled(self._phase is Phase.STOPPED)
        missing = lacking(draft, self._offer)
        self.start_button.strong = not missing
        self.start_button.update()
        self.title.setText("Run open" if open_run else "Start a run")
        self.products.check(draft)
        self.lots.check(draft)
        self.crew.check(draft)
        lines = [
            draft.product.name if draft.product else "",
            ", ".join(draft.lots),
            self._name(draft.lead),
            self._name(draft.operator) and f"on the scale: {self._name(draft.operator)}",
            f"{draft.order} bags" if draft.order else "open order",
            f"Next: {missing}" if missing else "",
        ]
        self.summary.setText("" if open_run else "\n".join(filter(None, lines)))

    def _name(self, person_id: str) -> str:
        return next((one.name for one in self._offer.people if one.id == person_id), "")

    @override
    def showEvent(self, event: QShowEvent) -> None:
        if self.pages.currentWidget() is self.lots:
            self.lots.scan.setFocus()

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._palette.ground))
        painter.end()
