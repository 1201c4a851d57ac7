"""A recall on paper: the answer, the mass of the lot, then blend by blend and bag by bag."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import groupby

from reportlab.platypus import Flowable, Paragraph

from station.core.metrology.exact import plain
from station.reports import paper
from station.reports.paper import escape, gap, heading, listing, note, pairs
from station.reports.purged import purged_story
from station.reports.recall import Recall
from station.reports.recall_lots import LotAccount
from station.reports.recall_words import (
    account,
    answer,
    counted,
    labelled,
    sent_rows,
    title,
    where_rows,
)
from station.store.recall import PackRow

_SERIALS = 60
"""Rows of bags shown; the table of bags has all of them."""


def recall_pdf(found: Recall) -> bytes:
    """Set a recall; the same recall gives the same bytes."""
    paper.load_faces()
    story: list[Flowable] = [
        Paragraph(escape(title(found)), paper.TITLE),
        gap(2),
        Paragraph(escape(answer(found)), paper.UNDER),
        *([note("An exercise: nothing is to be taken off the market.")] if found.drill else []),
        gap(2),
        pairs(
            (
                ("Made", f"{found.made:%Y-%m-%d %H:%M:%S} UTC"),
                ("Asking and adding up took", f"{found.seconds:.2f} s"),
                ("Bags by state", counted(found.total)),
                ("Labels", labelled(found.total)),
                *(
                    (f"Record of {one.name}", f"entry {one.seq}, {one.hash[:32]}…")
                    for one in found.stations
                ),
            )
        ),
        *heading("Where the bags are"),
        pairs(where_rows(found.where)),
        *_sent(found),
        *purged_story(found.gone),
        *(part for one in found.lots for part in _lot(one)),
        *heading("Blends"),
        _blends(found),
        *heading("By production day"),
        listing(
            (("day", 0.3), ("bags", 0.2), ("kg", 0.25), ("free", 0.25)),
            [
                (day.isoformat(), str(group.bags), plain(group.kilograms), str(group.free))
                for day, group in sorted(found.by_day.items())
            ],
            frozenset({1, 2, 3}),
        ),
        *heading("Bags"),
        *_bags(found),
    ]
    return paper.write(title(found), f"{title(found)}. Serials in runs without a gap.", story)


def _lot(one: LotAccount) -> list[Flowable]:
    lot = one.lot
    holds = "; ".join(str(held.fact.details["reason"]) for held in one.holds)
    return [
        *heading(f"Input lot {lot.code}"),
        pairs(
            (
                ("Component", lot.component),
                ("Supplier", lot.supplier),
                ("Came on", lot.received.isoformat()),
                ("Status", f"{lot.status}: {holds}" if holds else str(lot.status)),
                ("Known at", ", ".join(one.stations)),
                *account(one),
            )
        ),
    ]


def _sent(found: Recall) -> list[Flowable]:
    if not found.where.sent:
        return []
    columns = (
        ("shipment", 0.13), ("customer", 0.37), ("left", 0.15), ("paper", 0.13),
        ("cases", 0.07), ("bags", 0.07), ("kg", 0.08),
    )  # fmt: skip
    return [gap(1), listing(columns, sent_rows(found.where), frozenset({4, 5, 6}))]


def _blends(found: Recall) -> Flowable:
    rows = [
        (
            one.station,
            one.blend.run.name,
            one.blend.code,
            one.blend.use_by.isoformat(),
            " ".join(use.lot for use in one.blend.uses),
            str(one.group.bags),
            plain(one.group.kilograms),
            str(one.group.free),
        )
        for one in found.blends
    ]
    columns = (
        ("station", 0.09), ("product", 0.21), ("blend lot", 0.13), ("use by", 0.11),
        ("lots that could be in it", 0.22), ("bags", 0.07), ("kg", 0.1), ("free", 0.07),
    )  # fmt: skip
    return listing(columns, rows, frozenset({5, 6, 7}))


def _bags(found: Recall) -> Iterable[Flowable]:
    """Serials as ranges: bags that follow one another and are alike make one row."""
    rows = [
        (first.serial, last.serial, str(count), first.quality, first.label, f"{first.at:%d %H:%M}")
        for station in found.stations
        for first, last, count in _ranges(station.packs)
    ]
    if not rows:
        return [note("No bag could hold it.")]
    columns = (
        ("from serial", 0.24), ("to serial", 0.24), ("bags", 0.1), ("state", 0.14),
        ("label", 0.14), ("from", 0.14),
    )  # fmt: skip
    shown: list[Flowable] = [listing(columns, rows[:_SERIALS], frozenset({2}))]
    if len(rows) > _SERIALS:
        shown.append(note(f"and {len(rows) - _SERIALS} more ranges: the CSV table has every bag"))
    return shown


def _ranges(packs: Iterable[PackRow]) -> Iterable[tuple[PackRow, PackRow, int]]:
    numbered = enumerate(packs)
    for _, group in groupby(numbered, key=_alike):
        rows = [row for _, row in group]
        yield rows[0], rows[-1], len(rows)


def _alike(numbered: tuple[int, PackRow]) -> tuple[str, int, str, str]:
    index, row = numbered
    head, _, number = row.serial.rpartition("-")
    return head, int(number) - index, row.quality, row.label
