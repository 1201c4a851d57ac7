"""OIML R 87:2016, quantity of product in prepackages.

The tables of R 87 are from memory; the numbers are confirmed one by one in laws that copy them (the
shortages in NZ and Canadian law, the pairs of packs and T1 packs in GB SI 2006/659, the factors in
EU, NZ and Canadian law). Its plans for lots below 100 (Annex I) and its stepwise plan (Annex H)
nobody could confirm, so they are refused.
"""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from station.core.metrology.clause import Clause, Status
from station.core.metrology.plans import FullRule, PlanKind
from station.core.metrology.rule_set import RuleSet, Scope
from station.core.metrology.rule_sets.metric_table import metric_table
from station.core.metrology.rule_sets.shared import fifth_of_t, own_batch, simple_plans, two_years
from station.core.metrology.tolerance import Rounding

_DOCUMENT = "OIML R 87:2016"

# Table 2: lot from, to, packs taken, T1 packs accepted, sample correction factor
_PLANS = (
    (100, 500, 50, 3, "0.379"),
    (501, 3200, 80, 5, "0.295"),
    (3201, None, 125, 7, "0.234"),
)


def _row(above_g: Decimal) -> Clause:
    return Clause(f"{_DOCUMENT} Table 1, row above {above_g} g", Status.MEMORY)


OIML_R87_2016 = RuleSet(
    id="oiml-r87-2016",
    version="R 87 edition 2016, transcription 1",
    title="OIML recommendation, average requirement",
    market="where a law adopts OIML R 87",
    sources=(Clause(_DOCUMENT, Status.MEMORY),),
    scope=Scope(None, None, Clause(_DOCUMENT, Status.MEMORY)),
    tolerances=(
        metric_table(_row, (Rounding(Decimal(1000), Decimal("0.1")), Rounding(None, Decimal(1)))),
    ),
    second_clause=Clause(f"{_DOCUMENT} Annex G: T2 is twice T", Status.MEMORY),
    plans=simple_plans(
        PlanKind.SAMPLE, _PLANS, Clause(f"{_DOCUMENT} Table 2 and 4.2", Status.MEMORY)
    ),
    full_rules=(
        FullRule(
            1,
            None,
            Fraction(1, 40),
            0,
            Clause(f"{_DOCUMENT} Annex F, 2.5 % as for the sampling plans", Status.MEMORY),
        ),
    ),
    batch_rule=own_batch(f"{_DOCUMENT}: inspection lot"),
    figure_heights=(),
    retention=two_years("R 87 sets no time"),
    interval_rule=fifth_of_t(
        Clause(f"{_DOCUMENT}: error of measurement at most 0.2 T", Status.MEMORY)
    ),
)
