"""``station suspects``: the suspect windows on record, with both bounds and what was decided."""

from __future__ import annotations

from typing import TYPE_CHECKING, Annotated
from zoneinfo import ZoneInfo

import typer
from rich.console import RenderableType

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Config, Home, home_of
from station.cli.page import Weight, facts, heading, note
from station.cli.suspects import Suspects, suspects_document, suspects_page
from station.errors import BadInput

if TYPE_CHECKING:
    from station.core.checks.suspect import FiledWindow
    from station.core.facts import FactRecord
    from station.line.suspected import JudgedRun, Suspected

_Uid = Annotated[
    str | None, typer.Option("--uid", metavar="UID", help="Only the window of this id.")
]
_CAVEAT = "The bounds are an aid; QA decides, and the scale's own verification prevails."


def suspects(
    uid: _Uid = None, home: Home = None, config: Config = None, as_json: AsJson = False
) -> None:
    """List the suspect windows; exit 1 while one waits for a decision."""

    def work() -> Answer:
        from station.store.suspects import filed_windows, suspect_windows  # slow to load
        from station.store.weighed import plant_zone

        record = home_of(home, config)
        found = suspect_windows(record, uid)
        others = [
            pair for pair in filed_windows(record) if pair[0].cause and uid in (None, pair[0].uid)
        ]
        every = [(one.window, one.decision) for one in found] + others
        if uid is not None and not every:
            raise BadInput("--uid", f"{uid!r} is no suspect window in the record in {record}")
        zone = plant_zone(record)
        waiting = sum(decision is None for _, decision in every)
        words = "No bag in the record was ever suspect"
        if every:
            words = f"{len(every)} suspect windows, {waiting} wait for a decision"
        page: tuple[RenderableType, ...] = (
            heading(words, Weight.STOP if waiting else Weight.PLAIN),
        )
        for one in found:
            page += _page(one, zone)
        for window, decision in others:
            page += (facts(_rows(window, decision, zone)),)
        document: dict[str, Json] = {
            "waiting": waiting,
            "windows": [
                *(_document(one, zone) for one in found),
                *(_unbounded(window, decision, zone) for window, decision in others),
            ],
        }
        return Answer(document, (*page, note(_CAVEAT)), yes=not waiting)

    run_verb(as_json, work)


def _document(one: Suspected, zone: ZoneInfo) -> dict[str, Json]:
    window = one.window
    step: Json = None
    if window.step is not None:
        step = {
            "last_before": window.step.last_before.astimezone(zone).isoformat(),
            "first_after": window.step.first_after.astimezone(zone).isoformat(),
            "size": window.step.size,
        }
    return {
        **_common(window, one.decision, zone),
        "sign": window.sign.name.lower(),
        "sign_words": str(window.sign),
        "step": step,
        "runs": [
            suspects_document(as_weighed)
            if (as_weighed := _of_run(run)) is not None
            else {"run": run.run.id, "refused": run.refused, "held": len(run.packs)}
            for run in one.runs
        ],
    }


def _unbounded(window: FiledWindow, decision: FactRecord | None, zone: ZoneInfo) -> dict[str, Json]:
    """A window of another check than that of the scale: its bags have no bounds."""
    return {
        **_common(window, decision, zone),
        "runs": [
            {
                "run": run.run,
                "product": run.product,
                "why": run.refused,
                "held": len(run.reweigh),
                "serials": list[Json](run.reweigh),
            }
            for run in window.runs
        ],
    }


def _common(window: FiledWindow, decision: FactRecord | None, zone: ZoneInfo) -> dict[str, Json]:
    decided: Json = None
    if decision is not None:
        decided = {
            "decision": decision.fact.result,
            "reason": str(decision.fact.details["reason"]),
            "who": decision.who,
            "at": decision.at.utc.astimezone(zone).isoformat(),
        }
    return {
        "uid": window.uid,
        "scale": window.scale,
        "failed": window.cause or "scale check",
        "check": window.check,
        "good_check": window.good or None,
        "opened": window.opened.astimezone(zone).isoformat(),
        "closed": window.closed.astimezone(zone).isoformat(),
        "bags": window.bags,
        "holds": list(window.holds),
        "decided": decided,
    }


def _rows(
    window: FiledWindow, decision: FactRecord | None, zone: ZoneInfo
) -> tuple[tuple[str, str], ...]:
    rows = [
        ("Window", window.uid),
        ("Failed" if window.cause else "Scale", window.scale),
        ("Bags held", str(window.bags)),
        ("Packed after", f"{window.opened.astimezone(zone):%Y-%m-%d %H:%M:%S %z}"),
        ("and until", f"{window.closed.astimezone(zone):%Y-%m-%d %H:%M:%S %z}"),
    ]
    if window.step is not None:
        step = window.step
        between = [f"{at.astimezone(zone):%H:%M:%S}" for at in (step.last_before, step.first_after)]
        rows.append(("Zero stepped", f"{step.size} between {between[0]} and {between[1]}"))
    if window.cause:
        rows += [("Why", words) for words in dict.fromkeys(run.refused for run in window.runs)]
    decided = "waits for QA or the lead"
    if decision is not None:
        decided = f"{decision.fact.result}, {decision.who}: {decision.fact.details['reason']}"
    return (*rows, ("Decision", decided))


def _page(one: Suspected, zone: ZoneInfo) -> tuple[RenderableType, ...]:
    page: tuple[RenderableType, ...] = (facts(_rows(one.window, one.decision, zone)),)
    for run in one.runs:
        judged = _of_run(run)
        page += (heading(run.refused),) if judged is None else suspects_page(judged)
    return page


def _of_run(run: JudgedRun) -> Suspects | None:
    """A run's window as the pages of a check print it; None where it could not be judged."""
    from station.store.answers import WeighedPack  # slow to load

    if run.window is None:
        return None
    packs = tuple(
        WeighedPack(pack.id.serial, pack.at, pack.gross, pack.net, pack.quality, "")
        for pack in run.packs
    )
    return Suspects(run.run, packs, run.window)
