"""``station scale-check``: test weights on the scale, and what a failed check makes suspect."""

from __future__ import annotations

from datetime import datetime
from typing import Annotated

import typer
from rich.console import RenderableType

from station.cli.answer import Answer, Json, digits, run_verb
from station.cli.checks_on_record import recorded_checks
from station.cli.loads import SYSTEMS, readings_of, scale_of
from station.cli.options import AsJson, Config, Home, home_of
from station.cli.page import Weight, heading, listing, note
from station.cli.suspects import Suspects, find_suspects, suspects_document, suspects_page
from station.cli.times import TIME_FORM, read_time
from station.clock import SystemClock
from station.core.metrology.clause import RuleRefused
from station.core.metrology.scale_check import (
    CheckedLoad,
    CheckReading,
    CheckResult,
    CheckStage,
    ScaleCheck,
    judge_check,
)
from station.core.metrology.scale_suitability import Scale
from station.errors import BadInput

_Loads = Annotated[
    list[str] | None,
    typer.Option("--load", metavar="MASS=SHOWN", help="A load and its reading, such as 250=251."),
]
_Unit = Annotated[str, typer.Option("--unit", metavar="UNIT", help="Unit of all figures.")]
_Interval = Annotated[str | None, typer.Option("--interval", metavar="E", help="Scale interval e.")]
_Max = Annotated[str | None, typer.Option("--max", metavar="MAX", help="Maximum capacity.")]
_Class = Annotated[str, typer.Option("--class", metavar="CLASS", help="Accuracy class.")]
_Weights = Annotated[
    str, typer.Option("--weights", metavar="CLASS", help="Class of the test weights.")
]
_System = Annotated[
    str,
    typer.Option(
        "--system", "--rules", metavar="SYSTEM", help=f"Limits of error: {', '.join(SYSTEMS)}."
    ),
]


def _time_option(name: str, words: str) -> typer.models.OptionInfo:
    return typer.Option(name, metavar="TIME", help=words)  # type: ignore[no-any-return]


_GoodAt = Annotated[str | None, _time_option("--good-at", "When the last good check was.")]
_FailedAt = Annotated[str | None, _time_option("--failed-at", "When this check was.")]
_StepAt = Annotated[str | None, _time_option("--step-at", "When zero stepped, if that is known.")]

_COLUMNS = ("load", "shown", "error", "warns_beyond", "fails_beyond", "verdict")
_WEIGHTS = {
    CheckResult.GOOD: (Weight.PLAIN, "THE SCALE HOLDS"),
    CheckResult.WARN: (Weight.ATTEND, "THE SCALE HOLDS, beyond its first limit: have it adjusted"),
    CheckResult.FAILED: (Weight.STOP, "THE SCALE FAILS: stop, and hold every bag since the last "
                                      "good check"),
}  # fmt: skip
_CAVEAT = "The scale's own verification and its authority decide; this is the packer's own check."


def scale_check(
    loads: _Loads = None,
    interval: _Interval = None,
    maximum: _Max = None,
    unit: _Unit = "g",
    scale_class: _Class = "III",
    weights: _Weights = "M1",
    system: _System = "r-76",
    good_at: _GoodAt = None,
    failed_at: _FailedAt = None,
    step_at: _StepAt = None,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """Judge a check with test weights; exit 1 when it failed.

    With both times and a home, a failed check also names the bags it makes suspect. Without a
    load, the checks on record are listed; exit 1 when the last one failed.
    """

    def work() -> Answer:
        if not loads and home is None and config is None:
            raise BadInput("--load", "give a load, such as 250=251, or --home for those on record")
        if not loads:
            return recorded_checks(home_of(home, config))
        if interval is None or maximum is None:
            raise BadInput("--interval, --max", "give both: the limits of error rest on them")
        scale = scale_of(unit, interval, maximum, scale_class, system)
        readings = readings_of(loads, weights, scale)
        times = (good_at, failed_at, step_at)
        if times == (None, None, None):
            return _answer(_judged(scale, readings, SystemClock("UTC").now().utc), None)
        if good_at is None or failed_at is None:
            raise BadInput("--good-at, --failed-at", f"give both, each as {TIME_FORM}")
        record = home_of(home, config)
        good = read_time("--good-at", good_at, record)
        failed = read_time("--failed-at", failed_at, record)
        step = None if step_at is None else read_time("--step-at", step_at, record)
        if failed <= good:
            raise BadInput("--failed-at", f"{failed} is not after the good check of {good}")
        if step is not None and not good < step <= failed:
            raise BadInput("--step-at", f"{step} is not between {good} and {failed}")
        check = _judged(scale, readings, failed)
        if check.result is not CheckResult.FAILED:
            return _answer(check, ())
        return _answer(check, find_suspects(scale, readings, check, good, step, record))

    run_verb(as_json, work)


def _judged(scale: Scale, readings: list[CheckReading], at: datetime) -> ScaleCheck:
    try:
        return judge_check(scale, readings, at, CheckStage.AS_FOUND)
    except RuleRefused as refused:
        raise BadInput("--load, --weights, --class", str(refused)) from refused


def _answer(check: ScaleCheck, suspects: tuple[Suspects, ...] | None) -> Answer:
    """Answer with the loads; ``suspects`` is None where no record was asked."""
    passed = check.result is not CheckResult.FAILED
    document: dict[str, Json] = {
        "verdict": str(check.result),
        "passed": passed,
        "unit": str(check.loads[0].mass.unit),
        "loads": [_load_document(load) for load in check.loads],
        "windows": None if suspects is None else [suspects_document(one) for one in suspects],
    }
    weight, words = _WEIGHTS[check.result]
    page: tuple[RenderableType, ...] = (
        heading(words, weight),
        listing(_COLUMNS, map(_cells, check.loads), "load shown error warns_beyond fails_beyond"),
    )
    if suspects is not None and not suspects:
        page += (heading("No bag in the record is suspect"),)
    for one in suspects or ():
        page += suspects_page(one)
    return Answer(document, (*page, note(_CAVEAT)), yes=passed)


def _load_document(load: CheckedLoad) -> dict[str, Json]:
    reading = load.reading
    return {
        "load": load.mass.digits,
        "weights": [one.digits for one in reading.weights.nominals],
        "shown": reading.indication.digits,
        "added": digits(reading.added),
        "error": load.error.digits,
        "warn_limit": load.warn_beyond.digits,
        "limit": load.fail_beyond.digits,
        "verdict": str(load.result),
        "passed": load.result is not CheckResult.FAILED,
    }


def _cells(load: CheckedLoad) -> tuple[str, ...]:
    shown = f"{load.reading.indication}"
    if load.reading.added is not None:
        shown += f" + {load.reading.added}"
    return (
        f"{load.mass}",
        shown,
        f"{load.error}",
        f"{load.warn_beyond}",
        f"{load.fail_beyond}",
        str(load.result),
    )
