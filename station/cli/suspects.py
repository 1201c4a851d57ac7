"""The bags that a failed scale check makes suspect, by run, and what they may weigh."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from fractions import Fraction
from pathlib import Path
from typing import TYPE_CHECKING

from rich.console import RenderableType

from station.cli.answer import Json
from station.cli.page import Weight, clock_time, facts, heading, listing
from station.cli.source import net_in, rules_of
from station.core.metrology.clause import RuleRefused
from station.core.metrology.exact import decimal_of, plain
from station.core.metrology.scale_check import (
    CheckReading,
    CheckStage,
    ScaleCheck,
    judge_check,
)
from station.core.metrology.scale_suitability import Scale
from station.core.metrology.suspect import CaseVerdict, SuspectPack, SuspectWindow, open_window
from station.core.pack import IN_THE_BATCH
from station.errors import BadInput
from station.line.failed_check import explaining_step

if TYPE_CHECKING:
    from station.core.run import Run
    from station.store.answers import WeighedPack

_PLACES = 9
_MOST_SHOWN = 40
_CASES = ("case", "bags", "mean", "below_T1", "below_T2", "the_batch")
_REWEIGH = ("serial", "time", "net", "whole_error", "even_growth")


@dataclass(frozen=True, slots=True)
class Suspects:
    """The suspect bags of one run.

    Args:
        run: the run.
        packs: its bags that are or may be sold, between the checks; the window's serials are
            places in here.
        window: the window on them.
    """

    run: Run
    packs: tuple[WeighedPack, ...]
    window: SuspectWindow


def find_suspects(
    scale: Scale,
    readings: Sequence[CheckReading],
    failed: ScaleCheck,
    good_at: datetime,
    step_at: datetime | None,
    home: Path,
) -> tuple[Suspects, ...]:
    """Open the window of a failed check on each run that packed between the checks.

    Args:
        scale: the scale.
        readings: readings of the failed check; the good one is taken to have shown the weights.
        failed: the failed check.
        good_at: time of the last good check.
        step_at: time of a step of zero; None takes the one the readings of the empty pan date,
            where it explains the error.
        home: folder of the record.

    Raises:
        BadInput: no record, or a run's rules are not known to this station.
    """
    from station.store.since import RecordPast  # slow to load
    from station.store.weighed import packs_between

    if step_at is None:
        since = RecordPast(home).packs_since(good_at, failed.at)
        packs = [pack for group in since for pack in group.packs]
        step = explaining_step(failed, scale.interval, packs)
        step_at = None if step is None else step.last_before

    held_true = [
        replace(one, indication=one.weights.total(scale.interval), added=None) for one in readings
    ]
    good = judge_check(scale, held_true, good_at, CheckStage.AS_FOUND)
    found = []
    for group in packs_between(home, good_at, failed.at):
        in_batch = tuple(pack for pack in group.packs if pack.quality in IN_THE_BATCH)
        if not in_batch:
            continue
        # A newer edition of the law must not keep suspect bags from being named.
        rules, limits = rules_of(group.run, group.run.window.limits.rule_set)
        suspect = [
            SuspectPack(place, pack.at, pack.gross, net_in(pack, limits))
            for place, pack in enumerate(in_batch)
        ]
        try:
            window = open_window(good, failed, suspect, rules, limits, step_at)
        except RuleRefused as refused:
            raise BadInput(f"run {group.run.id}", str(refused)) from refused
        found.append(Suspects(group.run, in_batch, window))
    return tuple(found)


def suspects_document(suspects: Suspects) -> dict[str, Json]:
    """The window of one run for ``--json``; masses in the unit of the nominal quantity."""
    run, window = suspects.run, suspects.window
    return {
        "run": run.id,
        "product": run.product.code,
        "rule_set": run.window.limits.rule_set,
        "nominal": run.window.limits.nominal.digits,
        "unit": str(run.window.limits.nominal.unit),
        "opened": window.opened.isoformat(),
        "closed": window.closed.isoformat(),
        "sign": window.sign.name.lower(),
        "sign_words": str(window.sign),
        "held": len(window.held),
        "as_weighed": _case_document(window.as_weighed),
        "worst": _case_document(window.worst),
        "drift": _case_document(window.drift),
        "stepped": None if window.stepped is None else _case_document(window.stepped),
        "reweigh": [
            {
                "serial": suspects.packs[one.pack.serial].serial,
                "at": one.pack.at.isoformat(),
                "net": one.pack.net.digits,
                "worst_net": _text(one.worst_net),
                "drift_net": _text(one.drift_net),
            }
            for one in window.reweigh
        ],
    }


def suspects_page(suspects: Suspects) -> tuple[RenderableType, ...]:
    """The window of one run for people: the cases, then the bags to weigh again."""
    run, window = suspects.run, suspects.window
    unit = run.window.limits.nominal.unit
    cases = [window.as_weighed, window.worst, window.drift]
    if window.stepped is not None:
        cases.append(window.stepped)
    rows = (
        (
            suspects.packs[one.pack.serial].serial,
            clock_time(one.pack.at),
            f"{one.pack.net}",
            f"{_text(one.worst_net, 3)} {unit}",
            f"{_text(one.drift_net, 3)} {unit}",
        )
        for one in window.reweigh[:_MOST_SHOWN]
    )
    page: tuple[RenderableType, ...] = (
        heading(f"HOLD {len(window.held)} bags of {run.product.name}", Weight.STOP),
        facts(
            (
                ("Run", run.id),
                ("Packed after", f"{window.opened:%Y-%m-%d %H:%M:%S %z}"),
                ("and until", f"{window.closed:%Y-%m-%d %H:%M:%S %z}"),
                ("What it means", str(window.sign)),
            )
        ),
        listing(
            _CASES,
            (_case_cells(one, str(unit)) for one in cases),
            "bags mean below_T1 below_T2",
            "case",
        ),
        heading("Weigh again in this order"),
        listing(_REWEIGH, rows, "net whole_error even_growth"),
    )
    left = len(window.reweigh) - _MOST_SHOWN
    return page if left <= 0 else (*page, heading(f"and {left} more: --json lists them all"))


def _case_document(case: CaseVerdict) -> dict[str, Json]:
    return {
        "case": case.name,
        "n": case.n,
        "mean": _text(case.mean),
        "mean_exact": str(case.mean),
        "t1_count": case.t1_count,
        "t2_count": case.t2_count,
        "accepted": case.accepted,
    }


def _case_cells(case: CaseVerdict, unit: str) -> tuple[str, ...]:
    return (
        case.name,
        str(case.n),
        f"{_text(case.mean, 4)} {unit}",
        str(case.t1_count),
        str(case.t2_count),
        "passes" if case.accepted else "DOES NOT PASS",
    )


def _text(number: Fraction, places: int = _PLACES) -> str:
    return plain(decimal_of(number, places))
