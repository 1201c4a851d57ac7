"""US: NIST Handbook 133, packages labelled by weight (Table 2-5, Tables 2-1 and 2-2).

The table of maximum allowable variations (MAV) is from memory. All 65 metric cells equal the pound
cell times 453.59237 g, truncated; 0.25 lb (113 g) -> 0.016 lb (7.2 g) and 8 oz -> 7/16 oz appear in
public text. A quantity is judged in the column of the unit it is declared in: the truncated metric
bounds put 0.26 lb in another row than 117.9 g. The handbook has no second limit; twice the MAV is
kept as the station's own mark for a gross shortage and no verdict depends on it.
"""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from station.core.mass import Unit
from station.core.metrology.clause import Clause, Status
from station.core.metrology.duties import FigureBasis, FigureHeight, IntervalRule
from station.core.metrology.plans import FullRule, PlanKind
from station.core.metrology.rule_set import RuleSet, Scope
from station.core.metrology.rule_sets.metric_table import METRIC_UNITS
from station.core.metrology.rule_sets.shared import own_batch, simple_plans, two_years
from station.core.metrology.tolerance import Band, ToleranceTable

_DOCUMENT = "NIST HB 133"

# above lb, MAV lb, above g, MAV g; a row ends where the next one starts
_ROWS = (
    ("0.08", "0.008", "36", "3.6"),
    ("0.12", "0.012", "54", "5.4"),
    ("0.18", "0.016", "81", "7.2"),
    ("0.26", "0.020", "117", "9.0"),
    ("0.34", "0.024", "154", "10.8"),
    ("0.46", "0.028", "208", "12.7"),
    ("0.58", "0.032", "263", "14.5"),
    ("0.70", "0.036", "317", "16.3"),
    ("0.84", "0.040", "381", "18.1"),
    ("0.94", "0.044", "426", "19.9"),
    ("1.08", "0.048", "489", "21.7"),
    ("1.26", "0.052", "571", "23.5"),
    ("1.40", "0.056", "635", "25.4"),
    ("1.54", "0.060", "698", "27.2"),
    ("1.70", "0.064", "771", "29.0"),
    ("1.88", "0.070", "852", "31.7"),
    ("2.14", "0.078", "970", "35.3"),
    ("2.48", "0.086", "1120", "39.0"),
    ("2.76", "0.094", "1250", "42.6"),
    ("3.20", "0.11", "1450", "49"),
    ("3.90", "0.12", "1760", "54"),
    ("4.70", "0.14", "2130", "63"),
    ("5.80", "0.15", "2630", "68"),
    ("6.80", "0.17", "3080", "77"),
    ("7.90", "0.19", "3580", "86"),
    ("9.40", "0.22", "4260", "99"),
    ("11.70", "0.25", "5300", "113"),
    ("14.30", "0.28", "6480", "127"),
    ("17.70", "0.31", "8020", "140"),
    ("23.20", "0.37", "10520", "167"),
    ("31.60", "0.44", "14330", "199"),
    ("42.40", "0.50", "19230", "226"),
)
_LAST_LB, _LAST_G = "54.40", "24670"  # above these 2 % of the label

# Table 2-1, Category A: lot from, to, packs taken, MAVs allowed, sample correction factor
CATEGORY_A = (
    (1, 1, 1, 0, "0"),
    (2, 2, 2, 0, "8.984"),
    (3, 3, 3, 0, "2.484"),
    (4, 4, 4, 0, "1.591"),
    (5, 5, 5, 0, "1.242"),
    (6, 6, 6, 0, "1.049"),
    (7, 7, 7, 0, "0.925"),
    (8, 8, 8, 0, "0.836"),
    (9, 9, 9, 0, "0.769"),
    (10, 10, 10, 0, "0.715"),
    (11, 11, 11, 0, "0.672"),
    (12, 250, 12, 0, "0.635"),
    (251, 3200, 24, 0, "0.422"),
    (3201, None, 48, 1, "0.291"),
)
# Table 2-2, Category B: no correction factor; a lot below 10 is taken whole
_CATEGORY_B = (
    *((size, size, size, 0, "0") for size in range(1, 10)),
    (10, 250, 10, 0, "0"),
    (251, None, 30, 0, "0"),
)

# 21 CFR 101.7(i): principal display panel above square inches, up to and including, mm
_HEIGHTS = (
    ("0", "5", "1.6"),
    ("5", "25", "3.2"),
    ("25", "100", "4.8"),
    ("100", "400", "6.4"),
    ("400", None, "12.7"),
)


def _table(
    unit: Unit, units: frozenset[Unit], rows: list[tuple[str, str]], last: str
) -> ToleranceTable:
    def clause(above: str) -> Clause:
        return Clause(f"{_DOCUMENT} Table 2-5, row from {above} {unit}", Status.MEMORY)

    first = rows[0][0]
    ends = [*(above for above, _ in rows[1:]), last]
    bands = [
        Band(Decimal(0), Decimal(first), Decimal(10), None, clause("0"), up_to_included=False),
        *(
            Band(
                Decimal(above),
                Decimal(end),
                None,
                Decimal(mav),
                clause(above),
                from_included=above == first,
            )
            for (above, mav), end in zip(rows, ends, strict=True)
        ),
        Band(Decimal(last), None, Decimal(2), None, clause(last)),
    ]
    return ToleranceTable(unit, units, tuple(bands))


_POUNDS = _table(
    Unit.POUND, frozenset({Unit.POUND, Unit.OUNCE}), [(r[0], r[1]) for r in _ROWS], _LAST_LB
)
_GRAMS = _table(Unit.GRAM, METRIC_UNITS, [(r[2], r[3]) for r in _ROWS], _LAST_G)

US_HB133 = RuleSet(
    id="us-hb133",
    version="HB 133 edition 2023, transcription 1",
    title="United States, net contents of packaged goods",
    market="United States",
    sources=(Clause(f"{_DOCUMENT} Tables 2-1, 2-2 and 2-5", Status.MEMORY),),
    scope=Scope(None, None, Clause(_DOCUMENT)),
    tolerances=(_POUNDS, _GRAMS),
    second_clause=Clause(f"{_DOCUMENT} has no second limit: twice the MAV", Status.OWN),
    plans=(
        *simple_plans(
            PlanKind.SAMPLE,
            CATEGORY_A,
            Clause(f"{_DOCUMENT} Table 2-1, Category A", Status.MEMORY),
            t2_accept=None,
        ),
        *simple_plans(
            PlanKind.CATEGORY_B,
            _CATEGORY_B,
            Clause(f"{_DOCUMENT} Table 2-2, Category B", Status.MEMORY),
            t2_accept=None,
        ),
    ),
    full_rules=(
        FullRule(
            1,
            None,
            Fraction(0),
            None,
            Clause("no pack of a fully weighed batch beyond the MAV", Status.OWN),
        ),
    ),
    batch_rule=own_batch(_DOCUMENT),
    figure_heights=tuple(
        FigureHeight(
            FigureBasis.PANEL_IN2,
            Decimal(above),
            None if up_to is None else Decimal(up_to),
            Decimal(height),
            Clause("US 21 CFR 101.7(i)", Status.MEMORY),
        )
        for above, up_to, height in _HEIGHTS
    ),
    retention=two_years("the handbook sets no time"),
    interval_rule=IntervalRule(
        share_of_t=Fraction(1, 6),
        by_interval=True,
        rows=(),
        least_intervals=100,
        clause=Clause(f"{_DOCUMENT} Ch.2: division at most MAV/6, at least 100 divisions"),
    ),
    catch_weight_tolerances=(_POUNDS, _GRAMS),
)
