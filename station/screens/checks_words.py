"""What the checks page says of loads, tares and windows, as frozen rows."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta, tzinfo
from fractions import Fraction

from station.core.checks.suspect import RunWindow
from station.core.mass import Mass
from station.core.metrology.check_plan import names
from station.core.metrology.exact import decimal_of, plain
from station.core.metrology.scale_check import CheckedLoad, CheckResult
from station.line.guided import GuidedCheck
from station.line.state import LineState, Notice
from station.line.suspected import JudgedRun, Suspected
from station.screens.tongue import say

WORDS = {CheckResult.GOOD: "GOOD", CheckResult.WARN: "WARN", CheckResult.FAILED: "FAILS"}
SOON = timedelta(minutes=10)


@dataclass(frozen=True, slots=True)
class LoadRow:
    """One load of a check.

    Args:
        name: which load.
        weights: what goes on.
        shown: what the scale showed; empty before.
        error: the error and its limit.
        result: None before.
        now: it is wanted now.
    """

    name: str
    weights: str
    shown: str = ""
    error: str = ""
    result: CheckResult | None = None
    now: bool = False


def load_rows(guided: GuidedCheck) -> tuple[LoadRow, ...]:
    """All loads of a check: those taken, the one wanted, those to come."""
    judged = guided.judged()
    rows = []
    for number, planned in enumerate(guided.planned):
        name = str(planned.load).upper()
        weights = names(planned.weights.nominals) or "nothing on the pan"
        if number < len(judged):
            rows.append(_judged_row(name, weights, judged[number]))
        else:
            rows.append(LoadRow(name, weights, now=number == len(judged)))
    return tuple(rows)


def _judged_row(name: str, weights: str, load: CheckedLoad) -> LoadRow:
    error = f"{signed(load.error)}, may be {load.fail_beyond}"
    if load.result is CheckResult.WARN:
        error = f"{signed(load.error)}, beyond {load.warn_beyond}"
    return LoadRow(name, weights, str(load.reading.indication), error, load.result)


def signed(mass: Mass) -> str:
    """A mass with its sign, which is never left out above zero."""
    return f"+{mass}" if mass.amount > 0 else str(mass)


def put_on(guided: GuidedCheck) -> str:
    """What a person does next at the scale."""
    wanted = guided.wanted
    if wanted is None:
        return "LIFT THE WEIGHTS OFF"
    weights = names(wanted.weights.nominals)
    return f"PUT ON {weights}" if weights else "EMPTY THE PAN"


def due_words(state: LineState | None, zone: tzinfo) -> str:
    """When the next check of the scale is due, in the plant's time; empty where nobody knows."""
    if state is None:
        return ""
    found = next((one for one in state.due if one.words.startswith("scale check")), None)
    return "" if found is None else f"Due at {found.at.astimezone(zone):%H:%M}."


def soonest(state: LineState, now: datetime) -> Notice | None:
    """What needs somebody within the next ten minutes, the earliest; None where nothing does."""
    return next((one for one in state.due if one.at - now <= SOON), None)


def soon_words(state: LineState, now: datetime) -> str:
    """What needs somebody within ten minutes, and how long there is; else empty."""
    notice = soonest(state, now)
    if notice is None:
        return ""
    minutes = (notice.at - now) // timedelta(minutes=1)
    return say(f"{notice.words} in {minutes} min" if minutes > 0 else f"{notice.words} now")


def window_words(suspected: Suspected, zone: tzinfo) -> str:
    """A window in two sentences, in the plant's time."""
    window = suspected.window
    local = [at.astimezone(zone) for at in (window.opened, window.closed)]
    said = f"{window.bags} bags from {local[0]:%H:%M} to {local[1]:%H:%M} are held: {window.sign}."
    if window.step is None:
        return said
    before, after = (
        at.astimezone(zone) for at in (window.step.last_before, window.step.first_after)
    )
    return (
        f"{said} Zero stepped by {window.step.size} between {before:%H:%M:%S} and {after:%H:%M:%S}."
    )


_SHORT = ("as weighed", "whole error", "even growth", "dated step")
"""The cases in the order they are filed."""


def case_lines(run: RunWindow) -> tuple[str, ...]:
    """What the batch of a run's suspect bags would come to in each case."""
    if run.refused:
        return (f"not judged: {run.refused}",)
    return tuple(
        f"{name}: mean {plain(decimal_of(case.mean, 2))} {run.unit}, {case.t1_count} below T1: "
        + ("passes" if case.accepted else "FAILS")
        for name, case in zip(_SHORT, run.cases, strict=False)
    )


def reweigh_rows(
    runs: tuple[JudgedRun, ...], most: int, zone: tzinfo
) -> tuple[tuple[str, ...], ...]:
    """The bags to weigh again, the riskiest first: serial, time, net, worst and drift."""
    rows: list[tuple[str, ...]] = []
    for run in runs:
        if run.window is None:
            rows += [
                (pack.id.serial, _clock(pack.at, zone), pack.net.digits, "–", "–")
                for pack in run.packs
            ]
            continue
        rows += [
            (
                run.packs[one.pack.serial].id.serial,
                _clock(one.pack.at, zone),
                one.pack.net.digits,
                _two(one.worst_net),
                _two(one.drift_net),
            )
            for one in run.window.reweigh
        ]
    return tuple(rows[:most])


def _clock(at: datetime, zone: tzinfo) -> str:
    return f"{at.astimezone(zone):%H:%M:%S}"


def _two(number: Fraction) -> str:
    return plain(decimal_of(number, 2))
