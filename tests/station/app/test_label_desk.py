"""The printer's thread: one answer for every label, whatever happens."""

import queue
from dataclasses import replace

import pytest

from drivers.errors import PrinterError
from drivers.printer.base import PrintOutcome, PrintState
from drivers.printer.file import FolderPrinter
from labels.design import PACK_100_BY_60
from labels.pdf import LabelDrawer
from labels.release import release
from station.app.label_desk import PrintingDesk
from station.core.lot_set import LotSet, LotUse
from station.core.lots import InputLot
from station.core.metrology.verdict import Verdict
from station.core.pack import PackDraft, PackId, PackRecord, Quality, Weighing
from station.line.events import LabelFailed, Labelled
from station.line.ports import LabelRefused
from station.reports.label_facts import pack_label
from tests.station.line.scenario import grams, make_moment, make_run

PACKER = "Packed by Hollow Ash Salads, Weir Lane 2"


class RefusingPrinter:
    def __init__(self, fault):
        self.fault = fault

    def describe(self):
        return "a printer that refuses"

    def submit(self, job):
        if isinstance(self.fault, Exception):
            raise self.fault
        return PrintOutcome(PrintState.FAILED, self.fault)

    def settle(self, name, wait_s):
        raise PrinterError("no such page", name)

    def trouble(self):
        return ""


def record(number=1):
    run = make_run()
    draft = PackDraft(
        run.id, Weighing(grams(258), grams(6), grams(252), grams(0), 900, 0, "0a"),
        Verdict.IN_WINDOW, Quality.GOOD, "", run.blend_lot, run.lot_set.key, run.dating.use_by,
        run.dating.production_day, run.operator, make_moment(),
    )  # fmt: skip
    return PackRecord(PackId("S", "A1", 1 << 60, number), f"u{number}", draft, number, "00")


@pytest.fixture
def desk():
    """A function that starts a desk on a printer; every desk is stopped."""
    started = []

    def start(printer):
        answers, shown = queue.SimpleQueue(), []
        desk = PrintingDesk(
            lambda _: LabelDrawer(PACK_100_BY_60),
            printer,
            PACKER,
            "S",
            "A1",
            answers.put,
            shown.append,
        )
        desk.start()
        started.append(desk)
        return desk, answers, shown

    yield start
    for one in started:
        one.stop()


def test_a_label_goes_to_the_printer_once_and_is_shown(desk, tmp_path):
    at, answers, shown = desk(FolderPrinter(tmp_path / "labels"))
    at.issue(record(), make_run())
    assert answers.get(timeout=10) == Labelled(record().serial)
    [file] = (tmp_path / "labels").glob("*.pdf")
    assert file.stem == record().serial
    assert shown == [file.read_bytes()]
    assert at.read_back_equal == 1
    assert answers.empty()


@pytest.mark.parametrize(
    "fault",
    [
        "out of labels",
        PrinterError("cover open", "close it"),
        pytest.param(RuntimeError("a fault"), marks=pytest.mark.expects_log("label")),
    ],
)
def test_whatever_the_printer_does_the_line_hears_of_it(desk, fault):
    at, answers, shown = desk(RefusingPrinter(fault))
    at.issue(record(), make_run())
    answer = answers.get(timeout=10)
    assert isinstance(answer, LabelFailed)
    assert str(fault).split(":")[0] in answer.why
    assert shown == []


def test_a_rehearsal_shows_a_specimen_and_prints_nothing(desk, tmp_path):
    at, _, shown = desk(FolderPrinter(tmp_path / "labels"))
    at.rehearse(make_run())
    assert len(shown) == 1
    assert not list((tmp_path / "labels").glob("*"))


def test_a_label_that_cannot_be_drawn_is_refused_before_the_run_opens(desk, tmp_path):
    at, _, _ = desk(FolderPrinter(tmp_path / "labels"))
    codes = [f"ROM-{number:016d}" for number in range(30)]
    day = make_run().dating.production_day
    run = replace(
        make_run(),
        lot_set=LotSet.of(LotUse("ROM", code) for code in codes),
        lots=tuple(InputLot(code, "ROM", "Aldermoor Growers", day) for code in codes),
    )
    with pytest.raises(LabelRefused, match=r"(?i)lot"):
        at.rehearse(run)


def test_the_label_declares_the_nominal_quantity_and_every_input_lot():
    label = pack_label("A1-00-000001", make_run(), PACKER)
    assert label.net_quantity_text == "250 g"
    assert [lot.code for lot in label.input_lots] == ["ROM-1", "CAR-7"]  # in recipe order
    assert release(LabelDrawer(PACK_100_BY_60), label).symbols
