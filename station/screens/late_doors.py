"""Makes the pages behind the doors in the quiet after a start, one by one.

The first screen does not wait for them. Until they are made somebody who opens a door waits for its
page; once a run is open nothing is made any more, because what the scale shows comes first.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Iterable

from PySide6.QtCore import QObject, QTimer, Slot

from station.screens.doors import Door
from station.screens.window import StationWindow

_QUIET_MS, _BETWEEN_MS = 300, 30
"""After the first screen, and between two pieces, so that touches and paintings come through."""


class LateDoors(QObject):
    """Works while the line says that no run is open, and ends with the first run.

    Args:
        window: of the station, with its doors.
        before: pieces of work that come before the pages, a tenth of a second each.
        after: told once, when all is made or a run is open.
    """

    def __init__(
        self,
        window: StationWindow,
        before: Iterable[Callable[[], object]] = (),
        after: Callable[[], object] | None = None,
    ) -> None:
        super().__init__(window)
        self._packer, self._after = window.packer, after
        self._pieces = deque((*before, *map(_page_of, window.doors)))
        self._seen = False
        self._timer = QTimer(self)
        self._timer.setInterval(_QUIET_MS)
        self._timer.timeout.connect(self._work)
        self._timer.start()

    @property
    def over(self) -> bool:
        """Whether nothing is made any more."""
        return not self._timer.isActive()

    @Slot()
    def _work(self) -> None:
        state = self._packer.state
        if state is None or not self._seen:
            self._seen = state is not None  # what it says is painted before the next look
            return
        self._timer.setInterval(_BETWEEN_MS)
        if state.run is None and self._pieces:
            self._pieces.popleft()()
            return
        self._timer.stop()
        if self._after is not None:
            self._after()


def _page_of(door: Door) -> Callable[[], object]:
    return lambda: door.page
