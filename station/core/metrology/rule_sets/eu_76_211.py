"""EU: Directive 76/211/EEC on prepackages of equal nominal quantity, 5 g to 10 kg.

The double plan is read from the French order of 20 October 1978, articles 10 and 11, which carries
Annex II word for word. The single plan is the British one (SI 2006/659 Sch.2 3.5): Annex I 5
allows national tests of comparable effect.
"""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from station.core.metrology.clause import Clause, Status
from station.core.metrology.duties import FigureBasis
from station.core.metrology.plans import FullRule, Plan, PlanKind, SecondStage
from station.core.metrology.rule_set import RuleSet, Scope
from station.core.metrology.rule_sets.metric_table import UP_TO_TENTH, metric_table
from station.core.metrology.rule_sets.shared import (
    eu_destructive,
    eu_single,
    fifth_of_t,
    hourly_batch,
    nominal_heights,
    single_height,
    two_years,
)

_LAW = "EU 76/211/EEC"
_DOUBLE = Clause(f"{_LAW} Annex II 2.2.1 and 2.3.3, as in the French order of 20 October 1978")
_GUIDANCE = Clause("guidance to packers: generally no more than 2.5 % beyond T")


def _row(above_g: Decimal) -> Clause:
    return Clause(f"{_LAW} Annex I 2.4, row above {above_g} g")


def _double(first: int, last: int | None, n: int, accept: int, second: SecondStage) -> Plan:
    mean_n, factor = (30, "0.503") if first == 100 else (50, "0.379")
    return Plan(
        PlanKind.DOUBLE,
        first,
        last,
        n,
        accept,
        Decimal(factor),
        0,
        _DOUBLE,
        mean_n=mean_n,
        second=second,
    )


EU_76_211 = RuleSet(
    id="eu-76-211",
    version="76/211/EEC as amended to 2019, transcription 1",
    title="European Union, average system",
    market="European Union",
    sources=(Clause(f"{_LAW} Annexes I and II"), _DOUBLE),
    scope=Scope(Decimal(5), Decimal(10000), Clause(f"{_LAW} Article 1", Status.MEMORY)),
    tolerances=(metric_table(_row, UP_TO_TENTH, up_to_g=Decimal(10000)),),
    second_clause=Clause(f"{_LAW} Annex I 1.3: twice the tolerable negative error"),
    plans=(
        *eu_single(Clause("GB SI 2006/659 Sch.2 3.5 and 4.5, comparable by Annex I 5")),
        _double(100, 500, 30, 1, SecondStage(30, 4, 3)),
        _double(501, 3200, 50, 2, SecondStage(50, 6, 5)),
        _double(3201, None, 80, 3, SecondStage(80, 8, 7)),
        *eu_destructive(Clause(f"{_LAW} Annex II 2.2.2 and 2.3.3")),
    ),
    full_rules=(FullRule(1, None, Fraction(1, 40), 0, _GUIDANCE),),
    batch_rule=hourly_batch(Clause(f"{_LAW} Annex II 2.1")),
    figure_heights=(
        *nominal_heights(Clause(f"{_LAW} Annex I 3.1")),
        single_height(FigureBasis.E_MARK, "3", Clause(f"{_LAW} Annex I 3.3")),
    ),
    retention=two_years("the directive asks for records at the authority's disposal"),
    interval_rule=fifth_of_t(Clause(f"{_LAW} Annex II 1.3: error at most one fifth of T")),
)
