"""The desk of the inbox: what is open, the signature of a day, and complaints."""

from __future__ import annotations

from datetime import date, datetime, tzinfo
from pathlib import Path
from zoneinfo import ZoneInfo

from station.app.quality_rights import check_role
from station.config.packhouse import Packhouse
from station.config.shelf_life import APPROVERS
from station.core.complaint import Complaint
from station.core.dating import span_of_days
from station.core.day_review import DayReview, DaySeen, review_fact
from station.core.facts import Fact
from station.core.ids import new_uid
from station.errors import BadInput
from station.line.opening import day_of
from station.line.ports import Clock
from station.reports.serial_scan import serial_of
from station.store.complaint import bag_at, complaint
from station.store.day_story import day_story
from station.store.inbox import inbox, review_of_day, signed_days
from station.store.purged import gone_between, purge_words

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

    def seen(self, day: date) -> DaySeen:
        """What is open, and what would be signed for a day; reads the record."""
        cut_off = self._house.settings.cut_off
        items = inbox(self._home, self.today, cut_off)
        story = day_story(self._home, day, *span_of_days(day, day, self.zone, cut_off))
        review = review_of_day(self._home, day, items, story)
        gone = purge_words(gone_between(self._home, day, day))
        return DaySeen(items, review, story, signed_days(self._home).get(day), gone)

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
