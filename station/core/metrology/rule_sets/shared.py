"""Rows several laws have in common: plans, the hour's batch, figure heights, two years' records."""

from __future__ import annotations

from collections.abc import Iterable
from decimal import Decimal
from fractions import Fraction

from station.core.metrology.clause import Clause, Status
from station.core.metrology.duties import (
    BatchRule,
    FigureBasis,
    FigureHeight,
    IntervalRule,
    Retention,
)
from station.core.metrology.plans import Plan, PlanKind

TWO_YEARS_DAYS = 731
G_21 = Clause("OIML G 21:2017 Annex A: control records kept at least 2 years")
ONE_FIFTH = Fraction(1, 5)

# batch from, to, packs taken, T1 packs accepted, packs of the mean check, its factor
EU_SINGLE_ROWS = (
    (100, 500, 50, 3, 30, "0.503"),
    (501, 3200, 80, 5, 50, "0.379"),
    (3201, None, 125, 7, 50, "0.379"),
)


def eu_single(clause: Clause) -> tuple[Plan, ...]:
    """Single non-destructive plans with the mean check on its own first 30 or 50 packs."""
    return tuple(
        Plan(PlanKind.SAMPLE, first, last, n, accept, Decimal(k), 0, clause, mean_n=mean_n)
        for first, last, n, accept, mean_n, k in EU_SINGLE_ROWS
    )


def simple_plans(
    kind: PlanKind,
    rows: Iterable[tuple[int, int | None, int, int, str]],
    clause: Clause,
    t2_accept: int | None = 0,
) -> tuple[Plan, ...]:
    """Build plans whose mean check uses every pack taken: (from, to, n, accept, factor)."""
    return tuple(
        Plan(kind, first, last, n, accept, Decimal(factor), t2_accept, clause)
        for first, last, n, accept, factor in rows
    )


def eu_destructive(clause: Clause) -> tuple[Plan, ...]:
    """Destructive plan for every batch of 100 or more."""
    return simple_plans(PlanKind.DESTRUCTIVE, ((100, None, 20, 1, "0.640"),), clause)


def hourly_batch(clause: Clause) -> BatchRule:
    """Hour's output at the end of the line, 10 000 packs elsewhere."""
    return BatchRule(
        hourly=True,
        most_elsewhere=10_000,
        words=(
            "at the end of the line the largest hourly output, of any size; elsewhere at most "
            "10 000 packs"
        ),
        clause=clause,
    )


def own_batch(document: str) -> BatchRule:
    """Packer's own lot, where no size of a batch is transcribed."""
    return BatchRule(
        hourly=False,
        most_elsewhere=None,
        words="the packer's own lot; no size of a batch is transcribed",
        clause=Clause(document, Status.OWN),
    )


def nominal_heights(clause: Clause) -> tuple[FigureHeight, ...]:
    """2, 3, 4 and 6 mm by nominal quantity."""
    rows = (("0", "50", "2"), ("50", "200", "3"), ("200", "1000", "4"), ("1000", None, "6"))
    return tuple(
        FigureHeight(
            FigureBasis.NOMINAL_G,
            Decimal(above),
            None if up_to is None else Decimal(up_to),
            Decimal(height),
            clause,
        )
        for above, up_to, height in rows
    )


def single_height(basis: FigureBasis, height_mm: str, clause: Clause) -> FigureHeight:
    """One height whatever the size."""
    return FigureHeight(basis, Decimal(0), None, Decimal(height_mm), clause)


def fifth_of_t(clause: Clause) -> IntervalRule:
    """Error of measurement at most one fifth of T."""
    return IntervalRule(ONE_FIFTH, by_interval=False, rows=(), least_intervals=0, clause=clause)


def two_years(words: str) -> Retention:
    """Keep two years, where the law's own text sets none or a shorter time."""
    return Retention(f"{words}; the station keeps at least 2 years", TWO_YEARS_DAYS, G_21)
