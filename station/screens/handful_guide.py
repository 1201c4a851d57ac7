"""Handfuls beside the packer's numbers: learnt from the line, drawn as leaves, or as tiles."""

from __future__ import annotations

from PySide6.QtCore import QObject, QRect, Qt, Slot

from station.core.handful import Handful
from station.line.state import LineState, Phase, Verb
from station.screens.bridge import Bridge
from station.screens.packer import PackerScreen
from station.screens.theme import Palette
from station.screens.widgets.countdown_tiles import CountdownTiles, TilesView, tiles_view
from station.screens.widgets.handful_leaves import (
    HIGH_MM,
    MOST,
    WIDE_MM,
    HandfulLeaves,
    LeavesView,
)


class HandfulGuide(QObject):
    """Learns what a handful weighs, and guides by it: leaves, and on a first day tiles.

    Args:
        bridge: tells the newest state.
        packer: the screen the guide stands on.
        palette: colours.
    """

    def __init__(self, bridge: Bridge, packer: PackerScreen, palette: Palette) -> None:
        super().__init__(packer)
        self._packer, self._palette = packer, palette
        self.handful = Handful()
        self.leaves = HandfulLeaves(palette, packer)
        self.tiles: CountdownTiles | None = None
        bridge.followed.connect(self.show_state, Qt.ConnectionType.DirectConnection)
        packer.arranged.connect(self.place)
        self.place()

    def show_tiles(self) -> None:
        """Let countdown tiles stand over the landmarks of the strip from now on."""
        self.tiles = CountdownTiles(self._palette, self._packer)
        self.place()

    @Slot(object)
    def show_state(self, state: LineState) -> None:
        """Follow the line; call it after the packer's screen has seen the state."""
        if state.phase is Phase.LOADED and state.run is not None and state.shown is not None:
            shown = state.shown
            if shown.net is not None and shown.steady:
                self.handful.see(state.run.product.code, state.cycle, shown.net)
        guiding = self._packer.strip.isVisibleTo(self._packer)
        self._show_leaves(state, guiding=guiding)
        if self.tiles is not None:
            self.tiles.set(tiles_view(state, self.handful.mass) if guiding else TilesView())
            self.tiles.setVisible(self.tiles.view.shown)

    def _show_leaves(self, state: LineState, *, guiding: bool) -> None:
        """Leaves stand right of the sentence, or not at all where it needs the room."""
        moves = state.verb in (Verb.ADD, Verb.TAKE_OUT) and state.amount is not None
        if not guiding or not moves or state.amount is None:
            self.leaves.hide()
            return
        halves = self.handful.halves(state.amount)
        self.leaves.set(LeavesView(halves, over=state.verb is Verb.TAKE_OUT))
        texts = self._packer.figure.texts
        sentence = 0.0 if texts is None else texts.sentence.width
        gap = 4 * self._packer.unit
        self.leaves.setVisible(sentence + gap + self.leaves.room <= self._packer.figure.width())

    @Slot()
    def place(self) -> None:
        """Stand beside the sentence, and over the landmarks, which a first day does without."""
        unit, figure, strip = self._packer.unit, self._packer.figure, self._packer.strip
        high = round(HIGH_MM * unit)
        wide = round(MOST * WIDE_MM * unit)
        foot = figure.geometry().bottom() + 1
        self.leaves.setGeometry(figure.geometry().right() + 1 - wide, foot - high, wide, high)
        self.leaves.set_unit(unit)
        self.leaves.raise_()
        if self.tiles is None:
            return
        below = round(strip.band.bottom()) + 1
        self.tiles.setGeometry(
            QRect(strip.x(), strip.y() + below, strip.width(), strip.height() - below)
        )
        self.tiles.set_unit(unit)
        self.tiles.raise_()
