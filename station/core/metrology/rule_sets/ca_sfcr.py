"""CA: Safe Food for Canadians Regulations, SOR/2018-108, s.200 and Schedules 4 to 6.

The mean criterion is mean + t s / sqrt(n) >= declared, with the printed t of Schedule 5 Part 3 (at
n = 32, 64, 96 and 125 the printed t is an old interpolation; it is the law all the same). T is used
unrounded: no rounding is printed. One T2 pack is tolerated, two are not.
"""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from station.core.mass import Unit
from station.core.metrology.clause import Clause, Status
from station.core.metrology.duties import FigureBasis, FigureHeight
from station.core.metrology.plans import FullRule, Plan, PlanKind
from station.core.metrology.rule_set import RuleSet, Scope
from station.core.metrology.rule_sets.metric_table import METRIC_UNITS, metric_table
from station.core.metrology.rule_sets.shared import (
    fifth_of_t,
    own_batch,
    single_height,
    two_years,
)
from station.core.metrology.tolerance import Band, ToleranceTable

_LAW = "CA SFCR SOR/2018-108"
_T2_ACCEPT = 1  # s.200(4): two or more packs short by more than 2T fail the lot

# Schedule 5 Part 3: packs -> (t, t / sqrt(n)) as printed
PRINTED_T = {
    10: ("3.250", "1.03"),
    11: ("3.169", "0.955"),
    12: ("3.106", "0.897"),
    13: ("3.055", "0.847"),
    14: ("3.012", "0.805"),
    15: ("2.977", "0.769"),
    16: ("2.947", "0.737"),
    17: ("2.921", "0.708"),
    18: ("2.898", "0.683"),
    19: ("2.878", "0.660"),
    20: ("2.861", "0.640"),
    21: ("2.845", "0.621"),
    22: ("2.831", "0.604"),
    23: ("2.819", "0.588"),
    24: ("2.807", "0.573"),
    25: ("2.797", "0.559"),
    26: ("2.787", "0.547"),
    27: ("2.779", "0.535"),
    28: ("2.771", "0.524"),
    29: ("2.763", "0.513"),
    30: ("2.756", "0.503"),
    31: ("2.750", "0.494"),
    32: ("2.746", "0.485"),
    64: ("2.657", "0.332"),
    96: ("2.634", "0.269"),
    125: ("2.615", "0.234"),
}

# Schedule 5 Part 4: packs from, to, T1 packs that fail the lot
_REJECT_FROM = (
    (2, 8, 1),
    (9, 20, 2),
    (21, 32, 3),
    (33, 50, 4),
    (51, 65, 5),
    (66, 80, 6),
    (81, 102, 7),
    (103, 125, 8),
)

# Schedule 5 Part 1: lot from, to, packs taken; 25 % rounded up and at least 10 from 11 to 128
_SAMPLES = (
    *((size, size, size) for size in range(2, 11)),
    (11, 40, 10),
    *((4 * n - 3, 4 * n, n) for n in range(11, 33)),
    (129, 4000, 32),
    (4001, 8000, 64),
    (8001, 12000, 96),
    (12001, None, 125),
)

# Schedule 4 Table 1, catch weight: above g, up to and including g, per cent, grams
_CATCH_WEIGHT = (
    ("0", "60", "10", None),
    ("60", "600", None, "6"),
    ("600", "1000", "1", None),
    ("1000", "1500", None, "10"),
    ("1500", "3000", "0.66", None),
    ("3000", "4000", None, "20"),
    ("4000", "10000", "0.5", None),
    ("10000", "15000", None, "50"),
    ("15000", "250000", "0.33", None),
    ("250000", "500000", None, "750"),
    ("500000", None, "0.15", None),
)

# Schedule 6: principal display surface above cm2, up to and including cm2, mm
_HEIGHTS = (
    ("0", "32", "1.6"),
    ("32", "258", "3.2"),
    ("258", "645", "6.4"),
    ("645", "2580", "9.5"),
    ("2580", None, "12.7"),
)


def _row(above_g: Decimal) -> Clause:
    return Clause(f"{_LAW} Sch.4 Table 3, row above {above_g} g")


def _sample(first: int, last: int | None, n: int) -> Plan:
    accept = next(reject - 1 for low, high, reject in _REJECT_FROM if low <= n <= high)
    taken_whole = last is not None and last <= n
    printed_t, quotient = ("0", "0") if taken_whole else PRINTED_T[n]
    return Plan(
        PlanKind.SAMPLE,
        first,
        last,
        n,
        accept,
        Decimal(quotient),
        _T2_ACCEPT,
        Clause(f"{_LAW} s.200(4) and Sch.5 Parts 1, 3 and 4"),
        student=Decimal(printed_t),
    )


def _number(text: str | None) -> Decimal | None:
    return None if text is None else Decimal(text)


CA_SFCR = RuleSet(
    id="ca-sfcr",
    version="SOR/2018-108 as amended 2025-09-19, transcription 1",
    title="Canada, food net quantity",
    market="Canada",
    sources=(Clause(f"{_LAW} s.199, 200, 229 and Sch.4 to 6"),),
    scope=Scope(None, None, Clause(_LAW)),
    tolerances=(metric_table(_row, ()),),
    second_clause=Clause(f"{_LAW} s.200(4): twice the tolerance"),
    plans=tuple(_sample(first, last, n) for first, last, n in _SAMPLES),
    full_rules=(
        FullRule(1, 8, Fraction(0), _T2_ACCEPT, Clause(f"{_LAW} Sch.5 Parts 1 and 4")),
        FullRule(9, 10, Fraction(1, 9), _T2_ACCEPT, Clause(f"{_LAW} Sch.5 Parts 1 and 4")),
        FullRule(
            11,
            None,
            Fraction(1, 40),
            _T2_ACCEPT,
            Clause("2.5 % of a fully weighed batch, as OIML R 87", Status.OWN),
        ),
    ),
    batch_rule=own_batch(_LAW),
    figure_heights=(
        *(
            FigureHeight(
                FigureBasis.PANEL_CM2,
                Decimal(above),
                _number(up_to),
                Decimal(height),
                Clause(f"{_LAW} Sch.6"),
            )
            for above, up_to, height in _HEIGHTS
        ),
        single_height(FigureBasis.FRESH_PRODUCE, "1.6", Clause(f"{_LAW} s.229(4)")),
    ),
    retention=two_years("no time is transcribed"),
    interval_rule=fifth_of_t(
        Clause("OIML R 87: error of measurement at most 0.2 T, as a stricter rule", Status.OWN)
    ),
    catch_weight_tolerances=(
        ToleranceTable(
            Unit.GRAM,
            METRIC_UNITS,
            tuple(
                Band(
                    Decimal(above),
                    _number(up_to),
                    _number(percent),
                    _number(grams),
                    Clause(f"{_LAW} Sch.4 Table 1, row above {above} g"),
                )
                for above, up_to, percent, grams in _CATCH_WEIGHT
            ),
        ),
    ),
)
