"""The search for garbage leaves alone what a station loaded, and nothing else."""

import gc
import weakref

import pytest

from station.app.memory import settled


class Knot:
    """Refers to itself."""

    def __init__(self):
        self.self = self


@pytest.fixture(autouse=True)
def thawed():
    """As the station's own process begins."""
    gc.unfreeze()
    yield
    gc.collect()
    gc.freeze()  # as the tests have it


def test_what_was_there_is_left_alone_and_what_comes_after_is_found():
    with settled():
        assert gc.get_freeze_count() > 10_000
        gone = weakref.ref(Knot())
        gc.collect()
        assert gone() is None
        with settled():
            pass
        assert gc.get_freeze_count() > 10_000
    assert gc.get_freeze_count() == 0


def test_garbage_made_before_is_no_longer_there():
    gone = weakref.ref(Knot())
    with settled():
        assert gone() is None
