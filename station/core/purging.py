"""A purge as the record keeps it: which runs went, which entries were emptied, where they are now.

A purged entry keeps its number, kind and hash, so that the chain stays without a gap; its bytes are
gone. For each run the entry names what was emptied, the Merkle root over the hashes of those
entries (RFC 9162 section 2.1) and a hash over their kinds, so that nothing of what is left can be
changed unseen.
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime

from station.core.facts import Fact
from station.core.journal import EntryKind, Value
from station.core.kept_values import listed, texts, whole

PURGED = "purged"
EXPORT_CHECKED = "exported, read back and checked"
AFTER_USE_BY_YEARS = 2
"""A run is kept this long after the last use-by date on its labels: see ``least_keep_years``."""

Span = tuple[int, int, int]
"""Epoch, first and last number of entries."""


@dataclass(frozen=True, slots=True)
class PurgedRun:
    """A run that went.

    Args:
        uid: its id.
        product, name: what was packed.
        blend_lots: codes on its labels.
        inputs: codes of the input lots its bags could hold.
        first_day, last_day: production days.
        bags: how many.
        serials: head, first and last number of its bags' serials.
        entries: what was emptied, in the order of the journal.
        root: over the hashes of those entries, 64 hex digits.
        kinds: SHA-256 over their kinds, 64 hex digits.
    """

    uid: str
    product: str
    name: str
    blend_lots: tuple[str, ...]
    inputs: tuple[str, ...]
    first_day: date
    last_day: date
    bags: int
    serials: tuple[tuple[str, int, int], ...]
    entries: tuple[Span, ...]
    root: str
    kinds: str

    @property
    def count(self) -> int:
        """How many entries were emptied."""
        return sum(last - first + 1 for _, first, last in self.entries)


@dataclass(frozen=True, slots=True)
class Purge:
    """One entry of a purge; a purge of many runs has several, made in one commit.

    Args:
        uid: of the entry.
        before: runs that ended before this moment could go.
        keep_years: as the settings had it.
        folder: name of the folder of the export.
        digest: SHA-256 of the export's manifest, 64 hex digits.
        why: the reason, in the person's words.
        part, parts: which entry of the purge this is, from 1, and of how many.
        runs: what went.
    """

    uid: str
    before: datetime
    keep_years: int
    folder: str
    digest: str
    why: str
    part: int
    parts: int
    runs: tuple[PurgedRun, ...]

    @property
    def entries(self) -> int:
        """How many entries were emptied."""
        return sum(run.count for run in self.runs)


def kinds_digest(kinds: Iterable[str]) -> str:
    """SHA-256 over kinds of entries, one a line, as 64 hex digits."""
    digest = hashlib.sha256()
    for kind in kinds:
        digest.update(f"{kind}\n".encode())
    return digest.hexdigest()


def purge_fact(purge: Purge) -> Fact:
    """The entry of a purge; it is about the digest of the export."""
    runs: list[Value] = [_run_value(run) for run in purge.runs]
    details: dict[str, Value] = {
        "before": purge.before.isoformat(timespec="seconds"),
        "keep_years": purge.keep_years,
        "folder": purge.folder,
        "export": EXPORT_CHECKED,
        "why": purge.why,
        "part": purge.part,
        "parts": purge.parts,
        "count": purge.entries,
        "runs": runs,
    }
    return Fact(EntryKind.PURGE, purge.uid, purge.digest, PURGED, details=details)


def purge_of(fact: Fact) -> Purge:
    """The purge an entry keeps.

    Raises:
        ValueError, KeyError, TypeError: the entry has another form.
    """
    details = fact.details
    return Purge(
        uid=fact.uid,
        before=datetime.fromisoformat(str(details["before"])),
        keep_years=whole(details["keep_years"]),
        folder=str(details["folder"]),
        digest=fact.subject,
        why=str(details["why"]),
        part=whole(details["part"]),
        parts=whole(details["parts"]),
        runs=tuple(_run_of(one) for one in listed(details["runs"])),
    )


def _run_value(run: PurgedRun) -> Value:
    serials: list[Value] = [list(span) for span in run.serials]
    entries: list[Value] = []
    for epoch, first, last in run.entries:  # an epoch has 19 digits: each is written once
        if entries and isinstance(its := entries[-1], list) and its[0] == str(epoch):
            its += [first, last]
        else:
            entries.append([str(epoch), first, last])
    return {
        "run": run.uid,
        "product": run.product,
        "name": run.name,
        "blend_lots": list(run.blend_lots),
        "inputs": list(run.inputs),
        "first_day": run.first_day.isoformat(),
        "last_day": run.last_day.isoformat(),
        "bags": run.bags,
        "serials": serials,
        "entries": entries,
        "root": run.root,
        "kinds": run.kinds,
    }


def _run_of(value: Value) -> PurgedRun:
    if not isinstance(value, dict):
        raise TypeError("a run of a purge is an object")
    entries: list[Span] = []
    for one in listed(value["entries"]):
        epoch, *ends = listed(one)
        numbers = [whole(end) for end in ends]
        pairs = zip(numbers[::2], numbers[1::2], strict=True)
        entries += [(int(str(epoch)), first, last) for first, last in pairs]
    serials = [listed(one) for one in listed(value["serials"])]
    return PurgedRun(
        uid=str(value["run"]),
        product=str(value["product"]),
        name=str(value["name"]),
        blend_lots=texts(value["blend_lots"]),
        inputs=texts(value["inputs"]),
        first_day=date.fromisoformat(str(value["first_day"])),
        last_day=date.fromisoformat(str(value["last_day"])),
        bags=whole(value["bags"]),
        serials=tuple((str(one[0]), whole(one[1]), whole(one[2])) for one in serials),
        entries=tuple(entries),
        root=str(value["root"]),
        kinds=str(value["kinds"]),
    )
