"""Bags put together by the full hour of the plant's clock, as hourly batches are."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime
from typing import Protocol, TypeVar


class Judged(Protocol):
    """A bag, as far as its hour is asked for."""

    @property
    def at(self) -> datetime:
        """When it was judged, aware, in the plant's time."""
        ...


_Bag = TypeVar("_Bag", bound=Judged)


def hour_of(at: datetime) -> datetime:
    """The full hour of the plant's clock a moment lies in."""
    return at.replace(minute=0, second=0, microsecond=0)


def by_hour(bags: Iterable[_Bag]) -> tuple[tuple[datetime, list[_Bag]], ...]:
    """Hours in their order, each with all its bags in the order given.

    A clock that was set back brings an hour again, and its bags are one batch all the same. The two
    hours between which summer time ends are two: they differ in their offset.
    """
    found: dict[datetime, list[_Bag]] = {}
    for bag in bags:
        found.setdefault(hour_of(bag.at), []).append(bag)
    return tuple(sorted(found.items(), key=lambda item: item[0]))
