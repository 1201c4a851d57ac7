"""Keeps the interpreter's search for cyclic garbage from holding a whole line up."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def settled() -> Iterator[None]:
    """While this lasts, what is in memory now is not searched for garbage.

    A search of all that a station loaded takes 0.2 to 0.4 s, and every thread waits for it: a bag
    would wait for its label, the number on the screen would stand. What is made from now on is
    searched as before.
    """
    first = not gc.get_freeze_count()
    gc.collect()
    gc.freeze()
    try:
        yield
    finally:
        if first:
            gc.unfreeze()
