"""The ink of a page: what a plan places, as operators of a PDF page.

Bars that end exactly on the edge of a dot grow by one dot in some renderers; each rectangle is
therefore inset by a twentieth of a dot on every side, which rounds to the right dots everywhere
tried. Text is drawn as plain strings: markup in a product name is only characters.

Source: ISO 32000-1, 8 (graphics), 9.4 (text).
"""

import math
from collections.abc import Iterable
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from labels.embedding import FontSet
from labels.errors import LabelError
from labels.layout import SLACK, Ink, PlacedText
from labels.sheet import PlacedSymbol, Plan
from labels.symbol import GUARD_MODULES

POINT = 72 / 25.4  # points in a millimetre
INSET_DOTS = 0.05
RECTANGLE = "%d.05 %d.05 %d.9 %d.9 re\n"  # dots: each edge inset by a twentieth
OUTLINE_MM = 0.375
TEXTS_KEPT = 512

Rectangles = NDArray[np.int64]  # one a row: left, upper edge, width, height in dots


def marks_of(plan: Plan, fonts: FontSet) -> bytes:
    """Return the operators that ink one page."""
    parts = ["0 g", _filled(rectangles_of(plan), plan)]
    parts += _texts(plan.texts, plan.page.height, fonts)
    return "\n".join(parts).encode("ascii")


def rectangles_of(plan: Plan) -> Rectangles:
    """Return every plate, bar and cell of a page in dots, without inset."""
    plates = [
        [_dots(edge, plan) for edge in (plate.x, plate.y, plate.width, plate.height)]
        for plate in plan.plates
    ]
    symbols = [
        _cells(placed) if placed.symbol.is_matrix else _bars(placed) for placed in plan.symbols
    ]
    return np.concatenate([np.array(plates, np.int64).reshape(-1, 4), *symbols])


def _dots(length: float, plan: Plan) -> int:
    dots = length * plan.dots_per_mm
    whole = round(dots)
    if abs(dots - whole) > SLACK:
        raise LabelError(
            "Label design", f"a plate ends at {length} mm, which is no whole number of dots"
        )
    return whole


def _filled(rectangles: Rectangles, plan: Plan) -> str:
    """Return rectangles filled in one go, each inset; the unit is a dot, y runs downwards."""
    dot, top = POINT / plan.dots_per_mm, plan.page.height * POINT
    numbers = (rectangles - np.array((0, 0, 1, 1), np.int64)).ravel().tolist()  # .9 of the last dot
    shapes = (RECTANGLE * len(rectangles)) % tuple(numbers)
    return f"q {dot:.9f} 0 0 {-dot:.9f} 0 {top:.6f} cm\n{shapes}f Q"


def _bars(placed: PlacedSymbol) -> Rectangles:
    """Return the bars of a linear symbol, its guards longer."""
    symbol, module = placed.symbol, placed.module_dots
    return np.array(
        [
            (
                *(placed.x_dots + start * module, placed.y_dots, width * module),
                placed.height_dots + (GUARD_MODULES * module if place in symbol.guards else 0),
            )
            for place, (start, width) in enumerate(symbol.bars)
        ],
        np.int64,
    )


def _cells(placed: PlacedSymbol) -> Rectangles:
    """Return a matrix: neighbouring dark modules as one rectangle, along rows and along columns.

    Either alone would leave hairs of the inset between rows or columns.
    """
    rows = placed.symbol.rows
    signs = np.frombuffer("".join(rows).encode("ascii"), np.uint8)
    dark = signs.reshape(len(rows), -1) == ord("1")
    across, down = _runs(dark), _runs(dark.T)
    down = down[:, down[2] > 1]
    cells = np.ones((across.shape[1] + down.shape[1], 4), np.int64)
    cells[: across.shape[1], [1, 0, 2]] = across.T
    cells[across.shape[1] :, [0, 1, 3]] = down.T
    corner = np.array((placed.x_dots, placed.y_dots, 0, 0), np.int64)
    return cells * placed.module_dots + corner


def _runs(dark: NDArray[np.bool_]) -> NDArray[np.int64]:
    """Return each run of dark modules along the rows; shape (3, runs): row, first place, length."""
    wide = dark.shape[1] + 2
    framed = np.zeros((dark.shape[0], wide), np.bool_)
    framed[:, 1:-1] = dark
    edges = np.flatnonzero(framed.ravel()[1:] != framed.ravel()[:-1])  # begin, end, begin, end ...
    begins, ends = edges[0::2], edges[1::2]
    rows, places = np.divmod(begins, wide)
    return np.stack([rows, places, ends - begins])


def _texts(texts: Iterable[PlacedText], page_height: float, fonts: FontSet) -> list[str]:
    """Return all texts: those in black in one text object, the others each in its own."""
    black, other = ["BT"], []
    for text in texts:
        if text.ink is Ink.BLACK:
            black.append(_black(text, page_height, fonts))
        else:
            other.append(_inked(text, page_height, fonts))
    return ["\n".join((*black, "ET")), *other]


@lru_cache(TEXTS_KEPT)
def _black(text: PlacedText, page_height: float, fonts: FontSet) -> str:
    """Return the operators of an upright text; most texts are the same all through a run."""
    place = f"1 0 0 1 {text.x * POINT:.4f} {(page_height - text.baseline) * POINT:.4f} Tm"
    return f"{place} {_shown(text, fonts)}"


def _shown(text: PlacedText, fonts: FontSet) -> str:
    size = f"{text.size * POINT:.4f}"
    return " ".join(
        f"/{name} {size} Tf <{figures}> Tj" for name, figures in fonts.shown(text.face, text.text)
    )


def _inked(text: PlacedText, page_height: float, fonts: FontSet) -> str:
    """Return a text in white, or turned and in outline."""
    turn = math.radians(text.angle)
    cosine, sine = math.cos(turn), math.sin(turn)
    x, y = text.x * POINT, (page_height - text.baseline) * POINT
    how = "1 g" if text.ink is Ink.WHITE else f"1 Tr {OUTLINE_MM * POINT:.4f} w"
    matrix = f"{cosine:.6f} {sine:.6f} {-sine:.6f} {cosine:.6f} {x:.4f} {y:.4f} cm"
    return f"q {matrix} {how} BT {_shown(text, fonts)} ET Q"
