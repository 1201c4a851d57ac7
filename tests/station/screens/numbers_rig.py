"""A numbers page that shows a source, with all around it."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton

from station.screens.bridge import Bridge
from station.screens.numbers import NumbersPage
from tests.station.screens import numbers_states
from tests.station.screens.numbers_states import BagsSource

SIZES = [(1024, 768), (1280, 800), (1920, 1080)]
STATES = {
    "safe": numbers_states.safe,
    "thin": numbers_states.thin,
    "failing": numbers_states.failing,
    "wandering": numbers_states.wandering,
    "begun": numbers_states.begun,
    "none": lambda: BagsSource(None),
}


class ProposalIntents:
    """Keeps the facts that were entered."""

    def __init__(self) -> None:
        self.entered: list[tuple[tuple, str]] = []

    def enter(self, facts, who: str) -> None:
        self.entered.append((facts, who))


class Shown:
    """A page that shows a source, with all around it."""

    def __init__(self, qtbot, source: BagsSource, folder, size=(1024, 768)) -> None:
        self.bridge, self.intents, self.source = Bridge(), ProposalIntents(), source
        self.page = NumbersPage(self.bridge, self.intents, source, folder)
        qtbot.addWidget(self.page, before_close_func=lambda page: page.stop())
        self.page.resize(*size)
        self.page.show()
        self.qtbot = qtbot
        qtbot.waitUntil(lambda: not self.page._looking.busy)

    def work_out(self) -> None:
        with self.qtbot.waitSignal(self.page._advising.ended):
            touch(self.qtbot, self.page.work_button)


def touch(qtbot, button: QAbstractButton) -> None:
    assert button.isEnabled()
    assert button.isVisible()
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
