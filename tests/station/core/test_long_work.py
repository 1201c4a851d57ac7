"""Steps of a long work: what whoever listens is told, and how it ends when nobody wants it."""

import pytest

from station.core.long_work import GivenUp, go_on, share, step, steps, still_wanted, watched


def always() -> bool:
    return True


def test_where_nobody_listens_nothing_happens():
    step(50)
    go_on()
    assert list(steps("abc", 3)) == ["a", "b", "c"]
    assert still_wanted() is None


def test_steps_are_told_in_percent_of_the_whole():
    told = []
    with watched(told.append, always):
        step(0)
        with share(10, 60):
            step(1, 2)
            with share(50, 100):
                step(100)
        step(3, 4)
        list(steps("ab", 2))
    assert told == [0, 35, 60, 75, 0, 50]
    step(99)
    assert told[-1] == 50


def test_work_that_nobody_wants_ends_at_its_next_step():
    left = [True, True, False]
    done = []
    with watched(lambda _: None, lambda: left.pop(0)), pytest.raises(GivenUp):
        done.extend(steps(range(9), 9))
    assert left == []
    with watched(lambda _: None, lambda: False), pytest.raises(GivenUp):
        go_on()
