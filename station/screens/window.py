"""The station's window: the packer's screen, the lead's panel behind a key, a band for faults."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPoint, QRect, QRectF, QSize, Qt, Slot
from PySide6.QtGui import (
    QCloseEvent,
    QColor,
    QKeySequence,
    QMouseEvent,
    QPainter,
    QResizeEvent,
    QShortcut,
)
from PySide6.QtWidgets import QMainWindow, QStackedWidget, QWidget
from typing_extensions import override

from station.core.languages import Language
from station.line.state import Intents, LineState
from station.screens.bridge import Bridge
from station.screens.doors import Door, DoorPage
from station.screens.interpreter import Interpreter
from station.screens.lead import LeadPanel
from station.screens.offer import LeadOffer
from station.screens.packer import PackerScreen
from station.screens.screen_guard import ScreenGuard
from station.screens.signing import SignedIntents
from station.screens.theme import HEIGHT_MM, LIGHT, WIDTH_MM, Face, Palette, Ruler, register_fonts
from station.screens.tongue import mark, say, upper_first
from station.screens.widgets.lettering import draw, fit, ink_of
from station.screens.widgets.painted import Painted, hatch, stroke
from station.screens.widgets.sheet import ScanField

TITLE = "Pack line"
_LEAD_WANTED = mark("Lead is wanted at this line")
_NO_FIELD = mark("A code was scanned, but no field waits for one: open the page it is for")
LEAST_LINE_MM, LINE_CAP_MM = 4.8, 5.0
"""Height of the band on a page that has no margin, and of its letters on any, where the margin has
room for what they have above and below a capital."""
_KEPT = 2
"""Messages shown at once."""


class Band(Painted[tuple[str, ...]]):
    """Words over the counts, beside diagonal bars; a touch closes it. Nothing below it moves.

    On every other page it is a line in the upper margin, where nothing is to be touched.
    """

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, (), parent)
        self._line = False
        self.hide()

    def place(self, box: QRect, *, line: bool) -> None:
        """Stand there, as a line with the newest message alone or with all that are kept."""
        self._line = line
        self.setGeometry(box)
        self.update()

    def say(self, words: str) -> None:
        """Show words, the newest first, until somebody touches them."""
        kept = tuple(one for one in self.view if one != words)[: _KEPT - 1]
        self.set((words, *kept))
        self.setAccessibleName(words)
        self.show()
        self.raise_()

    @override
    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self.set(())
        self.hide()

    @override
    def paint(self, painter: QPainter) -> None:
        px = Ruler.of(self.screen()).px
        box = QRectF(self.rect())
        painter.fillRect(box, QColor(self.colours.paper))
        bars = QRectF(0, 0, px(12), box.height())
        hatch(painter, bars, self.colours.attend, self.colours.on_attend, px(6))
        line = px(0.6)
        painter.setPen(stroke(self.colours.ink, 2 * line))
        if not self._line:
            painter.drawRect(box.adjusted(line, line, -line, -line))
        left, right = bars.right() + px(5), box.right() - px(5)
        shown = self.view[:1] if self._line else self.view
        share = box.height() / max(len(shown), 1)
        for index, words in enumerate(shown):
            said = upper_first(say(words))
            room = QRectF(left, share * index, right - left, share)
            if self._line:
                self._on_the_line(painter, said, room)
                continue
            text = fit(said, Face.VERB, px(6.4), room.width(), share - px(5), least=0.4)
            top = room.top() + (share - text.height) / 2
            draw(painter, text, left, top, self.colours.ink)

    def _on_the_line(self, painter: QPainter, said: str, room: QRectF) -> None:
        """As large as the margin takes, with all that reaches above and below a capital."""
        cap = Ruler.of(self.screen()).px(LINE_CAP_MM)
        while True:
            text = fit(said, Face.VERB, cap, room.width(), least=0.4)
            rise, below = ink_of(text)
            if rise + below <= room.height() - 2 or cap < room.height() / 3:
                break
            cap *= 0.96
        top = room.top() + (room.height() - rise - below) / 2 + rise - text.cap
        draw(painter, text, room.left(), top, self.colours.ink)


class StationWindow(QMainWindow):
    """The packer's screen; F2 or RUN shows the lead's panel, F3 and on its doors, F1 the rules.

    Args:
        bridge: the doorway to the station's threads.
        intents: what people may ask of the line.
        offer: what a lead may choose from.
        palette: colours.
        in_doubt: serials of labels nobody knows the fate of.
        doors: pages behind the lead's panel.
        signing: whose signatures open all but the packer's screen; None leaves everything open.
        language: of the station, for whoever has none of their own.
    """

    def __init__(
        self,
        bridge: Bridge,
        intents: Intents,
        offer: LeadOffer,
        palette: Palette = LIGHT,
        in_doubt: tuple[str, ...] = (),
        doors: Sequence[Door] = (),
        signing: SignedIntents | None = None,
        language: Language = Language.ENGLISH,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        register_fonts()
        self.interpreter = Interpreter(offer.people, language)
        self.setWindowTitle(TITLE)
        self.signing = signing
        self.packer = PackerScreen(bridge, intents, palette)
        self.lead = LeadPanel(bridge, intents, offer, palette, in_doubt)
        self.screens = QStackedWidget()
        self.screens.addWidget(self.packer)
        self.screens.addWidget(self.lead)
        self.doors = tuple(doors)
        for door in self.doors:
            door.made = self._take_page
            button = self.lead.add_door(door)
            button.clicked.connect(lambda _=False, door=door: self.go_through(door))
        self.setCentralWidget(self.screens)
        self.band = Band(palette, self)
        self.guard = (
            None
            if signing is None
            else ScreenGuard(self, self.screens, self.packer, signing, palette)
        )
        if self.guard is not None:
            self.guard.sheet.closed.connect(self._listen)
        ruler = Ruler.of(self.screen())
        self.resize(round(ruler.px(WIDTH_MM)), round(ruler.px(HEIGHT_MM)))
        self.packer.arranged.connect(self._place_band)
        self.packer.lead_asked.connect(self.show_lead)
        self.packer.lead_called.connect(self._call_lead)
        self.lead.left.connect(self.show_packer)
        self.lead.languages.chosen.connect(self._choose_language)
        self.screens.currentChanged.connect(self._listen)
        self.screens.currentChanged.connect(self._place_band)
        bridge.followed.connect(self._follow, Qt.ConnectionType.DirectConnection)
        bridge.fault.connect(self.band.say, Qt.ConnectionType.DirectConnection)
        bridge.scanned.connect(self.take_scan, Qt.ConnectionType.DirectConnection)
        self.destroyed.connect(bridge.hush)
        for key, slot in (
            (Qt.Key.Key_F1, self.packer.toggle_about),
            (Qt.Key.Key_F2, self.toggle_lead),
            *((door.key, lambda door=door: self.go_through(door)) for door in self.doors),
            (Qt.Key.Key_Escape, self.show_packer),
        ):
            QShortcut(QKeySequence(key), self).activated.connect(slot)
        self._listen()

    def make_pages(self) -> None:
        """Make the page behind every door now."""
        for door in self.doors:
            _ = door.page

    @Slot()
    def show_packer(self) -> None:
        """Show the packer's screen."""
        if self.guard is not None:
            self.guard.sheet.drop()
        self.screens.setCurrentWidget(self.packer)
        self.packer.setFocus()

    @Slot()
    def show_lead(self) -> None:
        """Show the lead's panel."""
        self._behind(self.lead)

    @Slot()
    def toggle_lead(self) -> None:
        """Change between the two."""
        if self.screens.currentWidget() is self.lead:
            self.show_packer()
        else:
            self.show_lead()

    def go_through(self, door: Door) -> None:
        """Show the page behind a door, or the lead's panel again."""
        page = door.page
        self._behind(self.lead if self.screens.currentWidget() is page else page)

    def _take_page(self, page: DoorPage) -> None:
        """Let a page that was made now in, with what the line said last."""
        page.left.connect(self.show_lead)
        self.screens.addWidget(page)
        state = self.packer.state
        if state is not None:
            page.show_state(state)

    def _behind(self, page: QWidget) -> None:
        """Show a page that is not the packer's, once somebody is signed on."""
        if self.guard is None:
            self.screens.setCurrentWidget(page)
        else:
            self.guard.pass_to(page)

    @Slot(object)
    def _follow(self, state: LineState) -> None:
        """Speak to who is on the scale of a new run."""
        run = state.run
        if self.interpreter.follow(*("", "") if run is None else (run.id, run.operator)):
            self._listen()

    @Slot()
    def _listen(self) -> None:
        """Speak to who looks now."""
        signed_on = "" if self.guard is None else self.guard.signed_on
        self.interpreter.listen(signed_on, at_scale=self.screens.currentWidget() is self.packer)
        self.lead.languages.show_chosen(self.interpreter.chosen)

    @Slot(object)
    def _choose_language(self, language: Language | None) -> None:
        self.interpreter.choose(language)
        self._listen()

    @Slot(str, str)
    def take_scan(self, identifier: str, data: str) -> None:
        """Give a scan to the scan field in front; without one it is said and goes nowhere."""
        page = self.screens.currentWidget()
        if self.guard is not None and self.guard.sheet.isVisible():
            page = self.guard.sheet
        found = [] if page is None else page.findChildren(ScanField)
        fields = [field for field in found if field.isVisible() and field.isEnabled()]
        fields.sort(key=lambda field: not field.hasFocus())
        if fields:
            fields[0].take(identifier, data)
        else:
            self.band.say(_NO_FIELD)

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        self._place_band()
        if self.guard is not None:
            self.guard.sheet.setGeometry(self.screens.geometry())

    @override
    def closeEvent(self, event: QCloseEvent) -> None:
        if self.guard is not None:
            self.guard.stop()
        self.screens.blockSignals(True)  # what is left of a window hears no more of its pages
        for door in self.doors:
            if door.is_made:
                door.page.stop()

    @Slot()
    def _call_lead(self) -> None:
        self.band.say(_LEAD_WANTED)

    @Slot()
    def _place_band(self) -> None:
        shown = self.screens.currentWidget()
        if shown is not self.packer:
            page = self.screens.geometry()
            layout = None if shown is None else shown.layout()
            least = round(Ruler.of(self.screen()).px(LEAST_LINE_MM))
            height = least if layout is None else layout.contentsMargins().top() - 1
            self.band.place(QRect(page.topLeft(), QSize(page.width(), height)), line=True)
            return
        row = self.packer.counts.geometry().united(self.packer.label.geometry())
        self.band.place(row.translated(self.packer.mapTo(self, QPoint())), line=False)
