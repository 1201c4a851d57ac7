"""Tare studies and weighings of one empty bag as entries of the record, and back."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind
from station.core.mass import Mass
from station.core.metrology.tare import TareStudy, plausible

FITS, DOES_NOT_FIT = "fits", "does not fit"


def study_fact(study: TareStudy, uid: str, run: str = "") -> Fact:
    """The entry that keeps a tare study; its time is that of the entry."""
    return Fact(
        kind=EntryKind.TARE_STUDY,
        uid=uid,
        subject=study.bag_item,
        result=study.shown(),
        run=run,
        details={
            "film_lot": study.film_lot,
            "includes": list(study.includes),
            "unit": str(study.tares[0].unit),
            "tares": [tare.digits for tare in study.tares],
        },
    )


def study_of(record: FactRecord) -> TareStudy:
    """The study of its entry."""
    details: Any = record.fact.details
    return TareStudy(
        bag_item=record.fact.subject,
        film_lot=details["film_lot"],
        includes=tuple(details["includes"]),
        at=record.at.utc,
        tares=tuple(Mass.of(digits, details["unit"]) for digits in details["tares"]),
    )


@dataclass(frozen=True, slots=True)
class EmptyBag:
    """One empty bag on the scale.

    Args:
        bag_item: what the bag is.
        film_lot: lot of its film.
        shown: what the scale showed.
        fits: whether it fits the study, or the declared tare where there is no study.
        against: what it was held against, in words.
    """

    bag_item: str
    film_lot: str
    shown: Mass
    fits: bool
    against: str


def judge_empty_bag(
    bag_item: str,
    film_lot: str,
    shown: Mass,
    interval: Mass,
    study: TareStudy | None,
    declared: Mass,
) -> EmptyBag:
    """Hold an empty bag against the study of its film lot, or else against the declared tare.

    A declared tare is a mean rounded up to the scale interval, so a bag fits from two intervals
    below it to one above.

    Args:
        bag_item: what the bag is.
        film_lot: lot of its film.
        shown: what the scale showed.
        interval: the scale interval, in the unit of ``shown``.
        study: of this bag item and film lot, or None.
        declared: the tare the run takes off.
    """
    if study is not None:
        fits = plausible(shown, study, interval)
        return EmptyBag(bag_item, film_lot, shown, fits, f"study of its film lot: {study.shown()}")
    declared = declared.in_unit(shown.unit)
    fits = declared - interval * 2 <= shown <= declared + interval
    return EmptyBag(bag_item, film_lot, shown, fits, f"declared tare {declared}")


def empty_bag_fact(bag: EmptyBag, uid: str, run: str) -> Fact:
    """The entry that keeps the weighing of an empty bag."""
    return Fact(
        kind=EntryKind.EMPTY_BAG,
        uid=uid,
        subject=bag.bag_item,
        result=FITS if bag.fits else DOES_NOT_FIT,
        run=run,
        details={"film_lot": bag.film_lot, "shown": str(bag.shown), "against": bag.against},
    )


def empty_bag_of(record: FactRecord) -> EmptyBag:
    """The weighing of its entry."""
    details: Any = record.fact.details
    return EmptyBag(
        bag_item=record.fact.subject,
        film_lot=details["film_lot"],
        shown=Mass.parse(details["shown"]),
        fits=record.fact.result == FITS,
        against=details["against"],
    )
