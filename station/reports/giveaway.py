"""What is given away above the nominal quantity, by product, hour, position, day or run; exact.

A bag counts while it is, or may yet be, sold. A bag below its nominal quantity takes away from the
sum: what a batch gives away is its mean above the nominal quantity times its bags.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from decimal import Decimal
from enum import StrEnum
from pathlib import Path

from station.core.metrology.exact import EXACT
from station.core.pack import IN_THE_BATCH, LabelState, Quality
from station.core.run import Run
from station.errors import BadInput
from station.reports.traceability_sheet import Cell, Sheet
from station.store.bag_sums import BagSum, bag_sums, production_days
from station.store.purged import GoneRun, gone_between, refusal_between, table_notes
from station.store.recall import frozen_runs

_KILO = Decimal("1e-9")
"""Kilograms in a microgram."""
HEAD = (
    "packs", "in_batch", "set_aside", "held", "labels", "net_kg", "nominal_kg", "given_away_kg",
    "given_away_percent", "g_per_pack", "money",
)  # fmt: skip


class By(StrEnum):
    """What bags are put together by."""

    PRODUCT = "product"
    HOUR = "hour"
    POSITION = "position"
    DAY = "day"
    RUN = "run"


@dataclass(frozen=True, slots=True)
class Given:
    """Bags put together.

    Args:
        name: of the product, hour, position, day or run.
        packs: all bags weighed.
        in_batch: those that are, or may yet be, sold.
        set_aside: the others.
        held: those in the batch that nobody may ship now.
        labels: bags that got a label, those taken back among them.
        net: exact micrograms of the bags in the batch.
        nominal: exact micrograms that they declare.
        money: what is given away, at the price of each product; None where a price is missing.
    """

    name: str
    packs: int
    in_batch: int
    set_aside: int
    held: int
    labels: int
    net: int
    nominal: int
    money: Decimal | None

    @property
    def kilograms(self) -> Decimal:
        """Given away, exact; below the nominal quantity less than nothing."""
        return kilograms(self.net - self.nominal)

    @property
    def percent(self) -> Decimal | None:
        """Given away in percent of what is declared, three decimals; None without a bag."""
        if not self.nominal:
            return None
        return round(Decimal(self.net - self.nominal) * 100 / Decimal(self.nominal), 3)

    @property
    def grams_a_pack(self) -> Decimal | None:
        """Given away by each bag, three decimals; None without a bag."""
        if not self.in_batch:
            return None
        return round(Decimal(self.net - self.nominal) / 10**6 / self.in_batch, 3)


@dataclass(frozen=True, slots=True)
class PeriodSums:
    """The bags of some production days, ready to be put together in any way.

    Args:
        first, last: the days, both counted in.
        sums: bags that are alike.
        runs: their runs as frozen, by id.
        prices: of a kilogram, by article code.
        gone: runs of these days that were purged and are in no sum.
    """

    first: date
    last: date
    sums: tuple[BagSum, ...]
    runs: Mapping[str, Run]
    prices: Mapping[str, Decimal]
    gone: tuple[GoneRun, ...] = ()

    def by(self, key: By) -> tuple[Given, ...]:
        """Put the bags together; products by code, all else by time or name."""
        found: dict[str, list[BagSum]] = {}
        for one in self.sums:
            found.setdefault(self._name(key, one), []).append(one)
        names = found if key is By.RUN else sorted(found)
        return tuple(self._given(name, found[name]) for name in names)

    @property
    def whole(self) -> Given:
        """All of them."""
        return self._given("all", self.sums)

    def of(self, sums: Iterable[BagSum], name: str) -> Given:
        """Put some of them together under a name."""
        return self._given(name, tuple(sums))

    def rejects(self) -> tuple[tuple[str, int], ...]:
        """Bags set aside by reason, the most frequent first."""
        counted: dict[str, int] = {}
        for one in self.sums:
            if one.quality not in IN_THE_BATCH:
                counted[one.reason] = counted.get(one.reason, 0) + one.bags
        return tuple(sorted(counted.items(), key=lambda item: (-item[1], item[0])))

    def _name(self, key: By, one: BagSum) -> str:
        run = self.runs[one.run]
        named: Mapping[By, Callable[[], str]] = {
            By.PRODUCT: lambda: run.product.code,
            By.HOUR: lambda: f"{one.hour:%Y-%m-%d %H:00}",
            By.POSITION: lambda: f"{run.line} {one.operator}",
            By.DAY: lambda: one.day.isoformat(),
            By.RUN: lambda: f"{run.blend_lot} {run.product.code}",
        }
        return named[key]()

    def _given(self, name: str, sums: Sequence[BagSum]) -> Given:
        sold = [one for one in sums if one.quality in IN_THE_BATCH]
        nominal = sum(one.bags * self._nominal(one) for one in sold)
        return Given(
            name=name,
            packs=sum(one.bags for one in sums),
            in_batch=sum(one.bags for one in sold),
            set_aside=sum(one.bags for one in sums if one.quality not in IN_THE_BATCH),
            held=sum(one.bags for one in sums if one.quality is Quality.HELD),
            labels=sum(one.bags for one in sums if one.label is not LabelState.NONE),
            net=sum(one.micrograms for one in sold),
            nominal=nominal,
            money=self._money(sold),
        )

    def _nominal(self, one: BagSum) -> int:
        return self.runs[one.run].product.nominal.micrograms

    def _money(self, sold: Iterable[BagSum]) -> Decimal | None:
        """Each product at its own price; one without a price leaves the sum unknown."""
        money = Decimal(0)
        for one in sold:
            price = self.prices.get(self.runs[one.run].product.code)
            if price is None:
                return None
            over = kilograms(one.micrograms - one.bags * self._nominal(one))
            money = EXACT.add(money, EXACT.multiply(over, price))
        return money


def period_sums(
    home: Path, first: date | None, last: date | None, prices: Mapping[str, Decimal]
) -> PeriodSums:
    """Gather the bags of some production days.

    Args:
        home: folder of the record.
        first: first production day; None for the first on record.
        last: last one, counted in; None for the last on record.
        prices: of a kilogram, by article code.

    Raises:
        BadInput: nothing was packed then; names the days on record.
    """
    days = production_days(home)
    if not days:
        raise BadInput(f"the record in {home}", "holds no run yet")
    begin, end = first or days[0], last or days[-1]
    sums = bag_sums(home, begin, end)
    if not sums:
        raise refusal_between(home, begin, end) or BadInput(
            f"{begin} to {end}", f"nothing was packed then: on record are {days[0]} to {days[-1]}"
        )
    runs = frozen_runs(home, {one.run for one in sums})
    gone = gone_between(home, date.min if first is None else begin, end)
    return PeriodSums(begin, end, sums, runs, prices, gone)


def kilograms(micrograms: int) -> Decimal:
    """Whole micrograms as exact kilograms."""
    return EXACT.multiply(Decimal(micrograms), _KILO)


def giveaway_sheet(sums: PeriodSums, key: By) -> Sheet:
    """The bags put together as a table, with all of them in its last row."""
    rows = [*sums.by(key), sums.whole]
    table = tuple((one.name, *cells(one)) for one in rows)
    return Sheet(f"by {key}", (str(key), *HEAD), table, table_notes(sums.gone))


def cells(one: Given) -> tuple[Cell, ...]:
    """The figures of one row, in the order of :data:`HEAD`."""
    figures: tuple[Decimal | None, ...] = (
        *map(Decimal, (one.packs, one.in_batch, one.set_aside, one.held, one.labels)),
        kilograms(one.net),
        kilograms(one.nominal),
        one.kilograms,
        one.percent,
        one.grams_a_pack,
        one.money,
    )
    return tuple("" if figure is None else figure for figure in figures)


def hours_of(sums: Iterable[BagSum]) -> tuple[datetime, ...]:
    """The hours in which bags were judged, in order."""
    return tuple(sorted({one.hour for one in sums}))
