"""The desk of labels: draws specimens, holds scans against the record, makes the facts of both."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from labels.errors import LabelError
from station.app.paper import pack_label, release, specimen_label
from station.config.packhouse import Person, Role, StationSettings
from station.core.checks.first_off import FirstOff, FirstOffError, first_off_fact
from station.core.checks.rolls import (
    RollAccount,
    RollCount,
    RollError,
    explained_fact,
    put_in_fact,
    taken_out_fact,
)
from station.core.checks.scan_back import (
    ScanBack,
    ScanError,
    checked_scan,
    cleared_fact,
    scan_fact,
)
from station.core.facts import Fact
from station.core.label_life import LabelledBag, OpenLabel, ReprintRule, copy_mark
from station.core.pack import Moment
from station.core.run import Run
from station.errors import BadInput
from station.line.label_duties import FirstOffDuty, RollDuty
from station.line.ports import Clock, LabelRefused
from station.line.scan_duty import ScanDuty
from station.reports.serial_scan import serial_of
from station.store.label_doubts import open_labels
from station.store.label_rolls import roll_accounts
from station.store.labelled import labelled_pack

if TYPE_CHECKING:
    from labels.pdf import LabelDrawer
    from labels.release import ReleasedLabel

_ROLLS = 8
_LEADING = (Role.LEAD, Role.MANAGER)
"""Who may sign for more copies and clear a mismatch."""


class LabelsDesk:
    """Implements station.screens.labels_source.LabelsSource; any thread.

    Args:
        settings: of the station.
        people: everybody known.
        home: folder of the record.
        clock: tells the time.
        drawer: draws labels as the printer's thread does.
        new_id: makes a UUID version 7 as text for a moment.
        rolls, first_off, scans: the duties, which know what is wanted.
    """

    def __init__(
        self,
        settings: StationSettings,
        people: tuple[Person, ...],
        home: Path,
        clock: Clock,
        drawer: Callable[[Run], LabelDrawer],
        new_id: Callable[[Moment], str],
        rolls: RollDuty,
        first_off: FirstOffDuty,
        scans: ScanDuty,
    ) -> None:
        self._settings, self._people, self._home = settings, people, home
        self._clock, self._drawer, self._new_id = clock, drawer, new_id
        self._rolls, self._first_off, self._scans = rolls, first_off, scans

    # --- what is wanted -----------------------------------------------------------------------

    @property
    def roll_inside(self) -> str:
        """Id of the roll in the printer; empty without one."""
        return self._rolls.inside

    @property
    def roll_wanted(self) -> bool:
        """Whether acceptance waits for a roll."""
        wanted = bool(self._rolls.closing(self._clock.now().utc))
        return self._settings.label_checks.rolls and wanted

    @property
    def first_off_wanted(self) -> bool:
        """Whether acceptance waits for two people."""
        wanted = bool(self._first_off.closing(self._clock.now().utc))
        return self._settings.label_checks.first_off and wanted

    @property
    def scan_wanted(self) -> bool:
        """Whether acceptance waits for a scan, and no scan differed."""
        wanted = bool(self._scans.closing(self._clock.now().utc))
        return self.scans_on and wanted and self._scans.mismatch is None

    @property
    def scans_on(self) -> bool:
        """Whether applied labels are scanned at all."""
        return self._settings.label_checks.scan_every is not None

    @property
    def mismatch(self) -> str:
        """Serial of a label whose scan differed and is not cleared; empty without one."""
        wrong = self._scans.mismatch
        return "" if wrong is None else wrong.fact.subject

    # --- first-off ----------------------------------------------------------------------------

    def specimen(self, run: Run) -> bytes:
        """The specimen of a run's label, a PDF whose bar codes were read back.

        Raises:
            LabelRefused: it cannot be drawn.
        """
        return self._specimen(run).pdf

    def first_off(self, run: Run, lead: str, second: str, refusal: str = "") -> Fact:
        """The fact that keeps what two people said about the specimen as it is drawn now.

        Args:
            run: the open run.
            lead: id of one of the two; one of them leads, whoever is touched first.
            second: id of the other; may be empty with a refusal.
            refusal: why the label is refused; empty where it is approved.

        Raises:
            FirstOffError: the two may not approve it.
            LabelRefused: the specimen cannot be drawn.
        """
        if lead not in self.leads and second in self.leads:
            lead, second = second, lead
        self._known(lead, leading=True)
        if second:
            self._known(second, leading=False)
        specimen = self._specimen(run)
        first_off = FirstOff(
            run=run.id,
            product=run.product.code,
            version=run.product.version,
            sha256=specimen.sha256,
            pieces=specimen.pages,
            lead=lead,
            second=second,
            refusal=refusal,
        )
        return first_off_fact(first_off, self._uid())

    def _specimen(self, run: Run) -> ReleasedLabel:
        settings = self._settings
        try:
            label = specimen_label(run, settings.site, settings.station, settings.packer)
            return release(self._drawer(run), label)
        except LabelError as refused:
            raise LabelRefused(str(refused)) from refused

    # --- scan-back ----------------------------------------------------------------------------

    def scan(self, run: Run, text: str, last: str) -> tuple[ScanBack, Fact]:
        """A scan of an applied label of a run, held against the record, and its fact.

        A scan that names a bag of this run is held against that bag; any other against the last.

        Args:
            run: the open run.
            text: what the scanner sent.
            last: serial of the bag labelled last.

        Raises:
            ScanError: the scan says nothing about a label, or no bag is labelled yet.
        """
        scanned = checked_scan(text)
        bag = self._bag_of(serial_of(scanned), run) or self._bag_of(last, run)
        if bag is None:
            raise ScanError("no bag of this run is labelled yet: pack one, then scan its label")
        scan = ScanBack(bag.serial, scanned, self._expected(bag), self._scans.trigger)
        return scan, scan_fact(scan, self._uid(), run.id)

    def clear(self, who: str, reason: str) -> Fact:
        """The fact by which a lead goes on after a mismatch.

        Raises:
            ScanError: there is none, no reason, or the person does not lead.
        """
        wrong = self._scans.mismatch
        if wrong is None:
            raise ScanError("no scan differed: there is nothing to clear")
        if who not in self.leads:
            raise ScanError("only a lead goes on after a mismatch")
        return cleared_fact(wrong, reason, self._uid())

    def _bag_of(self, serial: str, run: Run) -> LabelledBag | None:
        if not serial:
            return None
        try:
            bag = labelled_pack(self._home, serial)
        except BadInput:
            return None
        return bag if bag.run.id == run.id else None

    def _expected(self, bag: LabelledBag) -> tuple[str, ...]:
        label = pack_label(bag.serial, bag.run, self._settings.packer, copy_mark(bag.copies))
        return tuple(
            symbol.identifier + symbol.expected_bytes.decode("latin-1")
            for symbol in self._drawer(bag.run).symbols(label)
        )

    # --- rolls --------------------------------------------------------------------------------

    def rolls(self) -> tuple[RollAccount, ...]:
        """The accounts of the newest rolls, oldest first; reads the record."""
        return roll_accounts(self._home, _ROLLS)

    def put_in(self, roll: str, issued: int, run: Run | None = None) -> Fact:
        """The fact of a roll put in.

        Raises:
            RollError: another one is in, or the count cannot be.
        """
        if self.roll_inside:
            raise RollError(f"roll {self.roll_inside} is in: take it out first")
        return put_in_fact(roll, issued, self._uid(), "" if run is None else run.id)

    def take_out(self, count: RollCount, run: Run | None = None) -> Fact:
        """The fact of the roll taken out, with what was counted.

        Raises:
            RollError: none is in.
        """
        inside = [one for one in self.rolls() if one.taken_out is None]
        if not inside or not self.roll_inside:
            raise RollError("no roll is in")
        return taken_out_fact(inside[-1], count, self._uid(), "" if run is None else run.id)

    def explain(self, account: RollAccount, words: str) -> Fact:
        """The fact that explains a difference.

        Raises:
            RollError: there is none, or no words.
        """
        return explained_fact(account, words, self._uid())

    # --- doubts and copies --------------------------------------------------------------------

    def doubts(self) -> tuple[OpenLabel, ...]:
        """Labels that wait for a person's answer; reads the record."""
        return open_labels(self._home)

    @property
    def leads(self) -> frozenset[str]:
        """Ids of those who may sign as a lead."""
        return leads_of(self._people)

    def _known(self, person: str, *, leading: bool) -> None:
        if person not in {one.id for one in self._people}:
            raise FirstOffError(f"{person!r} is nobody in people.toml")
        if leading and person not in self.leads:
            raise FirstOffError(f"{person} does not lead: the lead signs first")

    def _uid(self) -> str:
        return self._new_id(self._clock.now())


def leads_of(people: tuple[Person, ...]) -> frozenset[str]:
    """Ids of those who may sign as a lead."""
    return frozenset(one.id for one in people if one.role in _LEADING)


def reprint_rule(settings: StationSettings, people: tuple[Person, ...]) -> ReprintRule:
    """Who may print a label again, by the settings."""
    return ReprintRule(leads_of(people), settings.label_checks.copies_alone)
