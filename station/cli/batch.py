"""``station batch``: the verdict on a batch, clause by clause."""

from __future__ import annotations

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Config, Home
from station.cli.page import Weight, facts, heading, listing, note
from station.cli.plan import (
    LotSize,
    PlanOption,
    mean_words,
    plan_document,
    plan_words,
    read_plan,
)
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
from station.core.metrology.batch import Judgement, judge_sample
from station.core.metrology.clause import RuleRefused
from station.core.metrology.exact import decimal_of, plain
from station.core.metrology.plans import PlanKind
from station.core.metrology.rule_set import RuleSet
from station.errors import BadInput

_CAVEAT = "An aid to the packer, no official test; the competent authority decides."
_PLACES = 9
_COLUMNS = ("clause", "found", "allowed", "holds")


def batch(
    rules: OwnRules = None,
    nominal: OwnNominal = None,
    csv: Csv = None,
    column: Column = "net",
    lot_size: LotSize = None,
    plan: PlanOption = None,
    run: RunUid = None,
    blend: Blend = None,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """Judge a batch from its bags or from a sample of them; exit 1 when it does not pass."""

    def work() -> Answer:
        nets = nets_of(Asked(rules, nominal, csv, column, home, config, run, blend))
        kind = None if plan is None else read_plan(plan)
        if nets.runs and (kind not in (None, PlanKind.FULL) or lot_size is not None):
            raise BadInput(
                "--plan, --lot-size",
                "are for --csv: the record holds every bag of a batch, so it is judged in full",
            )
        return _answer(_judged(nets, lot_size, kind), nets, lot_size)

    run_verb(as_json, work)


def _judged(nets: Nets, lot_size: int | None, kind: PlanKind | None) -> Judgement:
    count = len(nets.nets)
    if kind is None:
        kind = PlanKind.FULL if lot_size in (None, count) else PlanKind.SAMPLE
    if lot_size is None:
        lot_size = count if kind is PlanKind.FULL else _lot_of_sample(nets.rules, kind, count)
    try:
        return judge_sample(nets.rules, nets.limits.nominal, nets.nets, lot_size, kind)
    except RuleRefused as refused:
        raise BadInput("--plan, --lot-size", str(refused)) from refused


def _lot_of_sample(rules: RuleSet, kind: PlanKind, count: int) -> int:
    """Any size of a batch that only one row of the law takes so many packs from."""
    rows = [
        row
        for row in rules.plans
        if row.kind is kind and count in (row.n, row.n + (row.second.n if row.second else 0))
    ]
    if len(rows) != 1:
        raise BadInput("--lot-size", f"give the size of the batch the {count} bags were drawn from")
    return rows[0].lot_from


def _answer(judged: Judgement, nets: Nets, lot_size: int | None) -> Answer:
    limits, checked = nets.limits, judged.mean_packs
    unit = limits.nominal.unit
    mean, s = plain(judged.mean_shown), plain(judged.s)
    document: dict[str, Json] = {
        "rule_set": limits.rule_set,
        "version": limits.version,
        "nominal": limits.nominal.digits,
        "unit": str(unit),
        "T1": plain(limits.t1.amount),
        "T2": plain(limits.t2.amount),
        "from": nets.origin,
        "lot_size": judged.n if judged.plan.kind is PlanKind.FULL else lot_size,
        "n": judged.n,
        "mean": mean,
        "mean_exact": str(judged.mean),
        "s": s,
        "t1_count": judged.t1_count,
        "t2_count": judged.t2_count,
        "t1_accept": judged.t1_accept,
        "t2_accept": judged.plan.t2_accept,
        "mean_check": {
            "n": checked.n,
            "mean": plain(decimal_of(checked.mean, _PLACES)),
            "s": plain(checked.spread(_PLACES)),
        },
        "mean_ok": judged.mean_ok,
        "t1_ok": judged.t1_ok,
        "t2_ok": judged.t2_ok,
        "second_needed": judged.second_needed,
        "accepted": judged.accepted,
        "plan": plan_document(judged.plan),
    }
    title, weight = "THE BATCH PASSES", Weight.PLAIN
    if judged.second_needed:
        title, weight = "OPEN: draw and weigh the second stage", Weight.ATTEND
    elif not judged.accepted:
        title, weight = "THE BATCH DOES NOT PASS", Weight.STOP
    page = (
        heading(title, weight),
        facts(
            (
                ("Weights", nets.words),
                ("Rules", f"{limits.rule_set}, {limits.version}"),
                ("Nominal quantity", f"{limits.nominal}"),
                ("Plan", plan_words(judged.plan)),
                ("Bags judged", str(judged.n)),
                ("Mean", f"{mean} {unit}"),
                ("Standard deviation", f"{s} {unit}"),
                ("Clause", str(judged.plan.clause)),
            )
        ),
        listing(_COLUMNS, _clauses(judged, nets), "found"),
        note(_CAVEAT),
    )
    return Answer(document, page, yes=judged.accepted)


def _clauses(judged: Judgement, nets: Nets) -> list[tuple[str, str, str, str]]:
    limits, plan, checked = nets.limits, judged.plan, judged.mean_packs
    unit = limits.nominal.unit
    mean = plain(decimal_of(checked.mean, _PLACES))
    rows = [
        (
            f"{mean_words(plan)} of {checked.n}",
            f"{mean} {unit}, s {plain(checked.spread(_PLACES))} {unit}",
            f"{limits.nominal} or more",
            _yes(judged.mean_ok),
        ),
        (
            f"below T1, {limits.t1}",
            str(judged.t1_count),
            f"at most {judged.t1_accept}",
            "open" if judged.second_needed else _yes(judged.t1_ok),
        ),
    ]
    most = plan.t2_accept
    allowed = "no such clause" if most is None else f"at most {most}"
    return [*rows, (f"below T2, {limits.t2}", str(judged.t2_count), allowed, _yes(judged.t2_ok))]


def _yes(holds: bool) -> str:
    return "yes" if holds else "NO"
