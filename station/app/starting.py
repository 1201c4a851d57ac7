"""The first thing a station shows: that it starts. Everything else is loaded behind it."""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from station.app.qt_application import the_application
from station.core.languages import Language
from station.errors import EnvironmentFault
from station.screens.start import StartScreen
from station.screens.theme import LIGHT, PALETTES, Palette, register_fonts
from station.screens.tongue import speak

_SETTINGS, _SCREEN = "station.toml", "screen"


@contextmanager
def starting(config: Path, *, full: bool) -> Iterator[StartScreen | None]:
    """Say that the station starts, while this lasts or until the screen is told to leave.

    Where there is nothing to show a window on it is None: that is told after what is wrong with
    the settings.

    Args:
        config: folder of the settings.
        full: fill the screen, as a kiosk will.
    """
    try:
        the_application()
    except EnvironmentFault:
        yield None
        return
    register_fonts()
    palette, language = look_of(config)
    speak(language)
    screen = StartScreen(palette)
    screen.show_now(full=full)
    try:
        yield screen
    finally:
        screen.leave()


def look_of(config: Path) -> tuple[Palette, Language]:
    """Colours and language, before the settings are checked: what is wrong is told when they are.

    Args:
        config: folder of the settings.
    """
    try:
        text = (config / _SETTINGS).read_text(encoding="utf-8")
        table = tomllib.loads(text)[_SCREEN]
        theme, language = table.get("theme", "light"), table.get("language", Language.ENGLISH)
        return PALETTES[theme], Language(language)
    except (OSError, ValueError, KeyError, TypeError, AttributeError):
        return LIGHT, Language.ENGLISH
