"""The parts of a run in an evidence pack: gates, checks, rolls, holds, rejects, with details."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from zoneinfo import ZoneInfo

from reportlab.platypus import Flowable

from station.core.checks.first_off import first_off_of
from station.core.checks.qa import qa_check_of
from station.core.checks.scale import check_of
from station.core.checks.tare import empty_bag_of
from station.core.facts import FactRecord, texts_of
from station.core.journal import EntryKind
from station.core.pack import Quality
from station.reports.evidence import RunEvidence
from station.reports.paper import heading, listing, note, together
from station.reports.period_charts import pareto_chart, residue_chart, timeline_chart
from station.reports.timeline import marks_of

_FACT = (("at", 0.15), ("what", 0.15), ("about", 0.22), ("result", 0.15), ("who", 0.08),
         ("with", 0.25))  # fmt: skip
_GATES = (EntryKind.GATE, EntryKind.FIRST_OFF, EntryKind.SETTING, EntryKind.PROPOSAL)
_HELD = (EntryKind.HOLD, EntryKind.RELEASE, EntryKind.DISPOSITION)
_LABELS = (EntryKind.SCAN_BACK, EntryKind.REPRINT)
_OTHER = (EntryKind.CALL, EntryKind.CLOCK, EntryKind.PERSON)
_MOST_WORDS = 110
_LEFT_TO_TABLES = frozenset({"expected", "scanned", "sha256", "points", "ranges", "net_ug"})
"""Details too long for a line; entries.csv has them."""


def run_parts(run: RunEvidence, zone: ZoneInfo) -> list[Flowable]:
    """Everything about a run beside its batch record."""
    return [
        *_listed("Gates, approvals and signatures", run.of(*_GATES), zone),
        *_first_offs(run, zone),
        *_checks(run, zone),
        *_empty_bags(run, zone),
        *_quality_checks(run, zone),
        *_listed("Calls, people and the clock", run.of(*_OTHER), zone),
        *_listed("Scans of labels and copies", run.of(*_LABELS), zone),
        *_rolls(run),
        *_rejects(run),
        *_listed("Holds, releases and dispositions", run.of(*_HELD), zone),
        *_stops(run, zone),
        *_pictures(run, zone),
    ]


def details_of(record: FactRecord) -> str:
    """What a fact says beside its result, in one line that fits a table."""
    parts = []
    for name, value in record.fact.details.items():
        if name in _LEFT_TO_TABLES or value in (None, "", [], {}):
            continue
        if isinstance(value, list | dict):
            found = list(texts_of(value))
            words = ", ".join(found[:3]) + (" …" if len(found) > 3 else "")
            words = words or f"{len(value)}"
        else:
            words = str(value)
        parts.append(f"{name.replace('_', ' ')} {words}")
    whole = "; ".join(parts)
    return whole if len(whole) <= _MOST_WORDS else f"{whole[:_MOST_WORDS]}…"


def _listed(title: str, chosen: Sequence[FactRecord], zone: ZoneInfo) -> list[Flowable]:
    story = heading(title)
    if not chosen:
        return [*story, note("None.")]
    rows = [
        (
            _clock(one.at.utc, zone),
            str(one.fact.kind),
            one.fact.subject,
            one.fact.result,
            one.who,
            details_of(one),
        )
        for one in chosen
    ]
    return [*story, listing(_FACT, rows)]


def _first_offs(run: RunEvidence, zone: ZoneInfo) -> list[Flowable]:
    rows = [
        (_clock(one.at.utc, zone), one.fact.result, seen.lead, seen.second or "–", seen.refusal,
         seen.sha256)
        for one in run.of(EntryKind.FIRST_OFF)
        for seen in (first_off_of(one),)
    ]  # fmt: skip
    if not rows:
        return []
    columns = (("at", 0.15), ("result", 0.1), ("lead", 0.08), ("second", 0.08), ("refused", 0.12),
               ("SHA-256 of the specimen", 0.47))  # fmt: skip
    return [together([note("First-offs, each by two people:"), listing(columns, rows)])]


def _checks(run: RunEvidence, zone: ZoneInfo) -> list[Flowable]:
    story = heading("Checks of the scale")
    rows = [
        (
            _clock(one.at.utc, zone),
            f"{made.trigger}, {made.check.stage}",
            f"{load.mass}",
            f"{load.reading.indication}",
            f"{load.error}",
            f"{load.fail_beyond}",
            str(load.result),
            one.who,
        )
        for one in run.of(EntryKind.SCALE_CHECK)
        for made in (check_of(one),)
        for load in made.check.loads
    ]
    if not rows:
        return [*story, note("None.")]
    columns = (("at", 0.16), ("why", 0.18), ("load", 0.12), ("shown", 0.12), ("error", 0.11),
               ("fails beyond", 0.13), ("result", 0.1), ("who", 0.08))  # fmt: skip
    weights = ", ".join(
        sorted({check_of(one).certificate for one in run.of(EntryKind.SCALE_CHECK)})
    )
    return [*story, listing(columns, rows, frozenset({2, 3, 4, 5})), note(f"Weights: {weights}")]


def _quality_checks(run: RunEvidence, zone: ZoneInfo) -> list[Flowable]:
    story = heading("Checks of quality")
    rows = [
        (
            _clock(one.at.utc, zone),
            one.fact.subject,
            made.words,
            str(made.limit),
            one.fact.result,
            one.who,
            "; ".join(filter(None, (made.instrument, made.note, made.action))),
        )
        for one in run.of(EntryKind.QA_CHECK)
        for made in (qa_check_of(one),)
    ]
    if not rows:
        return [*story, note("None.")]
    columns = (("at", 0.15), ("check", 0.17), ("found", 0.11), ("allowed", 0.19), ("result", 0.08),
               ("who", 0.07), ("instrument, note, action", 0.23))  # fmt: skip
    return [*story, listing(columns, rows)]


def _empty_bags(run: RunEvidence, zone: ZoneInfo) -> list[Flowable]:
    story = heading("Empty bags and tare studies")
    rows = [
        (_clock(one.at.utc, zone), bag.bag_item, bag.film_lot, str(bag.shown), one.fact.result,
         bag.against, one.who)
        for one in run.of(EntryKind.EMPTY_BAG)
        for bag in (empty_bag_of(one),)
    ]  # fmt: skip
    rows += [
        (_clock(one.at.utc, zone), one.fact.subject, str(one.fact.details["film_lot"]),
         one.fact.result, "study", "", one.who)
        for one in run.of(EntryKind.TARE_STUDY)
    ]  # fmt: skip
    if not rows:
        return [*story, note("None.")]
    columns = (("at", 0.15), ("bag", 0.12), ("film lot", 0.14), ("shown", 0.15), ("result", 0.13),
               ("against", 0.23), ("who", 0.08))  # fmt: skip
    return [*story, listing(columns, rows)]


def _rolls(run: RunEvidence) -> list[Flowable]:
    story = heading("Label rolls: every label has gone somewhere")
    if not run.rolls:
        return [*story, note("None was put in or taken out.")]
    rows = []
    for one in run.rolls:
        count, difference = one.count, one.difference
        rows.append(
            (
                one.roll,
                str(one.issued),
                str(one.used),
                *(("", "", "") if count is None
                  else (str(count.spoiled), str(count.samples), str(count.returned))),
                "still in" if difference is None else str(difference),
                one.explanation,
            )
        )  # fmt: skip
    columns = (("roll", 0.24), ("issued", 0.1), ("used", 0.1), ("spoiled", 0.1), ("samples", 0.1),
               ("returned", 0.1), ("difference", 0.11), ("explained", 0.15))  # fmt: skip
    return [*story, listing(columns, rows, frozenset(range(1, 7)))]


def _rejects(run: RunEvidence) -> list[Flowable]:
    aside = [bag for bag in run.record.bags if bag.quality is Quality.REJECT]
    counted: dict[str, int] = {}
    for bag in run.record.left:
        counted[bag.reason] = counted.get(bag.reason, 0) + 1
    if not counted:
        return [*heading("Bags set aside"), note("None.")]
    rows = sorted(counted.items(), key=lambda item: (-item[1], item[0]))
    chart = pareto_chart([(name, float(bags)) for name, bags in rows], "bags")
    words = f"{len(run.record.left)} in all, {len(aside)} of them still only set aside."
    return [together([*heading("Bags set aside, by reason"), chart, note(words)])]


def _stops(run: RunEvidence, zone: ZoneInfo) -> list[Flowable]:
    if not run.stops:
        return [*heading("Stops"), note("None.")]
    rows = [
        (
            _clock(stop.began, zone),
            "stands" if stop.ended is None else _clock(stop.ended, zone),
            "" if stop.ended is None else f"{stop.took(stop.ended).total_seconds() / 60:.0f} min",
            str(stop.reason),
        )
        for stop in run.stops
    ]
    columns = (("from", 0.25), ("to", 0.25), ("took", 0.15), ("reason", 0.35))
    return [*heading("Stops"), listing(columns, rows, frozenset({2}))]


def _pictures(run: RunEvidence, zone: ZoneInfo) -> list[Flowable]:
    story: list[Flowable] = []
    marks = marks_of(run.entered, run.stops, zone)
    begin, end = run.span.opened.astimezone(zone), (run.span.closed or run.span.ended)
    shown = [mark for mark in marks if begin <= mark.at <= end]
    if shown:
        chart = timeline_chart(shown, begin, end.astimezone(zone))
        words = note("Red: failed, differs, does not fit, refused or held.")
        story.append(together([*heading("Checks, lots and stops over time"), chart, words]))
    units = {one.reading.unit for one in run.residues}
    if len(units) == 1:
        unit = units.pop()
        readings = [float(one.reading.amount) for one in run.residues]
        interval = min((abs(one) for one in readings if one), default=1.0)
        chart = residue_chart(readings, str(unit), interval)
        words = note("Squares: what the empty pan showed; line: weighted average.")
        story.append(together([*heading("The empty pan after each bag"), chart, words]))
    return story


def _clock(at: datetime, zone: ZoneInfo) -> str:
    return f"{at.astimezone(zone):%Y-%m-%d %H:%M}"
