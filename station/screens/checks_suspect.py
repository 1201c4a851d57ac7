"""Bags that a failed check made suspect: both bounds, what to weigh again, and the decision."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, Qt, Slot
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)
from typing_extensions import override

from station.core.checks.suspect import Decision
from station.line.state import EntryAnswer, Intents
from station.line.suspected import Suspected
from station.screens.checks_source import ChecksSource
from station.screens.checks_words import case_lines, reweigh_rows, window_words
from station.screens.offer import Person
from station.screens.theme import Face, Palette, Ruler, font_of
from station.screens.tongue import say
from station.screens.widgets.sentence import Sentence
from station.screens.widgets.sheet import Page, ScanField, Text
from station.screens.widgets.tiles import Tile, Tiles
from station.screens.widgets.touch_button import TouchButton
from station.screens.widgets.wait_card import WaitCard
from station.screens.widgets.window_picture import WindowPicture, WindowView, window_view
from station.screens.work import Tried, Work

_REASONS = ("weighed again", "within both bounds", "taken apart")
"""Reasons that are often given; another one is typed."""
DECIDE_ROLES = ("lead", "qa", "manager")
_MOST_LISTED = 400
_LIST = "Weigh again in this order: net as shown, less the whole error, less even growth"
_CELL = "<td align='right' style='white-space:nowrap'>{}&nbsp;</td>"
_HEAD = ("serial", "time", "net", "whole", "even")


class SuspectPanel(QWidget):
    """Shows the oldest window nobody decided about.

    Args:
        intents: takes the decision to the record.
        source: knows the windows.
        people: who may decide are those with a role of :data:`DECIDE_ROLES`.
        palette: colours.
    """

    def __init__(
        self,
        intents: Intents,
        source: ChecksSource,
        people: Sequence[Person],
        palette: Palette,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._intents, self._source, self._palette = intents, source, palette
        self._windows: tuple[Suspected, ...] = ()
        self._uid = ""
        self.who = ""
        """Who decides."""
        self._reading = Work("suspect windows", self)
        WaitCard(palette, self).follow(self._reading)
        self.words, self.asked = Sentence(palette, 5.2), Sentence(palette, 6.4)
        self.picture = WindowPicture(palette)
        self.cases = Text(palette, "", Face.TEXT, 3.7)
        self.list = Page(palette)
        self.rows = QLabel()
        self.rows.setStyleSheet(f"color: {palette.ink}; background: transparent;")
        self.rows.setFont(font_of(Face.CODE, Ruler.of(self.screen()).px(4.0)))
        self.rows.setTextFormat(Qt.TextFormat.RichText)
        self.list.column.addWidget(Text(palette, _LIST, Face.VERB, 4.4))
        self.list.column.addWidget(self.rows)
        self.list.column.addStretch(1)
        deciders = [one for one in people if one.role in DECIDE_ROLES]
        self.people = Tiles(palette, [Tile(p.id, p.name, f"{p.id}, {p.role}") for p in deciders], 5)
        self.reason = ScanField(palette, "why: scan or type the reason")
        self.reason.setMaxLength(200)
        self.ready_made = Tiles(palette, [Tile(one, one) for one in _REASONS], len(_REASONS))
        self.decide_button = TouchButton(palette, "DECIDE", small="D")
        self.back_button = TouchButton(palette, "BACK", small="B")
        self.release_button = TouchButton(palette, "RELEASE ALL", small="hold down", hold=True)
        self.before_button = TouchButton(
            palette, "RELEASE BEFORE STEP", small="hold down", hold=True
        )
        self.stays_button = TouchButton(palette, "HOLD STAYS", small="hold down", hold=True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._compose()
        self.people.touched.connect(self._choose)
        self.ready_made.touched.connect(self.reason.setText)
        self.decide_button.clicked.connect(lambda: self.pages.setCurrentIndex(1))
        self.back_button.clicked.connect(lambda: self.pages.setCurrentIndex(0))
        self.reason.textChanged.connect(self._show)
        for button, decision in self._decisions():
            button.held.connect(lambda decision=decision: self._decide(decision))
        self._reading.done.connect(self.show_windows)
        self._reading.failed.connect(self.words.set)
        self._show()

    def _decisions(self) -> tuple[tuple[TouchButton, Decision], ...]:
        return (
            (self.stays_button, Decision.HOLD_STAYS),
            (self.before_button, Decision.RELEASED_BEFORE_STEP),
            (self.release_button, Decision.RELEASED),
        )

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        self.pages = QStackedWidget()
        self.pages.addWidget(self._evidence(ruler))
        self.pages.addWidget(self._decision(ruler))
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(self.pages)
        for painted in (self.words, self.picture, self.asked):
            painted.set_unit(ruler.px(1))

    def _evidence(self, ruler: Ruler) -> QWidget:
        """What is suspect and why: words, both bounds, verdicts, the bags to weigh again."""
        self.words.setMinimumHeight(round(ruler.px(21)))
        self.decide_button.cap_px = ruler.px(5.0)
        self.decide_button.setMinimumHeight(ruler.touch())
        left = QVBoxLayout()
        left.setSpacing(round(ruler.px(2)))
        left.addWidget(self.words)
        left.addWidget(self.picture, 1)
        left.addWidget(self.cases)
        page = QWidget()
        grid = QGridLayout(page)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(ruler.touch(6))
        grid.setVerticalSpacing(round(ruler.px(3)))
        grid.addLayout(left, 0, 0, 2, 1)
        grid.addWidget(self.list, 0, 1)
        grid.addWidget(self.decide_button, 1, 1)
        grid.setColumnStretch(0, 1)
        grid.setColumnStretch(1, 1)
        grid.setRowStretch(0, 1)
        return page

    def _decision(self, ruler: Ruler) -> QWidget:
        """Who decides, why, and what."""
        page = QWidget()
        column = QVBoxLayout(page)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(round(ruler.px(3)))
        column.addWidget(self.asked, 1)
        column.addWidget(Page.around(self._palette, self.people), 1)
        column.addWidget(self.reason)
        column.addWidget(self.ready_made)
        row = QHBoxLayout()
        row.setSpacing(ruler.touch(6))
        for button in (self.back_button, *(button for button, _ in self._decisions())):
            button.cap_px = ruler.px(4.6)
            button.setMinimumHeight(ruler.touch(34))
            row.addWidget(button, 1)
        column.addLayout(row)
        return page

    @property
    def keyed(self) -> tuple[TouchButton, ...]:
        """Buttons that their own key presses."""
        return (self.decide_button, self.back_button)

    @property
    def busy(self) -> bool:
        """Whether the record is being read."""
        return self._reading.busy

    def look(self) -> None:
        """Read the open windows anew."""
        source = self._source

        def task(_: Tried) -> object:
            return source.windows()

        self._reading.begin(task)

    def stop(self) -> None:
        """Wait for what is being read; before the window goes."""
        self._reading.stop()
        self._reading.wait()

    @Slot(object)
    def show_windows(self, windows: tuple[Suspected, ...]) -> None:
        """Show the oldest of the windows."""
        self._windows = windows
        self._show()

    def entered(self, answer: EntryAnswer) -> None:
        """Say what became of a decision."""
        if not self._uid or self._uid not in answer.uids:
            return
        self._uid = ""
        if answer.recorded:
            self._windows = self._windows[1:]
            self.reason.clear()
        else:
            self.words.set(f"Not recorded: {answer.words}")
        self.look()
        self._show()

    @Slot(str)
    def _choose(self, person: str) -> None:
        self.who = person
        self._show()

    def _decide(self, decision: Decision) -> None:
        if not self._windows or not self.who or self._uid:
            return
        try:
            facts = self._source.decide(self._windows[0].window, decision, self.reason.text())
        except ValueError as refused:
            self.words.set(str(refused))
            return
        self._uid = facts[-1].uid
        self._intents.enter(facts, self.who)
        self._show()

    @Slot()
    def _show(self) -> None:
        self.people.check([self.who])
        one = self._windows[0] if self._windows else None
        ready = one is not None and bool(self.who and self.reason.text().strip()) and not self._uid
        for button, _ in self._decisions():
            button.setEnabled(ready)
        self.before_button.setVisible(one is not None and len(one.window.holds) > 1)
        self.decide_button.setVisible(one is not None)
        self.decide_button.strong = True
        self.list.setVisible(one is not None)
        self.cases.setVisible(one is not None)
        if one is None:
            self.pages.setCurrentIndex(0)
            self.words.set("No bag is suspect.")
            self.picture.set(WindowView())
            return
        more, zone = len(self._windows) - 1, self._source.zone
        self.words.set(window_words(one, zone) + (f" {more} more windows wait." if more else ""))
        self.asked.set(self._lacking())
        self.picture.set(window_view(one, zone))
        lines = (line for run in one.window.runs for line in case_lines(run))
        self.cases.setText("\n".join(lines))
        self.rows.setText(_table(reweigh_rows(one.runs, _MOST_LISTED, zone)))

    @override
    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange:
            self._show()

    def _lacking(self) -> str:
        """What a decision still needs."""
        if self._uid:
            return "asked the line …"
        if not self.who:
            return "Who decides?"
        if not self.reason.text().strip():
            return "Why? Choose or type the reason."
        return "What becomes of the bags?"


def _table(rows: Sequence[Sequence[str]]) -> str:
    """Rows as a table of a rich text; no cell holds what a person typed."""
    head = "".join(f"<td align='right'>{say(word)}&nbsp;</td>" for word in _HEAD)
    lines = ("".join(_CELL.format(cell) for cell in row) for row in rows)
    return f"<table>{''.join(f'<tr>{line}</tr>' for line in (head, *lines))}</table>"
