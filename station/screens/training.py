"""Makes a station's window one of training: a strip over every page, and tiles for a first day."""

from __future__ import annotations

from station.core.training import MARK
from station.screens.bridge import Bridge
from station.screens.handful_guide import HandfulGuide
from station.screens.theme import Palette
from station.screens.widgets.training_strip import TrainingStrip
from station.screens.window import StationWindow


def set_up_training(
    window: StationWindow, bridge: Bridge, palette: Palette, *, tiles: bool
) -> None:
    """Mark a window, before it is shown.

    Args:
        window: the station's.
        bridge: tells the newest state.
        palette: colours.
        tiles: whether countdown tiles guide the packer.
    """
    window.setMenuWidget(TrainingStrip(palette))
    window.setWindowTitle(f"{window.windowTitle()}: {MARK}")
    guide = window.packer.findChild(HandfulGuide) or HandfulGuide(bridge, window.packer, palette)
    if tiles:
        guide.show_tiles()
