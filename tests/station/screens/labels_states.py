"""A station's labels without its record: facts are made as the station makes them."""

from dataclasses import replace
from datetime import UTC, datetime

from labels.design import PACK_100_BY_60
from labels.pdf import drawer_of
from station.core.checks.first_off import FirstOff, first_off_fact
from station.core.checks.rolls import (
    RollAccount,
    RollCount,
    explained_fact,
    put_in_fact,
    taken_out_fact,
)
from station.core.checks.scan_back import (
    ScanBack,
    ScanTrigger,
    checked_scan,
    cleared_fact,
    scan_fact,
)
from station.core.facts import FactRecord
from station.core.label_life import OpenLabel
from station.core.pack import LabelState, Moment
from station.line.state import LastPack
from station.reports.label_facts import pack_label, specimen_label
from station.screens.offer import Person
from tests.station.screens.states import every_state, grams

AT = Moment(datetime(2026, 11, 25, 9, 40, tzinfo=UTC), 0, "Europe/Dublin", 1)
PEOPLE = (
    Person("L01", "Ines Calder", "lead"),
    Person("L02", "Bram Osterly", "lead"),
    Person("Q01", "Maud Ferris", "qa"),
)
DOUBTS = (
    OpenLabel(
        "A1-7K-000041",
        "Harbour leaf mix",
        "",
        LabelState.IN_DOUBT,
        "the station ended before the label's fate was recorded",
        AT.utc,
        0,
    ),
    OpenLabel(
        "A1-7K-000042",
        "Harbour leaf mix",
        "R1",
        LabelState.SPOOLED,
        "a copy was printed",
        AT.utc,
        0,
    ),
)
PACKER = "Packed by Hollow Ash Salads, Tidegate Lane 4, Quillhaven"
LAST = "A1-7K-000044"


def state_with_bag():
    return replace(every_state()["bag_on"], last=LastPack(LAST, grams(252), True))


def account(roll, issued, used, count=None, explanation=""):
    put_in = FactRecord(put_in_fact(roll, issued, f"in-{roll}"), AT, "L01", 1)
    whole = RollAccount(roll, f"in-{roll}", put_in, issued, used, None, None, explanation)
    if count is None:
        return whole
    out = FactRecord(taken_out_fact(whole, count, f"out-{roll}"), AT, "L01", 2)
    return replace(whole, taken_out=out, count=count)


ACCOUNTS = (
    account("LR-0411", 1000, 962, RollCount(30, 6, 2)),
    account("LR-0412", 1000, 940, RollCount(40, 11, 4)),
    account("LR-0413", 1000, 310),
)


class LabelsSourceStub:
    """Makes facts, each with a uid of its own."""

    def __init__(
        self, doubts=(), roll="", rolls=(), mismatch="", first_off=True, roll_wanted=False
    ):
        self._doubts, self._rolls = doubts, rolls
        self.roll_inside, self.mismatch = roll, mismatch
        self.roll_wanted, self.first_off_wanted = roll_wanted, first_off
        self.made = []

    def specimen(self, run):
        return drawer_of(PACK_100_BY_60).draw(specimen_label(run, "S", "A1", PACKER))

    def symbols(self, run, serial=LAST):
        drawer = drawer_of(PACK_100_BY_60)
        return tuple(
            one.identifier + one.expected_bytes.decode()
            for one in drawer.symbols(pack_label(serial, run, PACKER))
        )

    def first_off(self, run, lead, second, refusal=""):
        product = run.product
        said = FirstOff(run.id, product.code, product.version, "0" * 64, 1, lead, second, refusal)
        return self._keep(first_off_fact(said, self._uid()))

    def scan(self, run, text, last):
        scan = ScanBack(last, checked_scan(text), self.symbols(run, last), ScanTrigger.FIRST)
        self.mismatch = "" if scan.equal else last
        return scan, self._keep(scan_fact(scan, self._uid(), run.id))

    def clear(self, who, reason):
        wrong = FactRecord(self.made[-1], AT, "L01", 3)
        return self._keep(cleared_fact(wrong, reason, self._uid()))

    def rolls(self):
        return self._rolls

    def put_in(self, roll, issued, run=None):
        return self._keep(put_in_fact(roll, issued, self._uid()))

    def take_out(self, count, run=None):
        return self._keep(taken_out_fact(self._rolls[-1], count, self._uid()))

    def explain(self, account, words):
        return self._keep(explained_fact(account, words, self._uid()))

    def doubts(self):
        return self._doubts

    def _uid(self):
        return f"u{len(self.made) + 1}"

    def _keep(self, fact):
        self.made.append(fact)
        return fact
