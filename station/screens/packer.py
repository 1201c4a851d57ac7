"""The packer's screen: gap and lap, one verb, nothing to touch in the normal cycle."""

from __future__ import annotations

import math
from datetime import UTC, datetime
from typing import Any

from PySide6.QtCore import QDateTime, QEvent, QRect, Qt, Signal, Slot
from PySide6.QtGui import QColor, QMouseEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.line.state import Intents, LineState, Verb
from station.screens.bridge import Bridge
from station.screens.theme import HEIGHT_MM, LIGHT, WIDTH_MM, Face, Palette, Ruler, font_of
from station.screens.tongue import say
from station.screens.widgets.about_panel import AboutPanel, about
from station.screens.widgets.aside_panel import AsidePanel
from station.screens.widgets.big_figure import BigFigure
from station.screens.widgets.count_row import CountRow, counted
from station.screens.widgets.gap_geometry import gap_view
from station.screens.widgets.gap_strip import GapStrip
from station.screens.widgets.label_preview import LabelPreview
from station.screens.widgets.lettering import text_width
from station.screens.widgets.notice_card import Notice, NoticeCard
from station.screens.widgets.painted import Painted
from station.screens.widgets.pictograms import Picture
from station.screens.widgets.run_header import RunHeader, heading
from station.screens.widgets.touch_button import TouchButton
from station.screens.words import instruction

_MARGIN, _TOP, _HEADER, _FIGURE, _BOTTOM, _GAP = 7.0, 3.5, 33.0, 66.7, 33.0, 3.5

_COUNTS, _LEAST_COUNTS, _LEAST_LABEL = 100.0, 90.0, 30.0
"""Width the counts keep, what they need beside the buttons, and what the picture of the label
needs to show anything."""

_LETTERS, _SIDES, _WIDEST = 6.0, 0.22, 64.0
"""Capitals on the buttons, what stays free beside the words in heights of a button, and the width
no button passes."""

NO_BAG_TO_GUIDE = (Verb.CALL_LEAD, Verb.NO_READING, Verb.START_RUN, Verb.ORDER_DONE)
"""With these verbs a card with the reason stands in place of figure and strip."""


_BEFORE_ALL = (Verb.CALL_LEAD, Verb.NO_READING)
"""Nothing may cover these."""


def _now() -> datetime:
    return datetime.fromtimestamp(QDateTime.currentSecsSinceEpoch(), UTC)


class PackerScreen(QWidget):
    """Paints a LineState and nothing else; touches become intents.

    Args:
        bridge: tells the newest state and the last label.
        intents: what a packer may ask of the line.
        palette: colours.

    Signals:
        lead_called: the packer wants the lead to come.
        lead_asked: somebody wants the lead's panel.
        arranged: the parts have new places.
    """

    lead_called = Signal()
    lead_asked = Signal()
    arranged = Signal()

    def __init__(
        self,
        bridge: Bridge,
        intents: Intents,
        palette: Palette = LIGHT,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self._intents = intents
        self._palette = palette
        self._state: LineState | None = None
        self._whole: LineState | None = None
        """The state that the parts beside the number show."""
        self.unit = 4.0
        self.header = RunHeader(palette, self)
        self.figure = BigFigure(palette, self)
        self.strip = GapStrip(palette, self)
        self.card = NoticeCard(palette, self)
        self.counts = CountRow(palette, self)
        self.label = LabelPreview(palette, self)
        self.aside_panel = AsidePanel(palette, self)
        self.aside_button = TouchButton(
            palette, "SET ASIDE", picture=Picture.SET_ASIDE, parent=self
        )
        self.call_button = TouchButton(palette, "CALL LEAD", picture=Picture.CALL_LEAD, parent=self)
        self.run_button = TouchButton(palette, "RUN", small="F2", parent=self)
        self.about = AboutPanel(palette, self)
        self.about.hide()
        self._parts: tuple[Painted[Any], ...] = (
            *(self.header, self.figure, self.strip, self.card),
            *(self.counts, self.label, self.about),
        )
        self.aside_panel.hide()
        self.card.hide()
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setFocus()
        self.aside_button.setCheckable(True)
        self.aside_button.toggled.connect(self._open_reasons)
        self.aside_panel.chosen.connect(self._set_aside)
        self.call_button.clicked.connect(self.lead_called)
        self.run_button.clicked.connect(self.lead_asked)
        bridge.state_changed.connect(self.show_number, Qt.ConnectionType.DirectConnection)
        bridge.followed.connect(self.show_state, Qt.ConnectionType.DirectConnection)
        bridge.label_changed.connect(self.label.show_pdf, Qt.ConnectionType.DirectConnection)

    @property
    def state(self) -> LineState | None:
        """What is shown."""
        return self._state

    @Slot(object)
    def show_number(self, state: LineState) -> None:
        """Paint what hands follow, and nothing beside it; called in the GUI thread."""
        self._state = state
        self.figure.set(instruction(state, self.figure.view.note))

    @Slot(object)
    def show_state(self, state: LineState) -> None:
        """Paint a state whole; called in the GUI thread."""
        before, self._whole = self._whole, state
        if before is None or state.phase is not before.phase:
            self.about.hide()  # what the bag needs comes before what can be read at leisure
        if state.verb in _BEFORE_ALL:
            self.aside_button.setChecked(False)
        self._state = state
        self.figure.set(instruction(state))
        self.header.set(heading(state.run))
        self.counts.set(counted(state, _now()))
        self.strip.set(gap_view(state))
        self.card.set(Notice(state.verb, self.figure.view.because))
        self.about.set(about(state))
        self._show_parts()

    @override
    def changeEvent(self, event: QEvent) -> None:
        if event.type() is not QEvent.Type.LanguageChange:
            return
        if self._state is not None:
            self.show_state(self._state)
        self._arrange()  # the words of another language are as wide as they are

    @Slot()
    def toggle_about(self) -> None:
        """Show or hide what this screen is, under which rules it judges, and for which scale."""
        self.about.setVisible(self.about.isHidden())
        self.about.raise_()

    def _show_parts(self) -> None:
        choosing = self.aside_button.isChecked()
        carded = self._state is None or self._state.verb in NO_BAG_TO_GUIDE
        self.aside_panel.setVisible(choosing)
        self.card.setVisible(carded and not choosing)
        self.figure.setVisible(not carded and not choosing)
        self.strip.setVisible(not carded and not choosing)
        self.aside_button.setEnabled(self._state is not None and self._state.run is not None)

    @Slot(bool)
    def _open_reasons(self, choosing: bool) -> None:
        self.aside_button.setText("BACK" if choosing else "SET ASIDE")
        self._show_parts()

    @Slot(str)
    def _set_aside(self, reason: str) -> None:
        self.aside_button.setChecked(False)
        self._intents.set_aside(reason)

    # --- layout -----------------------------------------------------------------------------

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        self._arrange()

    def _arrange(self) -> None:
        self.unit = min(self.width() / WIDTH_MM, self.height() / HEIGHT_MM)
        ruler = Ruler.true(self.screen())
        unit = self.unit
        margin, gap = round(_MARGIN * unit), round(_GAP * unit)
        left, wide = margin, self.width() - 2 * margin
        bottom = max(round(_BOTTOM * unit), ruler.touch())
        bottom_top = self.height() - margin - bottom
        right = self._place_buttons(QRect(left, bottom_top, wide, bottom), ruler)
        row = QRect(left, bottom_top, right - left, bottom)
        if row.width() < _LEAST_COUNTS * unit:  # upright and small: over the buttons
            bottom_top -= round(_BOTTOM * unit) + gap
            row = QRect(left, bottom_top, wide, round(_BOTTOM * unit))
        self._place_counts(row)
        self.header.setGeometry(left, round(_TOP * unit), wide, round(_HEADER * unit))
        middle_top = self.header.geometry().bottom() + gap
        middle = QRect(left, middle_top, wide, bottom_top - gap - middle_top)
        figure = min(round(_FIGURE * unit), round(middle.height() * 0.55))
        self.figure.setGeometry(left, middle_top, wide, figure)
        strip_top = middle_top + figure + round(2 * unit)
        self.strip.setGeometry(left, strip_top, wide, middle.bottom() - strip_top)
        self.card.setGeometry(middle)
        self.aside_panel.setGeometry(middle)
        self.about.setGeometry(middle)
        for part in self._parts:
            part.set_unit(unit)
        self.aside_panel.set_unit(unit)
        self.arranged.emit()

    def _place_buttons(self, row: QRect, ruler: Ruler) -> int:
        """From the right: lead, call, set aside; returns where what stands left of them ends."""
        unit = self.unit
        side = max(row.height(), ruler.touch())
        letters = _LETTERS * unit
        words = max(
            text_width(say(word), font_of(Face.VERB, letters))
            for word in ("SET ASIDE", "BACK", "CALL LEAD")
        )
        words = min(math.ceil(words + _SIDES * row.height()), round(_WIDEST * unit))
        critical = max(round(40 * unit), ruler.touch(40), words)
        gap, apart = max(round(6 * unit), ruler.touch(6)), max(round(10 * unit), ruler.touch(6))
        right = row.right() + 1
        for button, wide, space in (
            (self.run_button, side, gap),
            (self.call_button, critical, apart),
            (self.aside_button, critical, apart),
        ):
            button.setGeometry(right - wide, row.top(), wide, row.height())
            button.cap_px = letters
            right -= wide + space
        row_of_three = self.run_button, self.call_button, self.aside_button
        least = min(button.lettering()[0].cap for button in row_of_three)
        for button in row_of_three:  # one size, so that none looks less than its neighbour
            button.cap_px = least
        return right

    def _place_counts(self, row: QRect) -> None:
        """Counts from the left, the last label at the right."""
        unit = self.unit
        label = round(row.height() * 100 / 60)
        if row.width() - label < _COUNTS * unit:  # the counts are read, the label is only looked at
            label = round(row.width() - _COUNTS * unit)
            label = label if label >= _LEAST_LABEL * unit else 0
        right = row.right() + 1
        self.label.setGeometry(right - label, row.top(), label, row.height())
        counts = row.width() - label - round(8 * unit)
        self.counts.setGeometry(row.left(), row.top(), counts, row.height())

    @override
    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """A touch beside the buttons shows, or hides, the rules and the notice."""
        if event.position().y() < self.counts.geometry().top():
            self.toggle_about()

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._palette.ground))
        painter.end()
