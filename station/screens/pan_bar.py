"""Keeps bags out while something else is on the pan, and until the pan is empty again."""

from __future__ import annotations

from station.line.guided import steady_indication
from station.line.scale_duty import BAR, BAR_WORDS
from station.line.state import Intents, LineState


class PanBar:
    """One bar of acceptance, shared by everything that is put on the scale for a check.

    Args:
        intents: takes and gives back acceptance.
    """

    def __init__(self, intents: Intents) -> None:
        self._intents = intents
        self.on = False
        """Whether no bag is taken because of it."""
        self._ending = False

    def begin(self) -> None:
        """Take no bags from now on."""
        self._ending = False
        if not self.on:
            self.on = True
            self._intents.bar(BAR, BAR_WORDS)

    def end(self) -> None:
        """Take bags again once the pan shows a steady zero."""
        self._ending = self.on

    def see(self, state: LineState) -> None:
        """Follow the line."""
        stood = steady_indication(state)
        if self._ending and stood is not None and not stood.amount:
            self.lift()

    def lift(self) -> None:
        """Take bags again at once."""
        if self.on:
            self.on = self._ending = False
            self._intents.bar(BAR, "")
