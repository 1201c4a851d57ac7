"""Answers to questions about the record, as plain frozen values."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, datetime
from decimal import Decimal

from station.core.lots import InputLot
from station.core.mass import Mass
from station.core.metrology.verdict import Verdict
from station.core.pack import LabelState, PackRecord, Quality
from station.core.run import Run
from station.line.state import Tally


@dataclass(frozen=True, slots=True)
class RejectRow:
    """One bag that was set aside; ``at`` is aware, in the plant's time of that moment."""

    serial: str
    at: datetime
    product: str
    version: int
    name: str
    blend_lot: str
    nominal: Mass
    net: Mass
    verdict: Verdict
    quality: Quality
    reason: str
    label: LabelState
    operator: str


@dataclass(frozen=True, slots=True)
class RunLine:
    """One run; ``ended`` is None while it is open, times are aware, in the plant's time."""

    uid: str
    line: str
    product: str
    version: int
    name: str
    gtin: str
    nominal: Mass
    lead: str
    operator: str
    started: datetime
    ended: datetime | None


@dataclass(frozen=True, slots=True)
class PackLine:
    """One bag in a list; ``at`` is aware, in the plant's time of that moment."""

    serial: str
    at: datetime
    blend_lot: str
    use_by: date
    net: Mass
    quality: Quality
    label: LabelState


@dataclass(frozen=True, slots=True)
class LotTrace:
    """Everywhere one input lot could be.

    Args:
        lot: the lot, with its supplier.
        runs: runs in which it could be in a bag, in order.
        blend_lots: blend lot codes, as printed, in order.
        packs: every bag that could hold it, in order of packing.
        counts: bags by quality.
        kilograms: exact sum of the net of all these bags; for lb and oz each bag counts to the
            nearest microgram.
    """

    lot: InputLot
    runs: tuple[RunLine, ...]
    blend_lots: tuple[str, ...]
    packs: tuple[PackLine, ...]
    counts: Mapping[Quality, int]
    kilograms: Decimal


@dataclass(frozen=True, slots=True)
class PackTrace:
    """One bag with everything known of it.

    Args:
        record: the bag as it was judged, read from its journal entry.
        quality, label, reason: its present state.
        run: its run, with product and version.
        lots: every input lot that could be in it.
        neighbours: bags with up to 20 numbers less and 20 more, itself not among them.
    """

    record: PackRecord
    quality: Quality
    label: LabelState
    reason: str
    run: RunLine
    lots: tuple[InputLot, ...]
    neighbours: tuple[PackLine, ...]


@dataclass(frozen=True, slots=True)
class LastRun:
    """The run started last, read from its journal entry."""

    run: Run
    open: bool
    tally: Tally


@dataclass(frozen=True, slots=True)
class WeighedPack:
    """One bag as weighed, with its present quality and the reason it was set aside, if it was.

    ``at`` is aware, in the plant's time of that moment; masses are in the scale's unit; ``blend``
    is the lot code of its blend, empty where nobody asked for it.
    """

    serial: str
    at: datetime
    gross: Mass
    net: Mass
    quality: Quality
    reason: str
    blend: str = ""


@dataclass(frozen=True, slots=True)
class RunBlend:
    """One blend of a run: the bags between two changes of its lots.

    Args:
        code: its lot code, as printed.
        use_by: as printed.
        lots: component and lot of each input lot that could be in its bags.
    """

    code: str
    use_by: date
    lots: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class RunPacks:
    """A run with bags of it.

    Args:
        run: the run as it was frozen at its start.
        open: it has not ended.
        packs: the bags asked for, in order of packing.
        blends: the blends asked for, in order of their beginning.
    """

    run: Run
    open: bool
    packs: tuple[WeighedPack, ...]
    blends: tuple[RunBlend, ...] = ()


@dataclass(frozen=True, slots=True)
class Summary:
    """Counts over the whole record.

    Args:
        packs: bags recorded.
        good, rejects: bags by present quality.
        labels: bags by label state.
        duplicate_serials: bags beyond the first with the same serial; 0 in a sound record.
        runs: runs started.
        entries: journal entries.
        net_micrograms: exact sum of the good bags' net.
    """

    packs: int
    good: int
    rejects: int
    labels: Mapping[LabelState, int]
    duplicate_serials: int
    runs: int
    entries: int
    net_micrograms: int
