"""The service page: the scale's line, the scale, the station, and two wizards."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, QTimer, Slot
from PySide6.QtGui import QHideEvent, QKeySequence, QShortcut, QShowEvent
from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget
from typing_extensions import override

from station.line.state import EntryAnswer, Intents, LineState
from station.screens.bridge import Bridge
from station.screens.doors import DoorPage
from station.screens.offer import Person
from station.screens.pan_bar import PanBar
from station.screens.service_learn import LearnPanel
from station.screens.service_scale import ScaleFactsPanel
from station.screens.service_source import LearnSource, ServiceSource, SwapSource
from station.screens.service_swap import SwapPanel
from station.screens.service_wire import WirePanel
from station.screens.theme import LIGHT, Palette, Ruler
from station.screens.widgets.fact_page import FactPage
from station.screens.widgets.touch_button import TouchButton
from station.screens.work import Work

_TABS = (("WIRE", "1"), ("SCALE", "2"), ("STATION", "3"), ("TEACH", "4"), ("SWAP", "5"))
_REFRESH_MS = 200


class ServicePage(DoorPage):
    """Five panels; what is seen is refreshed five times a second.

    Args:
        bridge: tells the newest state and what became of entries.
        intents: takes bars and entries.
        source: knows the line and the scale.
        learn: lends the line to a lesson.
        swap: takes a scale into use.
        people: who may sign for a scale.
        palette: colours.
    """

    def __init__(
        self,
        bridge: Bridge,
        intents: Intents,
        source: ServiceSource,
        learn: LearnSource,
        swap: SwapSource,
        people: Sequence[Person],
        palette: Palette = LIGHT,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(palette, parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._source = source
        self.wire = WirePanel(source, palette)
        self.scale = ScaleFactsPanel(source, palette)
        self.station = FactPage(palette)
        self.bar = PanBar(intents)
        self.learn = LearnPanel(intents, learn, palette, self.bar)
        self.swap = SwapPanel(intents, swap, people, palette, self.bar)
        self.panels = QStackedWidget()
        self._all = (self.wire, self.scale, self.station, self.learn, self.swap)
        for panel in self._all:
            self.panels.addWidget(panel)
        self.tabs = tuple(TouchButton(palette, words, small=key) for words, key in _TABS)
        self.back_button = TouchButton(palette, "LEAD", small="F9")
        self.work = Work("station facts", self)
        self._timer = QTimer(self)
        self._timer.setInterval(_REFRESH_MS)
        self._compose()
        for index, tab in enumerate(self.tabs):
            tab.setCheckable(True)
            tab.clicked.connect(lambda _=False, index=index: self.choose(index))
            _key(self, tab)
        for owner in (self.wire, self.learn, self.swap):
            for button in owner.keyed:
                _key(owner, button)
        self.back_button.clicked.connect(self.left)
        self.work.done.connect(self.station.set)
        self._timer.timeout.connect(self.refresh)
        bridge.followed.connect(self.show_state, Qt.ConnectionType.DirectConnection)
        bridge.entered.connect(self._entered, Qt.ConnectionType.DirectConnection)
        self.choose(0)

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        whole = QVBoxLayout(self)
        margin = round(ruler.px(7))
        whole.setContentsMargins(margin, margin, margin, margin)
        whole.setSpacing(round(ruler.px(4)))
        whole.addLayout(self.head_row((*self.tabs, self.back_button), 4.4))
        whole.addWidget(self.panels, 1)

    def choose(self, index: int) -> None:
        """Show a panel; another one waits while weights are on the scale."""
        if not self.swap.under_way:
            if self.panels.currentWidget() is self.learn and index != self._all.index(self.learn):
                self.learn.stop()
            self.panels.setCurrentIndex(index)
            self._all[index].setFocus()
        for at, tab in enumerate(self.tabs):
            tab.setChecked(at == self.panels.currentIndex())
        self.refresh()

    @Slot()
    def refresh(self) -> None:
        """Show the panel in front as things are now."""
        panel = self._all[self.panels.currentIndex()]
        if not isinstance(panel, FactPage):
            panel.refresh()
        elif not panel.rows:
            self.work.begin(lambda _: self._source.system())

    @override
    def stop(self) -> None:
        self._timer.stop()
        self.learn.stop()
        self.bar.lift()
        self.work.stop()
        self.work.wait()

    @Slot(object)
    def show_state(self, state: LineState) -> None:
        """Follow the line, seen or not: what is on the pan must be known all the time."""
        self.bar.see(state)
        if self.isVisible() or self.swap.under_way:
            self.scale.show_state(state)
            self.swap.show_state(state)

    @Slot(object)
    def _entered(self, answer: EntryAnswer) -> None:
        self.swap.entered(answer)

    @override
    def showEvent(self, event: QShowEvent) -> None:
        self.station.set(())
        self.setFocus()
        self.refresh()
        self._timer.start()

    @override
    def hideEvent(self, event: QHideEvent) -> None:
        self._timer.stop()
        self.learn.stop()
        if not self.swap.under_way:
            self.swap.stop()


def _key(owner: QWidget, button: TouchButton) -> None:
    """Let the key written on a button press it while its panel is seen."""
    shortcut = QShortcut(QKeySequence(button.small), owner)
    shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
    shortcut.activated.connect(button.click)
