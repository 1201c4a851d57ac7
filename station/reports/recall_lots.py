"""The mass of input lots over all stations asked: what came, what bags took, what must be left."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path

from station.core.balance import Balance, PackedSum, Span, Water, balance
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.line_lots import LotMove, Move, move_of
from station.core.lots import InputLot, LotStatus
from station.core.receiving import Delivery, delivery_of, open_holds
from station.errors import BadInput
from station.store.lot_usage import packed_with
from station.store.purged import lots_of_gone
from station.store.recall import Reach, entries_about


@dataclass(frozen=True, slots=True)
class LotAccount:
    """One input lot, over all stations asked.

    Args:
        lot: as it is known.
        stations: whose records know it.
        deliveries: as they were taken in; a delivery recorded alike at two stations stands once.
        balance: what went on the lines and what the bags took of it.
        wasted: grams thrown away.
        holds: holds on it that are open.
        purged: bags that could hold it were purged, so nobody can say what is left.
    """

    lot: InputLot
    stations: tuple[str, ...]
    deliveries: tuple[Delivery, ...]
    balance: Balance
    wasted: Fraction
    holds: tuple[FactRecord, ...]
    purged: bool = False

    @property
    def received(self) -> Fraction | None:
        """Grams that came; None where a delivery was not weighed or none is on record."""
        masses = [one.quantity for one in self.deliveries]
        known = [Fraction(one.grams) for one in masses if one is not None]
        return sum(known, Fraction(0)) if masses and len(known) == len(masses) else None

    @property
    def rest(self) -> Span | None:
        """Grams that must lie in the cooler and on the lines; None where nobody can say.

        What came, less what the bags took and what was thrown away.
        """
        if self.received is None or self.purged:
            return None
        there = self.received - self.wasted
        return Span(there, there, there) + -self.balance.used

    @property
    def adds_up(self) -> bool | None:
        """Whether no more was packed than came; None where nobody can say."""
        return None if self.rest is None else self.rest.high >= 0


def station_name(reach: Reach) -> str:
    """Site and station of a record."""
    return f"{reach.site}/{reach.station}"


def accounts(
    reaches: Sequence[tuple[Path, Reach]], wanted: set[str], water: Water
) -> tuple[LotAccount, ...]:
    """Return the accounts of lots, by component and code.

    Args:
        reaches: each record asked, and what it says.
        wanted: codes of the lots.
        water: uptake between weighing a lot and weighing the bags.

    Raises:
        BadInput: a code means different deliveries at two stations.
    """
    known: dict[str, InputLot] = {}
    where: dict[str, list[str]] = {}
    for _, reach in reaches:
        for lot in reach.lots:
            if lot.code not in wanted:
                continue
            there = known.setdefault(lot.code, lot)
            if (there.component, there.supplier) != (lot.component, lot.supplier):
                raise BadInput(
                    f"lot {lot.code} means two deliveries",
                    f"{there.component} from {there.supplier} at {where[lot.code][0]}, "
                    f"{lot.component} from {lot.supplier} at {station_name(reach)}: ask each alone",
                )
            if lot.status is LotStatus.HELD:
                known[lot.code] = lot
            where.setdefault(lot.code, []).append(station_name(reach))
    entries = _Entries.of(reaches, wanted)
    gone = frozenset[str]().union(*(lots_of_gone(home) for home, _ in reaches))
    return tuple(
        LotAccount(
            lot=lot,
            stations=tuple(where[code]),
            deliveries=tuple(dict.fromkeys(entries.delivered(code))),
            balance=balance(code, lot.component, entries.moves, entries.packed, water),
            wasted=entries.wasted(code),
            holds=entries.holds.get(code, ()),
            purged=code in gone,
        )
        for code, lot in sorted(known.items(), key=lambda one: (one[1].component, one[0]))
    )


@dataclass(frozen=True, slots=True)
class _Entries:
    """What people entered about some lots, over all stations."""

    moves: tuple[LotMove, ...]
    packed: tuple[PackedSum, ...]
    deliveries: tuple[Delivery, ...]
    holds: Mapping[str, tuple[FactRecord, ...]]

    @classmethod
    def of(cls, reaches: Sequence[tuple[Path, Reach]], wanted: Collection[str]) -> _Entries:
        """Read them."""
        found: list[FactRecord] = []
        packed: list[PackedSum] = []
        for home, _ in reaches:
            found += entries_about(home, wanted)
            packed += packed_with(home, wanted)
        found.sort(key=lambda one: one.at.utc)
        of = {kind: [one.fact for one in found if one.fact.kind is kind] for kind in EntryKind}
        return cls(
            moves=tuple(map(move_of, of[EntryKind.LOT_MOVE])),
            packed=tuple(packed),
            deliveries=tuple(map(delivery_of, of[EntryKind.DELIVERY])),
            holds=open_holds(found),
        )

    def delivered(self, code: str) -> tuple[Delivery, ...]:
        """Deliveries of a lot."""
        return tuple(one for one in self.deliveries if one.lot.code == code)

    def wasted(self, code: str) -> Fraction:
        """Grams of a lot thrown away."""
        wasted = (one for one in self.moves if one.lot == code and one.move is Move.WASTED)
        return sum((Fraction(one.quantity.grams) for one in wasted if one.quantity), Fraction(0))
