"""What a period of the record looks like on the manager's page: bars, marks and headlines."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta
from pathlib import Path

from station.reports.giveaway import By, Given
from station.reports.giveaway import kilograms as kg
from station.reports.period import LotYield, Period, rate_of
from station.reports.timeline import marks_of
from station.screens.manager_source import GivenBy, Happening, Money, Pan, Slice, Told
from station.screens.numbers_words import Row
from station.store.purged import purge_words
from station.store.residues import residues_of

_KEYS = {
    GivenBy.PRODUCT: By.PRODUCT,
    GivenBy.HOUR: By.HOUR,
    GivenBy.POSITION: By.POSITION,
    GivenBy.DAY: By.DAY,
}


def money_of(home: Path, found: Period, told: Told) -> Money:
    """Return everything the page shows of a period.

    Args:
        home: folder of the record.
        found: the period.
        told: told how many percent are done.
    """
    told(60)
    sums = found.sums
    given = {name: _given(sums.by(key), name) for name, key in _KEYS.items()}
    told(75)
    pan = _pan(home, found.runs[-1].run.id, str(found.runs[-1].run.unit))
    told(90)
    days = f"{sums.first:%A, %d %B %Y}"
    if sums.first != sums.last:
        days = f"{sums.first:%d %B %Y} \u2013 {sums.last:%d %B %Y}"
    return Money(
        title=days,
        headline=_headline(found),
        given=given,
        stops=tuple(
            Slice(
                one.reason,
                one.took.total_seconds() / 60,
                f"{one.reason}: {one.count} stops, {_minutes(one.took)}",
            )
            for one in found.stops_by_reason
        ),
        rejects=tuple(
            Slice(reason, float(bags), f"{reason}: {bags} bags") for reason, bags in sums.rejects()
        ),
        yields=tuple(_yield(one) for one in found.yields if one.share is not None),
        happenings=_happenings(found),
        zone=found.zone,
        pan=pan,
        gone=purge_words(sums.gone),
    )


def _headline(found: Period) -> tuple[Row, ...]:
    whole = found.sums.whole
    stood = sum((one.took for one in found.stops_by_reason), timedelta())
    money = "no price" if whole.money is None else f"{whole.money:.2f}"
    an_hour = rate_of(found.runs)
    rate = "no rate yet" if an_hour is None else f"{an_hour:.0f} bags an hour"
    held = whole.held
    share = "" if whole.percent is None else f"{whole.percent} % of nominal"
    return (
        Row("given away", f"{whole.kilograms:.1f} kg", share, 1.4),
        Row("in money", money, "" if whole.money is not None else "for every product"),
        Row("bags", str(whole.packs), f"{whole.set_aside} set aside"),
        Row("held", str(held), "nobody may ship them", attend=held > 0),
        Row("net", f"{kg(whole.net):.3f} kg", f"{whole.labels} labels"),
        Row("rate", rate, "less the stops"),
        Row("stood", _minutes(stood), f"{len(found.stops)} stops"),
    )


def _given(rows: Sequence[Given], by: GivenBy) -> tuple[Slice, ...]:
    slices = []
    for one in rows:
        if one.percent is None:
            continue
        money = "" if one.money is None else f", {one.money:.2f} in money"
        words = (
            f"{one.name}: {one.percent} %, {one.kilograms:.3f} kg, {one.grams_a_pack} g a bag"
            f"{money}, {one.in_batch} bags"
        )
        name = one.name[5:] if by is GivenBy.HOUR else one.name
        slices.append(Slice(name, float(one.percent), words))
    return tuple(slices)


def _yield(one: LotYield) -> Slice:
    share, loaded = one.share, one.balance.loaded
    assert share is not None, "a lot that was weighed"
    assert loaded is not None, "a lot that was weighed"
    likely = float(one.balance.used.likely) / 1000
    words = (
        f"{one.component} {one.balance.lot}: {float(share):.1%}, about {likely:.1f} kg in bags "
        f"of {float(loaded) / 1000:.1f} kg loaded"
    )
    return Slice(one.balance.lot, 100 * float(share), words)


def _happenings(found: Period) -> tuple[Happening, ...]:
    return tuple(
        Happening(
            mark.row,
            mark.at.timestamp(),
            (mark.until or mark.at).timestamp(),
            mark.bad,
            f"{mark.at:%a %d, %H:%M}, {mark.row}{': ' if mark.words else ''}{mark.words}",
        )
        for mark in marks_of(found.entered, found.stops, found.zone)
    )


def _pan(home: Path, uid: str, unit: str) -> Pan | None:
    readings = tuple(
        float(one.reading.amount) for one in residues_of(home, uid) if str(one.reading.unit) == unit
    )
    if not readings:
        return None
    interval = min((abs(one) for one in readings if one), default=1.0)
    return Pan(unit, interval, readings)


def _minutes(took: timedelta) -> str:
    return f"{took.total_seconds() / 60:.0f} min"
