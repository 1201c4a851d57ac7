"""The search for cyclic garbage, in the GUI thread alone.

Python searches in whatever thread happens to allocate. Where that is a thread of the line, or one
that reads the record for a page, and the garbage holds parts of a window, Qt destroys them there:
against its rules, and once seen to stand for ever, because the GUI thread held the interpreter and
waited for a lock of Qt's that the other thread held while it waited for the interpreter.
"""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager

from PySide6.QtCore import QTimer

_EVERY_MS = 100
_WHOLE_AFTER = 50
"""Searches of the middle generation between two of everything, so once a minute at most."""


@contextmanager
def swept() -> Iterator[None]:
    """While this lasts, garbage is searched for by this thread, between two events of Qt."""
    was_on = gc.isenabled()
    gc.disable()
    timer = QTimer()
    timer.timeout.connect(sweep)
    timer.start(_EVERY_MS)
    try:
        yield
    finally:
        timer.stop()
        if was_on:
            gc.enable()


def sweep() -> None:
    """Search as far as Python itself would by now, all but the oldest being cheap."""
    young, middle, old = gc.get_count()
    limits = gc.get_threshold()
    if young <= limits[0]:
        return
    if middle <= limits[1]:
        gc.collect(0)
    elif old <= _WHOLE_AFTER:
        gc.collect(1)
    else:
        gc.collect()
