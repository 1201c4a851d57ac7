"""DE: Fertigpackungsverordnung of 18 November 2020 (FPackV), BGBl. I 2020 p. 2504.

Read from the published text: s.9(3) and (4) (the second limit is a table of its own, rounded up on
its own), Anlage 3 (plans, mean check on every pack taken, 2 % in a full test), Anlage 7 (scales).
"""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from station.core.mass import Unit
from station.core.metrology.clause import Clause
from station.core.metrology.duties import FigureBasis, IntervalRow, IntervalRule, Retention
from station.core.metrology.plans import FullRule, PlanKind
from station.core.metrology.rule_set import RuleSet, Scope
from station.core.metrology.rule_sets.metric_table import METRIC_UNITS, UP_TO_TENTH, metric_table
from station.core.metrology.rule_sets.shared import (
    ONE_FIFTH,
    TWO_YEARS_DAYS,
    hourly_batch,
    nominal_heights,
    simple_plans,
    single_height,
)
from station.core.metrology.tolerance import Band, ToleranceTable

_LAW = "DE FPackV 2020"

# s.9(4): above g, up to and including g, per cent, grams
_SECOND_ROWS = (
    ("0", "50", "18", None),
    ("50", "100", None, "9"),
    ("100", "200", "9", None),
    ("200", "300", None, "18"),
    ("300", "500", "6", None),
    ("500", "1000", None, "30"),
    ("1000", "10000", "3", None),
)

# Anlage 3 no.3 a: batch from, to, packs taken, T1 packs accepted, factor
_SINGLE = (
    (100, 500, 50, 3, "0.379"),
    (501, 3200, 80, 5, "0.295"),
    (3201, 10000, 125, 7, "0.234"),
    (10001, None, 160, 8, "0.207"),
)

# Anlage 3 no.3 c, reduced
_DESTRUCTIVE = (
    (10, 99, 5, 0, "2.058"),
    (100, 500, 8, 0, "1.237"),
    (501, 3200, 13, 1, "0.847"),
    (3201, 10000, 20, 1, "0.640"),
    (10001, None, 30, 2, "0.503"),
)

# Anlage 7 no.1 b aa, non-automatic scales of class III or better: from g, below g, largest e in g
_INTERVALS = (
    ("5", "10", "0.1"),
    ("10", "25", "0.2"),
    ("25", "150", "0.5"),
    ("150", "350", "1"),
    ("350", "1750", "2"),
    ("1750", "3500", "5"),
    ("3500", "7000", "10"),
    ("7000", "25000", "20"),
    ("25000", "50000", "50"),
    ("50000", "100000", "100"),
    ("100000", "600000", "200"),
    ("600000", "1500000", "500"),
)


def _row(above_g: Decimal) -> Clause:
    return Clause(f"{_LAW} s.9(3), row above {above_g} g")


_SECOND = ToleranceTable(
    Unit.GRAM,
    METRIC_UNITS,
    tuple(
        Band(
            Decimal(above),
            Decimal(up_to),
            None if percent is None else Decimal(percent),
            None if grams is None else Decimal(grams),
            Clause(f"{_LAW} s.9(4), row above {above} g"),
        )
        for above, up_to, percent, grams in _SECOND_ROWS
    ),
    UP_TO_TENTH,
)

DE_FPACKV_2020 = RuleSet(
    id="de-fpackv-2020",
    version="FPackV of 2020-11-18, transcription 1",
    title="Germany, Fertigpackungsverordnung",
    market="Germany",
    sources=(Clause(f"{_LAW} s.4, 9, 11, 38, 41, Anlage 3 and 7"),),
    scope=Scope(Decimal(5), Decimal(10000), Clause(f"{_LAW} s.4(1) and s.9")),
    tolerances=(metric_table(_row, UP_TO_TENTH, up_to_g=Decimal(10000)),),
    second_clause=Clause(f"{_LAW} s.9(4), its own table"),
    second_tolerances=(_SECOND,),
    plans=(
        *simple_plans(PlanKind.SAMPLE, _SINGLE, Clause(f"{_LAW} Anlage 3 no.3 a, 6, 7")),
        *simple_plans(PlanKind.DESTRUCTIVE, _DESTRUCTIVE, Clause(f"{_LAW} Anlage 3 no.3 c, 6, 7")),
        *simple_plans(
            PlanKind.DESTRUCTIVE_E_MARK,
            ((100, None, 20, 1, "0.640"),),
            Clause(f"{_LAW} Anlage 3 no.3 e, 6, 7"),
        ),
    ),
    full_rules=(
        FullRule(1, None, Fraction(1, 50), 0, Clause(f"{_LAW} s.9(3) and Anlage 3 no.7 b: 2 %")),
    ),
    batch_rule=hourly_batch(Clause(f"{_LAW} Anlage 3 no.2")),
    figure_heights=(
        *nominal_heights(Clause(f"{_LAW} s.38(2)")),
        single_height(FigureBasis.E_MARK, "3", Clause(f"{_LAW} s.11(2)")),
        single_height(FigureBasis.CATCH_WEIGHT, "2", Clause(f"{_LAW} s.38(6)")),
    ),
    retention=Retention(
        "until the next inspection by the authority; the station keeps at least 2 years",
        TWO_YEARS_DAYS,
        Clause(f"{_LAW} s.41(4); OIML G 21:2017 Annex A"),
    ),
    interval_rule=IntervalRule(
        ONE_FIFTH,
        by_interval=False,
        rows=tuple(IntervalRow(*(Decimal(cell) for cell in row)) for row in _INTERVALS),
        least_intervals=0,
        clause=Clause(f"{_LAW} Anlage 7 no.1 b"),
    ),
)
