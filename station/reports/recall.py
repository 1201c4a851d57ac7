"""A recall: every bag that could hold a lot, at every station, with the kilograms adding up."""

from __future__ import annotations

import time
from collections import Counter
from collections.abc import Callable, Collection, Hashable, Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass
from datetime import date, datetime
from decimal import Decimal
from enum import StrEnum
from pathlib import Path
from typing import TypeVar

from station.core.balance import Water
from station.core.pack import FREE
from station.errors import BadInput
from station.reports.recall_lots import LotAccount, accounts, station_name
from station.reports.sent import Whereabouts, whereabouts
from station.store.purged import GoneRun, gone_between, gone_with_bags, gone_with_lot
from station.store.recall import (
    BlendLine,
    PackRow,
    Reach,
    blend_of_pack,
    reach_of_blend,
    reach_of_day,
    reach_of_lot,
    reach_of_serials,
)
from station.store.unit_contents import contents_of_unit

_Key = TypeVar("_Key", bound=Hashable)

MICRO_TO_KILO = Decimal("1e-9")


class Scope(StrEnum):
    """What a recall is about."""

    LOT = "lot"
    PACK = "pack"
    BLEND = "blend"
    DAY = "day"
    UNIT = "unit"
    """A case or a pallet, by its SSCC."""


@dataclass(frozen=True, slots=True)
class Group:
    """Bags counted together.

    Args:
        counts: by quality.
        labels: by state of the label.
        micrograms: exact sum of their net; lb and oz to the nearest microgram each bag.
        free: bags in the house that are neither held nor set aside.
    """

    counts: Mapping[str, int]
    labels: Mapping[str, int]
    micrograms: int
    free: int = 0

    @property
    def bags(self) -> int:
        """How many."""
        return sum(self.counts.values())

    @property
    def kilograms(self) -> Decimal:
        """Their net, exact."""
        return self.micrograms * MICRO_TO_KILO


@dataclass(frozen=True, slots=True)
class BlendGroup:
    """One blend at one station, and its bags."""

    station: str
    blend: BlendLine
    group: Group


@dataclass(frozen=True, slots=True)
class Station:
    """One record asked: whose it is, and its last entry."""

    name: str
    seq: int
    hash: str
    packs: tuple[PackRow, ...]


@dataclass(frozen=True, slots=True)
class Recall:
    """The whole answer.

    Args:
        scope, asked: what was asked for.
        drill: it is an exercise.
        made: when it was made, in UTC.
        seconds: how long asking and adding up took.
        stations: every record asked, with its bags in the order of packing.
        lots: the lot asked for; for a blend, bag or day every lot in it.
        blends: each blend with its bags.
        total: all bags.
        where: with whom they are, or where in the house.
        gone: purged runs that what was asked for reaches too.
    """

    scope: Scope
    asked: str
    drill: bool
    made: datetime
    seconds: float
    stations: tuple[Station, ...]
    lots: tuple[LotAccount, ...]
    blends: tuple[BlendGroup, ...]
    total: Group
    where: Whereabouts
    gone: tuple[GoneRun, ...] = ()

    @property
    def by_day(self) -> dict[date, Group]:
        """Bags by production day."""
        return _sums(self.blends, lambda one: one.blend.production_day)

    @property
    def by_run(self) -> dict[str, Group]:
        """Bags by run."""
        return _sums(self.blends, lambda one: one.blend.run.uid)

    @property
    def done(self) -> bool:
        """Whether no bag in the house is free to leave, or it is an exercise."""
        return self.drill or not self.where.free


def recall(
    homes: Sequence[Path],
    scope: Scope,
    asked: str,
    at: datetime,
    *,
    drill: bool = False,
    water: Water | None = None,
) -> Recall:
    """Ask the records of one or more stations.

    Args:
        homes: their folders.
        scope: what ``asked`` is.
        asked: lot code, blend lot code, serial, SSCC, or day as YYYY-MM-DD.
        at: now, in UTC.
        drill: mark the answer as an exercise.
        water: uptake between weighing a lot and weighing the bags.

    Raises:
        BadInput: no record knows it, or a lot code means different deliveries at two stations.
    """
    began = time.perf_counter()
    reaches = _reaches(homes, scope, asked)
    where = whereabouts((station_name(one), home, one.packs) for home, one in reaches)
    left = {serial for serial, place in where.places.items() if place.shipment is not None}
    blends = tuple(each for _, reach in reaches for each in _groups(reach, left))
    wanted = {asked} if scope is Scope.LOT else _used(reaches)
    lots = accounts(reaches, wanted, water or Water())
    total = _total([one.group for one in blends])
    return Recall(
        scope=scope,
        asked=asked,
        drill=drill,
        made=at,
        seconds=time.perf_counter() - began,
        stations=tuple(Station(station_name(one), *one.head, one.packs) for _, one in reaches),
        lots=lots,
        blends=blends,
        total=total,
        where=where,
        gone=tuple(one for home in homes for one in _gone(home, scope, asked)),
    )


def _reaches(homes: Sequence[Path], scope: Scope, asked: str) -> list[tuple[Path, Reach]]:
    found: list[tuple[Path, Reach]] = []
    refused: BadInput | None = None
    for home in homes:
        try:
            found.append((home, _reach(home, scope, asked)))
        except BadInput as unknown:
            if len(homes) > 1 and "no station record" in unknown.title:
                raise
            refused = refused or unknown
    if not found:
        assert refused is not None, "a recall asks one record at least"
        raise refused
    names = Counter(station_name(one) for _, one in found)
    if twice := [name for name, count in names.items() if count > 1]:
        raise BadInput("--home", f"the record of station {twice[0]} is named twice")
    return found


def _reach(home: Path, scope: Scope, asked: str) -> Reach:
    if scope is Scope.LOT:
        return reach_of_lot(home, asked)
    if scope is Scope.DAY:
        return reach_of_day(home, date.fromisoformat(asked))
    if scope is Scope.BLEND:
        return reach_of_blend(home, asked)
    if scope is Scope.UNIT:
        return reach_of_serials(home, contents_of_unit(home, asked).serials)
    return reach_of_blend(home, blend_of_pack(home, asked))


def _gone(home: Path, scope: Scope, asked: str) -> tuple[GoneRun, ...]:
    """Purged runs; a bag, a blend lot or a run that went is refused with its purge instead."""
    if scope is Scope.LOT:
        return gone_with_lot(home, asked)
    if scope is Scope.DAY:
        day = date.fromisoformat(asked)
        return gone_between(home, day, day)
    if scope is Scope.UNIT:
        with suppress(BadInput):  # another of the records may know it
            return gone_with_bags(home, contents_of_unit(home, asked).serials)
    return ()


def _used(reaches: Sequence[tuple[Path, Reach]]) -> set[str]:
    return {use.lot for _, reach in reaches for blend in reach.blends for use in blend.uses}


# --- counting ---------------------------------------------------------------------------------


def _groups(reach: Reach, left: Collection[str]) -> list[BlendGroup]:
    """Count bags and add up their net, blend by blend; those that left are not free."""
    counts: Counter[tuple[int, str, str]] = Counter()
    sums: Counter[int] = Counter()
    free: Counter[int] = Counter()
    for row in reach.packs:
        counts[row.blend_id, row.quality, row.label] += 1
        sums[row.blend_id] += row.net_ug
        free[row.blend_id] += row.quality in FREE and row.serial not in left
    of: dict[int, tuple[Counter[str], Counter[str]]] = {
        each.id: (Counter(), Counter()) for each in reach.blends
    }
    for (blend, quality, label), number in counts.items():
        of[blend][0][quality] += number
        of[blend][1][label] += number
    name = station_name(reach)
    return [
        BlendGroup(name, each, Group(*of[each.id], sums[each.id], free[each.id]))
        for each in reach.blends
    ]


def _total(groups: Sequence[Group]) -> Group:
    counts: Counter[str] = Counter()
    labels: Counter[str] = Counter()
    for one in groups:
        counts.update(one.counts)
        labels.update(one.labels)
    return Group(
        counts, labels, sum(one.micrograms for one in groups), sum(one.free for one in groups)
    )


def _sums(blends: Sequence[BlendGroup], key: Callable[[BlendGroup], _Key]) -> dict[_Key, Group]:
    found: dict[_Key, list[Group]] = {}
    for one in blends:
        found.setdefault(key(one), []).append(one.group)
    return {name: _total(groups) for name, groups in found.items()}
