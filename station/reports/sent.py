"""Where the bags of a recall are: with whom, in cases here, loose, or out of the count."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from decimal import Decimal
from pathlib import Path

from station.core.pack import FREE, IN_THE_BATCH
from station.core.shipping_lines import Place, ShipmentLine
from station.store.recall import PackRow
from station.store.shipping import places_of

_MICRO_TO_KILO = Decimal("1e-9")
_COUNTS = frozenset(map(str, IN_THE_BATCH))


@dataclass(frozen=True, slots=True)
class Part:
    """Some of the bags: how many, and the exact sum of their net in micrograms."""

    bags: int = 0
    micrograms: int = 0

    @property
    def kilograms(self) -> Decimal:
        """Their net, exact."""
        return self.micrograms * _MICRO_TO_KILO

    def __add__(self, other: Part) -> Part:
        return Part(self.bags + other.bags, self.micrograms + other.micrograms)


@dataclass(frozen=True, slots=True)
class Sent:
    """Bags of a recall that left with one shipment.

    Args:
        station: whose record it is.
        shipment: with whom, when, under which paper.
        cases: SSCCs of the cases they are in.
        part: how much.
    """

    station: str
    shipment: ShipmentLine
    cases: tuple[str, ...]
    part: Part


@dataclass(frozen=True, slots=True)
class Whereabouts:
    """All bags of a recall, each in exactly one part.

    Args:
        sent: with customers, by shipment.
        cased: in cases that stand in the house.
        loose: in no case, but in the count.
        out: set aside, reworked, sampled or dumped.
        places: where each cased bag is, by serial.
        free: bags in the house that nothing keeps from leaving.
    """

    sent: tuple[Sent, ...] = ()
    cased: Part = Part()
    loose: Part = Part()
    out: Part = Part()
    places: Mapping[str, Place] = field(default_factory=dict)
    free: int = 0

    @property
    def gone(self) -> Part:
        """Everything that is with customers."""
        return sum((one.part for one in self.sent), Part())

    @property
    def here(self) -> Part:
        """Everything in the count that is in the house."""
        return self.cased + self.loose

    @property
    def customers(self) -> tuple[str, ...]:
        """Names of those who got some, each once."""
        return tuple(dict.fromkeys(one.shipment.customer.name for one in self.sent))


def whereabouts(records: Iterable[tuple[str, Path, Sequence[PackRow]]]) -> Whereabouts:
    """Return where bags are.

    Args:
        records: name of a station, folder of its record, its bags.
    """
    sent: list[Sent] = []
    cased, loose, out = Part(), Part(), Part()
    everywhere: dict[str, Place] = {}
    free = 0
    for station, home, packs in records:
        places = places_of(home, [row.serial for row in packs])
        everywhere |= places
        parts: dict[str, list[PackRow]] = {}
        shipments: dict[str, ShipmentLine] = {}
        rest: dict[str, list[PackRow]] = {"cased": [], "loose": [], "out": []}
        for row in packs:
            place = places.get(row.serial)
            if place is not None and place.shipment is not None:
                shipments[place.shipment.number] = place.shipment
                parts.setdefault(place.shipment.number, []).append(row)
            elif row.quality not in _COUNTS:
                rest["out"].append(row)
            else:
                rest["loose" if place is None else "cased"].append(row)
                free += row.quality in FREE
        cased, loose, out = (
            before + _part(rest[name])
            for before, name in ((cased, "cased"), (loose, "loose"), (out, "out"))
        )
        sent += [
            Sent(
                station,
                shipments[number],
                tuple(dict.fromkeys(places[row.serial].case for row in rows)),
                _part(rows),
            )
            for number, rows in parts.items()
        ]
    return Whereabouts(tuple(sent), cased, loose, out, everywhere, free)


def _part(rows: Sequence[PackRow]) -> Part:
    return Part(len(rows), sum(row.net_ug for row in rows))
