"""From entries to rows of the centre's tables for questions; pure, one function for each kind.

Only what whole-plant questions ask is taken out; everything else stays in the entry. A field that
is not known here is passed over, so a newer station can write to an older centre.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from datetime import date, datetime
from typing import Any

from station.core.dispositions import QUALITY_AFTER, Disposition
from station.core.facts import FACT_KINDS
from station.core.journal import Entry, EntryKind, JournalError
from station.core.pack import Quality
from station.store.bodies import mass

Row = tuple[object, ...]
Rows = dict[str, list[Row]]
_Body = Mapping[str, Any]

COLUMNS: Mapping[str, tuple[str, ...]] = {
    "pack": (
        "number", "serial", "run", "line", "product", "version", "verdict", "quality", "reason",
        "net_ug", "nominal_ug", "lot_set", "blend_lot", "production_day", "use_by", "operator",
        "at", "offset_minutes",
    ),
    "lot": ("code", "component", "supplier", "received", "use_by"),
    "run": (
        "uid", "line", "product", "version", "name", "rule_set", "rule_version", "production_day",
        "lead", "operator", "at", "offset_minutes",
    ),
    "run_end": ("uid", "who", "at", "offset_minutes"),
    "fact": ("kind", "uid", "subject", "result", "run", "who", "at", "offset_minutes"),
    "pack_change": ("serial", "quality", "reason", "who", "at", "offset_minutes"),
    "hold_range": ("hold", "pack_epoch", "first", "last"),
    "hold_end": ("hold",),
}  # fmt: skip
"""Columns of each table behind site, station, epoch and seq."""
TYPES: Mapping[str, str] = {
    "number": "int8", "version": "int4", "net_ug": "int8", "nominal_ug": "int8",
    "production_day": "date", "use_by": "date", "received": "date", "at": "timestamptz",
    "offset_minutes": "int4", "pack_epoch": "int8", "first": "int8", "last": "int8",
    "epoch": "int8", "seq": "int8",
}  # fmt: skip
"""Types of the columns that are no text."""
LOT_USE = "lot_use"


class Projection:
    """Collects the rows of entries of one station's epoch."""

    def __init__(self) -> None:
        self.rows: Rows = {name: [] for name in COLUMNS}
        self.uses: set[Row] = set()
        """Site, station, epoch, lot set, component, lot; each once."""

    def add(self, entry: Entry) -> None:
        """Take one entry in.

        Raises:
            JournalError: its body is not of the form its kind has.
        """
        try:
            if entry.kind in FACT_KINDS:
                self._fact(entry)
            elif (step := _STEPS.get(entry.kind)) is not None:
                step(self, entry)
        except (KeyError, TypeError, ValueError, AssertionError) as fault:
            raise JournalError(f"its body has another form: {fault!r}") from fault

    def _put(self, table: str, entry: Entry, *values: object) -> None:
        self.rows[table].append((entry.site, entry.station, entry.epoch, entry.seq, *values))

    def _use(self, entry: Entry, lot_set: str, members: Iterable[Iterable[str]]) -> None:
        for component, lot in members:
            self.uses.add((entry.site, entry.station, entry.epoch, lot_set, component, lot))

    def _pack(self, entry: Entry) -> None:
        body: _Body = entry.body
        self._use(entry, body["lot_set"], body["members"])
        self._put(
            "pack",
            entry,
            body["number"],
            body["serial"],
            body["run"],
            body["line"],
            body["product"]["code"],
            body["product"]["version"],
            body["verdict"],
            body["quality"],
            body["reason"],
            mass(body["net"]).micrograms,
            mass(body["window"]["nominal"]).micrograms,
            body["lot_set"],
            body["blend_lot"],
            date.fromisoformat(body["production_day"]),
            date.fromisoformat(body["use_by"]),
            body["operator"],
            *_when(entry),
        )

    def _label(self, entry: Entry) -> None:
        body: _Body = entry.body
        if "quality" in body:  # taken back after its label was made
            self._change(entry, body["serial"], body["quality"], body["why"])

    def _change(self, entry: Entry, serial: str, quality: str, reason: str) -> None:
        self._put("pack_change", entry, serial, quality, reason, entry.who, *_when(entry))

    def _lot(self, entry: Entry) -> None:
        self._known_lot(entry, entry.body["code"], entry.body)

    def _known_lot(self, entry: Entry, code: object, told: _Body) -> None:
        self._put(
            "lot",
            entry,
            code,
            told["component"],
            told["supplier"],
            date.fromisoformat(told["received"]),
            None if told["use_by"] is None else date.fromisoformat(told["use_by"]),
        )

    def _run(self, entry: Entry) -> None:
        body: _Body = entry.body
        product, window = body["product"], body["window"]
        self._use(entry, body["lot_set"], body["members"])
        self._put(
            "run",
            entry,
            body["run"],
            body["line"],
            product["code"],
            product["version"],
            product["name"],
            window["rule_set"],
            window["rule_version"],
            date.fromisoformat(body["production_day"]),
            body["lead"],
            body["operator"],
            *_when(entry),
        )

    def _run_end(self, entry: Entry) -> None:
        self._put("run_end", entry, entry.body["run"], entry.who, *_when(entry))

    def _fact(self, entry: Entry) -> None:
        body: _Body = entry.body
        details: _Body = body["details"]
        if entry.kind is EntryKind.DELIVERY:
            self._known_lot(entry, body["subject"], details)
        elif entry.kind is EntryKind.HOLD:
            for epoch, first, last in details.get("ranges", ()):
                self._put("hold_range", entry, body["uid"], int(epoch), first, last)
        elif entry.kind is EntryKind.RELEASE:
            self._put("hold_end", entry, details["hold"])
        elif entry.kind is EntryKind.DISPOSITION:
            quality = QUALITY_AFTER[Disposition(body["result"])]
            self._change(entry, body["subject"], str(quality), details["reason"])
        elif entry.kind is EntryKind.LOT_MOVE:
            for serial in details["serials"]:
                self._change(entry, serial, str(Quality.REWORKED), "went back on the line")
            if (changed := details.get("set")) is not None:
                self._use(entry, changed["lot_set"], changed["members"])
        # Last, so that a fact whose details cannot be read has no row: `bring_up` would take the
        # tables for those of an older program, and fill them anew for every question.
        self._put(
            "fact",
            entry,
            str(entry.kind),
            body["uid"],
            body["subject"],
            body["result"],
            body["run"],
            entry.who,
            *_when(entry),
        )


def _when(entry: Entry) -> tuple[datetime, int]:
    return entry.at.utc, entry.at.offset_minutes


_STEPS: Mapping[EntryKind, Callable[[Projection, Entry], None]] = {
    EntryKind.PACK: Projection._pack,  # noqa: SLF001  its own
    EntryKind.LABEL: Projection._label,  # noqa: SLF001
    EntryKind.LOT: Projection._lot,  # noqa: SLF001
    EntryKind.RUN: Projection._run,  # noqa: SLF001
    EntryKind.RUN_END: Projection._run_end,  # noqa: SLF001
}
