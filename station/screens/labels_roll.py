"""Label rolls: in by scan and count, out by three counts, and what is missing of each."""

from __future__ import annotations

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QWidget

from station.core.checks.rolls import Explanation, RollAccount, RollCount
from station.screens.numbers_words import Row
from station.screens.theme import Face, Palette, Ruler
from station.screens.widgets.figure_list import FigureList
from station.screens.widgets.number_pad import NumberPad
from station.screens.widgets.sheet import Page, ScanField, Text, Title
from station.screens.widgets.tiles import Tile, Tiles

_ISSUED = "labels on it"
_COUNTS = ("returned", "spoiled", "samples")
_ROW_MM = 19.0


class RollPage(Page):
    """Puts the next roll in, or takes the one inside out.

    Signals:
        changed: something was scanned or counted.
        explained: why the oldest open difference is there.
    """

    changed = Signal()
    explained = Signal(str)

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, parent)
        self._palette = palette
        self.inside = ""
        self.roll = ""
        self.figures: dict[str, str] = {}
        self._asked = _ISSUED
        self.open_one: RollAccount | None = None
        self.title = Title(palette, "")
        self.scan = ScanField(palette, "scan the roll, then Enter")
        self.scan.returnPressed.connect(self._scanned)
        self.said = Text(palette, "", Face.VERB, 5.2)
        self.fields = Tiles(palette, [Tile(one, one.upper()) for one in _COUNTS], columns=3)
        self.fields.touched.connect(self._ask)
        self.pad = NumberPad(palette)
        self.pad.changed.connect(self._count)
        self.table_title = Title(
            palette, "Issued \u2212 used \u2212 spoiled \u2212 samples \u2212 returned"
        )
        self.table = FigureList(palette)
        self.why = Title(palette, "")
        self.reasons = Tiles(palette, [Tile(str(one), str(one)) for one in Explanation], columns=2)
        self.reasons.touched.connect(self.explained)
        parts = (self.title, self.scan, self.said, self.fields, self.pad)
        for part in (*parts, self.table_title, self.table, self.why, self.reasons):
            self.column.addWidget(part)
        self.column.addStretch(1)
        self.show_rolls("", ())

    def show_rolls(self, inside: str, accounts: tuple[RollAccount, ...]) -> None:
        """Begin anew with what is in and what came of the rolls before.

        Args:
            inside: id of the roll in the printer; empty without one.
            accounts: oldest first.
        """
        self.inside, self.roll, self.figures = inside, "", {}
        self.pad.digits = ""
        self._asked = _COUNTS[0] if inside else _ISSUED
        self.scan.setVisible(not inside)
        self.fields.setVisible(bool(inside))
        self.open_one = next((one for one in accounts if one.open), None)
        self.reasons.setVisible(self.open_one is not None)
        self.why.setVisible(self.open_one is not None)
        if self.open_one is not None:
            self.why.setText(f"Roll {self.open_one.roll}: why {_difference(self.open_one)}?")
        rows = tuple(_row(one) for one in reversed(accounts))
        ruler = Ruler.of(self.screen())
        self.table.setFixedHeight(round(ruler.px(_ROW_MM) * max(1, len(rows))))
        self.table.set_unit(ruler.px(1))
        self.table.set(rows)
        for part in (self.table_title, self.table):
            part.setVisible(bool(rows))
        self._show()

    @property
    def issued(self) -> int | None:
        """Labels on the roll that goes in; None before they are counted."""
        return int(self.figures[_ISSUED]) if self.figures.get(_ISSUED) else None

    @property
    def count(self) -> RollCount | None:
        """What was counted of the roll that comes out; None before all of it is.

        Raises:
            ValueError: a number cannot be.
        """
        if any(name not in self.figures for name in _COUNTS):
            return None
        returned, spoiled, samples = (int(self.figures[name] or "0") for name in _COUNTS)
        return RollCount(returned, spoiled, samples)

    @Slot()
    def _scanned(self) -> None:
        self.roll = self.scan.text().strip().upper()
        self.scan.clear()
        self._show()
        self.changed.emit()

    @Slot(str)
    def _ask(self, name: str) -> None:
        self._asked = name
        self.pad.digits = ""
        self.figures.setdefault(name, "")
        self._show()

    @Slot(str)
    def _count(self, digits: str) -> None:
        self.figures[self._asked] = digits
        self._show()
        self.changed.emit()

    def _show(self) -> None:
        self.fields.check([self._asked])
        if self.inside:
            self.title.setText(f"Roll {self.inside} is in. Count it out")
            told = (f"{name} {_shown(self.figures, name)}" for name in _COUNTS)
            self.said.setText("   ".join(told))
        else:
            self.title.setText("No roll is in")
            labels = _shown(self.figures, _ISSUED)
            self.said.setText(f"roll {self.roll or '…'}   {_ISSUED} {labels}")


def _shown(figures: dict[str, str], name: str) -> str:
    return (figures[name] or "0") if name in figures else "…"


def _difference(account: RollAccount) -> str:
    missing = account.difference or 0
    return f"{missing} missing" if missing > 0 else f"{-missing} too many"


def _row(account: RollAccount) -> Row:
    """One roll as a row of figures."""
    if account.count is None:
        note = f"{account.issued} issued, {account.used} used so far"
        return Row(account.roll, "in the printer", note)
    gone = (account.used, account.count.spoiled, account.count.samples, account.count.returned)
    sum_ = " \u2212 ".join(str(number) for number in (account.issued, *gone))
    words = account.explanation or ("open" if account.open else "adds up")
    value = _difference(account) if account.difference else "0"
    return Row(account.roll, value, f"{sum_} = {account.difference}, {words}", attend=account.open)
