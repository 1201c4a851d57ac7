"""The ink of a page: what a plan places, as operators of a PDF page.

Bars that end exactly on the edge of a dot grow by one dot in some renderers; each rectangle is
therefore inset by a twentieth of a dot on every side, which rounds to the right dots everywhere
tried. Text is drawn as plain strings: markup in a product name is only characters.

Source: ISO 32000-1, 8 (graphics), 9.4 (text).
"""

import math
from collections.abc import Iterable

import numpy as np
from numpy.typing import NDArray

from labels.embedding import FontSet
from labels.errors import LabelError
from labels.layout import SLACK, Ink, PlacedText
from labels.sheet import PlacedSymbol, Plan
from labels.symbol import GUARD_MODULES

POINT = 72 / 25.4  # points in a millimetre
INSET_DOTS = 0.05
BEGIN, END = ".05", ".9"  # of a whole number of dots: where an inset edge begins, how far it goes
OUTLINE_MM = 0.375

Rectangle = tuple[int, int, int, int]  # left, upper edge, width, height in dots


def marks_of(plan: Plan, fonts: FontSet) -> bytes:
    """Return the operators that ink one page."""
    parts = ["0 g", _filled(rectangles_of(plan), plan)]
    parts += _texts(plan.texts, plan.page.height, fonts)
    return "\n".join(parts).encode("ascii")


def rectangles_of(plan: Plan) -> list[Rectangle]:
    """Return every plate, bar and cell of a page, without inset."""
    found: list[Rectangle] = []
    for plate in plan.plates:
        left, upper, wide, high = (
            _dots(edge, plan) for edge in (plate.x, plate.y, plate.width, plate.height)
        )
        found.append((left, upper, wide, high))
    for placed in plan.symbols:
        found += _cells(placed) if placed.symbol.is_matrix else _bars(placed)
    return found


def _dots(length: float, plan: Plan) -> int:
    dots = length * plan.dots_per_mm
    whole = round(dots)
    if abs(dots - whole) > SLACK:
        raise LabelError(
            "Label design", f"a plate ends at {length} mm, which is no whole number of dots"
        )
    return whole


def _filled(rectangles: Iterable[Rectangle], plan: Plan) -> str:
    """Return rectangles filled in one go, each inset; the unit is a dot, y runs downwards."""
    dot, top = POINT / plan.dots_per_mm, plan.page.height * POINT
    lines = [
        f"{left}{BEGIN} {upper}{BEGIN} {wide - 1}{END} {high - 1}{END} re"
        for left, upper, wide, high in rectangles
    ]
    return "\n".join((f"q {dot:.9f} 0 0 {-dot:.9f} 0 {top:.6f} cm", *lines, "f Q"))


def _bars(placed: PlacedSymbol) -> list[Rectangle]:
    """Return the bars of a linear symbol, its guards longer."""
    symbol, module = placed.symbol, placed.module_dots
    return [
        (
            *(placed.x_dots + start * module, placed.y_dots, width * module),
            placed.height_dots + (GUARD_MODULES * module if place in symbol.guards else 0),
        )
        for place, (start, width) in enumerate(symbol.bars)
    ]


def _cells(placed: PlacedSymbol) -> list[Rectangle]:
    """Return a matrix: neighbouring dark modules as one rectangle, along rows and along columns.

    Either alone would leave hairs of the inset between rows or columns.
    """
    dark = np.array([np.frombuffer(row.encode("ascii"), np.uint8) for row in placed.symbol.rows])
    dark -= ord("0")
    along_rows, along_columns = _runs(dark), _runs(dark.T)
    cells = [(start, row, length, 1) for row, start, length in along_rows]
    cells += [(column, start, 1, length) for column, start, length in along_columns if length > 1]
    left, top, module = placed.x_dots, placed.y_dots, placed.module_dots
    return [
        (left + x * module, top + y * module, wide * module, high * module)
        for x, y, wide, high in cells
    ]


def _runs(dark: NDArray[np.uint8]) -> list[tuple[int, int, int]]:
    """Return each run of ones along the rows as (row, first place, length)."""
    change = np.diff(np.pad(dark, ((0, 0), (1, 1))).astype(np.int8), axis=1)
    rows, starts = np.nonzero(change == 1)
    ends = np.nonzero(change == -1)[1]
    return list(zip(rows.tolist(), starts.tolist(), (ends - starts).tolist(), strict=True))


def _texts(texts: Iterable[PlacedText], page_height: float, fonts: FontSet) -> list[str]:
    """Return all texts: those in black in one text object, the others each in its own."""
    black, other, last = ["BT"], [], ""
    for text in texts:
        if text.ink is not Ink.BLACK:
            other.append(_inked(text, page_height, fonts))
            continue
        place = f"1 0 0 1 {text.x * POINT:.4f} {(page_height - text.baseline) * POINT:.4f} Tm"
        black.append(place)
        for name, figures in fonts.shown(text.face, text.text):
            font = f"/{name} {text.size * POINT:.4f} Tf"
            black.append(f"<{figures}> Tj" if font == last else f"{font} <{figures}> Tj")
            last = font
    return ["\n".join((*black, "ET")), *other]


def _inked(text: PlacedText, page_height: float, fonts: FontSet) -> str:
    """Return a text in white, or turned and in outline."""
    turn = math.radians(text.angle)
    cosine, sine = math.cos(turn), math.sin(turn)
    x, y = text.x * POINT, (page_height - text.baseline) * POINT
    how = "1 g" if text.ink is Ink.WHITE else f"1 Tr {OUTLINE_MM * POINT:.4f} w"
    shown = " ".join(
        f"/{name} {text.size * POINT:.4f} Tf <{figures}> Tj"
        for name, figures in fonts.shown(text.face, text.text)
    )
    matrix = f"{cosine:.6f} {sine:.6f} {-sine:.6f} {cosine:.6f} {x:.4f} {y:.4f} cm"
    return f"q {matrix} {how} BT {shown} ET Q"
