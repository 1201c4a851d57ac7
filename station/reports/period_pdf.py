"""The report of a day or a week on paper: what was given away first, then where it went."""

from __future__ import annotations

from datetime import datetime, time, timedelta

from reportlab.platypus import Flowable, Paragraph

from station.core.facts import FactRecord
from station.reports import paper
from station.reports.giveaway import By, Given, kilograms
from station.reports.paper import escape, gap, heading, listing, note, pairs, together
from station.reports.period import LotYield, Period, RunFigures
from station.reports.period_charts import bars_chart, pareto_chart, timeline_chart
from station.reports.purged import purged_story
from station.reports.timeline import BAD, marks_of

_GIVEN = (
    ("bags", 0.1),
    ("set aside", 0.1),
    ("held", 0.08),
    ("net kg", 0.15),
    ("given away kg", 0.15),
    ("%", 0.1),
    ("g a bag", 0.1),
)
CAUTIONS = (
    "Given away is net above the nominal quantity of bags that are, or may yet be, sold. Bags "
    "below it take away from the sum.",
    "What bags took of each lot is estimated by the recipe's shares; the yield is an estimate too.",
    "Times are those of the station's clock; where it was set, spans and rates follow it.",
)


def period_pdf(found: Period) -> bytes:
    """Set the report; the same period gives the same bytes."""
    paper.load_faces()
    sums = found.sums
    days = f"{sums.first:%A %d %B %Y}"
    if sums.last != sums.first:
        days = f"{sums.first:%a %d %B} to {sums.last:%a %d %B %Y}"
    story: list[Flowable] = [
        Paragraph(escape(f"Report, {days}"), paper.TITLE),
        gap(3),
        *_whole(found),
        *purged_story(found.sums.gone),
        *_given(found, By.PRODUCT, "product"),
        *_given(found, By.POSITION, "position"),
        note("A position is a line and who stood at its scale, by id. No names stand here."),
        *(_given(found, By.DAY, "day") if sums.first != sums.last else ()),
        *_hours(found),
        *_runs(found),
        *_stops(found),
        *_rejects(found),
        *_yields(found),
        *_checks(found),
        *_holds(found),
        *heading("Head of the record"),
        note(f"entry {found.head.seq}: {found.head.hash}"),
        *heading("Cautions"),
        *(note(words) for words in CAUTIONS),
    ]
    return paper.write("Report", "Report of a period. Estimates are named as such.", story)


def _whole(found: Period) -> list[Flowable]:
    whole = found.sums.whole
    money = "no price for every product" if whole.money is None else f"{whole.money:.2f}"
    stood = sum((one.took for one in found.stops_by_reason), timedelta())
    share = "no bag is in the batch" if whole.percent is None else f"{whole.percent} % of nominal"
    return [
        pairs(
            (
                ("Given away", f"{whole.kilograms:.3f} kg, {share}"),
                ("In money", money),
                ("Bags", f"{whole.packs} weighed, {whole.in_batch} in the batch, "
                 f"{whole.set_aside} set aside, {whole.held} held"),
                ("Net", f"{kilograms(whole.net):.3f} kg"),
                ("Labels", str(whole.labels)),
                ("Stops", f"{len(found.stops)}, {minutes(stood)} in all"),
            )
        )
    ]  # fmt: skip


def _given(found: Period, key: By, name: str) -> list[Flowable]:
    rows = [_given_row(one) for one in (*found.sums.by(key), found.sums.whole)]
    return [
        *heading(f"Given away by {name}"),
        listing(((name, 0.22), *_GIVEN), rows, frozenset(range(1, 8))),
    ]


def _given_row(one: Given) -> tuple[str, ...]:
    return (
        one.name,
        str(one.packs),
        str(one.set_aside),
        str(one.held),
        f"{kilograms(one.net):.3f}",
        f"{one.kilograms:.3f}",
        "" if one.percent is None else f"{one.percent:.3f}",
        "" if one.grams_a_pack is None else f"{one.grams_a_pack:.2f}",
    )


def _hours(found: Period) -> list[Flowable]:
    """Percent by hour of the day, over all days of the period."""
    by_hour: dict[int, list[Given]] = {}
    for one in found.sums.by(By.HOUR):
        by_hour.setdefault(int(one.name[11:13]), []).append(one)
    rows = []
    for hour, members in sorted(by_hour.items()):
        nominal = sum(one.nominal for one in members)
        net = sum(one.net for one in members)
        if nominal:
            rows.append((f"{hour:02d}:00", 100 * (net - nominal) / nominal))
    if not rows:
        return []
    chart = bars_chart(rows, "% of nominal", "hour of the plant's clock")
    return [together([*heading("Given away by hour of the day"), chart])]


def _runs(found: Period) -> list[Flowable]:
    columns = (
        ("product", 0.2),
        ("blend lot", 0.13),
        ("from", 0.15),
        ("to", 0.08),
        ("bags", 0.09),
        ("aside", 0.08),
        ("bags an hour", 0.12),
        ("given %", 0.15),
    )
    return [
        *heading("Runs"),
        listing(columns, [_run(one) for one in found.runs], frozenset({4, 5, 6, 7})),
        note("Bags an hour: from first to last bag, less the stops between them."),
    ]


def _run(one: RunFigures) -> tuple[str, ...]:
    product, rate = one.run.product, one.an_hour
    return (
        f"{product.code} v{product.version}",
        one.run.blend_lot,
        f"{one.span.began:%Y-%m-%d %H:%M}",
        "open" if one.span.open else f"{one.span.ended:%H:%M}",
        str(one.given.packs),
        str(one.given.set_aside),
        "" if rate is None else str(rate),
        "" if one.given.percent is None else f"{one.given.percent:.3f}",
    )


def _stops(found: Period) -> list[Flowable]:
    story = heading("Stops")
    by_reason = found.stops_by_reason
    if not by_reason:
        return [*story, note("None.")]
    rows = [(one.reason, one.took.total_seconds() / 60) for one in by_reason]
    cells = [(one.reason, str(one.count), minutes(one.took)) for one in by_reason]
    return [
        together([*story, pareto_chart(rows, "minutes")]),
        listing((("reason", 0.5), ("stops", 0.2), ("in all", 0.3)), cells, frozenset({1, 2})),
    ]


def _rejects(found: Period) -> list[Flowable]:
    rejects = found.sums.rejects()
    story = heading("Bags set aside, by reason")
    if not rejects:
        return [*story, note("None.")]
    return [
        together([*story, pareto_chart([(name, float(bags)) for name, bags in rejects], "bags")]),
        listing(
            (("reason", 0.7), ("bags", 0.3)),
            [(name, str(count)) for name, count in rejects],
            frozenset({1}),
        ),
    ]


def _yields(found: Period) -> list[Flowable]:
    columns = (("component", 0.26), ("lot", 0.26), ("loaded", 0.16), ("in bags", 0.16),
               ("yield", 0.16))  # fmt: skip
    story = heading("Yield by input lot")
    if not found.yields:
        return [*story, note("No lot was loaded by a move of its own.")]
    return [*story, listing(columns, [_yield(one) for one in found.yields], frozenset({2, 3, 4}))]


def _yield(one: LotYield) -> tuple[str, ...]:
    loaded, share = one.balance.loaded, one.share
    return (
        one.component,
        one.balance.lot,
        "not weighed" if loaded is None else f"{float(loaded) / 1000:.1f} kg",
        f"{float(one.balance.used.likely) / 1000:.1f} kg",
        "" if share is None else f"{float(share):.1%}",
    )


def _checks(found: Period) -> list[Flowable]:
    story = heading("Checks, stops and holds over time")
    sums = found.sums
    if sums.first != sums.last:
        bad = [one for one in found.entered if one.fact.result in BAD]
        return [*story, *_entries(bad, found, "No check failed and nothing was held.")]
    begin = datetime.combine(sums.first, time(), found.zone)
    marks = marks_of(found.entered, found.stops, found.zone)
    if not marks:
        return [*story, note("None.")]
    begin, end = min(one.at for one in marks), max(one.until or one.at for one in marks)
    chart = timeline_chart(marks, begin, end)
    return [together([*story, chart, note("Red: failed, differs or held.")])]


def _entries(chosen: list[FactRecord], found: Period, none: str) -> list[Flowable]:
    if not chosen:
        return [note(none)]
    rows = [
        (
            f"{one.at.utc.astimezone(found.zone):%a %d %H:%M}",
            str(one.fact.kind),
            one.fact.subject,
            one.fact.result,
            one.who,
        )
        for one in chosen
    ]
    columns = (("at", 0.16), ("what", 0.18), ("about", 0.34), ("result", 0.18), ("who", 0.14))
    return [listing(columns, rows)]


def _holds(found: Period) -> list[Flowable]:
    story = heading("Open holds, of any day")
    if not found.holds:
        return [*story, note("None.")]
    rows = [
        (f"{one.at.astimezone(found.zone):%Y-%m-%d %H:%M}", one.subject, str(one.bags), one.who)
        for one in found.holds
    ]
    columns = (("since", 0.24), ("about", 0.46), ("bags", 0.15), ("by", 0.15))
    return [*story, listing(columns, rows, frozenset({2}))]


def minutes(took: timedelta) -> str:
    """A span as whole minutes."""
    return f"{took.total_seconds() / 60:.0f} min"
