"""The trace page: scan a bag or a case, or type a lot: where it came from and where it went."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Slot
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget
from typing_extensions import override

from station.core.genealogy import Tree
from station.screens.doors import DoorPage
from station.screens.theme import LIGHT, Face, Palette, Ruler
from station.screens.trace_source import TraceSource
from station.screens.widgets.family_tree import FamilyTree
from station.screens.widgets.sheet import ScanField, Text
from station.screens.widgets.touch_button import TouchButton
from station.screens.widgets.wait_card import WaitCard
from station.screens.work import Work

_LONGEST = 400
_HINT = "bag, case, pallet or lot"


class TracePage(DoorPage):
    """A field, a tree, and the way back through what was looked at.

    Args:
        source: reads the record, on a thread of its own.
        palette: colours.
    """

    def __init__(
        self, source: TraceSource, palette: Palette = LIGHT, parent: QWidget | None = None
    ) -> None:
        super().__init__(palette, parent)
        self._source = source
        self._past: list[str] = []
        self._next = ""
        self.field = ScanField(palette, _HINT)
        self.field.setMaxLength(_LONGEST)
        self.tree = FamilyTree(palette)
        self.message = Text(palette, "", Face.VERB, 4.6)
        self.before_button = TouchButton(palette, "BEFORE")
        self.print_button = TouchButton(palette, "PRINT")
        self.back_button = TouchButton(palette, "LEAD", small="F7")
        self.work = Work("trace", self)
        self.wait_card = WaitCard(palette, self, self.tree)
        self.wait_card.follow(self.work)
        self.wait_card.given_up.connect(lambda: self.message.setText("Given up."))
        self._compose()
        self.field.returnPressed.connect(self._typed)
        self.tree.touched.connect(self.ask)
        self.before_button.clicked.connect(self._before)
        self.print_button.clicked.connect(self._print)
        self.back_button.clicked.connect(self.left)
        self.work.done.connect(self._done)
        self.work.failed.connect(self._failed)
        self.work.ended.connect(self._ended)
        self._enable()

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        top = QHBoxLayout()
        top.setSpacing(ruler.touch(6))
        top.addWidget(self.field, 3)
        for button in (self.before_button, self.print_button, self.back_button):
            button.cap_px = ruler.px(4.8)
            top.addWidget(button, 1)
        whole = QVBoxLayout(self)
        margin = round(ruler.px(7))
        whole.setContentsMargins(margin, margin, margin, margin)
        whole.setSpacing(round(ruler.px(4)))
        whole.addLayout(top)
        whole.addWidget(self.message)
        whole.addWidget(self.tree, 1)

    @Slot(str)
    def ask(self, text: str) -> None:
        """Show the tree of a serial, a lot, a blend, a run, an SSCC or a shipment."""
        if self.work.begin(lambda _: self._source.tree(text)):
            self.message.setText("Looking …")
        else:
            self._next = text  # asked while another is looked for: that one first
        self._enable()

    @override
    def stop(self) -> None:
        self.work.stop()
        self.work.wait()

    @Slot()
    def _typed(self) -> None:
        text = self.field.text().strip()
        self.field.clear()
        if text:
            self.ask(text)

    @Slot()
    def _before(self) -> None:
        if len(self._past) > 1:
            self._past.pop()
            self.ask(self._past.pop())

    @Slot()
    def _print(self) -> None:
        tree = self.tree.view
        if tree is not None and self.work.begin(lambda _: self._source.paper(tree)):
            self.message.setText("Writing …")
        self._enable()

    @Slot(object)
    def _done(self, result: object) -> None:
        if isinstance(result, Tree):
            if self._past[-1:] != [result.asked]:
                self._past.append(result.asked)
            self.tree.set(result)
            self.message.setText(f"{result.asked}: {result.answer}")
        elif isinstance(result, Path):
            self.message.setText(f"Written: {result}")

    @Slot(str)
    def _failed(self, words: str) -> None:
        self.message.setText(words)

    @Slot()
    def _ended(self) -> None:
        wanted, self._next = self._next, ""
        if wanted:
            self.ask(wanted)
        self._enable()

    def _enable(self) -> None:
        self.before_button.setEnabled(len(self._past) > 1 and not self.work.busy)
        self.print_button.setEnabled(self.tree.view is not None and not self.work.busy)

    @override
    def showEvent(self, event: QShowEvent) -> None:
        self.field.setFocus()
