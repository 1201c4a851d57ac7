"""The report of a day or a week as tables, for CSV and XLSX; figures are exact."""

from __future__ import annotations

from decimal import Decimal

from station.core.metrology.exact import decimal_of
from station.reports.giveaway import HEAD as GIVEN
from station.reports.giveaway import By, cells, giveaway_sheet
from station.reports.period import Period
from station.reports.traceability_sheet import Cell, Sheet
from station.store.purged import table_notes

_RUNS = (
    "run", "production_day", "line", "product", "version", "blend_lot", "operator", "began",
    "ended", "stood_s", "packs_an_hour", *GIVEN,
)  # fmt: skip
_YIELDS = ("component", "lot", "loaded_kg", "in_bags_kg", "in_bags_least_kg", "in_bags_most_kg",
           "yield_percent")  # fmt: skip
_STOPS = ("reason", "began", "ended", "seconds")
_ENTRIES = ("at", "kind", "about", "result", "run", "who", "entry")


def period_sheets(found: Period) -> tuple[Sheet, ...]:
    """Return a table for each part of the report."""
    given = tuple(giveaway_sheet(found.sums, key) for key in By if key is not By.RUN)
    notes = table_notes(found.sums.gone)
    return (
        *given,
        Sheet("runs", _RUNS, _runs(found), notes),
        Sheet("yields", _YIELDS, _yields(found), notes),
        Sheet("stops", _STOPS, _stops(found), notes),
        Sheet("rejects", ("reason", "packs"), _rejects(found), notes),
        Sheet("entries", _ENTRIES, _entries(found), notes),
    )


def _runs(found: Period) -> tuple[tuple[Cell, ...], ...]:
    return tuple(
        (
            one.run.id,
            one.run.dating.production_day.isoformat(),
            one.run.line,
            one.run.product.code,
            Decimal(one.run.product.version),
            one.run.blend_lot,
            one.run.operator,
            one.span.began.isoformat(),
            "" if one.span.open else one.span.ended.isoformat(),
            Decimal(int(one.stood.total_seconds())),
            "" if one.an_hour is None else one.an_hour,
            *cells(one.given),
        )
        for one in found.runs
    )


def _yields(found: Period) -> tuple[tuple[Cell, ...], ...]:
    rows = []
    for one in found.yields:
        loaded, used, share = one.balance.loaded, one.balance.used, one.share
        rows.append(
            (
                one.component,
                one.balance.lot,
                "" if loaded is None else decimal_of(loaded / 1000, 3),
                *(decimal_of(part / 1000, 3) for part in (used.likely, used.low, used.high)),
                "" if share is None else decimal_of(share * 100, 2),
            )
        )
    return tuple(rows)


def _stops(found: Period) -> tuple[tuple[Cell, ...], ...]:
    return tuple(
        (
            str(stop.reason),
            stop.began.astimezone(found.zone).isoformat(),
            "" if stop.ended is None else stop.ended.astimezone(found.zone).isoformat(),
            "" if stop.ended is None else Decimal(int(stop.took(stop.ended).total_seconds())),
        )
        for stop in found.stops
    )


def _rejects(found: Period) -> tuple[tuple[Cell, ...], ...]:
    return tuple((reason, Decimal(bags)) for reason, bags in found.sums.rejects())


def _entries(found: Period) -> tuple[tuple[Cell, ...], ...]:
    return tuple(
        (
            one.at.utc.astimezone(found.zone).isoformat(),
            str(one.fact.kind),
            one.fact.subject,
            one.fact.result,
            one.fact.run,
            one.who,
            Decimal(one.seq),
        )
        for one in found.entered
    )
