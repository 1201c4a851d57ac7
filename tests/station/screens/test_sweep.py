"""Parts of windows are destroyed in the GUI thread, whoever made the garbage around them."""

import gc
import threading

import pytest
from PySide6.QtCore import QObject

from station.screens.sweep import sweep, swept

pytestmark = pytest.mark.gui


class Part(QObject):
    """A part of a window that garbage holds."""

    def __init__(self, gone):
        super().__init__()
        self.me = self
        self.destroyed.connect(lambda: gone.append(threading.current_thread().name))


def allocate():
    """Make enough that Python would search; what is kept counts."""
    return [[number] for number in range(20_000)]


def test_garbage_of_a_window_waits_for_the_gui_thread(qtbot):
    gone = []
    gc.enable()  # as a station begins; the tests with windows switch it off
    with swept():
        assert not gc.isenabled()
        for _ in range(50):
            Part(gone)
        kept = []
        thread = threading.Thread(target=lambda: kept.append(allocate()), name="line")
        thread.start()
        thread.join()
        assert gone == []
        gc.collect()
    assert gone == ["MainThread"] * 50
    assert gc.isenabled()


def test_only_what_is_due_is_searched(qtbot):
    with swept():
        gc.collect()
        sweep()
        assert gc.get_count()[0] < gc.get_threshold()[0]
        kept = allocate()
        before = gc.get_count()
        sweep()
        now = gc.get_count()
    assert len(kept) == 20_000
    assert now[0] < before[0]
    assert now[1] == before[1] + 1
