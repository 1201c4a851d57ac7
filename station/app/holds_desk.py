"""The desk of holds: lays them on by any scope, and lets bags and runs go when nothing is open."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

from station.app.quality_rights import DECIDERS, check_role
from station.config.packhouse import Packhouse
from station.config.shelf_life import APPROVERS
from station.core.checks.suspect import Decision, FiledWindow, decision_facts
from station.core.dispositions import Decided, Disposition, check_decision, disposition_fact
from station.core.facts import Fact
from station.core.holds import (
    HoldError,
    Ranges,
    Releasable,
    Released,
    Scope,
    ScopeKind,
    hold_fact,
    release_fact,
)
from station.core.ids import new_uid
from station.core.receiving import hold_lot_fact, release_lot_fact
from station.line.opening import day_of
from station.line.ports import Clock
from station.store import hold_scopes
from station.store.open_holds import held_bags
from station.store.release_list import Wanted, release_list
from station.store.suspects import filed_windows

_DAYS = 14
"""Runs of so many production days stand on the release list, as rejects do in the inbox."""
_MOST_DUMPED = 2000
"""One decision is one commit; more bags would keep the line from its own."""
_FORM = "HH:MM, or YYYY-MM-DD HH:MM"


class HoldsDesk:
    """Implements station.screens.quality_sources.HoldsSource; any thread.

    Args:
        house: the settings.
        home: folder of the record.
        clock: tells the time.
    """

    def __init__(self, house: Packhouse, home: Path, clock: Clock) -> None:
        self._house, self._home, self._clock = house, home, clock

    @property
    def two(self) -> bool:
        """Whether two people release."""
        return self._house.settings.quality.release_two

    def releases(self) -> tuple[Releasable, ...]:
        """Open holds, then runs of the last days; reads the record."""
        return self._listed()

    def windows(self) -> tuple[FiledWindow, ...]:
        """Windows of failed QA checks nobody decided about, oldest first; reads the record."""
        return tuple(
            window
            for window, decision in filed_windows(self._home)
            if decision is None and window.cause
        )

    def hold(self, kind: ScopeKind, first: str, second: str, reason: str, who: str) -> Fact:
        """The fact that holds bags.

        Args:
            kind: by what.
            first: the first serial, the earlier time, a run, a blend lot, a lot or a roll.
            second: the last serial or the later time; empty for the others.
            reason: why.
            who: id of who holds.

        Raises:
            ValueError, BadInput: there are no such bags, or no reason.
        """
        check_role(self._house.people, who, DECIDERS, "hold bags")
        if not first.strip():
            raise HoldError(f"which {kind}? Scan or type it first")
        if kind is ScopeKind.LOT:
            return hold_lot_fact(self._uid(), first.strip().upper(), reason)
        name, ranges = self._reach(kind, first.strip(), second.strip())
        return hold_fact(Scope(kind, name), reason, ranges, self._uid())

    @property
    def witnessed(self) -> bool:
        """Whether dumping wants a second person."""
        return Disposition.DUMP in self._house.settings.quality.witnessed

    def release(self, one: Releasable, who: str, second: str, reason: str) -> Fact:
        """The fact that lets bags go, unless something has come up meanwhile.

        Raises:
            ValueError: something keeps them, or who signs may not.
        """
        check_role(self._house.people, who, APPROVERS, "release bags")
        if second:
            check_role(self._house.people, second, DECIDERS, "sign a release")
        now = next(iter(self._listed(one.key)), None)
        if now is None:
            raise HoldError(f"{one.subject} was released already")
        if now.blocked:
            raise HoldError(f"{one.subject} cannot be released: {'; '.join(now.blocked)}")
        released = Released(one.hold, one.run, reason, second, now.frees)
        subject = one.subject if one.hold else one.run
        fact = release_fact(released, subject, self._uid(), who, two=self.two)
        if one.scope == ScopeKind.LOT:
            of_lot = release_lot_fact(fact.uid, one.subject, one.hold, reason)
            return replace(of_lot, details={**of_lot.details, **fact.details})
        return fact

    def dump(self, one: Releasable, who: str, witness: str, reason: str) -> tuple[Fact, ...]:
        """The facts that throw away every bag a hold keeps, as rejects that lie in the bin.

        Raises:
            ValueError: it keeps none or too many, a witness is missing, or who signs may not.
        """
        check_role(self._house.people, who, DECIDERS, "dump held bags")
        if not one.hold:
            raise HoldError("a whole run is not dumped: hold its bags first")
        bags = held_bags(self._home, one.hold)
        if not bags:
            raise HoldError(f"{one.subject} keeps no bag any more: release the hold")
        if len(bags) > _MOST_DUMPED:
            raise HoldError(
                f"{len(bags)} bags at once: allowed are {_MOST_DUMPED}; hold them in parts"
            )
        made = []
        for serial, run in bags:
            decided = Decided(serial, Disposition.DUMP, reason, witness)
            check_decision(decided, who, self._house.settings.quality.witnessed)
            made.append(disposition_fact(decided, self._uid(), run))
        return tuple(made)

    def decide(
        self, window: FiledWindow, decision: Decision, reason: str, who: str
    ) -> tuple[Fact, ...]:
        """The facts that decide about a suspect window.

        Raises:
            ValueError: there is no reason, or who signs may not.
        """
        check_role(self._house.people, who, APPROVERS, "decide about suspect bags")
        uids = [self._uid() for _ in range(len(window.holds) + 1)]
        return decision_facts(window, decision, reason, uids)

    def _listed(self, key: str = "") -> tuple[Releasable, ...]:
        today = day_of(self._clock.now(), self._house.settings.cut_off)
        wanted = Wanted(self._house.qa, self._house.settings.checks.on)
        return release_list(self._home, wanted, today - timedelta(days=_DAYS), key)

    def _reach(self, kind: ScopeKind, first: str, second: str) -> tuple[str, Ranges]:
        match kind:
            case ScopeKind.SERIALS:
                last = second or first
                found = hold_scopes.between_serials(self._home, first.upper(), last.upper())
                return f"{first.upper()} to {last.upper()}", found
            case ScopeKind.TIME:
                since, until = self._time(first), self._time(second)
                name = f"{since:%Y-%m-%d %H:%M} to {until:%H:%M}"
                return name, hold_scopes.between_times(self._home, since, until)
            case ScopeKind.RUN:
                return first.lower(), hold_scopes.of_run(self._home, first.lower())
            case ScopeKind.BLEND:
                return first.upper(), hold_scopes.of_blend(self._home, first.upper())
            case ScopeKind.ROLL:
                return first.upper(), hold_scopes.of_roll(self._home, first.upper())
            case _:
                raise HoldError(f"bags are not held by {kind} here")

    def _time(self, text: str) -> datetime:
        """A moment of today, or of the day it names, in the plant's time."""
        zone = ZoneInfo(self._house.settings.zone)
        given = text.replace("T", " ")
        if " " not in given:
            today: date = self._clock.now().utc.astimezone(zone).date()
            given = f"{today} {given}"
        try:
            at = datetime.strptime(given, "%Y-%m-%d %H:%M").replace(tzinfo=zone)
        except ValueError:
            raise HoldError(f"{text!r} is no time: write {_FORM}") from None
        return at

    def _uid(self) -> str:
        return new_uid(self._clock.now())
