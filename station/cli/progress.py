"""How far a long work has come, on the error stream."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager

from rich.console import Console
from rich.progress import BarColumn, MofNCompleteColumn, Progress, TextColumn

from station.core.long_work import watched


@contextmanager
def progress(words: str, total: int, *, quiet: bool) -> Iterator[Callable[[int], None]]:
    """Show a bar while the block runs; what is given is told how much is done.

    Args:
        words: what goes on.
        total: all of it.
        quiet: show nothing.
    """
    bar = Progress(
        TextColumn(words),
        BarColumn(),
        MofNCompleteColumn(),
        console=Console(stderr=True),
        disable=quiet,
        transient=True,
    )
    with bar:
        task = bar.add_task(words, total=total)
        yield lambda done: bar.update(task, completed=done)


@contextmanager
def long_work(words: str) -> Iterator[None]:
    """Show the steps of :mod:`station.core.long_work` while the block runs, on a terminal alone."""
    with (
        progress(words, 100, quiet=not sys.stderr.isatty()) as told,
        watched(told, lambda: True),
    ):
        yield


def tell(words: str) -> None:
    """Say what is being done now, where somebody looks at a terminal and no bar can be shown."""
    if sys.stderr.isatty():
        sys.stderr.write(f"{words} …\n")
