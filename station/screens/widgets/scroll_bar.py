"""How a bar beside what scrolls looks: in the colours of the page, and wide enough for a glove."""

from __future__ import annotations

from station.screens.theme import Palette, Ruler

_WIDE_MM = 7.0


def scroll_bar(palette: Palette, ruler: Ruler) -> str:
    """The part of a style sheet for the upright bar of a widget that scrolls."""
    wide = round(ruler.px(_WIDE_MM))
    return (
        f"QScrollBar:vertical {{ background: {palette.quiet}; width: {wide}px; }}"
        f"QScrollBar::handle:vertical {{ background: {palette.edge};"
        f" min-height: {wide * 2}px; }}"
        "QScrollBar::add-line, QScrollBar::sub-line { height: 0; }"
    )
