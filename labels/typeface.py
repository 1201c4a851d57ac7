"""The label's own typeface: which files, how wide a text runs, how high its glyphs really are.

A standard PDF font draws a black square for a character it lacks and says nothing; here a missing
glyph is an error before anything is drawn. Heights come from the glyph outlines, since the law
speaks of the height of figures and of the letter x, not of type sizes.
"""

from __future__ import annotations

import struct
import threading
from enum import Enum
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING

from labels.errors import LabelError

if TYPE_CHECKING:
    from reportlab.pdfbase.ttfonts import TTFontFace

FONT_FOLDER = Path(__file__).parent / "fonts"
TEXTS_KEPT = 4096  # widths remembered per face


class Face(Enum):
    """A face of the typeface; the value is its PostScript name and the name of its file."""

    TEXT = "PackLineSans-Regular"
    STRONG = "PackLineSans-SemiBold"
    NARROW = "PackLineSansCondensed-Medium"
    NARROW_STRONG = "PackLineSansCondensed-Bold"
    CODE = "PackLineSansCode-SemiBold"  # narrow, slashed zero: 0 and O differ in a lot code

    __hash__ = object.__hash__  # asked for with every text; that of `Enum` hashes the name anew

    @property
    def file(self) -> Path:
        """The font file, so that screens can show the same typeface."""
        return FONT_FOLDER / f"{self.value}.ttf"


class Type:
    """One loaded face with its measures.

    Attributes:
        drawn: The font file, as it is embedded.
    """

    def __init__(self, face: Face) -> None:
        from reportlab.pdfbase.ttfonts import TTFontFace

        self.face = face
        self.drawn = TTFontFace(str(face.file))
        self._units = self.drawn.unitsPerEm
        self._glyphs = self.drawn.charToGlyph
        self._widths = self.drawn.charWidths  # thousandths of an em
        self._ink = _GlyphInk(self.drawn)
        self.width = lru_cache(TEXTS_KEPT)(self._width)
        self.extent = lru_cache(None)(self._extent)
        self.height = lru_cache(TEXTS_KEPT)(self._height)

    def _width(self, text: str) -> float:
        """Return the advance width of a text in em, as drawn: no kerning."""
        widths, default = self._widths, self.drawn.defaultWidth
        return float(sum(widths.get(ord(c), default) for c in text)) / 1000

    def _extent(self, character: str) -> tuple[float, float]:
        """Return lowest and highest ink of a character in em from the baseline; (0, 0) if none."""
        low, high = self._ink.vertical(self._glyphs[ord(character)])
        return (low / self._units, high / self._units)

    def _height(self, characters: str) -> float:
        """Return the height of the lowest of the given characters, in em, measured on the ink."""
        spans = [self.extent(c) for c in characters]
        return min(high - low for low, high in spans)

    @property
    def x_height(self) -> float:
        """Height of the letter x in em."""
        return self.height("x")

    @property
    def cap_height(self) -> float:
        """Height of the letter H in em."""
        return self.height("H")

    def check(self, text: str, where: str) -> None:
        """Raise a `LabelError` naming the first character this face has no glyph for."""
        for position, character in enumerate(text, start=1):
            if ord(character) not in self._glyphs:
                raise LabelError(
                    where,
                    f"the label typeface has no glyph for {character!r} "
                    f"(U+{ord(character):04X}) at place {position} of {text[:40]!r}; allowed: "
                    "Latin, Greek and Cyrillic letters, figures and common signs",
                )


_loading = threading.Lock()
_loaded: dict[Face, Type] = {}


def type_of(face: Face) -> Type:
    """Return a face, read from its file once in the life of the process."""
    loaded = _loaded.get(face)
    if loaded is None:
        with _loading:
            loaded = _loaded.get(face) or Type(face)
            _loaded[face] = loaded
    return loaded


class _GlyphInk:
    """Vertical ink of glyphs, read from the tables glyf and loca (OpenType 1.9)."""

    def __init__(self, face: TTFontFace) -> None:
        long_offsets = struct.unpack_from(">h", face.get_table("head"), 50)[0]
        loca = face.get_table("loca")
        count = len(loca) // (4 if long_offsets else 2)
        offsets = struct.unpack(f">{count}{'L' if long_offsets else 'H'}", loca)
        self._offsets = offsets if long_offsets else tuple(2 * offset for offset in offsets)
        self._glyf = face.get_table("glyf")

    def vertical(self, glyph: int) -> tuple[int, int]:
        """Return yMin and yMax of a glyph in font units; (0, 0) for one without outline."""
        if self._offsets[glyph] == self._offsets[glyph + 1]:
            return (0, 0)
        _, _, low, _, high = struct.unpack_from(">hhhhh", self._glyf, self._offsets[glyph])
        return (low, high)
