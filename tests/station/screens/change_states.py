"""A changeover without a record: a source that signs as the station does."""

from datetime import UTC, datetime

from station.core.clearance import Gate, Reconciliation, cleared_fact, reconciled_fact
from station.core.facts import Fact
from station.core.journal import EntryKind
from station.core.pack import Moment
from station.core.pauses import Pause, Reason, resume_fact, stop_fact
from station.line.state import Seal
from station.screens.change_source import Before
from station.screens.offer import Person

BEGAN = datetime(2026, 11, 24, 9, 40, tzinfo=UTC)
LEADS = (Person("L01", "Ines Calder", "lead"), Person("Q01", "Maud Ferris", "qa"))
SEALS = (
    Seal("LINE", "count the bags of the run before: RUN, then CHANGE (F8)"),
    Seal("LOTS", ""),
    Seal("TARE", ""),
    Seal("SCALE", "the run begins with a check of the scale: RUN, then CHECKS (F4)"),
    Seal("FIRST-OFF", "the run begins with a first-off: RUN, then LABELS (F5)"),
    Seal("ROLL", ""),
)


class SigningSource:
    """Counts what it makes, so that every fact has a name of its own."""

    def __init__(self, wanting=(Gate.RECONCILED, Gate.CLEARED), bags=312, reason=None):
        self.wanting = wanting
        self.bags = bags
        self.standing = Pause("p0", reason, BEGAN) if reason else None
        self.made = []

    def before(self):
        return (
            Before("Harbour leaf mix", "A2632801", self.bags, 252_000_000 * self.bags)
            if self.bags
            else None
        )

    def counted(self, bags, explanation):
        return self._keep(
            reconciled_fact(self._uid(), Reconciliation("r0", self.bags, bags, explanation))
        )

    def cleared(self, seen):
        return self._keep(cleared_fact(self._uid(), "r0", seen))

    def stop(self, reason: Reason):
        return self._keep(stop_fact(self._uid(), "L1", "r1", reason))

    def go_on(self, looked):
        return self._keep(resume_fact(self._uid(), "L1", "r1", self.standing, looked))

    def _uid(self):
        return f"u{len(self.made) + 1}"

    def _keep(self, fact):
        self.made.append(fact)
        return fact


class ClockStub:
    """A clock somebody must look at, or one about which nothing is open."""

    shown = Moment(BEGAN, 0, "Europe/Dublin", 0)

    def __init__(self, wanting="the clock jumped ahead by 26 h, to another day"):
        self.wanting = wanting

    def confirmed(self, reason):
        if not self.wanting:
            raise ValueError("nothing about the clock is open")
        return Fact(EntryKind.CLOCK_STEP, "c1", "clock", "confirmed", details={"reason": reason})
