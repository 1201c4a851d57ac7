"""Colours, typefaces and sizes of every screen.

Colour says only act (blue), attend (amber) or stop (red); whatever is well has none, and each state
differs by shape and word too. The contrasts are those of WCAG 2.2 success criteria 1.4.3, 1.4.6 and
1.4.11; a test computes them. Sizes are given in millimetres as they must be read: about 1/200 of
the distance for a character that must be read quickly (a common rule of human factors).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum
from functools import cache
from importlib.resources import as_file, files
from typing import ClassVar

from PySide6.QtCore import QSize
from PySide6.QtGui import QFont, QFontDatabase, QFontMetricsF, QScreen

MM_PER_INCH = 25.4
BELIEVABLE_DPI = (50.0, 400.0)
"""A screen that says it is finer or coarser than this is not believed."""
TOUCH_MM = 30.0
"""Least side of what a gloved hand touches."""
KEY_MM = 22.0
"""Least side of a key of the lead's number pad."""
WIDTH_MM, HEIGHT_MM = 339.0, 212.0
"""The packer's screen is drawn for this size and grows or shrinks with the window."""
HOLD_MS = 800
"""How long a button that ends something is held."""


@dataclass(frozen=True, slots=True)
class Palette:
    """Colours by their meaning, as #RRGGBB."""

    ground: str
    paper: str
    """Plates that carry text on the ground."""
    quiet: str
    """Shapes that carry no meaning alone: the quay under the strip."""
    bar: str
    """Bars of a chart, on paper."""
    ink: str
    muted: str
    edge: str
    act: str
    attend: str
    stop: str
    on_dark: str
    """Text on ink, act, stop and the slab."""
    on_attend: str
    """Text on attend, and the other stripe of its hatch."""


LIGHT = Palette(
    ground="#E9ECEE",
    paper="#F8F9FA",
    quiet="#D2D8DC",
    bar="#7E8991",
    ink="#12181C",
    muted="#4A545B",
    edge="#6B767D",
    act="#0A4C9A",
    attend="#F2B200",
    stop="#B3001B",
    on_dark="#FFFFFF",
    on_attend="#12181C",
)

DARK = Palette(
    ground="#12181C",
    paper="#1D252B",
    quiet="#303A41",
    bar="#6F7C85",
    ink="#F0F3F5",
    muted="#B4BEC5",
    edge="#84919A",
    act="#8FC4FF",
    attend="#F2B200",
    stop="#FFA19B",
    on_dark="#0B1013",
    on_attend="#0B1013",
)
"""For a room that is kept dim: the same meanings, light on dark."""

PALETTES = {"light": LIGHT, "dark": DARK}
"""By the name that the settings use."""


def contrast(one: str, other: str) -> float:
    """Return the contrast ratio of two colours, 1 to 21 (WCAG 2.2, "contrast ratio")."""
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def luminance(colour: str) -> float:
    """Return the relative luminance of ``#RRGGBB``, 0 to 1 (WCAG 2.2, "relative luminance")."""
    channels = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


class Face(Enum):
    """The typefaces of the screens: family, weight."""

    TEXT = ("Pack Line Sans", QFont.Weight.Normal)
    FIGURES = ("Pack Line Sans SemiBold", QFont.Weight.DemiBold)
    """Every digit equally wide, so that a number does not tremble."""
    VERB = ("Pack Line Sans Condensed", QFont.Weight.Bold)
    NARROW = ("Pack Line Sans Condensed Medium", QFont.Weight.Medium)
    CODE = ("Pack Line Sans Code SemiBold", QFont.Weight.DemiBold)
    """Slashed zero: 0 and O differ in a lot code."""


_OTHER_SCRIPTS = (
    ("Pack Line Gurmukhi", "Pack Line Han"),
    ("Pack Line Gurmukhi Bold", "Pack Line Han Bold"),
)
"""Families for letters that a face lacks: beside plain text, and beside bolder faces."""


@cache
def register_fonts() -> tuple[str, ...]:
    """Register the fonts of the labels and of the languages, once; returns the families.

    Raises:
        RuntimeError: a font file is not readable: the installation is damaged.
    """
    families: list[str] = []
    folders = (files("labels") / "fonts", files("station.screens") / "languages")
    entries = [entry for folder in folders for entry in folder.iterdir()]
    for entry in sorted(entries, key=lambda entry: entry.name):
        if not entry.name.endswith((".ttf", ".otf")):
            continue
        with as_file(entry) as path:
            number = QFontDatabase.addApplicationFont(str(path))
        if number < 0:
            raise RuntimeError(f"font {entry.name} cannot be read: install the station again")
        families += QFontDatabase.applicationFontFamilies(number)
    return tuple(families)


@cache
def _caps_per_em(face: Face) -> float:
    probe = _plain(face)
    probe.setPixelSize(1000)
    return QFontMetricsF(probe).capHeight() / 1000


def _plain(face: Face) -> QFont:
    register_fonts()
    family, weight = face.value
    font = QFont([family, *_OTHER_SCRIPTS[face is not Face.TEXT]])
    font.setWeight(weight)
    font.setKerning(face not in (Face.FIGURES, Face.CODE))
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    return font


def font_of(face: Face, cap_px: float) -> QFont:
    """Return a font whose capitals and digits are ``cap_px`` pixels high."""
    font = _plain(face)
    font.setPixelSize(max(1, round(cap_px / _caps_per_em(face))))
    return font


PAGE_MM = (250.0, 200.0)
"""Across and down, what a page takes. On a smaller screen it is drawn smaller, with all that is
touched, because a window as large as its largest page would cut off the packer's screen."""


@dataclass(frozen=True, slots=True)
class Ruler:
    """How many pixels a millimetre has on the screen a window stands on.

    Attributes:
        room: pixels of the screen that pages must lie within; None where that is not asked.
    """

    px_per_mm: float
    room: ClassVar[QSize | None] = None

    @classmethod
    def of(cls, screen: QScreen | None) -> Ruler:
        """Return the ruler of a page: the true one, or a shorter one where the screen is small."""
        true = cls.true(screen)
        return true if cls.room is None else true.within(cls.room)

    def within(self, room: QSize) -> Ruler:
        """Return the ruler by which :data:`PAGE_MM` lie within so many pixels."""
        wide, tall = PAGE_MM
        return Ruler(min(self.px_per_mm, room.width() / wide, room.height() / tall))

    @classmethod
    def true(cls, screen: QScreen | None) -> Ruler:
        """Read the screen; where it tells an unbelievable size, take its logical resolution."""
        if screen is None:
            return cls(96.0 / MM_PER_INCH)
        dpi = screen.physicalDotsPerInch()
        low, high = BELIEVABLE_DPI
        if not (math.isfinite(dpi) and low <= dpi <= high):
            dpi = screen.logicalDotsPerInch() or 96.0
        return cls(dpi / MM_PER_INCH)

    def px(self, mm: float) -> float:
        """Millimetres in pixels."""
        return mm * self.px_per_mm

    def touch(self, mm: float = TOUCH_MM) -> int:
        """Whole pixels a touched side of at least ``mm`` needs."""
        return math.ceil(self.px(mm))
