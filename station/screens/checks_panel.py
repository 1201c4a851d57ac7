"""How a panel of the checks page is laid out: what to do and the live figure on the left."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QVBoxLayout, QWidget

from station.screens.theme import Ruler
from station.screens.widgets.live_figure import LiveFigure
from station.screens.widgets.sentence import Sentence
from station.screens.widgets.touch_button import TouchButton


def lay_out(
    panel: QWidget,
    left: tuple[Sentence, LiveFigure, Sentence],
    right: QVBoxLayout,
    buttons: Sequence[tuple[TouchButton, int]],
) -> None:
    """Lay a panel out.

    Args:
        panel: gets the layout.
        left: what to do, the live figure, and what is said about it.
        right: what stands beside them.
        buttons: below both, each with its share of the width.
    """
    ruler = Ruler.of(panel.screen())
    gap = ruler.touch(6)
    row = QHBoxLayout()
    row.setSpacing(gap)
    for button, share in buttons:
        button.cap_px = ruler.px(5.0)
        button.setMinimumHeight(ruler.touch(34))
        row.addWidget(button, share)
    column = QVBoxLayout()
    column.setSpacing(round(ruler.px(3)))
    parts: tuple[Sentence | LiveFigure, ...] = left
    for part, share in zip(parts, (2, 4, 2), strict=True):
        part.set_unit(ruler.px(1))
        column.addWidget(part, share)
    whole = QGridLayout(panel)
    whole.setContentsMargins(0, 0, 0, 0)
    whole.setHorizontalSpacing(gap)
    whole.setVerticalSpacing(round(ruler.px(4)))
    whole.addLayout(column, 0, 0)
    whole.addLayout(right, 0, 1)
    whole.addLayout(row, 1, 0, 1, 2)
    whole.setColumnStretch(0, 1)
    whole.setColumnStretch(1, 1)
    whole.setRowStretch(0, 1)
