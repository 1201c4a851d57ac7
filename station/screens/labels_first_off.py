"""The first-off: the label as it will be, large, for two people to compare and sign."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from station.core.checks.first_off import Refusal
from station.core.run import Run
from station.screens.theme import Face, Palette, Ruler
from station.screens.widgets.label_preview import LabelPreview
from station.screens.widgets.sheet import Text
from station.screens.widgets.tiles import Tile, Tiles
from station.screens.words import long_date, lots_line


class FirstOffPage(QWidget):
    """The specimen, its date with the weekday in words, and what to refuse it for.

    Signals:
        refused: why, as text.
    """

    refused = Signal(str)

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setStyleSheet(f"background: {palette.ground};")
        self.date = Text(palette, "", Face.VERB, 7.0)
        self.facts = Text(palette, "", Face.TEXT, 4.2)
        self.preview = LabelPreview(palette)
        reasons = [Tile(str(one), "REFUSE", str(one)) for one in Refusal]
        self.reasons = Tiles(palette, reasons, columns=4)
        self.reasons.touched.connect(self.refused)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(round(Ruler.of(self.screen()).px(3)))
        column.addWidget(self.date)
        column.addWidget(self.facts)
        column.addWidget(self.preview, 1)
        column.addWidget(self.reasons)

    def show_run(self, run: Run | None, pdf: bytes | None, words: str) -> None:
        """Show the specimen of a run.

        Args:
            run: the open run, or None.
            pdf: its specimen, or None.
            words: why there is none; or what was said about it.
        """
        self.reasons.setVisible(run is not None)
        if run is None:
            self.date.setText("No run is open")
            self.facts.setText("")
            return
        self.date.setText(f"{run.product.use_by_words} {long_date(run.dating.use_by)}")
        lines = (f"{run.product.name}, version {run.product.version}", lots_line(run), words)
        self.facts.setText("\n".join(filter(None, lines)))
        if pdf is not None:
            self.preview.show_pdf(pdf)
