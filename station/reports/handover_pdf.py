"""The hand-over sheet on paper: what is open first, then the day."""

from __future__ import annotations

from datetime import datetime

from reportlab.platypus import Flowable, Paragraph

from labels.matrix import text_qr
from station.core.checks.rolls import RollAccount
from station.reports import paper
from station.reports.handover import Handover, RunOfDay
from station.reports.paper import beside, escape, gap, heading, listing, note, pairs, together
from station.reports.paper_matrix import MatrixPicture
from station.reports.purged import purged_story
from station.store.head_now import HeadNow

_SIGNED = (
    "Signed with the station's key; the code holds the signature. Check it later: station journal "
    'verify --head "NUMBER WORDS"'
)


def handover_pdf(sheet: Handover) -> bytes:
    """Set a sheet; the same sheet gives the same bytes."""
    paper.load_faces()
    story: list[Flowable] = [
        Paragraph(escape(f"Hand-over, {sheet.day:%A %d %B %Y}"), paper.TITLE),
        gap(3),
        *heading("Open for the next crew"),
        *(note(f"[  ]  {point}") for point in sheet.open_points or ("nothing",)),
        *heading("Runs"),
        _runs(sheet),
        note("On the pallet: labelled bags that were not taken out again, held ones too."),
        *purged_story(sheet.gone),
        *heading("On the line now"),
        _on_line(sheet) if sheet.lots else note("No lot."),
        note(f"In the printer: {_roll(sheet.roll)}."),
        *heading("Stops"),
        _stops(sheet) if sheet.stops else note("None."),
        *heading("Checks, signatures and other entries"),
        _entered(sheet) if sheet.entered else note("None."),
        *heading("Labels in doubt"),
        note(", ".join(sheet.in_doubt) or "None."),
        *heading("Handed over"),
        _head(sheet.head),
    ]
    foot = "Hand-over sheet. Read the head of the record back before you sign."
    return paper.write("Hand-over", foot, story)


def _runs(sheet: Handover) -> Flowable:
    columns = (
        ("product", 0.27),
        ("blend lot", 0.15),
        ("use by", 0.13),
        ("on the pallet", 0.13),
        ("set aside", 0.1),
        ("mean net", 0.12),
        ("is", 0.1),
    )
    return listing(columns, [_run(one) for one in sheet.runs], frozenset({3, 4, 5}))


def _run(one: RunOfDay) -> tuple[str, ...]:
    mean = one.tally.mean
    return (
        one.run.product.name,
        one.run.blend_lot,
        one.run.dating.use_by.isoformat(),
        str(one.on_pallet),
        str(one.tally.rejects),
        "" if mean is None else f"{round(mean.amount, 2)} {mean.unit}",
        "open" if one.open else "ended",
    )


def _on_line(sheet: Handover) -> Flowable:
    rows = [
        (line, one.lot, one.component, str(one.stage), _since(sheet, one.since))
        for line, there in sheet.lots.items()
        for one in there.lots
    ]
    rows += [
        (line, one.lot, "rework", f"use by {one.use_by}", _since(sheet, one.since))
        for line, there in sheet.lots.items()
        for one in there.reworks
    ]
    columns = (("line", 0.1), ("lot", 0.28), ("component", 0.24), ("is", 0.2), ("since", 0.18))
    return listing(columns, rows)


def _roll(roll: RollAccount | None) -> str:
    if roll is None:
        return "no label roll"
    return f"roll {roll.roll}, {roll.used} labels used of {roll.issued}"


def _since(sheet: Handover, at: datetime) -> str:
    return f"{at.astimezone(sheet.zone):%m-%d %H:%M}"


def _stops(sheet: Handover) -> Flowable:
    rows = []
    for stop in sheet.stops:
        took = "" if stop.ended is None else f"{stop.took(stop.ended).total_seconds() / 60:.0f} min"
        ended = "stands" if stop.ended is None else _clock(sheet, stop.ended)
        rows.append((_clock(sheet, stop.began), ended, took, str(stop.reason)))
    return listing((("from", 0.2), ("to", 0.2), ("took", 0.2), ("reason", 0.4)), rows)


def _entered(sheet: Handover) -> Flowable:
    rows = [
        (
            _clock(sheet, one.at.utc),
            str(one.fact.kind),
            one.fact.subject,
            one.fact.result,
            one.who,
        )
        for one in sheet.entered
    ]
    columns = (("at", 0.1), ("what", 0.18), ("about", 0.32), ("result", 0.26), ("who", 0.14))
    return listing(columns, rows)


def _clock(sheet: Handover, at: datetime) -> str:
    return f"{at.astimezone(sheet.zone):%H:%M}"


def _head(head: HeadNow) -> Flowable:
    """Words to read back, a code for a scanner, and the two names."""
    said = [
        Paragraph("Head of the record, to be kept on paper", paper.NAME),
        Paragraph(f"{head.head.size}", paper.TITLE),
        *(Paragraph(escape(word), paper.TITLE) for word in head.head.words.split()),
        note(_SIGNED if head.signed else f"NOT SIGNED: {head.unsigned}"),
        gap(4),
        pairs((("From", "_" * 28), ("To", "_" * 28))),
    ]
    code = [] if head.signed is None else [MatrixPicture(text_qr(head.signed.text()), 0.6)]
    return together([beside(said, code)])
