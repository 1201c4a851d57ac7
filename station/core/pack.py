"""The record of one bag, complete enough to rebuild its judgement years later."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime
from enum import StrEnum
from functools import lru_cache

from station.core.mass import Mass
from station.core.metrology.verdict import Verdict

_MARKS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"


class PackError(ValueError):
    """A record that contradicts itself."""


class Quality(StrEnum):
    """What the bag is worth; its label's state is kept apart."""

    GOOD = "good"
    REJECT = "reject"
    HELD = "held"
    RELEASED = "released"
    REWORKED = "reworked"
    DUMPED = "dumped"
    SAMPLED = "sampled"
    REPACKED = "repacked"
    """Topped up or weighed again: another bag of the record stands for it."""
    DOWNGRADED = "downgraded"


IN_THE_BATCH = (Quality.GOOD, Quality.HELD, Quality.RELEASED)
"""Bags that are, or may yet be, sold: they make up a batch and stand on the pallet."""

FREE = (Quality.GOOD, Quality.RELEASED)
"""Bags that nothing keeps from a customer."""


class LabelState(StrEnum):
    """How far the label of a bag has come."""

    NONE = "none"
    """A reject: no label is due."""
    RECORDED = "recorded"
    SUBMITTED = "submitted"
    SPOOLED = "spooled"
    APPLIED = "applied"
    IN_DOUBT = "in doubt"
    VOIDED = "voided"


@dataclass(frozen=True, slots=True, order=True)
class PackId:
    """Names one bag for ever.

    Args:
        site: the packhouse's short code.
        station: the station's short code.
        epoch: random 63-bit number of this incarnation of the station's store.
        number: counts the station's bags in this epoch from 1, without a gap.
    """

    site: str
    station: str
    epoch: int
    number: int

    @property
    def serial(self) -> str:
        """The serial as printed: station, two-letter mark of the epoch, number.

        The mark keeps serials apart when a store was restored from an older copy.
        """
        return f"{self.station}-{epoch_mark(self.epoch)}-{self.number:06d}"


@lru_cache(maxsize=64)
def epoch_mark(epoch: int) -> str:
    """Two characters (no I, L, O, U) for the ten highest bits of a 63-bit epoch."""
    top = (epoch >> 53) & 0x3FF
    return _MARKS[top >> 5] + _MARKS[top & 31]


@dataclass(frozen=True, slots=True)
class Moment:
    """When something happened, by every clock the station has.

    Args:
        utc: aware, in UTC.
        offset_minutes: local time minus UTC.
        zone: IANA name of the plant's zone.
        monotonic_ns: the machine's steady count; only differences mean anything.
    """

    utc: datetime
    offset_minutes: int
    zone: str
    monotonic_ns: int

    def __post_init__(self) -> None:
        offset = self.utc.utcoffset()
        if offset is None or offset.total_seconds() != 0:
            raise PackError(f"{self.utc!r} must be an aware time in UTC")


@dataclass(frozen=True, slots=True)
class Weighing:
    """What the scale showed when the bag was judged.

    Args:
        gross: the indication.
        tare: the preset tare of the bag item.
        net: gross minus tare, checked.
        spread: range of the indications in the half second before.
        dwell_ms: time from first load to the judged reading.
        top_ups: how often product was added or taken out after the first pour.
        frame: the judged frame as hex digits of its raw bytes.

    Raises:
        ValueError: (PackError, MassError) net is not gross minus tare, or the units differ.
    """

    gross: Mass
    tare: Mass
    net: Mass
    spread: Mass
    dwell_ms: int
    top_ups: int
    frame: str

    def __post_init__(self) -> None:
        if self.gross - self.tare != self.net:
            raise PackError(f"gross {self.gross} - tare {self.tare} is not net {self.net}")


@dataclass(frozen=True, slots=True)
class Residue:
    """What the empty pan showed after a bag was lifted off; a free sensor of the scale's drift.

    Args:
        at: when, in UTC.
        reading: the first steady indication after the unload, in the scale's unit.
    """

    at: datetime
    reading: Mass


@dataclass(frozen=True, slots=True)
class PackDraft:
    """A judged bag before the store has given it a number."""

    run: str
    weighing: Weighing
    verdict: Verdict
    quality: Quality
    reason: str
    """Why a reject was set aside, in the packhouse's words; empty for a good bag."""
    blend_lot: str
    lot_set: str
    use_by: date
    production_day: date
    operator: str
    judged_at: Moment
    residue: Residue | None = None
    """The empty pan before this bag; None for the first bag after a start or a disturbance."""


@dataclass(frozen=True, slots=True)
class PackRecord:
    """A durable bag: its draft, its name, and its place in the journal."""

    id: PackId
    uid: str
    """UUID version 7, the public id."""
    draft: PackDraft
    entry_seq: int
    entry_hash: str

    @property
    def serial(self) -> str:
        """The serial as printed."""
        return self.id.serial
