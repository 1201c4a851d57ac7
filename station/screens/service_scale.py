"""The scale's own words about itself, and what it can be told."""

from __future__ import annotations

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from station.line.state import LineState
from station.screens.service_source import ScaleCommand, ServiceSource
from station.screens.theme import Palette, Ruler
from station.screens.tongue import say
from station.screens.widgets.fact_page import FactPage
from station.screens.widgets.live_figure import LiveFigure, live
from station.screens.widgets.sheet import Message
from station.screens.widgets.touch_button import TouchButton


class ScaleFactsPanel(QWidget):
    """Facts on the left; the indication, the commands and what became of them on the right.

    Args:
        source: knows the scale.
        palette: colours.
    """

    def __init__(
        self, source: ServiceSource, palette: Palette, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._source, self._palette = source, palette
        self._state: LineState | None = None
        self._told = source.outcome[0]
        self._waits = ""
        self.facts = FactPage(palette)
        self.figure = LiveFigure(palette)
        self.message = Message(palette, 4.6)
        self.buttons: dict[str, TouchButton] = {}
        """By name of the command."""
        self._commands: tuple[ScaleCommand, ...] = ()
        ruler = Ruler.of(self.screen())
        self.figure.set_unit(ruler.px(1))
        self._grid = QVBoxLayout()
        self._grid.setSpacing(ruler.touch(6))
        right = QVBoxLayout()
        right.setSpacing(ruler.touch(6))
        right.addWidget(self.figure, 3)
        right.addWidget(self.message)
        right.addLayout(self._grid, 4)
        whole = QHBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(ruler.touch(6))
        whole.addWidget(self.facts, 1)
        whole.addLayout(right, 1)

    def show_state(self, state: LineState) -> None:
        """Follow the line."""
        self._state = state
        self.figure.set(live(state))

    def refresh(self) -> None:
        """Show what is known now, and what became of the last command."""
        self.facts.set(self._source.about_scale())
        commands = self._source.commands()
        if commands != self._commands:
            self._commands = commands
            self._lay_commands()
        count, done, words = self._source.outcome
        if count != self._told:
            self._told, self._waits = count, ""
            self.message.say(words, refused=not done)

    def give(self, command: ScaleCommand) -> None:
        """Send a command; the outcome is said when it is there."""
        why_not = self._source.give(command, self._state)
        self.message.say(why_not or f"{say(command.name)} …", refused=bool(why_not))

    def _lay_commands(self) -> None:
        while (item := self._grid.takeAt(0)) is not None:
            row = item.widget()
            if row is not None:
                row.hide()
                row.deleteLater()
        self.buttons = {}
        ruler = Ruler.of(self.screen())
        rows = [self._commands[at : at + 3] for at in range(0, len(self._commands), 3)]
        for commands in rows:
            row = QWidget()
            line = QHBoxLayout(row)
            line.setContentsMargins(0, 0, 0, 0)
            line.setSpacing(ruler.touch(6))
            for command in commands:
                button = TouchButton(self._palette, command.name)
                button.cap_px = ruler.px(4.6)
                button.clicked.connect(lambda _=False, one=command: self.give(one))
                self.buttons[command.name] = button
                line.addWidget(button, 1)
            self._grid.addWidget(row)
        self._grid.addStretch(1)
