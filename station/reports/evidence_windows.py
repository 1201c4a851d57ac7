"""Suspect windows in an evidence pack: the failed check, both bounds, and what was decided."""

from __future__ import annotations

from reportlab.platypus import Flowable

from station.core.checks.suspect import FiledWindow
from station.core.facts import FactRecord
from station.core.metrology.exact import decimal_of
from station.line.suspected import Suspected
from station.reports.evidence import Evidence
from station.reports.paper import heading, listing, note, pairs

_CASES = (("case", 0.28), ("bags", 0.12), ("mean", 0.16), ("below T1", 0.14), ("below T2", 0.14),
          ("passes", 0.16))  # fmt: skip


def windows_story(found: Evidence) -> list[Flowable]:
    """Every suspect window that reaches the bags."""
    story = heading(f"Suspect windows after a failed scale check: {len(found.windows)}")
    if not found.windows:
        story.append(note("None reaches these bags."))
    for one in found.windows:
        story += _window(one, found)
    if found.others:
        words = f"Suspect windows after another failed check: {len(found.others)}"
        story += heading(words)
    for window, decision in found.others:
        rows = (
            ("Failed", window.cause),
            *_common(window, found),
            ("Why", "; ".join(dict.fromkeys(run.refused for run in window.runs))),
            ("Corrective action", _decided(decision, found)),
        )
        story.append(pairs(rows))
    return story


def _common(window: FiledWindow, found: Evidence) -> tuple[tuple[str, str], ...]:
    opened, closed = (at.astimezone(found.zone) for at in (window.opened, window.closed))
    return (
        ("Between", f"{opened:%Y-%m-%d %H:%M:%S} and {closed:%Y-%m-%d %H:%M:%S}"),
        ("Bags", str(window.bags)),
    )


def _decided(decision: FactRecord | None, found: Evidence) -> str:
    if decision is None:
        return "NOBODY HAS DECIDED"
    reason = decision.fact.details.get("reason", "")
    at = f"{decision.at.utc.astimezone(found.zone):%Y-%m-%d %H:%M}"
    return f"{decision.fact.result}, by {decision.who} at {at}: {reason}"


def _window(one: Suspected, found: Evidence) -> list[Flowable]:
    window = one.window
    errors = ", ".join(f"{load.error} at {load.mass}" for load in one.made.check.loads)
    step = "none is dated"
    if window.step is not None:
        step = f"{window.step.size} at {window.step.last_before.astimezone(found.zone):%H:%M:%S}"
    story: list[Flowable] = [
        pairs(
            (
                *_common(window, found),
                ("Errors found", errors),
                ("Step of zero", step),
                ("Corrective action", _decided(one.decision, found)),
            )
        )
    ]
    for run in window.runs:
        rows = [
            (
                case.name,
                str(case.n),
                f"{decimal_of(case.mean, 3)} {run.unit}",
                str(case.t1_count),
                str(case.t2_count),
                "yes" if case.accepted else "NO",
            )
            for case in run.cases
        ]
        story.append(note(f"{run.product}: {len(run.reweigh)} bags {run.refused}".strip()))
        if rows:
            story.append(listing(_CASES, rows, frozenset({1, 2, 3, 4})))
    return story
