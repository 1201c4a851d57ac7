"""A batch record on paper: verdict first, then what it rests on, then what happened."""

from __future__ import annotations

from collections.abc import Sequence

from reportlab.lib.units import mm
from reportlab.platypus import Flowable, PageBreak, Paragraph, Table, TableStyle

from station.core.metrology.exact import decimal_of, plain
from station.core.pack import LabelState
from station.reports import paper
from station.reports.batch import BatchRecord, Verdict
from station.reports.batch_charts import fills_chart, growth_chart, knee_chart, spread_chart
from station.reports.paper import escape, gap, heading, listing, note, pairs, together
from station.store.answers import RunBlend

_PLACES = 3
_RIGHT = frozenset(range(1, 8))
CAUTIONS = (
    "An aid to the packer, no official test: the competent authority and the law of the place "
    "decide. The rules are a transcription to be checked against the current text.",
    "The verified indication of the scale prevails over any figure here.",
    "A sample that passes does not prove the duty: the mean of all bags must be at least the "
    "nominal quantity. Forecasts, rehearsal and the proposed target are estimates.",
    "Bags set aside, taken back, dumped, sampled or reworked are not in the batch; each has its "
    "own entry.",
)


def batch_pdf(records: Sequence[BatchRecord]) -> bytes:
    """Set the records of one or more runs, each from a new page; same records, same bytes."""
    paper.load_faces()
    story: list[Flowable] = []
    for index, record in enumerate(records):
        if index:
            story.append(PageBreak())
        story += run_story(record)
    first = records[0]
    place = f"{first.evidence.site} {first.evidence.station}"
    foot = f"Batch record, {place}, software {first.run.software}. An aid, no official test."
    return paper.write("Batch record", foot, story)


def run_story(record: BatchRecord) -> list[Flowable]:
    """The parts of the record of one run, without a page of their own."""
    run = record.run
    product = run.product
    story: list[Flowable] = [
        Paragraph(escape(f"Batch record: {product.name}"), paper.TITLE),
        Paragraph(
            escape(
                f"blend lot {', '.join(blend.code for blend in record.blends)}, "
                f"production day {run.dating.production_day}, line {run.line}"
            ),
            paper.UNDER,
        ),
        gap(4),
        _plate(record),
        gap(2),
    ]
    story += [*heading("Verdict"), _verdicts(record)]
    story.append(note(_batch_words(record)))
    story += _clauses(record)
    story += _outlook(record)
    if record.figures.charts.nets:
        story += [
            together(
                [
                    *heading("Fills in the order packed"),
                    fills_chart(record),
                    note(_read_fills(record)),
                ]
            ),
            together([*heading("Spread of the fills"), spread_chart(record)]),
        ]
    story += _target(record)
    story += _run(record)
    story += _corrections(record)
    story += _facts(record)
    story += _evidence(record)
    story += [*heading("Cautions"), *(note(words) for words in CAUTIONS)]
    return story


def _read_fills(record: BatchRecord) -> str:
    words = "dots: bags; heavy line: mean so far"
    if record.figures.charts.averages:
        words += "; thin line: weighted average (EWMA)"
    if len(record.blends) > 1:
        words += "; upright lines: a new blend"
    return f"{words}; T2 {record.figures.limits.t2} lies below the picture where no bag is near it"


def _plate(record: BatchRecord) -> Table:
    """The answer in one line: its shape is a bar at the left, its words say it."""
    good = record.accepted
    words = "THE BATCH PASSES" if good else "THE BATCH DOES NOT PASS"
    if record.still_open:
        words += " AS IT STANDS; bags are still packed"
    colour = paper.ACT if good else paper.STOP
    if record.whole.judged is None:
        words, colour = f"NO VERDICT: {record.whole.why}", paper.ATTEND
    line = Paragraph(escape(words), paper.HEADING)
    table = Table([["", line]], colWidths=[4 * mm, paper.WIDTH - 4 * mm])
    table.setStyle(
        TableStyle(
            [
                ("BACKGROUND", (0, 0), (0, 0), colour),
                ("BACKGROUND", (1, 0), (1, 0), paper.QUIET),
                ("VALIGN", (0, 0), (-1, -1), "MIDDLE"),
                ("TOPPADDING", (0, 0), (-1, -1), 0),
                ("BOTTOMPADDING", (0, 0), (-1, -1), 5),
                ("LEFTPADDING", (1, 0), (1, 0), 8),
            ]
        )
    )
    return table


def _verdicts(record: BatchRecord) -> Table:
    columns = (
        ("batch", 0.24),
        ("bags", 0.09),
        ("mean", 0.13),
        ("s", 0.11),
        ("below T1", 0.13),
        ("below T2", 0.1),
        ("P(pass)", 0.09),
        ("passes", 0.11),
    )
    rows = [_verdict_row(one) for one in (*record.hours, record.whole)]
    return listing(columns, rows, _RIGHT)


def _verdict_row(one: Verdict) -> tuple[str, ...]:
    judged = one.judged
    if judged is None:
        return (one.name, "0", "", "", "", "", "", one.why)
    allowed = judged.plan.t2_accept
    return (
        one.name,
        str(judged.n),
        str(decimal_of(judged.mean, _PLACES)),
        str(round(judged.s, _PLACES)),
        f"{judged.t1_count} of {judged.t1_accept}",
        f"{judged.t2_count}" if allowed is None else f"{judged.t2_count} of {allowed}",
        "" if one.outlook is None else f"{one.outlook.passing:.4f}",
        "yes" if judged.accepted else "NO",
    )


def _batch_words(record: BatchRecord) -> str:
    rule, unit = record.rules.batch_rule, record.figures.limits.nominal.unit
    return (
        f"Masses in {unit}; counts as found of allowed. Batch by rule: {rule.words} "
        f"({rule.clause}). P(pass): chance to pass the official test, an estimate."
    )


def _clauses(record: BatchRecord) -> list[Flowable]:
    judged, limits = record.whole.judged, record.figures.limits
    if judged is None:
        return []
    unit = limits.nominal.unit
    mean = decimal_of(judged.mean, 9)
    most = judged.plan.t2_accept
    rows = [
        ("mean of all bags", f"{plain(mean)} {unit}", f"{limits.nominal} or more", judged.mean_ok),
        (
            f"bags below T1, {limits.t1}",
            str(judged.t1_count),
            f"at most {judged.t1_accept}",
            judged.t1_ok,
        ),
        (
            f"bags below T2, {limits.t2}",
            str(judged.t2_count),
            "no such clause" if most is None else f"at most {most}",
            judged.t2_ok,
        ),
    ]
    cells = [(*row[:3], "yes" if row[3] else "NO") for row in rows]
    return [
        together(
            [
                *heading("Clauses on the whole run, every bag weighed"),
                listing(
                    (("clause", 0.36), ("found", 0.24), ("allowed", 0.26), ("holds", 0.14)), cells
                ),
                note(f"Exact: a bag at a limit is good, strictly below is short. {judged.plan}."),
            ]
        )
    ]


def _outlook(record: BatchRecord) -> list[Flowable]:
    outlook, story = record.whole.outlook, heading("The official sample")
    if outlook is None:
        return [*story, note(record.whole.why or "There is no forecast.")]
    rows = [
        ("Plan", str(outlook.plan)),
        ("Forecast", f"{outlook.passing:.4f} to pass: {outlook.outlook}"),
        (
            "By clause",
            f"mean {outlook.mean:.4f}, T1 {outlook.t1:.4f}, T2 {outlook.t2:.4f}",
        ),
    ]
    rehearsal = record.rehearsal
    if rehearsal is not None:
        rows.append(
            (
                "Rehearsal",
                f"{rehearsal.passed} of {rehearsal.draws} samples drawn from the bags pass, "
                f"{rehearsal.share:.4f} (standard error {rehearsal.standard_error:.4f}, seed "
                f"{rehearsal.seed})",
            )
        )
    else:
        rows.append(("Rehearsal", "none: the official test of so small a batch takes every bag"))
    rows += _to_come(record)
    story.append(pairs(rows))
    if len(record.growth.bags) > 1:
        story.append(growth_chart(record))
    return [together(story)]


def _to_come(record: BatchRecord) -> list[tuple[str, str]]:
    """What the bags still to come must reach, of a run with an order that is still packed."""
    batch = record.figures.batch
    needed, unit = batch.mean_needed, record.figures.limits.nominal.unit
    if needed is None:
        return []
    rows = [("Bags to come", f"{batch.expected - batch.packs.n} of {batch.expected}")]
    rows.append(("Mean needed", f"{decimal_of(needed, _PLACES)} {unit} on these"))
    if batch.t1_left is not None:
        rows.append(("Below T1", f"{batch.t1_left} more allowed"))
    return rows


def _target(record: BatchRecord) -> list[Flowable]:
    advice, given = record.advice, record.figures.given_away
    if advice is None or given is None:
        return []
    unit = record.figures.limits.nominal.unit
    rows = [
        ("Filled to", f"{advice.target:g} {unit}: mean {advice.mean:.3f}, s {advice.spread:.3f}"),
        (
            "Given away",
            f"{decimal_of(given.per_bag_g, 2)} g a bag, {plain(round(given.run_kg, 3))} kg in all",
        ),
    ]
    proposal = advice.proposal
    if proposal is None:
        rows.append(("Proposed", f"none: {advice.why_none}"))
    else:
        rows += [
            (
                "Proposed",
                f"{proposal.target:g} {unit}: mean {proposal.mean:.3f}, "
                f"giveaway {proposal.giveaway:.3f} {unit} a bag",
            ),
            ("Held up by", proposal.governing),
            ("Rests on", f"{advice.fills} bags of this run, batches of {advice.lot_size}"),
        ]
    return [
        together(
            [
                *heading("Fill target"),
                pairs(rows),
                knee_chart(record),
                note("A proposal: a manager approves a target as a new version of the product."),
            ]
        )
    ]


def _run(record: BatchRecord) -> list[Flowable]:
    run = record.run
    product, limits, window = run.product, run.window.limits, run.window
    shares = ", ".join(f"{one.component.name} {one.percent} %" for one in product.recipe)
    rows = [
        ("Product", f"{product.code} version {product.version}, GTIN {product.gtin}"),
        ("Recipe", shares),
        *((f"Blend {blend.code}", _blend(blend)) for blend in record.blends),
        ("Rules", f"{limits.rule_set}, {limits.version}: {record.rules.title}"),
        ("Sources", "; ".join(str(one) for one in record.rules.sources)),
        (
            "Limits",
            f"nominal {limits.nominal}, T {limits.tolerable}, T1 {limits.t1}, T2 {limits.t2}",
        ),
        ("", limits.source),
        ("Window", f"floor {window.floor}, target {window.target}, upper {window.upper}"),
        ("Tare", f"{product.bag.tare}, {product.bag.name}: {product.bag.basis}"),
        ("Scale", f"{run.scale}, in {run.unit}"),
        ("People", f"lead {run.lead}, on the scale {run.operator}"),
        ("Software", f"pack line station {run.software}"),
    ]
    return [*heading("What was packed, and under which rules"), pairs(rows)]


def _blend(blend: RunBlend) -> str:
    lots = ", ".join(f"{component} {lot}" for component, lot in blend.lots)
    return f"use by {blend.use_by}: {lots}"


def _corrections(record: BatchRecord) -> list[Flowable]:
    story = heading(f"Bags not in the batch: {len(record.left)}")
    if not record.left:
        return [*story, note("None was set aside or taken back.")]
    rows = [
        (bag.serial, f"{bag.at:%H:%M:%S}", str(bag.net), str(bag.quality), bag.reason)
        for bag in record.left
    ]
    columns = (("serial", 0.2), ("time", 0.12), ("net", 0.14), ("is", 0.14), ("why", 0.4))
    return [*story, listing(columns, rows, frozenset({2}))]


def _facts(record: BatchRecord) -> list[Flowable]:
    story = heading("Checks and other entries of the run")
    if not record.facts:
        return [*story, note("None was entered.")]
    rows = [
        (f"{one.at.utc:%Y-%m-%d %H:%M} UTC", str(one.fact.kind), one.fact.subject,
         one.fact.result, one.who)
        for one in record.facts
    ]  # fmt: skip
    columns = (("when", 0.22), ("what", 0.18), ("about", 0.28), ("result", 0.18), ("who", 0.14))
    return [*story, listing(columns, rows)]


def _evidence(record: BatchRecord) -> list[Flowable]:
    proof = record.evidence
    labels = ", ".join(
        f"{proof.labels[state]} {state}" for state in LabelState if proof.labels.get(state)
    )
    rows = [
        ("Record", f"site {proof.site}, station {proof.station}, epoch {proof.epoch}"),
        ("Run", record.run.id),
        ("Run started", f"entry {proof.started.seq}, {proof.started.hash}"),
    ]
    if proof.last_bag is not None:
        rows.append(("Last bag", f"entry {proof.last_bag.seq}, {proof.last_bag.hash}"))
    rows += [
        ("Record's head", f"entry {proof.head.seq}, {proof.head.hash}"),
        ("Labels", labels or "none"),
    ]
    return [*heading("Where it stands in the journal"), pairs(rows)]
