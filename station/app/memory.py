"""Keeps the interpreter's search for cyclic garbage from holding a start or a whole line up."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def loading() -> Iterator[None]:
    """While this lasts, nothing is searched for garbage: modules that load make next to none.

    Searching what they bring, again and again as it grows, takes a quarter of the time to load it.
    """
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()


@contextmanager
def settled(*, at_once: bool = True) -> Iterator[None]:
    """While this lasts, what is in memory now is not searched for garbage.

    A search of all that a station loaded takes 0.2 to 0.4 s, and every thread waits for it: a bag
    would wait for its label, the number on the screen would stand. What is made from now on is
    searched as before.

    Args:
        at_once: search it once more before; else whoever started something calls :func:`settle`
            when it is over, and what was garbage until now stays until the end.
    """
    first = not gc.get_freeze_count()
    if at_once:
        settle()
    else:
        gc.freeze()
    try:
        yield
    finally:
        if first:
            gc.unfreeze()


def settle() -> None:
    """Search what is in memory and was not searched yet; then leave it out as well.

    In the GUI thread alone, since garbage may hold parts of a window.
    """
    gc.collect()
    gc.freeze()
