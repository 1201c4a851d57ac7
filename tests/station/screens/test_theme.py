"""Contrast by the formula of WCAG 2.2, and sizes by the physical screen."""

import itertools
import math

import pytest
from PySide6.QtCore import QSize, QSizeF
from PySide6.QtGui import QFontMetricsF

from station.screens.theme import (
    LIGHT,
    PAGE_MM,
    PALETTES,
    Face,
    Palette,
    Ruler,
    contrast,
    font_of,
    luminance,
    register_fonts,
)


@pytest.mark.parametrize(
    ("one", "other", "ratio"),
    [
        # WCAG 2.2, definition "contrast ratio": 21:1 for black on white; W3C technique G18 and
        # the widely published border case #767676 on white at 4.54:1.
        ("#000000", "#FFFFFF", 21.0),
        ("#767676", "#FFFFFF", 4.54),
        ("#FFFFFF", "#FFFFFF", 1.0),
    ],
)
def test_formula_against_published_ratios(one: str, other: str, ratio: float) -> None:
    assert contrast(one, other) == pytest.approx(ratio, abs=0.005)
    assert contrast(other, one) == contrast(one, other)


THEMES = pytest.mark.parametrize("palette", PALETTES.values(), ids=PALETTES)
MAIN, SECONDARY, EDGE = 7.0, 4.5, 3.0  # WCAG 2.2: 1.4.6, 1.4.3, 1.4.11


@pytest.mark.parametrize(
    ("front", "behind", "least"),
    [
        ("ink", "ground", MAIN),
        ("ink", "paper", MAIN),
        ("on_attend", "attend", MAIN),
        ("on_dark", "ink", MAIN),
        ("on_dark", "muted", MAIN),
        ("on_dark", "act", MAIN),
        ("on_dark", "stop", MAIN),
        ("act", "ground", MAIN),
        ("act", "paper", MAIN),
        ("muted", "ground", SECONDARY),
        ("muted", "paper", SECONDARY),
        ("stop", "ground", SECONDARY),
        ("stop", "paper", SECONDARY),
        ("edge", "ground", EDGE),
        ("edge", "paper", EDGE),
        ("bar", "paper", EDGE),
        ("bar", "ground", EDGE),
        ("ink", "bar", EDGE),
    ],
)
@THEMES
def test_every_pair_in_use_is_legible(
    palette: Palette, front: str, behind: str, least: float
) -> None:
    ratio = contrast(getattr(palette, front), getattr(palette, behind))
    assert ratio >= least, f"{front} on {behind} is {ratio:.2f}:1"


@THEMES
def test_no_green(palette: Palette) -> None:
    for name in ("act", "attend", "stop", "ink", "muted", "edge"):
        red, green, blue = (int(getattr(palette, name)[at : at + 2], 16) for at in (1, 3, 5))
        assert green <= max(red, blue), name


def test_act_and_stop_need_shapes_since_grey_hardly_tells_them_apart() -> None:
    greys = {name: luminance(getattr(LIGHT, name)) for name in ("act", "attend", "stop")}
    close = [
        pair
        for pair in itertools.combinations(greys, 2)
        if abs(greys[pair[0]] - greys[pair[1]]) < 0.1
    ]
    assert close == [("act", "stop")]


@pytest.mark.parametrize("face", Face)
def test_fonts_ship_and_capitals_are_as_high_as_asked(qapp: object, face: Face) -> None:
    assert face.value[0] in register_fonts()
    font = font_of(face, 100)
    assert QFontMetricsF(font).capHeight() == pytest.approx(100, abs=1.5)


def test_every_digit_is_equally_wide(qapp: object) -> None:
    metrics = QFontMetricsF(font_of(Face.FIGURES, 200))
    assert len({round(metrics.horizontalAdvance(digit), 2) for digit in "0123456789"}) == 1


class _Screen:
    def __init__(self, physical: float, logical: float = 96.0) -> None:
        self._physical, self._logical = physical, logical

    def physicalDotsPerInch(self) -> float:  # noqa: N802  Qt's name
        return self._physical

    def logicalDotsPerInch(self) -> float:  # noqa: N802  Qt's name
        return self._logical

    def physicalSize(self) -> QSizeF:  # noqa: N802  Qt's name
        return QSizeF()


@pytest.mark.parametrize(
    ("told", "used"),
    [(91.8, 91.8), (141.2, 141.2), (0.0, 96.0), (float("inf"), 96.0), (2540.0, 96.0)],
)
def test_an_unbelievable_screen_is_not_believed(told: float, used: float) -> None:
    assert Ruler.of(_Screen(told)).px_per_mm == pytest.approx(used / 25.4)  # type: ignore[arg-type]


def test_a_touched_side_is_never_rounded_down() -> None:
    assert Ruler(3.61).touch(30) == 109


@pytest.mark.parametrize(
    ("inch", "wide", "tall", "share"),
    [
        (10.1, 1280, 800, 0.68),
        (12.1, 1280, 800, 0.81),
        (12.1, 1024, 768, 0.92),
        (24, 1920, 1080, 1),
    ],
)
def test_on_a_small_screen_a_page_is_drawn_smaller(
    inch: float, wide: int, tall: int, share: float
) -> None:
    true = Ruler(math.hypot(wide, tall) / inch / 25.4)
    used = true.within(QSize(wide, tall))
    assert PAGE_MM[0] * used.px_per_mm <= wide
    assert PAGE_MM[1] * used.px_per_mm <= tall
    assert used.px_per_mm / true.px_per_mm == pytest.approx(share, abs=0.005)
