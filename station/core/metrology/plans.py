"""Reference-test plans: how many packs are taken from a batch, and what the batch must show.

A plan is one row of a law's table. The mean criterion of every plan is
``mean + factor * s >= nominal quantity``, with factor 0 where all packs are weighed.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from fractions import Fraction

from station.core.metrology.clause import Clause, RuleRefused


class PlanKind(StrEnum):
    """The ways a law tests a batch."""

    SAMPLE = "sample"
    DOUBLE = "double"
    FULL = "full"
    DESTRUCTIVE = "destructive"
    DESTRUCTIVE_E_MARK = "destructive-e-mark"
    CATEGORY_B = "category-b"


@dataclass(frozen=True, slots=True)
class SecondStage:
    """Second stage of a double plan.

    Args:
        n: further packs taken.
        accept: most T1 packs in both stages together.
        reject_first: from this many T1 packs in the first stage on there is no second stage.
    """

    n: int
    accept: int
    reject_first: int


@dataclass(frozen=True, slots=True)
class Plan:
    """One row of a table of plans.

    Args:
        kind: way of testing.
        lot_from: smallest batch the row is for, in packs.
        lot_to: largest batch, included; ``None`` means without end.
        n: packs taken; in a double plan those of the first stage.
        accept: most T1 packs that still pass (first stage of a double plan).
        factor: multiplier of s in the mean criterion, as printed.
        t2_accept: most T2 packs that still pass; ``None`` where the law has no such clause.
        clause: where the row comes from.
        mean_n: packs of the mean check, the first ones taken; ``None`` means all of them.
        student: printed t where the law divides it by the root of n itself; then ``factor`` only
            shows the quotient.
        second: second stage of a double plan.
    """

    kind: PlanKind
    lot_from: int
    lot_to: int | None
    n: int
    accept: int
    factor: Decimal
    t2_accept: int | None
    clause: Clause
    mean_n: int | None = None
    student: Decimal | None = None
    second: SecondStage | None = None

    def covers(self, lot_size: int) -> bool:
        """Tell whether the row is for batches of this size."""
        return self.lot_from <= lot_size and (self.lot_to is None or lot_size <= self.lot_to)

    @property
    def mean_size(self) -> int:
        """Packs the mean criterion is computed from."""
        return self.n if self.mean_n is None else self.mean_n

    @property
    def factor_squared(self) -> Fraction:
        """Exact square of the multiplier of s."""
        if self.student is not None:
            return Fraction(self.student) ** 2 / self.mean_size
        return Fraction(self.factor) ** 2

    def __str__(self) -> str:
        second = f", then {self.second.n} more" if self.second else ""
        return (
            f"{self.kind}: {self.n} packs{second}, at most {self.accept} below T1 ({self.clause})"
        )


@dataclass(frozen=True, slots=True)
class FullRule:
    """What a batch must show when every pack of it is weighed.

    Args:
        lot_from: smallest batch the rule is for.
        lot_to: largest batch, included; ``None`` means without end.
        share: largest share of T1 packs.
        t2_accept: most T2 packs; ``None`` where the law has no such clause.
        clause: where the share comes from.
    """

    lot_from: int
    lot_to: int | None
    share: Fraction
    t2_accept: int | None
    clause: Clause

    def accept(self, lot_size: int) -> int:
        """Most T1 packs in a batch of this size, by integer arithmetic."""
        return self.share.numerator * lot_size // self.share.denominator


def find_plan(rows: Iterable[Plan], kind: PlanKind, lot_size: int, rule_set_id: str) -> Plan:
    """Return the row for a batch of this size.

    Raises:
        RuleRefused: the set has no such plan, or none for so small a batch.
    """
    if lot_size < 1:
        raise RuleRefused(f"a batch of {lot_size} packs cannot be tested: give 1 or more")
    rows = list(rows)
    of_kind = [row for row in rows if row.kind is kind]
    if not of_kind:
        known = ", ".join(sorted({row.kind.value for row in rows} | {PlanKind.FULL.value}))
        raise RuleRefused(f"{rule_set_id} has no {kind} plan here: use one of {known}")
    for row in of_kind:
        if row.covers(lot_size):
            return row
    smallest = min(row.lot_from for row in of_kind)
    raise RuleRefused(
        f"{rule_set_id} has no {kind} plan for a batch of {lot_size} packs, only from {smallest} "
        "on: weigh every pack and judge the batch in full"
    )


def find_full_rule(rules: Iterable[FullRule], lot_size: int, rule_set_id: str) -> FullRule:
    """Return the rule for a fully weighed batch of this size.

    Raises:
        RuleRefused: there is none.
    """
    for rule in rules:
        if rule.lot_from <= lot_size and (rule.lot_to is None or lot_size <= rule.lot_to):
            return rule
    raise RuleRefused(f"{rule_set_id} has no rule for a fully weighed batch of {lot_size} packs")
