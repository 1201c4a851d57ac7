"""Whom the service page asks about the scale, its line and the station."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Protocol

from drivers.frames.description import Description
from drivers.wire import Passed
from drivers.wire_view import WireCount, WireRow
from station.core.facts import Fact
from station.core.metrology.scale_suitability import Level
from station.core.scale_swap import ScaleSwap
from station.line.guided import GuidedCheck
from station.line.state import LineState

Named = tuple[str, str]
"""A name and what is so named, in words."""


@dataclass(frozen=True, slots=True)
class LinkNow:
    """The link to the scale.

    Args:
        words: how it is, and what to do where it is not well.
        good: it is open and its weights are used.
        port: as the settings name it.
        identity: of the device there; empty where it has none.
    """

    words: str
    good: bool
    port: str
    identity: str = ""


@dataclass(frozen=True, slots=True)
class WireNow:
    """What passes over the line now.

    Args:
        link: how the link is.
        rows: the newest, the oldest first.
        count: what came within ten seconds.
        recording: file that takes in everything the scale sends; empty where none does.
        note: why the last recording ended by itself; else empty.
    """

    link: LinkNow
    rows: tuple[WireRow, ...]
    count: WireCount
    recording: str = ""
    note: str = ""


@dataclass(frozen=True, slots=True)
class ScaleCommand:
    """What the scale can be told.

    Args:
        name: in one or two words.
        data: what is sent.
        touches_pan: it changes what the scale shows, so it waits for a still pan.
        in_run: it may be given while a run is open and no bag is on the pan.
    """

    name: str
    data: bytes
    touches_pan: bool = True
    in_run: bool = False


class ServiceSource(Protocol):
    """Knows the line and the scale; quick but for ``system``."""

    def wire(self) -> WireNow:
        """What passes over the line now."""
        ...

    def record(self) -> str:
        """Start a recording in a fresh file; returns its place, or raises RecordingError."""
        ...

    def end_recording(self) -> str:
        """End the recording; returns its place, or raises RecordingError."""
        ...

    def about_scale(self) -> tuple[Named, ...]:
        """What the scale said about itself, and what the settings say."""
        ...

    def commands(self) -> tuple[ScaleCommand, ...]:
        """What the scale can be told."""
        ...

    def give(self, command: ScaleCommand, state: LineState | None) -> str:
        """Send a command; returns why it may not be given now, or nothing."""
        ...

    @property
    def outcome(self) -> tuple[int, bool, str]:
        """How many commands had an outcome, whether the last was done, and its words."""
        ...

    def system(self) -> tuple[Named, ...]:
        """Versions, disk, printer, scanner and what guards the record; not for Qt's thread."""
        ...


class LearnSource(Protocol):
    """Lets a person teach the lines of an unknown scale."""

    @property
    def units(self) -> tuple[str, ...]:
        """Units a scale may show."""
        ...

    def listen(self, on: bool) -> None:
        """Ask the scale nothing from now on, or ask it again as before."""
        ...

    def ask(self, request: bytes) -> None:
        """Send a request to a scale that sends nothing by itself."""
        ...

    def heard(self) -> tuple[Passed, ...]:
        """What passed over the line of late."""
        ...

    def recordings(self) -> tuple[Path, ...]:
        """Recordings of this station, the newest first."""
        ...

    def play(self, recording: Path) -> tuple[Passed, ...]:
        """What is on a recording; raises RecordingError."""
        ...

    def save(self, description: Description) -> str:
        """Keep a description in the settings; returns what follows, or raises StationError."""
        ...


class SwapSource(Protocol):
    """Takes a scale into use."""

    @property
    def here(self) -> str:
        """The scale that is there, in words."""
        ...

    @property
    def in_use(self) -> str:
        """The scale taken into use last, in words."""
        ...

    @property
    def today(self) -> date:
        """The plant's calendar day."""
        ...

    def look(self) -> None:
        """Take whatever device is plugged in now for the scale, and ask it about itself."""
        ...

    def guided(self) -> GuidedCheck:
        """A check at three loads and the empty pan; raises RuleRefused."""
        ...

    def fitness(self) -> Mapping[str, tuple[Level, str]]:
        """For each product, how well the scale suits it and why."""
        ...

    def swap(self, guided: GuidedCheck, serial: str, verified: str) -> ScaleSwap:
        """The scale with everything known of it; raises ValueError and RuleRefused."""
        ...

    def fact(self, swap: ScaleSwap) -> Fact:
        """The fact that keeps it."""
        ...
