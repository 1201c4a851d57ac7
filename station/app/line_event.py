"""From what the scale's link says to what happens to the line."""

from __future__ import annotations

from drivers.frames.base import Answer, Garbage
from drivers.frames.scp0499_facts import ScaleFacts
from drivers.frames.scp0499_outcome import Outcome
from drivers.link import LinkDegraded, LinkDown, LinkItem, LinkUp
from drivers.steady import Reading
from station.line import events


def line_event(item: LinkItem) -> events.Event | None:
    """What an item of the scale's link means to the line; None where it means nothing."""
    match item:
        case Reading():
            return events.Weighed(item)
        case LinkUp():
            return events.LinkUp(item.port)
        case LinkDown():
            return events.LinkDown(item.why)
        case LinkDegraded():
            return events.Disturbed(item.why)
        case ScaleFacts() | Outcome() | Answer() | Garbage():
            return None
