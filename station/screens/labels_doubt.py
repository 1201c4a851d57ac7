"""Labels in doubt with their three answers, and a label printed again."""

from __future__ import annotations

from datetime import timedelta

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QWidget

from station.core.label_life import Fate, OldLabel, OpenLabel, ReprintReason
from station.core.pack import LabelState
from station.reports.serial_scan import serial_of
from station.screens.theme import Face, Palette, Ruler
from station.screens.widgets.sheet import Page, ScanField, Text, Title, side_by_side
from station.screens.widgets.tiles import Tile, Tiles

AGAIN = "print again"
"""The third answer; the other two are fates."""
_LAST_MM = 40.0
_MOST_SCANNED = 200


class DoubtPage(Page):
    """One card per label, oldest first.

    Signals:
        answered: serial; a :class:`Fate` or :data:`AGAIN` as text.
    """

    answered = Signal(str, str)

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, parent)
        self._palette = palette
        self.labels: tuple[OpenLabel, ...] = ()
        self.cards: dict[str, Tiles] = {}
        """By serial."""

    def show_labels(self, labels: tuple[OpenLabel, ...]) -> None:
        """Show what waits for an answer."""
        self.clear()
        self.labels, self.cards = labels, {}
        count = f"{len(labels)} labels to answer for: look at each bag"
        self.column.addWidget(Title(self._palette, count if labels else "No label is in doubt"))
        for label in labels:
            self.column.addWidget(Text(self._palette, _told(label), Face.TEXT, 4.6))
            card = Tiles(self._palette, _answers(label), columns=3)
            card.touched.connect(lambda key, serial=label.serial: self.answered.emit(serial, key))
            self.cards[label.serial] = card
            self.column.addWidget(card)
        self.column.addStretch(1)


class ReprintPage(Page):
    """Which label, why, and where the old one is.

    Signals:
        changed: something was chosen.
    """

    changed = Signal()

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, parent)
        self.serial = ""
        self.reason: ReprintReason | None = None
        self.old: OldLabel | None = None
        self._last = ""
        self.title = Title(palette, "")
        self.scan = ScanField(palette, "scan the label, or type its serial")
        self.scan.setMaxLength(_MOST_SCANNED)
        self.scan.returnPressed.connect(self._scanned)
        self.last = Tiles(palette, [Tile("last", "LAST", "of the last bag")], columns=1)
        self.last.touched.connect(self._take_last)
        self.reasons = Tiles(
            palette, [Tile(str(one), str(one)) for one in ReprintReason], columns=3
        )
        self.reasons.touched.connect(self._choose_reason)
        olds = [
            Tile(OldLabel.DESTROYED, "OLD ONE DESTROYED", "torn up, seen by me"),
            Tile(OldLabel.NEVER_PRINTED, "NEVER CAME OUT", "only where in doubt"),
        ]
        self.olds = Tiles(palette, olds, columns=2)
        self.olds.touched.connect(self._choose_old)
        wide = Ruler.of(self.screen()).touch(_LAST_MM)
        self.last.setFixedWidth(wide)
        row = side_by_side(self.last, self.scan)
        for part in (self.title, row, self.reasons, self.olds):
            self.column.addWidget(part)
        self.column.addStretch(1)
        self.begin("")

    def begin(self, last: str) -> None:
        """Begin anew.

        Args:
            last: serial of the last bag; empty without one.
        """
        self.serial, self.reason, self.old, self._last = "", None, None, last
        self.scan.clear()
        self._show()

    def follow(self, last: str) -> None:
        """Keep the serial of the last bag, whatever is chosen."""
        self._last = last

    def choose(self, serial: str) -> None:
        """Take a serial."""
        self.serial = serial
        self._show()
        self.changed.emit()

    @Slot()
    def _scanned(self) -> None:
        self.choose(serial_of(self.scan.text()))
        self.scan.clear()

    @Slot(str)
    def _take_last(self, _: str) -> None:
        self.choose(self._last)

    @Slot(str)
    def _choose_reason(self, words: str) -> None:
        self.reason = ReprintReason(words)
        self._show()
        self.changed.emit()

    @Slot(str)
    def _choose_old(self, words: str) -> None:
        self.old = OldLabel(words)
        self._show()
        self.changed.emit()

    def _show(self) -> None:
        self.title.setText(f"Print again: {self.serial or 'which label?'}")
        self.reasons.check([str(self.reason)] if self.reason else [])
        self.olds.check([str(self.old)] if self.old else [])


def _told(label: OpenLabel) -> str:
    at = label.judged_at + timedelta(minutes=label.offset_minutes)
    name = f"{label.serial} {label.mark}".strip()
    return f"{name}   {label.product}, weighed {at:%H:%M}\n{label.why}"


def _answers(label: OpenLabel) -> list[Tile]:
    came_out = label.label is LabelState.SPOOLED
    return [
        Tile(Fate.APPLIED, "ON ITS BAG", "I see it there"),
        Tile(Fate.DESTROYED, "DESTROYED", "its bag goes out"),
        Tile(AGAIN, "PRINT AGAIN", "this one is destroyed" if came_out else "it never came out"),
    ]
