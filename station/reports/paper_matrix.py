"""A matrix symbol on a report's page."""

from __future__ import annotations

from reportlab.lib.colors import black
from reportlab.lib.units import mm
from reportlab.platypus import Flowable

from labels.symbol import BAR, Symbol


class MatrixPicture(Flowable):  # type: ignore[misc]  # reportlab ships no types
    """Draws a symbol with its quiet zone.

    Args:
        symbol: a matrix.
        module_mm: side of one module.
    """

    def __init__(self, symbol: Symbol, module_mm: float) -> None:
        super().__init__()
        self._symbol, self._module = symbol, module_mm * mm
        self.width = self.height = symbol.width_with_quiet_zones * self._module
        self.hAlign = "RIGHT"

    def draw(self) -> None:
        """Draw runs of dark modules as one rectangle each."""
        canvas, side = self.canv, self._module
        left, _ = self._symbol.quiet
        top = self.height - left * side
        canvas.setFillColor(black)
        for number, row in enumerate(self._symbol.rows, start=1):
            for dark in BAR.finditer(row):
                canvas.rect(
                    (left + dark.start()) * side,
                    top - number * side,
                    (dark.end() - dark.start()) * side,
                    side,
                    stroke=0,
                    fill=1,
                )
