"""The pages of a changeover: count the run before, clear the line, stop it and go on."""

from __future__ import annotations

from datetime import timedelta
from decimal import Decimal

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QWidget

from station.core.clearance import Explanation, Point
from station.core.clock_guard import Reason as ClockReason
from station.core.pack import Moment
from station.core.pauses import LOOKS, Look, Pause, Reason
from station.screens.change_source import Before
from station.screens.theme import Face, Palette
from station.screens.widgets.number_pad import NumberPad
from station.screens.widgets.sheet import Page, Text, Title
from station.screens.widgets.tiles import Tile, Tiles
from station.screens.words import long_date


class CountPage(Page):
    """Bags on record against bags counted.

    Signals:
        changed: something was counted or explained.
    """

    changed = Signal()

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, parent)
        self.bags = 0
        self.explanation: Explanation | None = None
        self.title = Title(palette, "")
        self.said = Text(palette, "", Face.VERB, 7.0)
        self.pad = NumberPad(palette)
        self.pad.changed.connect(self._count)
        self.reasons = Tiles(palette, [Tile(str(one), str(one)) for one in Explanation], columns=2)
        self.reasons.touched.connect(self._explain)
        self.column.addWidget(self.title)
        self.column.addWidget(self.said)
        self.column.addWidget(self.pad)
        self.column.addWidget(self.reasons)
        self.column.addStretch(1)
        self.show_before(None)

    @property
    def counted(self) -> int | None:
        """Bags counted; None before."""
        return int(self.pad.digits) if self.pad.digits else None

    def show_before(self, before: Before | None) -> None:
        """Show what is on record."""
        self.bags = before.bags if before else 0
        words = "There is no run before"
        if before is not None:
            kilograms = Decimal(before.net_ug).scaleb(-9).quantize(Decimal("0.1"))
            words = f"{before.name}, {before.blend_lot}: {kilograms} kg net"
        self.title.setText(words)
        self._show()

    def clear_count(self) -> None:
        """Begin anew."""
        self.pad.digits, self.explanation = "", None
        self._show()

    @Slot(str)
    def _count(self, _: str) -> None:
        self.explanation = None
        self._show()
        self.changed.emit()

    @Slot(str)
    def _explain(self, words: str) -> None:
        self.explanation = Explanation(words)
        self._show()
        self.changed.emit()

    def _show(self) -> None:
        counted = self.counted
        said = f"On record {self.bags}, counted {'…' if counted is None else counted}"
        difference = 0 if counted is None else counted - self.bags
        if difference:
            said += f": {abs(difference)} {'more' if difference > 0 else 'fewer'}. Why?"
        self.said.setText(said)
        self.reasons.setVisible(bool(difference))
        self.reasons.check([str(self.explanation)] if self.explanation else [])


class LookPage(Page):
    """Things to look at, each touched once it was.

    Signals:
        changed: one was touched.
    """

    changed = Signal()

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, parent)
        self._palette = palette
        self.seen: set[str] = set()
        self.tiles: Tiles | None = None

    def show_things(self, title: str, things: tuple[str, ...]) -> None:
        """Show what is to be looked at, nothing of it seen."""
        self.clear()
        self.seen = set()
        self.tiles = Tiles(self._palette, [Tile(one, one) for one in things], columns=2)
        self.tiles.touched.connect(self._touch)
        self.column.addWidget(Title(self._palette, title))
        self.column.addWidget(self.tiles)
        self.column.addStretch(1)

    @Slot(str)
    def _touch(self, words: str) -> None:
        self.seen ^= {words}
        if self.tiles is not None:
            self.tiles.check(sorted(self.seen))
        self.changed.emit()


class ClearPage(LookPage):
    """The points of a clear line."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, parent)
        self.begin()

    def begin(self) -> None:
        """Begin anew."""
        self.show_things("Look, then touch", tuple(str(point) for point in Point))

    @property
    def points(self) -> dict[Point, bool]:
        """Each point, and whether it was touched."""
        return {point: str(point) in self.seen for point in Point}


class StopPage(LookPage):
    """Why the line stops; while it stands, what to look at before it goes on.

    Signals:
        chosen: str, the reason the line stops for.
    """

    chosen = Signal(str)

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, parent)
        self._pause: Pause | None = None
        self.show_pause(None)

    def show_pause(self, pause: Pause | None) -> None:
        """Show a stop that goes on, or the reasons for one."""
        if pause is not None and self._pause is not None and pause.uid == self._pause.uid:
            return
        self._pause = pause
        if pause is not None:
            title = f"Line stands: {pause.reason}. Look, then touch"
            self.show_things(title, tuple(str(look) for look in LOOKS[pause.reason]))
            return
        self.show_things("Why does the line stop?", tuple(str(reason) for reason in Reason))

    @property
    def looked(self) -> frozenset[Look]:
        """What was looked at."""
        return frozenset(look for look in Look if str(look) in self.seen)

    @Slot(str)
    def _touch(self, words: str) -> None:
        if self._pause is None:
            self.chosen.emit(words)
        else:
            super()._touch(words)


class ClockPage(Page):
    """Date and time as the station has them, large, to be held against another clock.

    Signals:
        changed: a reason was chosen.
    """

    changed = Signal()

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, parent)
        self.reason: ClockReason | None = None
        self.said = Text(palette, "", Face.TEXT, 5.2)
        self.day = Text(palette, "", Face.VERB, 9.0)
        self.hour = Text(palette, "", Face.VERB, 14.0)
        self.note = Text(palette, "An open run keeps the dates it was opened with.", Face.TEXT, 4.2)
        tiles = [Tile(str(one), str(one)) for one in ClockReason]
        self.reasons = Tiles(palette, tiles, columns=2)
        self.reasons.touched.connect(self._choose)
        for part in (self.said, self.day, self.hour, self.note, self.reasons):
            self.column.addWidget(part)
        self.column.addStretch(1)

    def show_clock(self, shown: Moment, wanting: str) -> None:
        """Show the present moment, and why it must be confirmed."""
        local = shown.utc + timedelta(minutes=shown.offset_minutes)
        words = f"{wanting[:1].upper()}{wanting[1:]}." if wanting else "Nothing is open."
        self.said.setText(words)
        self.day.setText(long_date(local.date()))
        self.hour.setText(f"{local:%H:%M:%S}")

    def begin(self) -> None:
        """Choose no reason."""
        self.reason = None
        self.reasons.check([])

    @Slot(str)
    def _choose(self, reason: str) -> None:
        self.reason = ClockReason(reason)
        self.reasons.check([reason])
        self.changed.emit()
