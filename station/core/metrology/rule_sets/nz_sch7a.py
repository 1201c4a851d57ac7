"""NZ: Weights and Measures Regulations 1999, Schedule 7A (average quantity system).

The factors carry a correction for the finite lot, t(0.995; n-1)/sqrt(n) * sqrt(1 - n/N) with N the
upper end of the lot band. No rounding of T is printed, so T is used unrounded.
"""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from station.core.metrology.clause import Clause, Status
from station.core.metrology.plans import FullRule, PlanKind
from station.core.metrology.rule_set import RuleSet, Scope
from station.core.metrology.rule_sets.metric_table import metric_table
from station.core.metrology.rule_sets.shared import fifth_of_t, own_batch, simple_plans, two_years

_LAW = "NZ Weights and Measures Regulations 1999 Sch.7A"

# Table 1: lot from, to, packs taken, T1 packs accepted, factor; lots of 2 to 12 are taken whole
_PLANS = (
    *((size, size, size, 0, "0") for size in range(2, 13)),
    (13, 39, 12, 0, "0.746"),
    (40, 79, 12, 1, "0.826"),
    (80, 149, 12, 2, "0.860"),
    (150, 399, 32, 3, "0.465"),
    (400, 4000, 32, 4, "0.483"),
    (4001, None, 80, 6, "0.295"),
)


def _row(above_g: Decimal) -> Clause:
    return Clause(f"{_LAW} Table 2, row above {above_g} g")


NZ_SCH7A = RuleSet(
    id="nz-sch7a",
    version="Regulations 1999 Sch.7A, transcription 1",
    title="New Zealand, average quantity system",
    market="New Zealand",
    sources=(Clause(_LAW),),
    scope=Scope(None, None, Clause(_LAW)),
    tolerances=(metric_table(_row, ()),),
    second_clause=Clause(f"{_LAW}: twice the tolerable deficiency", Status.MEMORY),
    plans=simple_plans(PlanKind.SAMPLE, _PLANS, Clause(f"{_LAW} Table 1")),
    full_rules=(
        FullRule(1, 12, Fraction(0), 0, Clause(f"{_LAW} Table 1, lots taken whole")),
        FullRule(
            13,
            None,
            Fraction(1, 40),
            0,
            Clause("2.5 % of a fully weighed batch, as OIML R 87", Status.OWN),
        ),
    ),
    batch_rule=own_batch(_LAW),
    figure_heights=(),
    retention=two_years("no time is transcribed"),
    interval_rule=fifth_of_t(
        Clause("OIML R 87: error of measurement at most 0.2 T", Status.MEMORY)
    ),
)
