"""The desk of the inbox: what is open, the signature of a day, and complaints."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, timedelta, tzinfo
from pathlib import Path
from zoneinfo import ZoneInfo

from station.app.quality_rights import check_role
from station.config.packhouse import Packhouse
from station.config.shelf_life import APPROVERS
from station.core.complaint import Complaint
from station.core.day_review import DayReview, review_fact
from station.core.facts import Fact, FactRecord
from station.core.ids import new_uid
from station.core.inbox_items import Item
from station.errors import BadInput
from station.line.opening import day_of
from station.line.ports import Clock
from station.reports.serial_scan import serial_of
from station.store.complaint import bag_at, complaint
from station.store.day_story import day_story
from station.store.inbox import inbox, review_of_day, signed_days

_FORM = "YYYY-MM-DD HH:MM"


class InboxDesk:
    """Implements station.screens.quality_sources.InboxSource; any thread.

    Args:
        house: the settings.
        home: folder of the record.
        clock: tells the time.
    """

    def __init__(self, house: Packhouse, home: Path, clock: Clock) -> None:
        self._house, self._home, self._clock = house, home, clock

    @property
    def zone(self) -> tzinfo:
        """The plant's time zone."""
        return ZoneInfo(self._house.settings.zone)

    @property
    def today(self) -> date:
        """The production day that goes on."""
        return day_of(self._clock.now(), self._house.settings.cut_off)

    def items(self) -> tuple[Item, ...]:
        """What is open, gravest first; reads the record."""
        return inbox(self._home, self.today)

    def review(self, day: date, remark: str = "") -> DayReview:
        """What would be signed for a day; reads the record."""
        happened = tuple(item.words for item in self.story(day))
        return replace(review_of_day(self._home, day, self.today, remark), happened=happened)

    def story(self, day: date) -> tuple[Item, ...]:
        """The exceptions of a day, settled or not, oldest first; reads the record."""
        begin = datetime.combine(day, self._house.settings.cut_off, self.zone)
        return day_story(self._home, day, begin, begin + timedelta(days=1))

    def signed(self, day: date) -> FactRecord | None:
        """The last review of a day, or None; reads the record."""
        return signed_days(self._home).get(day)

    def sign(self, review: DayReview, who: str) -> Fact:
        """The fact that keeps a review.

        Raises:
            ValueError: something is open without a remark, or who signs may not.
        """
        check_role(self._house.people, who, APPROVERS, "sign for a day")
        return review_fact(review, new_uid(self._clock.now()))

    def complaint(self, text: str, at: str = "") -> Complaint:
        """Everything about the bag of a scanned label, or of a lot at a time; reads the record.

        Args:
            text: what was scanned or typed: a serial, a whole label, or with ``at`` a blend lot.
            at: when the bag was packed, in the plant's time; empty for a serial.

        Raises:
            BadInput: no such bag.
        """
        if not at.strip():
            return complaint(self._home, serial_of(text))
        try:
            moment = datetime.strptime(at.strip().replace("T", " "), "%Y-%m-%d %H:%M")  # noqa: DTZ007
        except ValueError:
            raise BadInput(f"{at!r} is no time", f"write it as {_FORM}") from None
        lot = text.strip().upper()
        return complaint(self._home, bag_at(self._home, lot, moment.replace(tzinfo=self.zone)))
