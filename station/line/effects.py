"""What must be done after an event, in the order given."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from drivers.steady import Reading
from station.core.metrology.verdict import Verdict
from station.core.pack import LabelState, PackRecord, Quality, Weighing


class Cue(StrEnum):
    """The three sounds of the line."""

    ACCEPT = "accept"
    WRONG_WAY = "wrong way"
    STOP = "stop"


@dataclass(frozen=True, slots=True)
class Record:
    """Store this judged bag durably, then answer Recorded or RecordFailed.

    ``residue`` is what the empty pan showed before it, or None.
    """

    weighing: Weighing
    verdict: Verdict
    quality: Quality
    reason: str
    reading: Reading
    residue: Reading | None = None


@dataclass(frozen=True, slots=True)
class IssueLabel:
    """Print the label of this durable bag once, then answer Labelled or LabelFailed."""

    record: PackRecord


@dataclass(frozen=True, slots=True)
class MarkLabel:
    """Record how far a label has come."""

    serial: str
    state: LabelState
    why: str = ""


@dataclass(frozen=True, slots=True)
class TakeBack:
    """The last labelled bag was set aside: record it as a reject and void its label."""

    serial: str
    reason: str


@dataclass(frozen=True, slots=True)
class Note:
    """Record an event of the line in words."""

    words: str
    who: str = "station"


@dataclass(frozen=True, slots=True)
class Sound:
    """Play one of the three sounds."""

    cue: Cue


Effect = Record | IssueLabel | MarkLabel | TakeBack | Note | Sound
