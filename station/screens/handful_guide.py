"""Handfuls beside the packer's numbers: learnt from the line, drawn as leaves, or as tiles."""

from __future__ import annotations

from PySide6.QtCore import QObject, QRect, Qt, Slot

from station.core.handful import Handful
from station.line.state import LineState, Phase
from station.screens.bridge import Bridge
from station.screens.packer import PackerScreen
from station.screens.theme import Palette
from station.screens.widgets.countdown_tiles import CountdownTiles, TilesView, tiles_view


class HandfulGuide(QObject):
    """Learns what a handful weighs, and guides by it.

    Args:
        bridge: tells the newest state.
        packer: the screen the guide stands on.
        palette: colours.
        tiles: whether countdown tiles stand over the landmarks of the strip.
    """

    def __init__(
        self, bridge: Bridge, packer: PackerScreen, palette: Palette, *, tiles: bool
    ) -> None:
        super().__init__(packer)
        self._packer = packer
        self.handful = Handful()
        self.tiles = CountdownTiles(palette, packer) if tiles else None
        bridge.state_changed.connect(self.show_state, Qt.ConnectionType.DirectConnection)
        packer.arranged.connect(self.place)
        self.place()

    @Slot(object)
    def show_state(self, state: LineState) -> None:
        """Follow the line; call it after the packer's screen has seen the state."""
        if state.phase is Phase.LOADED and state.run is not None and state.shown is not None:
            shown = state.shown
            if shown.net is not None and shown.steady:
                self.handful.see(state.run.product.code, state.cycle, shown.net)
        if self.tiles is not None:
            view = tiles_view(state, self.handful.mass)
            self.tiles.set(view if self._packer.strip.isVisibleTo(self._packer) else TilesView())
            self.tiles.setVisible(self.tiles.view.shown)

    @Slot()
    def place(self) -> None:
        """Stand over the landmarks, which a first day does without."""
        if self.tiles is None:
            return
        strip = self._packer.strip
        below = round(strip.band.bottom()) + 1
        self.tiles.setGeometry(
            QRect(strip.x(), strip.y() + below, strip.width(), strip.height() - below)
        )
        self.tiles.set_unit(self._packer.unit)
        self.tiles.raise_()
