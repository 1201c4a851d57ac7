"""What a scale's link tells its listener."""

from __future__ import annotations

from dataclasses import dataclass

from drivers.frames.base import Answer, Garbage
from drivers.frames.scp0499_facts import ScaleFacts
from drivers.frames.scp0499_outcome import Outcome
from drivers.steady import Reading


@dataclass(frozen=True, slots=True)
class LinkUp:
    """The port is open.

    Args:
        port: as the settings name it.
        epoch: number of the connection, from 1.
        identity: what tells the device behind the port from others; empty where nothing does.
    """

    port: str
    epoch: int
    identity: str = ""


@dataclass(frozen=True, slots=True)
class LinkDown:
    """The port is lost or cannot be opened.

    Args:
        port: as the settings name it; empty before the first open of a port given by a function.
        why: cause and what to do, in words.
        retry_in_s: when it is tried again.
    """

    port: str
    why: str
    retry_in_s: float


@dataclass(frozen=True, slots=True)
class LinkDegraded:
    """The port is open, but what it gives cannot be used for now.

    Args:
        bad: damaged frames of late; 0 when the scale is silent.
        total: all frames of late.
        why: cause and what to do, in words.
    """

    bad: int
    total: int
    why: str


LinkItem = Reading | LinkUp | LinkDown | LinkDegraded | ScaleFacts | Outcome | Answer | Garbage
