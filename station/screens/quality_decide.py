"""A decision about touched rejects: how they end, why, and which bag stands for one."""

from __future__ import annotations

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from station.core.dispositions import LINKED, Disposition
from station.core.reject_ledger import LedgerRow
from station.screens.quality_host import Host
from station.screens.quality_sources import RejectsSource
from station.screens.theme import Face, Palette, Ruler
from station.screens.widgets.sheet import Page, ScanField, Text
from station.screens.widgets.tiles import Tile, Tiles
from station.screens.widgets.touch_button import TouchButton

_REASONS = ("light", "seal open", "label spoiled", "sent to the laboratory")
"""Reasons that are often given; another one is typed."""
_SMALL = {
    Disposition.TOP_UP: "a new bag",
    Disposition.REWEIGH: "a new bag",
    Disposition.REWORK: "on the line",
}


class DecidePage(QWidget):
    """Six ends, a reason, perhaps a new bag.

    Signals:
        left: the decision was entered or given up.
    """

    left = Signal()

    def __init__(
        self, host: Host, source: RejectsSource, palette: Palette, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._host, self._source = host, source
        self.rows: tuple[LedgerRow, ...] = ()
        self.disposition: Disposition | None = None
        self.head = Text(palette, "", Face.VERB, 4.8)
        self.ends = Tiles(palette, [_tile(one, source) for one in Disposition], columns=6)
        self.reason = ScanField(palette, "why: scan or type the reason")
        self.reason.setMaxLength(200)
        self.ready_made = Tiles(palette, [Tile(one, one) for one in _REASONS], len(_REASONS))
        self.into = ScanField(palette, "scan the label of the new bag")
        self.into.setMaxLength(120)
        self.parts = Page(palette)
        self.back_button = TouchButton(palette, "BACK")
        self.enter_button = TouchButton(palette, "ENTER", small="hold down", hold=True)
        self._compose()
        self.ends.touched.connect(self.choose)
        self.ready_made.touched.connect(self.reason.setText)
        self.back_button.clicked.connect(self.left)
        self.enter_button.held.connect(self._enter)
        self._show()

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        row = QHBoxLayout()
        row.setSpacing(ruler.touch(6))
        for button in (self.back_button, self.enter_button):
            button.cap_px = ruler.px(5.0)
            button.setMinimumHeight(ruler.touch())
            row.addWidget(button, 1)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(round(ruler.px(3)))
        fields = QHBoxLayout()  # side by side: a small screen has no room for both
        fields.addWidget(self.into, 1)
        fields.addWidget(self.reason, 1)
        column = self.parts.column
        column.addWidget(self.head)
        column.addWidget(self.ends)
        column.addLayout(fields)
        column.addWidget(self.ready_made)
        column.addStretch(1)
        whole.addWidget(self.parts, 1)
        whole.addLayout(row)

    def begin(self, rows: tuple[LedgerRow, ...]) -> None:
        """Begin a decision about rejects."""
        self.rows, self.disposition = rows, None
        names = ", ".join(row.serial for row in rows[:3])
        more = f" and {len(rows) - 3} more" if len(rows) > 3 else ""
        decided = [row for row in rows if row.decision is not None]
        words = "Correct the decision about" if decided else "What becomes of"
        self.head.setText(f"{words} {names}{more}?")
        self.reason.clear()
        self.into.clear()
        self._show()

    @Slot(str)
    def choose(self, word: str) -> None:
        """Choose how they end."""
        self.disposition = Disposition(word)
        self._show()

    def _show(self) -> None:
        chosen = self.disposition
        self.ends.check([] if chosen is None else [str(chosen)])
        self.into.setVisible(chosen in LINKED)

    @Slot()
    def _enter(self) -> None:
        chosen = self.disposition
        if chosen is None:
            self._host.say("Touch what becomes of it first.", refused=True)
            return
        rows, reason, host = self.rows, self.reason.text(), self._host
        witness = host.second if chosen in self._source.witnessed else ""
        into = self._source.serial(self.into.text()) if chosen in LINKED else ""
        told = f"{len(rows)} {'bag is' if len(rows) == 1 else 'bags are'} {chosen}."
        host.enter(lambda: self._source.decide(rows, chosen, host.who, reason, witness, into), told)


def _tile(one: Disposition, source: RejectsSource) -> Tile:
    small = _SMALL.get(one, "with a witness" if one in source.witnessed else "")
    return Tile(str(one), str(one).upper(), small)
