"""What every rule set answers, and the limits of one pack it gives.

A rule set is data: tables with a clause and a status at every row. The functions here and in the
neighbouring modules are the same for all sets. The rows are a transcription to be checked against
the current text of the law; the competent authority decides.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from station.core.mass import Mass, MassError, Unit
from station.core.metrology.clause import Clause, RuleRefused, Status
from station.core.metrology.duties import (
    BatchRule,
    FigureBasis,
    FigureHeight,
    IntervalRule,
    Retention,
)
from station.core.metrology.exact import EXACT, trimmed
from station.core.metrology.plans import FullRule, Plan, PlanKind, find_full_rule, find_plan
from station.core.metrology.tolerance import ToleranceTable

__all__ = [
    "Clause",
    "FigureBasis",
    "Limits",
    "PlanKind",
    "RuleRefused",
    "RuleSet",
    "Scope",
    "Status",
]


@dataclass(frozen=True, slots=True)
class Limits:
    """The limits of one pack, all in the unit of the nominal quantity, exact.

    Args:
        rule_set: id of the rule set.
        version: edition of the law and number of its transcription.
        nominal: nominal quantity Qn.
        tolerable: tolerable shortage T (T1; the MAV in the United States).
        t1: Qn - T; a pack strictly below it is a T1 pack.
        t2: Qn - 2T, or Qn less the set's own second shortage; strictly below it is a T2 pack.
        source: clauses and status of the rows used.
    """

    rule_set: str
    version: str
    nominal: Mass
    tolerable: Mass
    t1: Mass
    t2: Mass
    source: str


@dataclass(frozen=True, slots=True)
class Scope:
    """Nominal quantities a rule set is for, both ends included, in grams."""

    least_g: Decimal | None
    most_g: Decimal | None
    clause: Clause

    def covers(self, nominal: Mass) -> bool:
        """Tell whether a nominal quantity lies inside."""
        grams = nominal.grams
        if grams <= 0 or (self.least_g is not None and grams < self.least_g):
            return False
        return self.most_g is None or grams <= self.most_g

    def __str__(self) -> str:
        least = "more than 0 g" if self.least_g is None else f"at least {self.least_g} g"
        most = "" if self.most_g is None else f" and at most {self.most_g} g"
        return f"{least}{most} ({self.clause})"


@dataclass(frozen=True, slots=True)
class RuleSet:
    """One body of law for packs of equal nominal quantity, as data.

    Args:
        id: name on the command line and in records, for example ``eu-76-211``.
        version: edition of the law and number of its transcription.
        title: what people call it.
        market: where it holds.
        sources: documents transcribed.
        scope: nominal quantities covered.
        tolerances: tables of T, one per family of units.
        second_clause: where the second limit comes from.
        plans: every row of every reference-test plan.
        full_rules: what a fully weighed batch must show, by batch size.
        batch_rule: which packs are judged together.
        figure_heights: least heights of the figures; empty where not transcribed.
        retention: how long records are kept.
        interval_rule: how fine the scale must be.
        second_tolerances: tables of the second shortage where the law prints its own; empty
            means twice T.
        catch_weight_tolerances: tables for packs each with its own quantity; empty where such
            packs are outside the set.
    """

    id: str
    version: str
    title: str
    market: str
    sources: tuple[Clause, ...]
    scope: Scope
    tolerances: tuple[ToleranceTable, ...]
    second_clause: Clause
    plans: tuple[Plan, ...]
    full_rules: tuple[FullRule, ...]
    batch_rule: BatchRule
    figure_heights: tuple[FigureHeight, ...]
    retention: Retention
    interval_rule: IntervalRule
    second_tolerances: tuple[ToleranceTable, ...] = ()
    catch_weight_tolerances: tuple[ToleranceTable, ...] = ()

    def limits(self, nominal: Mass) -> Limits:
        """Return T, T1 and T2 of a nominal quantity, in its own unit.

        Raises:
            RuleRefused: the quantity is outside the set's scope, or declared in a unit the set
                does not know.
        """
        return self._limits(nominal, self.tolerances)

    def catch_weight_limits(self, declared: Mass) -> Limits:
        """Return T, T1 and T2 of one pack of a kind where each pack declares its own quantity.

        Raises:
            RuleRefused: such packs are outside the set.
        """
        if not self.catch_weight_tolerances:
            raise RuleRefused(
                f"{self.id} is for packs of equal nominal quantity: it has no limits for a "
                f"catch-weight pack of {declared}"
            )
        return self._limits(declared, self.catch_weight_tolerances)

    def plan(self, lot_size: int, kind: PlanKind = PlanKind.SAMPLE) -> Plan:
        """Return the reference-test plan for a batch of this many packs.

        For `PlanKind.FULL` the plan takes every pack, with factor 0.

        Raises:
            RuleRefused: the set has no such plan for such a batch.
        """
        if kind is not PlanKind.FULL:
            return find_plan(self.plans, kind, lot_size, self.id)
        rule = find_full_rule(self.full_rules, lot_size, self.id)
        return Plan(
            kind=kind,
            lot_from=rule.lot_from,
            lot_to=rule.lot_to,
            n=lot_size,
            accept=rule.accept(lot_size),
            factor=Decimal(0),
            t2_accept=rule.t2_accept,
            clause=rule.clause,
        )

    def official_plan(self, lot_size: int) -> Plan:
        """Return the plan of the official test: the sample, or every pack of a small batch."""
        smallest = min(row.lot_from for row in self.plans if row.kind is PlanKind.SAMPLE)
        return self.plan(lot_size, PlanKind.SAMPLE if lot_size >= smallest else PlanKind.FULL)

    def figure_height(self, basis: FigureBasis, value: Decimal = Decimal(1)) -> FigureHeight:
        """Return the row with the least height of the figures of the net quantity.

        Args:
            basis: what the height depends on.
            value: nominal quantity in g, or panel area in the unit of the basis; any positive
                number where the basis has no size.

        Raises:
            RuleRefused: no such row is transcribed.
        """
        for row in self.figure_heights:
            if row.covers(basis, value):
                return row
        known = ", ".join(sorted({row.basis.value for row in self.figure_heights})) or "none"
        raise RuleRefused(
            f"{self.id} gives no figure height by {basis} of {value}; transcribed: {known}"
        )

    def _limits(self, nominal: Mass, tables: tuple[ToleranceTable, ...]) -> Limits:
        if not self.scope.covers(nominal):
            raise RuleRefused(
                f"{nominal} is outside {self.id}: a nominal quantity must be {self.scope}"
            )
        table, amount = self._table_for(tables, nominal)
        first = self._shortage(table, amount, nominal)
        tolerable = _in_unit_of(nominal, first, table)
        source = str(self._clause(table, amount))
        second = tolerable * 2
        if self.second_tolerances:
            own, amount = self._table_for(self.second_tolerances, nominal)
            second = _in_unit_of(nominal, self._shortage(own, amount, nominal), own)
        return Limits(
            rule_set=self.id,
            version=self.version,
            nominal=nominal,
            tolerable=tolerable,
            t1=nominal - tolerable,
            t2=nominal - second,
            source=f"{source}; {self.second_clause}",
        )

    def _table_for(
        self, tables: tuple[ToleranceTable, ...], nominal: Mass
    ) -> tuple[ToleranceTable, Decimal]:
        for table in tables:
            if nominal.unit in table.units:
                return table, _amount_in(table, nominal)
        known = ", ".join(sorted(unit for table in tables for unit in table.units))
        raise RuleRefused(
            f"{self.id} knows no nominal quantity in {nominal.unit}: declare {nominal} in one of "
            f"{known}"
        )

    def _shortage(self, table: ToleranceTable, amount: Decimal, nominal: Mass) -> Decimal:
        shortage = table.shortage(amount)
        if shortage is None:
            raise RuleRefused(f"no row of {self.id} reaches {nominal}")
        return shortage

    def _clause(self, table: ToleranceTable, amount: Decimal) -> Clause:
        band = table.band(amount)
        assert band is not None, "a shortage was found, so a row covers it"
        return band.clause


_OUNCES_PER_POUND = Decimal(16)
_TO_TABLE = {  # (declared unit, table unit) -> exact factor
    (Unit.MILLIGRAM, Unit.GRAM): Decimal("0.001"),
    (Unit.GRAM, Unit.GRAM): Decimal(1),
    (Unit.KILOGRAM, Unit.GRAM): Decimal(1000),
    (Unit.POUND, Unit.POUND): Decimal(1),
    (Unit.OUNCE, Unit.POUND): 1 / _OUNCES_PER_POUND,
}


def _amount_in(table: ToleranceTable, nominal: Mass) -> Decimal:
    return EXACT.multiply(nominal.amount, _TO_TABLE[nominal.unit, table.unit])


def _in_unit_of(nominal: Mass, shortage: Decimal, table: ToleranceTable) -> Mass:
    factor = _TO_TABLE[nominal.unit, table.unit]
    try:
        return Mass(trimmed(EXACT.divide(shortage, factor)), nominal.unit)
    except ArithmeticError as fault:  # pragma: no cover - every factor is a finite decimal
        raise MassError(f"{shortage} {table.unit} has no exact value in {nominal.unit}") from fault
