"""EU: Directive 76/211/EEC on prepackages of equal nominal quantity, 5 g to 10 kg."""

from __future__ import annotations

from decimal import Decimal

from station.core.metrology.clause import Clause, Status
from station.core.metrology.rule_set import RuleSet, Scope
from station.core.metrology.rule_sets.metric_table import UP_TO_TENTH, metric_table

_LAW = "EU 76/211/EEC"


def _row(above_g: Decimal) -> Clause:
    status = Status.TEXT if above_g < 10000 else Status.MEMORY
    return Clause(f"{_LAW} Annex I 2.4, row above {above_g} g", status)


EU_76_211 = RuleSet(
    id="eu-76-211",
    version="76/211/EEC as amended to 2019, transcription 1",
    title="European Union, average system",
    market="European Union",
    sources=(Clause(f"{_LAW} Annexes I and II"),),
    scope=Scope(Decimal(5), Decimal(10000), Clause(f"{_LAW} Article 1", Status.MEMORY)),
    tolerances=(metric_table(_row, UP_TO_TENTH, up_to_g=Decimal(10000)),),
    second_clause=Clause(f"{_LAW} Annex I 1.3 and 5: twice the tolerable negative error"),
)
