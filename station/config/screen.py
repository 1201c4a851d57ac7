"""How the station looks and sounds, frozen."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class ScreenSettings:
    """How the station looks and sounds.

    Args:
        theme: ``light`` or ``dark``.
        sounds: whether the three sounds of the line are played.
    """

    theme: str = "light"
    sounds: bool = True
