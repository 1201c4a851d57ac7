"""A card over a page that works for long: what goes on, how far it is, how to give it up."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject, QRect, QTimer, Signal, Slot
from PySide6.QtWidgets import QFrame, QProgressBar, QVBoxLayout, QWidget
from typing_extensions import override

from station.screens.theme import TOUCH_MM, Face, Palette, Ruler
from station.screens.tongue import mark
from station.screens.widgets.sheet import Text
from station.screens.widgets.touch_button import TouchButton
from station.screens.work import Work

SHOWN_AFTER_MS = 500
"""What is over before needs no card."""
LEAST_SHOWN_MS = 300
"""A card that came stays long enough to be seen, unless it is given up."""
_WIDTH_MM, _HEIGHT_MM = 130.0, 62.0
_READING = mark("Reading the record")


class WaitCard(QFrame):
    """Lies in the middle of a page while one of the works it follows goes on.

    Args:
        palette: colours.
        page: what it lies over.
        ground: the part of the page it lies over; the whole page where None.

    Signals:
        given_up: somebody touched GIVE UP; the works have been stopped.
    """

    given_up = Signal()

    def __init__(self, palette: Palette, page: QWidget, ground: QWidget | None = None) -> None:
        super().__init__(page)
        self._page, self._ground = page, ground or page
        self._works: list[tuple[Work, Callable[[], None]]] = []
        ruler = Ruler.of(page.screen())
        self.words = Text(palette, _READING, Face.VERB, 5.2)
        self.bar = QProgressBar()
        self.bar.setTextVisible(False)
        self.bar.setFixedHeight(round(ruler.px(4)))
        self.bar.setAccessibleName("progress")
        self.button = TouchButton(palette, "GIVE UP")
        self.button.cap_px = ruler.px(5.0)
        self.button.setMinimumHeight(ruler.touch(TOUCH_MM))
        whole = QVBoxLayout(self)
        margin = round(ruler.px(5))
        whole.setContentsMargins(margin, margin, margin, margin)
        whole.setSpacing(round(ruler.px(3)))
        for part in (self.words, self.bar, self.button):
            whole.addWidget(part)
        self._size = (ruler.touch(_WIDTH_MM), ruler.touch(_HEIGHT_MM))
        self.setAutoFillBackground(True)
        self.setStyleSheet(
            f"WaitCard {{ background: {palette.paper}; border: {round(ruler.px(0.8))}px solid"
            f" {palette.ink}; }}"
            f"QProgressBar {{ background: {palette.quiet}; border: 1px solid {palette.edge}; }}"
            f"QProgressBar::chunk {{ background: {palette.act}; }}"
        )
        self._coming, self._staying = QTimer(self), QTimer(self)
        for timer, ms in ((self._coming, SHOWN_AFTER_MS), (self._staying, LEAST_SHOWN_MS)):
            timer.setSingleShot(True)
            timer.setInterval(ms)
        self._coming.timeout.connect(self._show)
        self._staying.timeout.connect(self._look)
        self.button.clicked.connect(self.give_up)
        self.hide()
        page.installEventFilter(self)

    def follow(self, work: Work, stop: Callable[[], None] | None = None) -> None:
        """Lie over the page while a work goes on.

        Args:
            work: the work.
            stop: how to give it up; its own stop where None.
        """
        self._works.append((work, stop or work.stop))
        work.began.connect(self._begin)
        work.counted.connect(self._count)
        work.ended.connect(self._look)

    @property
    def busy(self) -> bool:
        """Whether one of its works goes on."""
        return any(work.busy for work, _ in self._works)

    @Slot()
    def give_up(self) -> None:
        """Stop its works; the page is free at once."""
        self._staying.stop()
        for work, stop in self._works:
            if work.busy:
                stop()
        self._look()
        self.given_up.emit()

    @Slot()
    def _begin(self) -> None:
        if not self.isVisible() and not self._coming.isActive():
            self.bar.setRange(0, 0)  # nobody said yet how much there is
            self._coming.start()

    @Slot(int)
    def _count(self, percent: int) -> None:
        self.bar.setRange(0, 100)
        self.bar.setValue(percent)

    @Slot()
    def _show(self) -> None:
        if self.busy and self._page.isVisible():
            self._place()
            self.show()
            self.raise_()
            self._staying.start()

    @Slot()
    def _look(self) -> None:
        if self.busy:
            return
        self._coming.stop()
        if not self._staying.isActive():
            self.hide()

    def _place(self) -> None:
        over = QRect(self._ground.mapTo(self._page, self._ground.rect().topLeft()),
                     self._ground.size())  # fmt: skip
        wide, high = (
            min(a, b) for a, b in zip(self._size, (over.width(), over.height()), strict=True)
        )
        box = QRect(0, 0, wide, high)
        box.moveCenter(over.center())
        self.setGeometry(box)

    @override
    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() is QEvent.Type.Resize and self.isVisible():
            self._place()
        elif event.type() is QEvent.Type.Hide and self.busy:
            self.give_up()  # whoever leaves the page wants no answer any more
        return False
