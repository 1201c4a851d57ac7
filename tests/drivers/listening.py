"""A listener that keeps what a link says, and a bare line whose far end a test holds."""

import os
import threading
import tty
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from decimal import Decimal
from typing import Any

from drivers.backoff import Backoff
from drivers.frames.base import Condition, Kind, WeightFrame
from drivers.frames.scp0499 import Scp0499Parser, render
from drivers.link import LinkDegraded, LinkDown, LinkItem, LinkUp, ScaleLink
from drivers.steady import Reading, SteadyRules

LIMIT_S = 60.0
GRAMS = SteadyRules(interval=Decimal(1), unit="g")


def frame(digits: str, **changes: object) -> bytes:
    """The bytes of a gross weight at rest in grams, but for what ``changes`` say."""
    plain = WeightFrame(digits, "g", Kind.GROSS, False, False, Condition.NORMAL, 1)
    return render(plain._replace(**changes))


class Listener:
    """Keeps all items; waits for one with a deadline."""

    def __init__(self) -> None:
        self.items: list[LinkItem] = []
        self._changed = threading.Condition()
        self._seen = 0

    def __call__(self, item: LinkItem) -> None:
        with self._changed:
            self.items.append(item)
            self._changed.notify_all()

    def next(self, kind: type, where: Callable[[Any], bool] = lambda _: True) -> Any:
        """Return the next item of this kind, not yet returned or passed over."""

        def found() -> bool:
            while self._seen < len(self.items):
                self._seen += 1
                item = self.items[self._seen - 1]
                if isinstance(item, kind) and where(item):
                    return True
            return False

        with self._changed:
            assert self._changed.wait_for(found, LIMIT_S), f"no {kind.__name__}: {self.items[-5:]}"
            return self.items[self._seen - 1]

    def steady(self, digits: str) -> Reading:
        return self.next(Reading, lambda r: r.steady and r.digits == digits)

    def up(self) -> LinkUp:
        return self.next(LinkUp)

    def down(self) -> LinkDown:
        return self.next(LinkDown)

    def degraded(self) -> LinkDegraded:
        return self.next(LinkDegraded)

    def forget(self) -> None:
        """Pass over everything heard so far."""
        with self._changed:
            self._seen = len(self.items)


@contextmanager
def linked(port: Any, steady: SteadyRules | None = None, **options: Any) -> Iterator[tuple]:
    """Run a link on a port; give its listener and the link."""
    options.setdefault("backoff", Backoff(0.02, 0.1))
    listener = options.pop("listener", None) or Listener()
    link = ScaleLink(port, Scp0499Parser, steady or SteadyRules(), listener, **options)
    link.start()
    try:
        yield listener, link
    finally:
        link.stop()


class BareLine:
    """A pseudo-terminal: the link opens ``name``, the test writes and reads the far end."""

    def __init__(self) -> None:
        self.end, self._other = os.openpty()
        tty.setraw(self._other)
        self.name = os.ttyname(self._other)

    def write(self, data: bytes) -> None:
        os.write(self.end, data)

    def read(self) -> bytes:
        return os.read(self.end, 100)

    def close(self) -> None:
        for end in (self.end, self._other):
            try:
                os.close(end)
            except OSError:
                continue  # closed by the test


@contextmanager
def bare_line() -> Iterator[BareLine]:
    line = BareLine()
    try:
        yield line
    finally:
        line.close()
