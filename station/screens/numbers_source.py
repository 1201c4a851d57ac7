"""Whom the page of numbers asks."""

from __future__ import annotations

from typing import Protocol

from station.core.facts import Fact
from station.line.fill_target import Advice
from station.line.numbers import RunFigures, Span
from station.screens.work import Tried


class NumbersSource(Protocol):
    """Whoever knows the bags of the run; each call may take long and is not made on Qt's thread."""

    def figures(self, span: Span | None) -> RunFigures | None:
        """Return the figures of the open or the last run, of the batch the rules judge or another.

        None before the first run.
        """
        ...

    def advice(self, tried: Tried) -> Advice | None:
        """Work out a target; ``tried`` is told of each one tried and may stop it by raising."""
        ...

    def proposal(self, figures: RunFigures, advice: Advice) -> Fact:
        """Return the fact that keeps a proposal; quick."""
        ...
