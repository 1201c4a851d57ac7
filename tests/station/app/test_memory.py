"""The search for garbage leaves alone what a station loaded, and nothing else."""

import gc
import weakref

from station.app.memory import settled


class Knot:
    """Refers to itself."""

    def __init__(self):
        self.self = self


def test_what_was_there_is_left_alone_and_what_comes_after_is_found():
    before = gc.get_freeze_count()
    with settled():
        assert gc.get_freeze_count() - before > 10_000
        gone = weakref.ref(Knot())
        gc.collect()
        assert gone() is None
    assert gc.get_freeze_count() == 0


def test_garbage_made_before_is_no_longer_there():
    gone = weakref.ref(Knot())
    with settled():
        assert gone() is None
