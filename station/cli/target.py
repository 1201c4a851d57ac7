"""``station target``: the lowest fill target that keeps every clause of the law."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from statistics import fmean
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, run_verb
from station.cli.knee import knee_answer
from station.cli.money import BagsPerShift, Price, Shift, shift_of
from station.cli.options import AsJson, Config, Home, read_mass
from station.cli.page import Weight, facts, heading, listing, note
from station.cli.plan import LotSize, plan_document, plan_words
from station.cli.source import (
    Asked,
    Blend,
    Nets,
    OwnNominal,
    OwnRules,
    RunUid,
    net_in,
    nets_of,
)
from station.core.mass import Mass, MassError
from station.core.metrology.clause import RuleRefused
from station.core.metrology.plans import FullRule, Plan, find_full_rule
from station.core.metrology.target import Proposal, TargetModel, Wanted
from station.core.pack import IN_THE_BATCH
from station.core.product import PackMode
from station.errors import BadInput

if TYPE_CHECKING:
    from station.core.run import Run

_Sigma = Annotated[
    str | None,
    typer.Option("--sigma", metavar="S", help="Spread of a normal process, such as 4g."),
]
_Assurance = Annotated[
    float, typer.Option("--assurance", metavar="P", help="Wanted chance of each clause.")
]
_Interval = Annotated[
    str | None,
    typer.Option(
        "--interval", metavar="MASS", help="Step of the target; the scale's if not given."
    ),
]
_Seed = Annotated[int, typer.Option("--seed", metavar="N", help="Seed of the resampling.")]

_CAVEAT = "A proposal from these bags: a manager decides, and the next batches tell."


@dataclass(frozen=True, slots=True)
class _Fills:
    """The fills of a run around their target, as estimates need them.

    Args:
        nets: where they come from and what judges them.
        run: first run; all runs share its limits.
        residuals: net less target, in the unit of the nominal quantity.
        target: target filled to, in the same unit.
        interval: step of a target, in the same unit.
    """

    nets: Nets
    run: Run
    residuals: tuple[float, ...]
    target: float
    interval: float


@dataclass(frozen=True, slots=True)
class _Law:
    """What the official test and the whole batch must show."""

    lot_size: int
    plan: Plan
    full_rule: FullRule


def target(
    rules: OwnRules = None,
    nominal: OwnNominal = None,
    sigma: _Sigma = None,
    run: RunUid = None,
    blend: Blend = None,
    lot_size: LotSize = None,
    assurance: _Assurance = 0.99,
    interval: _Interval = None,
    seed: _Seed = 1,
    price: Price = None,
    bags_per_shift: BagsPerShift = None,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """Propose a fill target from a spread, or from the bags of a run; exit 1 when none will do."""

    def work() -> Answer:
        shift = shift_of(bags_per_shift, price)
        if sigma is not None:
            if run is not None or blend is not None:
                raise BadInput("--sigma", "is for a spread alone: leave out --run and --blend")
            return knee_answer(rules, nominal, sigma, shift)
        if run is None and blend is None:
            raise BadInput(
                "which fills", "give --sigma S with --rules and --nominal, or --run UID or "
                "--blend LOT with --home DIR",
            )  # fmt: skip
        fills = _fills_of(
            nets_of(Asked(rules, nominal, None, "", home, config, run, blend)), interval
        )
        return _answer(fills, _law_of(fills.nets, lot_size), assurance, seed, shift)

    run_verb(as_json, work)


def _fills_of(nets: Nets, interval: str | None) -> _Fills:
    run = nets.runs[0].run
    checked = run.product.mode is PackMode.CHECK
    unit = nets.limits.nominal.unit
    residuals, shown = [], []
    for group in nets.runs:
        for pack in group.packs:
            # Sealed bags are weighed as filled, short ones too; open ones only once accepted.
            if checked or pack.quality in IN_THE_BATCH:
                net = net_in(pack, nets.limits)
                residuals.append(float((net - group.run.window.target.in_unit(unit)).amount))
                shown.append(net)
    step = _finest(shown) if interval is None else read_mass("--interval", interval)
    try:
        step = step.in_unit(unit)
    except MassError as fault:
        raise BadInput("--interval", str(fault)) from fault
    if step.amount <= 0:
        raise BadInput("--interval", f"{step} must be above zero")
    return _Fills(nets, run, tuple(residuals), float(run.window.target.amount), float(step.amount))


def _finest(nets: list[Mass]) -> Mass:
    """One step of the last digit shown."""
    finest = min(int(net.amount.as_tuple().exponent) for net in nets)
    return Mass(Decimal(1).scaleb(finest), nets[0].unit)


def _law_of(nets: Nets, lot_size: int | None) -> _Law:
    size = len(nets.nets) if lot_size is None else lot_size
    try:
        full_rule = find_full_rule(nets.rules.full_rules, size, nets.rules.id)
        return _Law(size, nets.rules.official_plan(size), full_rule)
    except RuleRefused as refused:
        raise BadInput("--lot-size", str(refused)) from refused


def _answer(fills: _Fills, law: _Law, assurance: float, seed: int, shift: Shift) -> Answer:
    limits = fills.nets.limits
    window = fills.run.window
    floor = None if fills.run.product.mode is PackMode.CHECK else float(window.floor.amount)
    try:
        wanted = Wanted(assurance=assurance, seed=seed)
        model = TargetModel(
            fills.residuals, limits, law.plan, law.full_rule, law.lot_size, floor, wanted
        )
    except ValueError as refused:
        raise BadInput("--assurance, --run, --blend", str(refused)) from refused
    try:
        proposal, why = model.propose(fills.interval), ""
    except ValueError as refused:
        proposal, why = None, str(refused)
    nominal, grams = float(limits.nominal.amount), float(limits.nominal.unit.grams)
    mean = fills.target + fmean(fills.residuals)
    now = shift.given_away((mean - nominal) * grams)
    then = None if proposal is None else shift.given_away(proposal.giveaway * grams)
    document: dict[str, Json] = {
        "rule_set": limits.rule_set,
        "version": limits.version,
        "nominal": limits.nominal.digits,
        "unit": str(limits.nominal.unit),
        "from": fills.nets.origin,
        "fills": len(fills.residuals),
        "lot_size": law.lot_size,
        "assurance": assurance,
        "seed": seed,
        "interval": fills.interval,
        "floor": floor,
        "now": {"target": fills.target, "mean": round(mean, 6), "giveaway": now.document()},
        "proposal": None if proposal is None else _proposal_document(proposal),
        "giveaway": None if then is None else then.document(),
        "why": why,
        "plan": plan_document(law.plan),
    }
    if proposal is None:
        return Answer(document, (heading(f"NO TARGET WILL DO: {why}", Weight.STOP),), yes=False)
    unit = limits.nominal.unit
    page = (
        heading(f"Fill to {proposal.target:g} {unit}; it is {fills.target:g} {unit} now"),
        facts(
            (
                ("Fills", f"{len(fills.residuals)}, {fills.nets.words}"),
                ("Rules", f"{limits.rule_set}, {limits.version}"),
                ("Nominal quantity", f"{limits.nominal}"),
                ("Official test", plan_words(law.plan)),
                ("Mean expected", f"{proposal.mean:.3f} {unit}, s {proposal.spread:.3f} {unit}"),
                ("Held up by", proposal.governing),
                ("Given away now", str(now)),
                ("Given away then", str(then)),
            )
        ),
        listing(
            ("clause", "chance", "wanted"),
            ((one.clause, f"{one.chance:.4f}", f"{one.wanted:.4f}") for one in proposal.clauses),
            "chance wanted",
        ),
        note(_CAVEAT),
    )
    return Answer(document, page)


def _proposal_document(proposal: Proposal) -> dict[str, Json]:
    clauses: list[Json] = [
        {"clause": one.clause, "chance": round(one.chance, 6), "wanted": one.wanted}
        for one in proposal.clauses
    ]
    return {
        "target": proposal.target,
        "mean": round(proposal.mean, 6),
        "s": round(proposal.spread, 6),
        "giveaway": round(proposal.giveaway, 6),
        "governing": proposal.governing,
        "clauses": clauses,
    }
