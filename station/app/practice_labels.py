"""The demo's lead and second person at the labels: a roll, first-offs, scans of what came out."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from labels.readback import scan
from station.app.labels_desk import LabelsDesk
from station.app.watch import Watch
from station.core.checks.rolls import RollCount
from station.core.facts import Fact
from station.core.label_life import Fate, Resolve
from station.core.run import Run
from station.errors import EnvironmentFault
from station.line.state import Intents, Phase
from station.reports.serial_scan import is_serial, serial_of

_LABELS_ON_A_ROLL = 1000
_LOOK_S = 0.05
_PATIENCE_S = 60.0
_BAG_GONE = (Phase.CLEAR_PAN, Phase.READY, Phase.LOADED)


class PracticeLabels:
    """Passes the gates about labels by real acts: what is approved was drawn, what is scanned read.

    Args:
        desk: makes the facts.
        line: takes them.
        watch: tells what the line shows and what became of entries.
        labels: folder of the label files.
        lead: id of the lead.
        second: id of the other person.
    """

    def __init__(
        self, desk: LabelsDesk, line: Intents, watch: Watch, labels: Path, lead: str, second: str
    ) -> None:
        self._desk, self._line, self._watch = desk, line, watch
        self._labels, self._lead, self._second = labels, lead, second
        self.scanned = 0
        """Label files that were scanned and said what the record says."""

    def open_closed_gates(self, run: Run) -> None:
        """Do what is lacking just now.

        Raises:
            EnvironmentFault: an entry was refused, or a label file does not say what it must.
        """
        if self._desk.roll_wanted:
            self._enter(self._desk.put_in(self._next_roll(), _LABELS_ON_A_ROLL, run))
        if self._desk.first_off_wanted:
            self._enter(self._desk.first_off(run, self._lead, self._second))
        state = self._watch.newest
        if self._desk.scan_wanted and state is not None and state.phase in _BAG_GONE:
            assert state.last is not None
            self.scan_back(run, state.last.serial)

    def answer_doubts(self) -> None:
        """Look at each label in doubt: what came out of the printer is on its bag.

        Raises:
            EnvironmentFault: an answer was refused.
        """
        for doubt in self._desk.doubts():
            came_out = (self._labels / f"{doubt.serial}.pdf").is_file()
            fate = Fate.APPLIED if came_out else Fate.NOT_PRINTED
            self._line.resolve(Resolve(doubt.serial, fate, self._lead))
            self._answered(f"the answer about label {doubt.serial}")

    def scan_back(self, run: Run, serial: str) -> None:
        """Scan the label file of a bag as it was written.

        Raises:
            EnvironmentFault: there is none, or it does not say what the record says.
        """
        file = self._labels / f"{serial}.pdf"
        try:
            found = scan(file.read_bytes())
        except OSError as fault:
            raise EnvironmentFault(f"label {file} cannot be read", fault.strerror or "") from fault
        sent = [code.identifier + code.data.decode("latin-1") for code in found]
        if not sent:
            raise EnvironmentFault(f"label {file} has no bar code", "print it again")
        named = next((one for one in sent if is_serial(serial_of(one))), sent[0])
        made, fact = self._desk.scan(run, named, serial)
        if not made.equal or made.serial != serial:
            raise EnvironmentFault(f"label {file} does not say what the record says", named)
        self._enter(fact)
        self.scanned += 1

    def scan_last(self, run: Run, serial: str) -> None:
        """Scan the label of the last bag of a run, where labels are scanned."""
        if self._desk.scans_on:
            self.scan_back(run, serial)

    def roll_out(self) -> None:
        """Take the roll out; nothing of it was spoiled."""
        inside = self._desk.rolls()[-1]
        left = inside.issued - inside.used
        self._enter(self._desk.take_out(RollCount(returned=left, spoiled=0, samples=0)))

    @contextmanager
    def at_hand(self, run: Run) -> Iterator[None]:
        """Scan what must be scanned while others pack."""
        stopping = threading.Event()
        faults: list[EnvironmentFault] = []

        def work() -> None:
            while not stopping.wait(_LOOK_S):
                try:
                    self.open_closed_gates(run)
                except EnvironmentFault as fault:
                    faults.append(fault)
                    return

        thread = threading.Thread(target=work, name="simulated scanner")
        thread.start()
        try:
            yield
        except EnvironmentFault:
            if faults:
                raise faults[0] from None
            raise
        finally:
            stopping.set()
            thread.join()

    def _next_roll(self) -> str:
        return f"LR-{len(self._desk.rolls()) + 1:04d}"

    def _enter(self, fact: Fact) -> None:
        self._line.enter((fact,), self._lead)
        self._answered(f"the {fact.kind}")

    def _answered(self, what: str) -> None:
        answer = self._watch.next_entry(_PATIENCE_S)
        if not answer.recorded:
            raise EnvironmentFault(f"{what} was not recorded", answer.words)
