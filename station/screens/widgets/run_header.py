"""What is packed now: product, use-by date in words, blend lot and its input lots."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.core.run import Run
from station.screens.theme import Face, Palette
from station.screens.tongue import tr
from station.screens.widgets.lettering import Fitted, draw, draw_right, fit
from station.screens.widgets.painted import Painted, stroke
from station.screens.words import long_date, lots_line, narrow_date

TITLE_MM = 13.0
"""Read at 2 m."""
LOTS_MM = 6.4
"""Read at 1 m."""


_TWO_LINES_MM = 17.6
"""Room for a name that does not fit on one line."""
_DATE, _WORDS = 0.48, 0.32
"""Most of the width that the date takes, and the words over it."""
_RISE_MM = 2.6
"""Of letters above the capitals."""


@dataclass(frozen=True, slots=True)
class Heading:
    """What the header says.

    Args:
        product: name of the food.
        use_by: weekday, day and month.
        use_by_narrow: the same with a shorter month, for where the whole one is too wide.
        use_by_words: ``Use by`` or ``Best before``.
        lots: blend lot and input lots.
    """

    product: str = ""
    use_by: str = ""
    use_by_narrow: str = ""
    use_by_words: str = ""
    lots: str = ""


def heading(run: Run | None) -> Heading:
    """Return the heading of a run."""
    if run is None:
        return Heading(product=tr("No run open"))
    return Heading(
        product=run.product.name,
        use_by=long_date(run.dating.use_by),
        use_by_narrow=narrow_date(run.dating.use_by),
        use_by_words=run.product.use_by_words,
        lots=lots_line(run),
    )


class RunHeader(Painted[Heading]):
    """Paints a Heading over a thin line."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        self.texts: dict[str, Fitted] = {}
        super().__init__(palette, Heading(), parent)

    @override
    def arrange(self) -> None:
        view, unit = self.view, self.unit
        title, small = TITLE_MM * unit, LOTS_MM * unit
        date = fit(view.use_by, Face.VERB, title, self.width() * _DATE)
        if date.cap < title:
            date = fit(view.use_by_narrow, Face.VERB, title, self.width() * _DATE)
        words = fit(tr(view.use_by_words), Face.TEXT, small, self.width() * _WORDS)
        left_of_date = self.width() - max(date.width, words.width) - 10 * unit
        self.texts = {
            "use_by": date,
            "use_by_words": words,
            "product": fit(
                view.product, Face.VERB, title, left_of_date, _TWO_LINES_MM * unit, leading=1.5
            ),
            "lots": fit(view.lots, Face.CODE, small, self.width() - words.width - 10 * unit),
        }

    @override
    def paint(self, painter: QPainter) -> None:
        if not self.texts:
            return
        title, small = TITLE_MM * self.unit, LOTS_MM * self.unit
        product, date = self.texts["product"], self.texts["use_by"]
        rise = _RISE_MM * self.unit
        name = max(product.height, title)
        draw(painter, product, 0, rise + (name - product.height) / 2, self.colours.ink)
        draw_right(painter, date, self.width(), rise + title - date.cap, self.colours.ink)
        second = rise + title + 5.4 * self.unit
        lots, words = self.texts["lots"], self.texts["use_by_words"]
        below = max(second, rise + name + 4.2 * self.unit)
        draw(painter, lots, 0, below + small - lots.cap, self.colours.muted)
        draw_right(painter, words, self.width(), below, self.colours.muted)
        painter.setPen(stroke(self.colours.edge, 0.4 * self.unit))
        y = self.height() - 0.4 * self.unit
        painter.drawLine(QPointF(0, y), QPointF(self.width(), y))
