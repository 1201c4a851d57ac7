"""The checks page: the scale, empty bags, and bags a failed check made suspect."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import (
    QHideEvent,
    QKeySequence,
    QShortcut,
    QShowEvent,
)
from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget
from typing_extensions import override

from station.line.state import EntryAnswer, Intents, LineState
from station.screens.bridge import Bridge
from station.screens.checks_scale import ScalePanel
from station.screens.checks_source import ChecksSource
from station.screens.checks_suspect import SuspectPanel
from station.screens.checks_tare import TarePanel
from station.screens.doors import DoorPage
from station.screens.offer import Person
from station.screens.pan_bar import PanBar
from station.screens.theme import LIGHT, Palette, Ruler
from station.screens.widgets.touch_button import TouchButton

_TABS = (("SCALE", "1"), ("EMPTY BAG", "2"), ("SUSPECT BAGS", "3"))


class ChecksPage(DoorPage):
    """Three panels; while weights or empty bags are on the scale no bag is taken.

    Args:
        bridge: tells the newest state and what became of entries.
        intents: takes bars and entries.
        source: knows what is due and makes the facts.
        people: of the packhouse.
        palette: colours.
    """

    def __init__(
        self,
        bridge: Bridge,
        intents: Intents,
        source: ChecksSource,
        people: Sequence[Person],
        palette: Palette = LIGHT,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(palette, parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.bar = PanBar(intents)
        self.scale = ScalePanel(intents, source, self.bar, palette)
        self.tare = TarePanel(intents, source, self.bar, palette)
        self.suspect = SuspectPanel(intents, source, people, palette)
        self.panels = QStackedWidget()
        for panel in (self.scale, self.tare, self.suspect):
            self.panels.addWidget(panel)
        self.tabs = tuple(TouchButton(palette, words, small=key) for words, key in _TABS)
        self.back_button = TouchButton(palette, "LEAD", small="F4")
        self._compose()
        for index, tab in enumerate(self.tabs):
            tab.clicked.connect(lambda _=False, index=index: self.choose(index))
            _key(self, tab)
        for panel in (self.scale, self.tare, self.suspect):
            for button in panel.keyed:
                _key(panel, button)
        self.back_button.clicked.connect(self.left)
        bridge.followed.connect(self.show_state, Qt.ConnectionType.DirectConnection)
        bridge.entered.connect(self._entered, Qt.ConnectionType.DirectConnection)
        self.choose(0)

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        top = self.head_row((*self.tabs, self.back_button), 4.8)
        for tab in self.tabs:
            tab.setCheckable(True)
        whole = QVBoxLayout(self)
        margin = round(ruler.px(7))
        whole.setContentsMargins(margin, margin, margin, margin)
        whole.setSpacing(round(ruler.px(4)))
        whole.addLayout(top)
        whole.addWidget(self.panels, 1)

    def choose(self, index: int) -> None:
        """Show a panel; another one waits while something is weighed."""
        if not self.at_work:
            panel = (self.scale, self.tare, self.suspect)[index]
            self.panels.setCurrentWidget(panel)
            if panel is self.tare and not self.tare.film_lot:
                self.tare.film.setFocus()  # a scanner that types would press keys of buttons
            else:
                panel.setFocus()
            if panel is self.suspect:
                self.suspect.look()
        for at, tab in enumerate(self.tabs):
            tab.setChecked(at == self.panels.currentIndex())

    @property
    @override
    def at_work(self) -> bool:
        return self.scale.under_way or self.tare.under_way

    @override
    def stop(self) -> None:
        self.bar.lift()
        self.suspect.stop()

    @Slot(object)
    def show_state(self, state: LineState) -> None:
        """Follow the line, seen or not: what is on the pan must be known all the time."""
        self.bar.see(state)
        if not self.isVisible() and not self.at_work:
            return
        self.scale.show_state(state)
        self.tare.show_state(state)

    @Slot(object)
    def _entered(self, answer: EntryAnswer) -> None:
        for panel in (self.scale, self.tare, self.suspect):
            panel.entered(answer)

    @override
    def showEvent(self, event: QShowEvent) -> None:
        self.setFocus()
        self.suspect.look()

    @override
    def hideEvent(self, event: QHideEvent) -> None:
        if not self.at_work:
            self.bar.end()


def _key(owner: QWidget, button: TouchButton) -> None:
    """Let the key written on a button press it while its panel is seen."""
    shortcut = QShortcut(QKeySequence(button.small), owner)
    shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
    shortcut.activated.connect(button.click)
