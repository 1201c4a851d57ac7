"""``station forecast``: the chance that a batch would pass the official test."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

import typer

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Config, Home
from station.cli.page import Weight, facts, heading, listing, note
from station.cli.plan import PlanOption, plan_document, plan_words, read_plan
from station.cli.source import (
    Asked,
    Blend,
    Column,
    Csv,
    Nets,
    OwnNominal,
    OwnRules,
    RunUid,
    nets_of,
)
from station.core.metrology.batch import t1_left
from station.core.metrology.clause import RuleRefused
from station.core.metrology.exact import decimal_of, plain
from station.core.metrology.forecast import Forecast, Outlook
from station.core.metrology.forecast import forecast as forecast_of
from station.core.metrology.rehearsal import Rehearsal, rehearse
from station.core.metrology.running import RunningBatch
from station.errors import BadInput

_Expected = Annotated[
    int | None,
    typer.Option(
        "--expected",
        metavar="N",
        help="Bags of the finished batch; the order of a run still open, or the bags there are.",
    ),
]
_Rehearse = Annotated[
    int | None,
    typer.Option(
        "--rehearse", metavar="DRAWS", help="Also draw so many samples from a finished batch."
    ),
]
_Seed = Annotated[int, typer.Option("--seed", metavar="N", help="Seed of the rehearsal.")]

_CAVEAT = "An estimate from the bags so far, no official test."
_PLACES = 9
_SHOWN = 4  # decimals of a chance
_MOST_DRAWS = 100_000
_WEIGHTS = {
    Outlook.SAFE: Weight.PLAIN,
    Outlook.THIN: Weight.ATTEND,
    Outlook.FAILING: Weight.STOP,
}


@dataclass(frozen=True, slots=True)
class _Found:
    """A forecast with what it rests on."""

    nets: Nets
    packs: RunningBatch
    chance: Forecast
    t1_left: int
    rehearsal: Rehearsal | None


def forecast(
    rules: OwnRules = None,
    nominal: OwnNominal = None,
    csv: Csv = None,
    column: Column = "net",
    expected: _Expected = None,
    plan: PlanOption = None,
    run: RunUid = None,
    blend: Blend = None,
    draws: _Rehearse = None,
    seed: _Seed = 1,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """Forecast the official test of a finished or a running batch; exit 1 when it is failing."""

    def work() -> Answer:
        nets = nets_of(Asked(rules, nominal, csv, column, home, config, run, blend))
        size = _ordered(nets) if expected is None else expected
        if size < len(nets.nets):
            raise BadInput(
                "--expected", f"{len(nets.nets)} bags are packed already, more than {size} expected"
            )
        return _answer(_forecast(nets, size, plan, draws, seed))

    run_verb(as_json, work)


def _ordered(nets: Nets) -> int:
    """Bags of the finished batch, as far as is known."""
    count = len(nets.nets)
    if len(nets.runs) == 1 and nets.runs[0].open:
        return max(count, nets.runs[0].run.order_size or 0)
    return count


def _forecast(nets: Nets, expected: int, plan: str | None, draws: int | None, seed: int) -> _Found:
    packs = RunningBatch(nets.limits).add_all(nets.nets)
    try:
        row = (
            nets.rules.official_plan(expected)
            if plan is None
            else nets.rules.plan(expected, read_plan(plan))
        )
        chance = forecast_of(packs, row, expected)
        left = t1_left(nets.rules, packs, expected)
    except ValueError as refused:
        where = "--plan, --expected" if isinstance(refused, RuleRefused) else "--expected"
        raise BadInput(where, str(refused)) from refused
    rehearsal = None
    if draws is not None:
        if expected != packs.n or not 1 <= draws <= _MOST_DRAWS:
            raise BadInput(
                "--rehearse", f"1 to {_MOST_DRAWS} draws, and from a finished batch only"
            )
        rehearsal = rehearse(nets.nets, nets.limits, row, draws=draws, seed=seed)
    return _Found(nets, packs, chance, left, rehearsal)


def _answer(found: _Found) -> Answer:
    chance, packs, limits = found.chance, found.packs, found.nets.limits
    needed = packs.mean_needed(chance.expected)
    unit = limits.nominal.unit
    document: dict[str, Json] = {
        "rule_set": limits.rule_set,
        "version": limits.version,
        "nominal": limits.nominal.digits,
        "unit": str(unit),
        "from": found.nets.origin,
        "finished": chance.expected == packs.n,
        "n": packs.n,
        "expected": chance.expected,
        "passing": round(chance.passing, 6),
        "outlook": str(chance.outlook),
        "mean": round(chance.mean, 6),
        "t1": round(chance.t1, 6),
        "t2": round(chance.t2, 6),
        "mean_so_far": plain(decimal_of(packs.mean, _PLACES)),
        "s_so_far": plain(packs.spread(_PLACES)),
        "t1_count": packs.t1_count,
        "t2_count": packs.t2_count,
        "t1_left": found.t1_left,
        "mean_needed": None if needed is None else plain(decimal_of(needed, _PLACES)),
        "plan": plan_document(chance.plan),
        "rehearsal": _rehearsal_document(found.rehearsal),
    }
    outlook = chance.outlook
    page = (
        heading(
            f"{str(outlook).upper()}: it would pass with a chance of {chance.passing:.{_SHOWN}f}",
            _WEIGHTS[outlook],
        ),
        facts(_rows(found)),
        listing(
            ("clause", "chance"),
            (
                ("mean", f"{chance.mean:.{_SHOWN}f}"),
                (f"below T1, {limits.t1}", f"{chance.t1:.{_SHOWN}f}"),
                (f"below T2, {limits.t2}", f"{chance.t2:.{_SHOWN}f}"),
                ("all together", f"{chance.passing:.{_SHOWN}f}"),
            ),
            "chance",
        ),
        note(_CAVEAT),
    )
    return Answer(document, page, yes=outlook is not Outlook.FAILING)


def _rows(found: _Found) -> list[tuple[str, str]]:
    packs, limits, chance = found.packs, found.nets.limits, found.chance
    unit = limits.nominal.unit
    needed = packs.mean_needed(chance.expected)
    rows = [
        ("Weights", found.nets.words),
        ("Rules", f"{limits.rule_set}, {limits.version}"),
        ("Nominal quantity", f"{limits.nominal}"),
        ("Official test", plan_words(chance.plan)),
        ("Bags so far", f"{packs.n} of {chance.expected}"),
        ("Mean so far", f"{plain(decimal_of(packs.mean, _SHOWN))} {unit}"),
        ("Standard deviation", f"{plain(packs.spread(_SHOWN))} {unit}"),
        ("Below T1, below T2", f"{packs.t1_count}, {packs.t2_count}"),
        ("More below T1 allowed", str(found.t1_left)),
    ]
    if needed is not None:
        rest = chance.expected - packs.n
        words = f"{plain(decimal_of(needed, _SHOWN))} {unit} on the {rest} bags to come"
        rows.append(("Mean needed", words))
    if found.rehearsal is not None:
        one = found.rehearsal
        words = f"{one.passed} of {one.draws} samples drawn from these bags passed"
        rows.append(("Rehearsed", f"{words} (seed {one.seed})"))
    return rows


def _rehearsal_document(rehearsal: Rehearsal | None) -> dict[str, Json] | None:
    if rehearsal is None:
        return None
    return {
        "draws": rehearsal.draws,
        "passed": rehearsal.passed,
        "share": round(rehearsal.share, 6),
        "standard_error": round(rehearsal.standard_error, 6),
        "mean_failed": rehearsal.mean_failed,
        "t1_failed": rehearsal.t1_failed,
        "t2_failed": rehearsal.t2_failed,
        "seed": rehearsal.seed,
    }
