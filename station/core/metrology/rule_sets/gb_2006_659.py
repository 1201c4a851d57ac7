"""GB: The Weights and Measures (Packaged Goods) Regulations 2006, SI 2006/659, 5 g to 25 kg."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from station.core.metrology.clause import Clause, Status
from station.core.metrology.duties import FigureBasis, Retention
from station.core.metrology.plans import FullRule
from station.core.metrology.rule_set import RuleSet, Scope
from station.core.metrology.rule_sets.metric_table import UP_TO_TENTH, metric_table
from station.core.metrology.rule_sets.shared import (
    TWO_YEARS_DAYS,
    eu_destructive,
    eu_single,
    fifth_of_t,
    hourly_batch,
    nominal_heights,
    single_height,
)

_LAW = "GB SI 2006/659"


def _row(above_g: Decimal) -> Clause:
    status = Status.TEXT if above_g < 10000 else Status.MEMORY
    return Clause(f"{_LAW} Sch.1 tolerable negative errors, row above {above_g} g", status)


GB_2006_659 = RuleSet(
    id="gb-2006-659",
    version="SI 2006/659, transcription 1",
    title="Great Britain, packaged goods",
    market="Great Britain",
    sources=(Clause(f"{_LAW} and its Schedule 2"),),
    scope=Scope(Decimal(5), Decimal(25000), Clause(_LAW)),
    tolerances=(metric_table(_row, UP_TO_TENTH),),
    second_clause=Clause(f"{_LAW} reg.4: none below twice the tolerable negative error"),
    plans=(
        *eu_single(Clause(f"{_LAW} Sch.2 3.5 and 4.5")),
        *eu_destructive(Clause(f"{_LAW} Sch.2 3 and 4.6")),
    ),
    full_rules=(
        FullRule(1, 99, Fraction(1, 20), 0, Clause(f"{_LAW} Sch.2 3.6 and 4.7")),
        FullRule(
            100, None, Fraction(1, 40), 0, Clause("guidance to packers: no more than 2.5 % below T")
        ),
    ),
    batch_rule=hourly_batch(Clause(f"{_LAW} Sch.2 2.5 to 2.9")),
    figure_heights=(
        *nominal_heights(Clause(f"{_LAW}, as EU 76/211/EEC Annex I 3.1", Status.MEMORY)),
        single_height(FigureBasis.E_MARK, "3", Clause(f"{_LAW} reg.2")),
    ),
    retention=Retention(
        "until the date of consumption marked on the pack or one year after the packs leave, "
        "whichever is first; the station keeps at least 2 years",
        TWO_YEARS_DAYS,
        Clause(f"{_LAW} reg.9(5); OIML G 21:2017 Annex A"),
    ),
    interval_rule=fifth_of_t(Clause("NI SR 2011/331 Sch.2 1.3: one fifth of the tolerable error")),
)
