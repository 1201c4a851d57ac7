"""The inbox: what is open, the gravest first, and the signature of a day."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from station.core.day_review import DayReview, DaySeen
from station.core.inbox_items import Item
from station.screens.quality_host import Host
from station.screens.quality_sources import InboxSource
from station.screens.quality_words import item_row, with_gone
from station.screens.theme import Face, Palette, Ruler
from station.screens.widgets.sheet import ScanField, Text
from station.screens.widgets.touch_button import TouchButton
from station.screens.widgets.touch_table import Column, TouchTable
from station.screens.words import long_date, narrow_date

_COLUMNS = (Column("", 2), Column("what is open", 9), Column("since", 3))
_DAY = timedelta(days=1)


class InboxPanel(QWidget):
    """A table of open things over the day and its signature.

    Signals:
        wanted: where an item is settled, and what names it there.
    """

    wanted = Signal(str, str)

    def __init__(
        self, host: Host, source: InboxSource, palette: Palette, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._host, self._source = host, source
        self.day: date = source.today
        self.items: tuple[Item, ...] = ()
        self.story: tuple[Item, ...] = ()
        self.review: DayReview | None = None
        self.head = Text(palette, "", Face.VERB, 5.2)
        self.table = TouchTable(palette, _COLUMNS)
        self.state = Text(palette, "", Face.TEXT, 4.0)
        self.remark = ScanField(palette, "remark on what is open")
        self.remark.setMaxLength(200)
        self.before_button = TouchButton(palette, "◀", small="day before")
        self.after_button = TouchButton(palette, "▶", small="day after")
        self.story_button = TouchButton(palette, "OPEN", small="or the day")
        self.story_button.setCheckable(True)
        self.sign_button = TouchButton(palette, "SIGN DAY", small="hold down", hold=True)
        self._compose()
        self.table.touched.connect(self._touched)
        self.before_button.clicked.connect(lambda: self.go_to(self.day - _DAY))
        self.after_button.clicked.connect(lambda: self.go_to(self.day + _DAY))
        self.story_button.clicked.connect(self._show)
        self.sign_button.held.connect(self._sign)

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        row = QHBoxLayout()
        row.setSpacing(ruler.touch(6))
        for button, share in (
            (self.before_button, 1),
            (self.after_button, 1),
            (self.story_button, 1),
            (self.sign_button, 2),
        ):
            button.cap_px = ruler.px(4.6)
            button.setMinimumHeight(ruler.touch(26))
            row.addWidget(button, share)
        row.insertWidget(3, self.remark, 3)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(round(ruler.px(3)))
        whole.addWidget(self.head)
        whole.addWidget(self.table, 1)
        whole.addWidget(self.state)
        whole.addLayout(row)

    def look(self) -> None:
        """Read the inbox and the day anew."""
        self.go_to(self.day)

    def recorded(self) -> None:
        """The day is signed."""
        self.remark.clear()
        self.look()

    @Slot()
    def _show(self) -> None:
        """The inbox, or what happened on the day, settled or not."""
        story = self.story_button.isChecked()
        items = self.story if story else self.items
        words = f"things happened on {narrow_date(self.day)}" if story else "things are open"
        self.story_button.setText("THE DAY" if story else "OPEN")
        self.head.setText(f"{len(items)} {words}")
        self.table.show_rows([item_row(one, self._source.zone) for one in items])

    def go_to(self, day: date) -> None:
        """Show another day; none lies ahead of today."""
        self.day = min(day, self._source.today)
        asked = self.day
        self._host.ask(lambda: self._source.seen(asked), self._show_day)

    def _show_day(self, seen: DaySeen) -> None:
        review, signed = seen.review, seen.signed
        if review.day != self.day:
            return
        self.review, self.items, self.story = review, seen.items, seen.story
        words = f"{long_date(review.day)}: {review.packs} bags, {review.rejects} set aside"
        if signed is None:
            words += f"; {len(review.open)} things open, not signed"
        else:
            words += f"; {signed.fact.result} by {signed.who}"
        self.state.setText(with_gone(words, seen.gone))
        self.after_button.setEnabled(self.day < self._source.today)
        self._show()

    @Slot(str)
    def _touched(self, key: str) -> None:
        where, _, name = key.partition(" ")
        self.wanted.emit(where, name)

    @Slot()
    def _sign(self) -> None:
        day, remark, who = self.day, self.remark.text(), self._host.who
        found = self.review
        if found is None or found.day != day:
            self._host.say("Wait until the day is read.", refused=True)
            return
        review = replace(found, remark=remark)
        told = f"{day} is reviewed and signed."
        self._host.enter(lambda: (self._source.sign(review, who),), told)
