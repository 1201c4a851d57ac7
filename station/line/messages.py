"""What a line's thread takes from its queue beside events: wishes of people, and silence."""

from __future__ import annotations

from dataclasses import dataclass

from station.core.facts import Fact
from station.core.label_life import Reprint, Resolve
from station.line.events import Event
from station.line.state import RunChoice


@dataclass(frozen=True, slots=True)
class Start:
    """A lead wants a run."""

    choice: RunChoice


@dataclass(frozen=True, slots=True)
class End:
    """A lead wants the run to end."""

    who: str


@dataclass(frozen=True, slots=True)
class Enter:
    """A person enters facts."""

    facts: tuple[Fact, ...]
    who: str


@dataclass(frozen=True, slots=True)
class Idle:
    """Nothing came for a while."""


Message = Event | Start | End | Enter | Reprint | Resolve | Idle
