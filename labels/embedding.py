"""Cuts the typeface down to the characters of a label and writes the finished font objects once.

Labels of one run need the same characters, so the objects are made for the first label and only
copied for the others. Codes, names and order follow from the characters alone: the same
characters always give the same bytes.

Sources: ISO 32000-1, 9.6.3 (TrueType fonts), 9.6.4 (tags of subsets), 9.10.3 (ToUnicode).
"""

import string
import threading
import zlib
from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache

from reportlab.pdfbase.ttfonts import makeToUnicodeCMap

from labels.typeface import Face, type_of

SETS_KEPT = 32
OWN_CODES = range(32, 127)  # ASCII stands for itself
# The first subset holds all of ASCII: a serial that counts on must not ask for a new one.
ASCII = frozenset(map(chr, OWN_CODES))
FIRST_CODE, CODES = 128, 128  # of the other characters, in each subset
SYMBOLIC, NONSYMBOLIC = 4, 32  # ISO 32000-1 Table 123: a subset has its own encoding

Wanted = tuple[tuple[Face, frozenset[str]], ...]

_cutting = threading.Lock()  # reportlab's font file keeps its place while it is read


@dataclass(frozen=True, slots=True, eq=False)
class FontSet:
    """The fonts of a document, written out.

    Attributes:
        objects: The font objects, numbered from 1.
        resources: Dictionary that names each font for the pages.
        subsets: Of each face: the name of each subset, and its characters with their codes.
    """

    objects: tuple[bytes, ...]
    resources: bytes
    subsets: dict[Face, tuple[tuple[str, dict[int, str]], ...]]

    def shown(self, face: Face, text: str) -> list[tuple[str, str]]:
        """Return a text in pieces of one font each: its name, and a hexadecimal string."""
        name, codes = self.subsets[face][0]
        if len(self.subsets[face]) == 1:
            return [(name, text.translate(codes).encode("latin-1").hex())]
        pieces: list[tuple[str, str]] = []
        for character in text:
            name, codes = next(one for one in self.subsets[face] if ord(character) in one[1])
            figures = codes[ord(character)].encode("latin-1").hex()
            if pieces and pieces[-1][0] == name:
                figures = pieces.pop()[1] + figures
            pieces.append((name, figures))
        return pieces


def fonts_for(texts: Iterable[tuple[Face, str]]) -> FontSet:
    """Return the fonts that show the given texts; kept for the next label with these characters."""
    wanted: dict[Face, set[str]] = {}
    for face, text in texts:
        wanted.setdefault(face, set()).update(text)
    return _font_set(
        tuple((face, frozenset(wanted[face]) | ASCII) for face in Face if face in wanted)
    )


@lru_cache(SETS_KEPT)
def _font_set(wanted: Wanted) -> FontSet:
    objects: list[bytes] = []
    subsets: dict[Face, tuple[tuple[str, dict[int, str]], ...]] = {}
    entries: list[str] = []
    for face, characters in wanted:
        found = []
        for subset in _subsets(characters):
            name = f"F{len(entries)}"
            entries.append(f"/{name} {len(objects) + 1} 0 R")
            found.append((name, {point: chr(code) for code, point in subset.items()}))
            objects += _font_objects(face, subset, len(objects) + 1)
        subsets[face] = tuple(found)
    resources = f"<< /Font << {' '.join(entries)} >> >>".encode("ascii")
    return FontSet(tuple(objects), resources, subsets)


def _subsets(characters: frozenset[str]) -> list[dict[int, int]]:
    """Return characters as subsets of (code: Unicode), each with at most 256 codes."""
    others = sorted(map(ord, characters - ASCII))
    first = {point: point for point in OWN_CODES}
    parts = [others[start : start + CODES] for start in range(0, len(others), CODES)] or [[]]
    found = [dict(enumerate(part, start=FIRST_CODE)) for part in parts]
    return [first | found[0], *found[1:]]


def _font_objects(face: Face, subset: dict[int, int], number: int) -> tuple[bytes, ...]:
    """Return font, descriptor, program and map to Unicode; the font is object `number`."""
    drawn = type_of(face).drawn
    points = [subset.get(code, 0) for code in range(max(subset) + 1)]
    name = f"{_tag(subset)}+{face.value}"
    with _cutting:
        program = drawn.makeSubset(points)
    widths = " ".join(f"{drawn.getCharWidth(point):g}" if point else "0" for point in points)
    box = " ".join(f"{edge:g}" for edge in drawn.bbox)
    font = (
        f"<< /Type /Font /Subtype /TrueType /BaseFont /{name} /FirstChar 0 "
        f"/LastChar {len(points) - 1} /Widths [{widths}] /FontDescriptor {number + 1} 0 R "
        f"/ToUnicode {number + 3} 0 R >>"
    )
    flags = drawn.flags & ~NONSYMBOLIC | SYMBOLIC
    descriptor = (
        f"<< /Type /FontDescriptor /FontName /{name} /Flags {flags} /FontBBox [{box}] "
        f"/ItalicAngle {drawn.italicAngle:g} /Ascent {drawn.ascent:g} /Descent {drawn.descent:g} "
        f"/CapHeight {drawn.capHeight:g} /StemV {drawn.stemV:g} /FontFile2 {number + 2} 0 R >>"
    )
    unicode_map = makeToUnicodeCMap(name, points).encode("ascii")
    return (
        font.encode("ascii"),
        descriptor.encode("ascii"),
        _packed(program, f"/Length1 {len(program)} "),
        _packed(unicode_map, ""),
    )


def _packed(content: bytes, entries: str) -> bytes:
    packed = zlib.compress(content, 9)
    head = f"<< {entries}/Filter /FlateDecode /Length {len(packed)} >>\nstream\n".encode("ascii")
    return head + packed + b"\nendstream"


def _tag(subset: dict[int, int]) -> str:
    """Return six capitals that stand for the characters of a subset."""
    value = zlib.crc32(",".join(map(str, subset.values())).encode("ascii"))
    letters = []
    for _ in range(6):
        value, place = divmod(value, 26)
        letters.append(string.ascii_uppercase[place])
    return "".join(letters)
