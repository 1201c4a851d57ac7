"""Measures publish -> painted: python -m tests.station.screens.measure [COUNT].

A thread publishes a new number at about 50 Hz, as a fast scale would; the time from publish() to
the end of the paint event of the big row is noted. A busy thread of plain Python may run beside it.
"""

import os
import sys
import threading
import time
from dataclasses import replace

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["QT_SCALE_FACTOR"] = "1"

from PySide6.QtGui import QPaintEvent
from PySide6.QtWidgets import QApplication

from station.line.state import Phase, Verb
from station.screens.bridge import Bridge
from station.screens.packer import PackerScreen
from station.screens.widgets.big_figure import BigFigure
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.states import grams, state

PERIOD_S = 0.0203
"""Not a multiple of the screen's frame."""


def measure(count: int, busy: bool) -> list[float]:
    """Return the milliseconds from publish to painted of ``count`` numbers."""
    application = QApplication.instance() or QApplication([])
    bridge = Bridge()
    screen = PackerScreen(bridge, FakeIntents())
    screen.resize(1280, 800)
    screen.show()
    published: dict[str, int] = {}
    taken: list[float] = []
    paint = BigFigure.paintEvent

    def noted(self: BigFigure, event: QPaintEvent) -> None:
        paint(self, event)
        began = published.pop(self.view.number, None)
        if began is not None:
            taken.append((time.monotonic_ns() - began) / 1e6)

    base = state(Phase.LOADED, Verb.ADD, 200, steady=False, spread=3)
    states = [replace(base, amount=grams(n)) for n in range(1, count + 1)]
    over = threading.Event()

    def publish() -> None:
        for one in states:
            assert one.amount is not None
            published[one.amount.digits] = time.monotonic_ns()
            bridge.publish(one)
            time.sleep(PERIOD_S)
        over.set()

    def burn() -> None:
        while not over.is_set():
            sum(range(1000))

    BigFigure.paintEvent = noted  # type: ignore[method-assign]
    threads = [threading.Thread(target=publish)]
    threads += [threading.Thread(target=burn)] if busy else []
    for thread in threads:
        thread.start()
    while not over.is_set():
        application.processEvents()
        time.sleep(0.0005)
    for thread in threads:
        thread.join()
    BigFigure.paintEvent = paint  # type: ignore[method-assign]
    return sorted(taken)


def main(count: int) -> None:
    sys.setswitchinterval(0.0005)
    for busy in (False, True):
        taken = measure(count, busy)
        middle, worst = taken[len(taken) // 2], taken[int(len(taken) * 0.99)]
        beside = "beside a busy thread" if busy else "alone"
        print(
            f"{beside}: n={len(taken)} p50={middle:.2f} ms p99={worst:.2f} ms max={taken[-1]:.2f}"
        )


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 500)
