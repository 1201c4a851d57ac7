"""A reference-test plan in its two forms, and the option that asks for one."""

from __future__ import annotations

from typing import Annotated

import typer

from station.cli.answer import Json
from station.core.metrology.exact import trimmed
from station.core.metrology.plans import Plan, PlanKind
from station.errors import BadInput

PlanOption = Annotated[
    str | None,
    typer.Option("--plan", metavar="KIND", help=f"One of {', '.join(PlanKind)}."),
]
LotSize = Annotated[
    int | None, typer.Option("--lot-size", metavar="N", help="Bags in the whole batch.")
]


def read_plan(text: str) -> PlanKind:
    """Return the kind of plan an option names.

    Raises:
        BadInput: there is none of that name.
    """
    try:
        return PlanKind(text)
    except ValueError as fault:
        raise BadInput("--plan", f"{text!r} is none of {', '.join(PlanKind)}") from fault


def plan_document(plan: Plan) -> dict[str, Json]:
    """The plan for ``--json``: one row of the law's table."""
    second: dict[str, Json] | None = None
    if plan.second is not None:
        stage = plan.second
        second = {"n": stage.n, "t1_accept": stage.accept, "reject_first": stage.reject_first}
    return {
        "kind": str(plan.kind),
        "lot_from": plan.lot_from,
        "lot_to": plan.lot_to,
        "n": plan.n,
        "t1_accept": plan.accept,
        "t2_accept": plan.t2_accept,
        "mean_n": plan.mean_size,
        "factor": format(plan.factor, "f"),
        "student": None if plan.student is None else format(plan.student, "f"),
        "second": second,
        "clause": str(plan.clause),
    }


def plan_words(plan: Plan) -> str:
    """The plan in one line."""
    if plan.kind is PlanKind.FULL:
        return f"full: every one of {plan.n} bags"
    reach = f"{plan.lot_from} to {plan.lot_to}" if plan.lot_to else f"{plan.lot_from} or more"
    more = f", then {plan.second.n} more if need be" if plan.second else ""
    return f"{plan.kind}: {plan.n} of {reach} bags{more}"


def mean_words(plan: Plan) -> str:
    """The mean criterion in one line."""
    factor = trimmed(plan.factor)
    if plan.student is not None and plan.student:
        factor = trimmed(plan.student)
        return f"mean + {factor} s / √{plan.mean_size}"
    return f"mean + {factor} s" if factor else "mean"
