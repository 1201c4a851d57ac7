"""What a simulated week made, counted while it was made and not asked of the record."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from pathlib import Path

from station.app.week.plan import Planted, RunPlan
from station.core.mass import Mass, Unit
from station.core.pack import PackRecord, Quality
from station.core.run import Run


@dataclass(frozen=True, slots=True)
class Plant:
    """One planted fault.

    Args:
        fault: which.
        run: in which run it was planted.
        first, last: serials of the first and last bag it reaches; empty where bags are not in one
            row.
        bags: how many.
        words: what was done.
        name: of the lot, roll or film lot; empty where there is none.
    """

    fault: Planted
    run: RunPlan
    first: str
    last: str
    bags: int
    words: str
    name: str = ""


@dataclass(slots=True)
class Count:
    """Bags of one kind, with the grams of the good ones."""

    bags: int = 0
    good: int = 0
    rejects: int = 0
    labels: int = 0
    voided: int = 0
    grams: Decimal = Decimal(0)

    def add(self, record: PackRecord, *, good: bool) -> None:
        """Count a bag as it was judged."""
        self.bags += 1
        self.good += good
        self.rejects += not good
        self.labels += good
        self.grams += record.draft.weighing.net.grams if good else 0

    def take_back(self, record: PackRecord) -> None:
        """Make a good bag a reject whose label is void."""
        self.good -= 1
        self.rejects += 1
        self.voided += 1
        self.grams -= record.draft.weighing.net.grams


@dataclass(frozen=True, slots=True)
class WeekMade:
    """The whole week.

    Args:
        home: folder of the record.
        days: its days.
        runs: ids of its runs, in order.
        whole: all its bags.
        products: by article code.
        planted: its faults, in the order they were planted.
    """

    home: Path
    days: tuple[date, ...]
    runs: tuple[str, ...]
    whole: Count
    products: dict[str, Count]
    planted: tuple[Plant, ...]


@dataclass(slots=True)
class WeekTally:
    """Counts while the week is made."""

    _count: Count = field(default_factory=Count)
    _products: dict[str, Count] = field(default_factory=dict)
    _runs: dict[str, None] = field(default_factory=dict)
    _plants: list[Plant] = field(default_factory=list)
    _serials: list[str] = field(default_factory=list)

    @property
    def bags(self) -> int:
        """Bags so far."""
        return self._count.bags

    def serial(self, bag: int) -> str:
        """Serial of a bag by its number in the week, from 1."""
        return self._serials[bag - 1]

    def packed(self, run: Run, record: PackRecord) -> None:
        """Count a bag."""
        self._runs[run.id] = None
        self._serials.append(record.serial)
        good = record.draft.quality is Quality.GOOD
        for count in (self._count, self._of(run)):
            count.add(record, good=good)

    def taken_back(self, run: Run, record: PackRecord) -> None:
        """Count a labelled bag that was set aside."""
        for count in (self._count, self._of(run)):
            count.take_back(record)

    def planted(self, plant: Plant) -> None:
        """Keep a fault."""
        self._plants.append(plant)

    def whole(self, home: Path, days: Sequence[date]) -> WeekMade:
        """All of it."""
        return WeekMade(
            home, tuple(days), tuple(self._runs), self._count, self._products, tuple(self._plants)
        )

    def _of(self, run: Run) -> Count:
        return self._products.setdefault(run.product.code, Count())


def kilograms(grams: Decimal) -> str:
    """Exact kilograms as plain digits."""
    return Mass(grams, Unit.GRAM).in_unit(Unit.KILOGRAM).digits
