"""What waits for a manager's signature: one thing at a time, approved, refused or left."""

from __future__ import annotations

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QGridLayout, QWidget

from station.line.state import EntryAnswer, Intents
from station.screens.bridge import Bridge
from station.screens.manager_source import ManagerSource, Pending
from station.screens.offer import Person
from station.screens.theme import Palette, Ruler
from station.screens.widgets.figure_list import FigureList
from station.screens.widgets.sentence import Sentence
from station.screens.widgets.touch_button import TouchButton

_TITLE_MM, _WORDS_MM = 4.6, 3.4
REFUSALS = ("not now", "figures do not convince", "customer's own limits")
"""Why a target is refused, by touch."""


class SignPanel(QWidget):
    """Shows the oldest thing that waits, and the others in turn.

    Args:
        bridge: tells what became of a signature.
        intents: takes it to the record.
        source: knows what waits.
        managers: who may sign.
        palette: colours.
    """

    def __init__(
        self,
        bridge: Bridge,
        intents: Intents,
        source: ManagerSource,
        managers: tuple[Person, ...],
        palette: Palette,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._intents, self._source, self._managers = intents, source, managers
        self._pending: tuple[Pending, ...] = ()
        self._at, self._who, self._why = 0, 0, 0
        self._uids: tuple[str, ...] = ()
        self.title, self.message = Sentence(palette, _TITLE_MM), Sentence(palette, _WORDS_MM)
        self.rows = FigureList(palette)
        self.who_button = TouchButton(palette, "", small="SIGNS")
        self.next_button = TouchButton(palette, "NEXT")
        self.why_button = TouchButton(palette, "", small="REASON TO REFUSE")
        self.refuse_button = TouchButton(palette, "REFUSE", hold=True)
        self.approve_button = TouchButton(palette, "APPROVE", hold=True)
        self._compose()
        self.who_button.clicked.connect(self._next_person)
        self.next_button.clicked.connect(self._next)
        self.why_button.clicked.connect(self._next_reason)
        self.approve_button.held.connect(self._approve)
        self.refuse_button.held.connect(self._refuse)
        bridge.entered.connect(self._entered, Qt.ConnectionType.DirectConnection)
        self.look()

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        for painted in (self.title, self.message, self.rows):
            painted.set_unit(ruler.px(1))
        self.title.setFixedHeight(round(ruler.px(2.8 * _TITLE_MM)))
        self.message.setFixedHeight(round(ruler.px(2.6 * _WORDS_MM)))
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setSpacing(ruler.touch(4))
        grid.addWidget(self.title, 0, 0, 1, 5)
        grid.addWidget(self.rows, 1, 0, 1, 5)
        grid.addWidget(self.message, 2, 0, 1, 5)
        for column, button in enumerate(self._buttons):
            button.cap_px = ruler.px(3.6)
            grid.addWidget(button, 3, column)
            grid.setColumnStretch(column, 1)
        grid.setRowStretch(1, 1)

    @property
    def _buttons(self) -> tuple[TouchButton, ...]:
        return (
            *(self.who_button, self.next_button, self.why_button),
            *(self.refuse_button, self.approve_button),
        )

    @Slot()
    def look(self) -> None:
        """See what waits now."""
        self._pending = self._source.pending()
        self._at = min(self._at, max(0, len(self._pending) - 1))
        self._show()

    @property
    def shown(self) -> Pending | None:
        """What is shown now."""
        return self._pending[self._at] if self._pending else None

    @Slot()
    def _next(self) -> None:
        self._at = (self._at + 1) % max(1, len(self._pending))
        self.message.set("")
        self._show()

    @Slot()
    def _next_person(self) -> None:
        self._who = (self._who + 1) % max(1, len(self._managers))
        self._show()

    @Slot()
    def _next_reason(self) -> None:
        self._why = (self._why + 1) % len(REFUSALS)
        self._show()

    @Slot()
    def _approve(self) -> None:
        if self.shown is not None:
            self._enter(self.shown, approved=True)

    @Slot()
    def _refuse(self) -> None:
        if self.shown is not None:
            self._enter(self.shown, approved=False)

    def _enter(self, pending: Pending, *, approved: bool) -> None:
        source = self._source
        try:
            facts = (
                source.approve(pending.key)
                if approved
                else source.refuse(pending.key, REFUSALS[self._why])
            )
        except ValueError as refused:
            self.message.set(str(refused))
            return
        self._uids = tuple(fact.uid for fact in facts)
        self._show()
        self._intents.enter(facts, self._managers[self._who].id)

    @Slot(object)
    def _entered(self, answer: EntryAnswer) -> None:
        if not self._uids or not set(self._uids) & set(answer.uids):
            return
        self._uids = ()
        words = "On record; it holds from the next run on."
        self.message.set(words if answer.recorded else f"Not recorded: {answer.words}")
        self.look()

    def _show(self) -> None:
        shown, count = self.shown, len(self._pending)
        title = "Nothing waits for a signature."
        if shown is not None:
            title = f"{self._at + 1} of {count}: {shown.title}"
        self.title.set(title)
        self.rows.set(() if shown is None else shown.rows)
        manager = self._managers[self._who] if self._managers else None
        self.who_button.setText("NOBODY" if manager is None else manager.name)
        self.who_button.setEnabled(len(self._managers) > 1)
        self.next_button.setEnabled(count > 1)
        self.why_button.setText(REFUSALS[self._why])
        may = shown is not None and manager is not None and not self._uids
        refusable = may and shown is not None and shown.may_refuse
        self.approve_button.setEnabled(may)
        self.approve_button.strong = may
        self.refuse_button.setEnabled(refusable)
        self.why_button.setEnabled(refusable)
        for button in self._buttons:
            button.update()
