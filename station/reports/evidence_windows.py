"""Suspect windows in an evidence pack: the failed check, both bounds, and what was decided."""

from __future__ import annotations

from reportlab.platypus import Flowable

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
        return [*story, note("None reaches these bags.")]
    for one in found.windows:
        story += _window(one, found)
    return story


def _window(one: Suspected, found: Evidence) -> list[Flowable]:
    window, decision = one.window, one.decision
    opened, closed = (at.astimezone(found.zone) for at in (window.opened, window.closed))
    errors = ", ".join(f"{load.error} at {load.mass}" for load in one.made.check.loads)
    step = "none is dated"
    if window.step is not None:
        step = f"{window.step.size} at {window.step.last_before.astimezone(found.zone):%H:%M:%S}"
    decided = "NOBODY HAS DECIDED"
    if decision is not None:
        reason = decision.fact.details.get("reason", "")
        decided = (
            f"{decision.fact.result}, by {decision.who} at "
            f"{decision.at.utc.astimezone(found.zone):%Y-%m-%d %H:%M}: {reason}"
        )
    story: list[Flowable] = [
        pairs(
            (
                ("Between", f"{opened:%Y-%m-%d %H:%M:%S} and {closed:%Y-%m-%d %H:%M:%S}"),
                ("Bags", str(window.bags)),
                ("Errors found", errors),
                ("Step of zero", step),
                ("Corrective action", decided),
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
