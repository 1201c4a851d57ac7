"""Suspect windows and what was decided about them as entries of the record, and back.

The window's entry names the bags and holds the verdicts of its day; the two bounds of each bag
follow exactly from the failed check and the bag's own record, and are worked out again from there.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from fractions import Fraction
from typing import Any

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind, Value
from station.core.metrology.suspect import CaseVerdict, ErrorSign

OPEN = "open"


class Decision(StrEnum):
    """What QA or the lead decides about a window."""

    RELEASED = "released"
    RELEASED_BEFORE_STEP = "released before the step"
    HOLD_STAYS = "hold stays"


@dataclass(frozen=True, slots=True)
class FiledStep:
    """A step of zero between two readings of the empty pan; ``size`` in words with its unit."""

    last_before: datetime
    first_after: datetime
    size: str


@dataclass(frozen=True, slots=True)
class RunWindow:
    """The suspect bags of one run.

    Args:
        run: id of the run.
        product: code of its product.
        unit: of the means.
        cases: as weighed, the whole error, even growth, and the dated step where there is one;
            empty where the run could not be judged.
        refused: why it could not; empty where it could.
        reweigh: serials in order of risk; in order of packing where it could not be judged.
    """

    run: str
    product: str
    unit: str
    cases: tuple[CaseVerdict, ...]
    refused: str
    reweigh: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class FiledWindow:
    """A suspect window as the record has it.

    Args:
        uid: of its entry.
        scale: the scale, or the check of QA that failed.
        check: uid of the failed check.
        good: uid of the last good check; empty where there was none.
        opened: bags after this moment are suspect.
        closed: time of the failed check.
        sign: which way the scale was wrong.
        step: a dated step of zero that explains the error, or None.
        holds: uids of the holds; with a step the first is of the bags before it.
        runs: the bags, by run.
        cause: which check of QA failed; empty where it was one of the scale.
    """

    uid: str
    scale: str
    check: str
    good: str
    opened: datetime
    closed: datetime
    sign: ErrorSign
    step: FiledStep | None
    holds: tuple[str, ...]
    runs: tuple[RunWindow, ...]
    cause: str = ""

    @property
    def bags(self) -> int:
        """How many bags are suspect."""
        return sum(len(run.reweigh) for run in self.runs)

    def reaches(self, serials: frozenset[str]) -> bool:
        """Whether one of some bags is suspect."""
        return any(not serials.isdisjoint(run.reweigh) for run in self.runs)


def window_fact(window: FiledWindow) -> Fact:
    """The entry that keeps a suspect window."""
    step: Value = None
    if window.step is not None:
        step = {
            "last_before": window.step.last_before.isoformat(),
            "first_after": window.step.first_after.isoformat(),
            "size": window.step.size,
        }
    cause: dict[str, Value] = {"cause": window.cause} if window.cause else {}
    return Fact(
        kind=EntryKind.SUSPECT,
        uid=window.uid,
        subject=window.scale,
        result=OPEN,
        details={
            **cause,
            "check": window.check,
            "good": window.good,
            "opened": window.opened.isoformat(),
            "closed": window.closed.isoformat(),
            "sign": window.sign.name.lower(),
            "step": step,
            "holds": list(window.holds),
            "runs": [_run_body(run) for run in window.runs],
        },
    )


def window_of(record: FactRecord) -> FiledWindow | None:
    """The window of an entry; None where the entry is a decision about one."""
    details: Any = record.fact.details
    if "decides" in details:
        return None
    step = details["step"]
    return FiledWindow(
        uid=record.fact.uid,
        scale=record.fact.subject,
        check=details["check"],
        good=details["good"],
        opened=datetime.fromisoformat(details["opened"]),
        closed=datetime.fromisoformat(details["closed"]),
        sign=ErrorSign[details["sign"].upper()],
        step=None if step is None else _step_of(step),
        holds=tuple(details["holds"]),
        runs=tuple(_run_of(run) for run in details["runs"]),
        cause=details.get("cause", ""),
    )


def decision_facts(
    window: FiledWindow, decision: Decision, reason: str, uids: Sequence[str]
) -> tuple[Fact, ...]:
    """The entries that keep a decision: what it releases, then the decision itself.

    Args:
        window: what is decided about.
        decision: how.
        reason: why, in a person's words.
        uids: new ids: one for each hold of the window, and one more.

    Raises:
        ValueError: there is no reason, or no step whose earlier bags could be released.
    """
    if not reason.strip():
        raise ValueError("a decision about suspect bags needs a reason: write why")
    if decision is Decision.RELEASED_BEFORE_STEP and len(window.holds) < 2:
        raise ValueError("no step of zero is dated with bags before it: release all or none")
    released = {
        Decision.RELEASED: window.holds,
        Decision.RELEASED_BEFORE_STEP: window.holds[:1],
        Decision.HOLD_STAYS: (),
    }[decision]
    releases = tuple(
        Fact(
            kind=EntryKind.RELEASE,
            uid=uid,
            subject=window.uid,
            result=str(decision),
            details={"hold": hold, "reason": reason},
        )
        for uid, hold in zip(uids, released, strict=False)
    )
    decided = Fact(
        kind=EntryKind.SUSPECT,
        uid=uids[-1],
        subject=window.uid,
        result=str(decision),
        details={"decides": window.uid, "reason": reason},
    )
    return (*releases, decided)


def decided_window(record: FactRecord) -> str:
    """Uid of the window that an entry decides about; empty where it is a window itself."""
    return str(record.fact.details.get("decides", ""))


def _run_body(run: RunWindow) -> dict[str, Value]:
    return {
        "run": run.run,
        "product": run.product,
        "unit": run.unit,
        "cases": [_case_body(case) for case in run.cases],
        "refused": run.refused,
        "reweigh": list(run.reweigh),
    }


def _run_of(body: Any) -> RunWindow:  # noqa: ANN401 - the body as read back
    return RunWindow(
        run=body["run"],
        product=body["product"],
        unit=body["unit"],
        cases=tuple(_case_of(case) for case in body["cases"]),
        refused=body["refused"],
        reweigh=tuple(body["reweigh"]),
    )


def _case_body(case: CaseVerdict) -> dict[str, Value]:
    return {
        "case": case.name,
        "n": case.n,
        "mean": str(case.mean),
        "t1_count": case.t1_count,
        "t2_count": case.t2_count,
        "accepted": case.accepted,
    }


def _case_of(body: Any) -> CaseVerdict:  # noqa: ANN401 - the body as read back
    return CaseVerdict(
        name=body["case"],
        n=body["n"],
        mean=Fraction(body["mean"]),
        t1_count=body["t1_count"],
        t2_count=body["t2_count"],
        accepted=body["accepted"],
    )


def _step_of(body: Any) -> FiledStep:  # noqa: ANN401 - the body as read back
    return FiledStep(
        datetime.fromisoformat(body["last_before"]),
        datetime.fromisoformat(body["first_after"]),
        body["size"],
    )
