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
from station.core.metrology.exact import EXACT, trimmed
from station.core.metrology.tolerance import ToleranceTable

__all__ = ["Clause", "Limits", "RuleRefused", "RuleSet", "Scope", "Status"]


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
        second_tolerances: tables of the second shortage where the law prints its own; empty
            means twice T.
        second_clause: where the second limit comes from.
    """

    id: str
    version: str
    title: str
    market: str
    sources: tuple[Clause, ...]
    scope: Scope
    tolerances: tuple[ToleranceTable, ...]
    second_clause: Clause
    second_tolerances: tuple[ToleranceTable, ...] = ()

    def limits(self, nominal: Mass) -> Limits:
        """Return T, T1 and T2 of a nominal quantity, in its own unit.

        Raises:
            RuleRefused: the quantity is outside the set's scope, or declared in a unit the set
                does not know.
        """
        self._check_scope(nominal)
        table, amount = self._table_for(self.tolerances, nominal)
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

    def _check_scope(self, nominal: Mass) -> None:
        least, most = self.scope.least_g, self.scope.most_g
        too_small = nominal.grams <= 0 or (least is not None and nominal.grams < least)
        if too_small or (most is not None and nominal.grams > most):
            ends = " and ".join(
                part
                for part in (
                    f"at least {least} g" if least is not None else "more than 0 g",
                    f"at most {most} g" if most is not None else "",
                )
                if part
            )
            raise RuleRefused(
                f"{nominal} is outside {self.id}: a nominal quantity must be {ends} "
                f"({self.scope.clause})"
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
