"""How the station looks and sounds, frozen."""

from __future__ import annotations

from dataclasses import dataclass

from station.core.languages import Language


@dataclass(frozen=True, slots=True)
class ScreenSettings:
    """How the station looks and sounds.

    Args:
        theme: ``light`` or ``dark``.
        sounds: whether the three sounds of the line are played.
        language: of the screens, for whoever has none of their own.
    """

    theme: str = "light"
    sounds: bool = True
    language: Language = Language.ENGLISH
