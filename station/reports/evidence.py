"""Everything about a run or an input lot, gathered for an auditor: one question, one answer.

Nothing is worked out anew that the batch record, the traceability records or the roll accounts know
already; here they are put together with every entry that touches the run, the proof of the journal,
and what is still open.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from zoneinfo import ZoneInfo

from labels.errors import LabelError
from labels.pdf import drawer_of
from labels.release import ReleasedLabel, release
from station.core.balance import Water
from station.core.checks.rolls import RollAccount
from station.core.checks.suspect import FiledWindow
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.long_work import share, step, steps
from station.core.pack import Quality, Residue
from station.core.pauses import Pause, pauses_of
from station.errors import BadInput, EnvironmentFault
from station.line.suspected import Suspected
from station.reports.batch import BatchRecord, batch_record
from station.reports.evidence_facts import entered_for
from station.reports.evidence_proof import EntryProof, last_checked_copy, prove_run
from station.reports.label_facts import design_of, specimen_label
from station.reports.traceability import Traceability, of_lot, of_run
from station.software_id import SoftwareId
from station.store.bag_sums import RunSpan, run_spans
from station.store.facts_from import FactsFrom
from station.store.head_now import HeadNow, head_now
from station.store.label_doubts import open_labels
from station.store.label_rolls import roll_accounts
from station.store.own_entries import OwnEntries, own_entries
from station.store.purged import gone_with_lot
from station.store.residues import residues_of
from station.store.suspects import filed_windows, suspect_windows
from station.store.verify import VerifyReport, verify
from station.store.weighed import packs_of_run, plant_zone

"""Told what is gathered now, how many parts are done, and of how many; may raise to stop."""


@dataclass(frozen=True, slots=True)
class By:
    """How evidence is proved.

    Args:
        key: file of the station's key, which signs a head over entries that are under none yet;
            None for none.
        whole: verify the whole journal too, which takes the longer the more is in it.
    """

    key: Path | None = None
    whole: bool = False


@dataclass(frozen=True, slots=True)
class RunEvidence:
    """One run.

    Args:
        record: its batch record.
        span: when it was packed.
        entered: facts that were entered in it or touch its bags, in the order of the journal.
        stops: its stops.
        rolls: label rolls that were in.
        residues: readings of the empty pan.
        specimen: its label as the first-off saw it; None where it cannot be drawn any more.
        why_none: why it cannot; empty where it can.
        proofs: of its first and last entry.
        own: what reading and proving all its entries found.
    """

    record: BatchRecord
    span: RunSpan
    entered: tuple[FactRecord, ...]
    stops: tuple[Pause, ...]
    rolls: tuple[RollAccount, ...]
    residues: tuple[Residue, ...]
    specimen: ReleasedLabel | None
    why_none: str
    proofs: tuple[EntryProof, ...]
    own: OwnEntries

    def of(self, *kinds: EntryKind) -> tuple[FactRecord, ...]:
        """Its facts of some kinds."""
        return tuple(one for one in self.entered if one.fact.kind in kinds)


@dataclass(frozen=True, slots=True)
class Evidence:
    """The whole pack.

    Args:
        asked: what was asked for, in words.
        zone: of the plant.
        runs: each run, in order.
        trace: input lots and blends.
        windows: suspect windows of failed scale checks that reach its bags.
        others: those of failed checks of QA and of the tare, each with its decision or None.
        in_doubt: serials of its bags whose label waits for an answer, copies too.
        whole: what verifying the whole journal found; None where nobody asked for it.
        last_copy: the newest backup whose entries were all checked, or None.
        software: what packs and reports, with its version and whole hash.
    """

    asked: str
    zone: ZoneInfo
    runs: tuple[RunEvidence, ...]
    trace: Traceability
    windows: tuple[Suspected, ...]
    others: tuple[tuple[FiledWindow, FactRecord | None], ...]
    in_doubt: tuple[str, ...]
    whole: VerifyReport | None
    last_copy: FactRecord | None
    software: SoftwareId

    @property
    def open_points(self) -> tuple[str, ...]:
        """What is not settled, in words; an auditor asks for these first."""
        points = []
        if self.whole is not None and not self.whole.whole:
            points.append(f"THE JOURNAL DOES NOT HOLD: {self.whole.why}")
        points += [
            f"THE ENTRIES OF {run.record.run.blend_lot} DO NOT HOLD: {run.own.why}"
            for run in self.runs
            if not run.own.holds
        ]
        for run in self.runs:
            name = run.record.run.blend_lot
            if run.record.still_open:
                points.append(f"{name}: bags are still packed")
            if not run.record.accepted:
                points.append(f"{name}: the batch does not pass")
            held = sum(bag.quality is Quality.HELD for bag in run.record.bags)
            if held:
                points.append(f"{name}: {held} bags are held")
            undecided = rejects_undecided(run)
            if undecided:
                points.append(f"{name}: {len(undecided)} bags set aside wait for a disposition")
            points += [f"roll {one.roll}: a difference is open" for one in run.rolls if one.open]
        points += [
            f"a suspect window of {one.window.bags} bags waits for a decision"
            for one in self.windows
            if one.decision is None
        ]
        points += [
            f"a suspect window of {window.cause}, {window.bags} bags, waits for a decision"
            for window, decision in self.others
            if decision is None
        ]
        if self.in_doubt:
            points.append(f"{len(self.in_doubt)} labels in doubt")
        return tuple(points)


def evidence_of_run(
    home: Path, uid: str, software: SoftwareId, water: Water | None = None, by: By = By()
) -> Evidence:
    """Gather everything about a run.

    Args:
        home: folder of the record.
        uid: id of the run, or ``last``.
        software: what packs and reports.
        water: uptake between weighing a lot and weighing the bags.
        by: how it is proved.

    Raises:
        BadInput: no such run, or it has no bag.
        GivenUp: nobody wants it any more.
        RuleRefused: its rules are not known here.
    """
    found = packs_of_run(home, uid).run.id
    trace = of_run(home, found, water or Water())
    return _gathered(home, (found,), f"run {found}", trace, software, by)


def evidence_of_lot(
    home: Path, code: str, software: SoftwareId, water: Water | None = None, by: By = By()
) -> Evidence:
    """Gather everything about every run that could hold an input lot.

    Args:
        home: folder of the record.
        code: of the lot.
        software: what packs and reports.
        water: uptake between weighing a lot and weighing the bags.
        by: how it is proved.

    Raises:
        BadInput: no such lot, or no bag could hold it.
        GivenUp: nobody wants it any more.
        RuleRefused: the rules of a run are not known here.
    """
    trace = of_lot(home, code, water or Water())
    uids = tuple(dict.fromkeys(one.run.id for one in trace.transformations))
    if not uids:
        for gone in gone_with_lot(home, code):
            raise BadInput(f"lot {code} was purged", f"what could hold it {gone.words}")
        raise BadInput(f"lot {code}", "no labelled bag could hold it: there is no evidence of it")
    return _gathered(home, uids, f"input lot {code}", trace, software, by)


def rejects_undecided(run: RunEvidence) -> tuple[str, ...]:
    """Serials of bags set aside that nobody decided about.

    A bag that stands for another one may be set aside too, so a decision that names it says nothing
    of it.
    """
    return tuple(bag.serial for bag in run.record.bags if bag.quality is Quality.REJECT)


def _gathered(
    home: Path,
    uids: Sequence[str],
    asked: str,
    trace: Traceability,
    software: SoftwareId,
    by: By,
) -> Evidence:
    spans = {span.run: span for span in run_spans(home, uids)}
    source = FactsFrom(home)
    with share(0, 100 * len(uids) / (len(uids) + 1)):
        now = _head_now(home, by.key)
        runs = [_run(home, spans[uid], source, trace, now) for uid in steps(uids, len(uids))]
        step(100)
    serials = frozenset(bag.serial for run in runs for bag in run.record.bags)
    windows = suspect_windows(home, serials=serials)
    others = tuple(
        (window, decision)
        for window, decision in filed_windows(home)
        if window.cause and window.reaches(serials)
    )
    whole = verify(home) if by.whole else None
    step(100)
    return Evidence(
        asked=asked,
        zone=plant_zone(home),
        runs=tuple(runs),
        trace=trace,
        windows=windows,
        others=others,
        in_doubt=tuple(one.serial for one in open_labels(home) if one.serial in serials),
        whole=whole,
        last_copy=last_checked_copy(home),
        software=software,
    )


def _run(
    home: Path,
    span: RunSpan,
    source: FactsFrom,
    trace: Traceability,
    now: HeadNow | None,
) -> RunEvidence:
    record = batch_record(home, packs_of_run(home, span.run))
    lots = {use.lot for one in trace.transformations if one.run.id == span.run
            for use in one.blend.uses}  # fmt: skip
    entered = entered_for(record, span, source, lots)
    named = {one.fact.uid for one in entered}
    specimen, why = _specimen(record, trace)
    return RunEvidence(
        record=record,
        span=span,
        entered=entered,
        stops=pauses_of(tuple(one for one in entered if one.fact.kind is EntryKind.PAUSE)),
        rolls=roll_accounts(
            home, only=frozenset(one.fact.uid for one in entered if one.fact.kind is EntryKind.ROLL)
        ),
        residues=residues_of(home, span.run),
        specimen=specimen,
        why_none=why,
        proofs=prove_run(home, record.run.blend_lot, record.evidence, now),
        own=own_entries(home, span.run, named, now),
    )


def _head_now(home: Path, key: Path | None) -> HeadNow | None:
    """The head of all entries so far; None where roots are missing, which the proof will name."""
    try:
        return head_now(home, key)
    except EnvironmentFault:
        return None


def _specimen(record: BatchRecord, trace: Traceability) -> tuple[ReleasedLabel | None, str]:
    run = record.run
    try:
        label = specimen_label(run, trace.site, trace.station, "")
        return release(drawer_of(design_of(run.product)), label), ""
    except LabelError as refused:
        return None, str(refused)
