"""How far the order is: good bags, the order, bags set aside, the last bag."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.line.state import LineState
from station.screens.checks_words import soon_words
from station.screens.theme import Face, Palette
from station.screens.tongue import tr
from station.screens.widgets.gap_geometry import mass_text
from station.screens.widgets.lettering import Fitted, draw, fit
from station.screens.widgets.painted import Painted, hatch

COUNT_MM = 13.0
WORDS_MM = 6.4
_EDGE_MM = 7.0
"""Width of the hatched edge of what is due, with its gap."""


@dataclass(frozen=True, slots=True)
class Counted:
    """What the row says.

    Args:
        good: labelled bags that count for the order.
        order_size: bags ordered, or None for an open run.
        rejects: bags set aside.
        last: net of the last good bag, or that it was set aside.
        due: what needs somebody soon, and how soon; empty where nothing does.
    """

    good: int = 0
    order_size: int | None = None
    rejects: int = 0
    last: str = ""
    due: str = ""


def counted(state: LineState, now: datetime | None = None) -> Counted:
    """Return the counts of a line's run; with the time, also what is due within ten minutes."""
    if state.run is None:
        return Counted()
    last = ""
    if state.last is not None:
        what = mass_text(state.last.net) if state.last.good else tr("set aside")
        last = tr("last {what}").format(what=what)
    due = "" if now is None else soon_words(state, now)
    return Counted(state.tally.good, state.run.order_size, state.tally.rejects, last, due)


class CountRow(Painted[Counted]):
    """Paints the counts over a bar that fills with the order."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        self.texts: dict[str, Fitted] = {}
        super().__init__(palette, Counted(), parent)

    @override
    def arrange(self) -> None:
        view, unit, wide = self.view, self.unit, float(self.width())
        good = fit(str(view.good), Face.FIGURES, COUNT_MM * unit, wide * 0.5)
        of = tr("bags")
        if view.order_size is not None:
            of = tr("of {count} bags").format(count=view.order_size)
        aside = tr("{count} set aside").format(count=view.rejects) if view.rejects else ""
        words = fit(of, Face.TEXT, WORDS_MM * unit, wide - good.width - 4 * unit)
        beside = fit(aside, Face.NARROW, WORDS_MM * unit, wide * 0.48)
        room = wide - (beside.width + 3 * unit if aside else 0.0)
        self.texts = {
            "good": good,
            "of": words,
            "aside": beside,
            "last": fit(view.last, Face.NARROW, WORDS_MM * unit, room),
            "due": fit(view.due, Face.VERB, WORDS_MM * unit, wide - _EDGE_MM * unit),
        }
        said = (str(view.good), of, aside, view.last, view.due)
        self.setAccessibleName(" ".join(filter(None, said)))

    @override
    def paint(self, painter: QPainter) -> None:
        if not self.texts:
            return
        view, unit = self.view, self.unit
        good = self.texts["good"]
        count_top = 1.2 * unit
        draw(painter, good, 0, count_top, self.colours.ink)
        of = self.texts["of"]
        draw(painter, of, good.width + 4 * unit, count_top + good.cap - of.cap, self.colours.muted)
        bar = QRectF(0, count_top + COUNT_MM * unit + 2.6 * unit, self.width(), 1.8 * unit)
        if view.order_size:
            painter.fillRect(bar, QColor(self.colours.quiet))
            done = min(view.good / view.order_size, 1.0)
            painter.fillRect(
                QRectF(bar.left(), bar.top(), bar.width() * done, bar.height()),
                QColor(self.colours.ink),
            )
        line = bar.bottom() + 3.2 * unit
        if view.due:  # for as long as it needs somebody it comes before what is past
            edge = QRectF(0, line - unit, 4 * unit, WORDS_MM * unit + 2 * unit)
            hatch(painter, edge, self.colours.attend, self.colours.on_attend, 2.5 * unit)
            draw(painter, self.texts["due"], _EDGE_MM * unit, line, self.colours.ink)
            return
        last, aside = self.texts["last"], self.texts["aside"]
        draw(painter, last, 0, line, self.colours.muted)
        draw(painter, aside, self.width() - aside.width, line, self.colours.muted)
