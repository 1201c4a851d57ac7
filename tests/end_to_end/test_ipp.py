"""Bags on the bench scale, labels on a real IPP printer: each label once, whatever happens."""

import pytest

from drivers.printer.ipp import IppPrinter, Patience
from labels.readback import scan
from station.app.printers import dots
from station.core.pack import LabelState
from station.line.state import Phase, Verb
from station.store.queries import labels_in
from tests.drivers.printer.conftest import announcer, make_printer, printer
from tests.end_to_end.line import bench_line

__all__ = ["announcer", "make_printer", "printer"]
HURRIED = Patience(answer_s=1.0, previous_s=1.0, busy_s=0.5, lost_s=0.5)


def packed(line, bags):
    return line.until(lambda state: state.tally.good >= bags or state.phase is Phase.STOPPED)


def ipp(printer):
    return IppPrinter(printer.address, dots, patience=HURRIED)


def test_each_bag_gets_its_label_once_as_it_was_drawn(tmp_path, printer):
    with bench_line(tmp_path / "home", printer=ipp(printer)) as line:
        product = line.open_run(order=8)
        with line.packer(product):
            line.until(lambda state: state.verb is Verb.ORDER_DONE)
        pages = line.pages
    serials = labels_in(tmp_path / "home", LabelState.APPLIED)
    assert len(serials) == 8
    assert printer.printed() == list(serials)
    assert [printer.page(serial) for serial in serials] == pages[-8:]
    for serial in serials:
        read = [code.data.decode("latin-1") for code in scan(printer.page(serial))]
        assert any(serial in data for data in read)
        size = printer.settings(serial)["IPP_MEDIA_COL"]
        assert "x-dimension=10000 y-dimension=6000" in size


def test_a_printer_that_takes_dots_only_gets_the_dots(tmp_path, make_printer):
    raster = make_printer(formats=("image/pwg-raster",))
    with bench_line(tmp_path / "home", printer=ipp(raster)) as line:
        product = line.open_run(order=2)
        with line.packer(product):
            line.until(lambda state: state.verb is Verb.ORDER_DONE)
    serials = labels_in(tmp_path / "home", LabelState.APPLIED)
    assert raster.printed() == list(serials)
    assert all(raster.page(serial).startswith(b"RaS2") for serial in serials)


@pytest.mark.parametrize("mood", ["fault", "empty"])
def test_a_label_that_is_not_out_is_in_doubt_and_never_sent_again(tmp_path, printer, mood):
    with bench_line(tmp_path / "home", printer=ipp(printer)) as line:
        product = line.open_run(order=20)
        with line.packer(product):
            packed(line, 2)
            printer.set_mood(mood)
            line.until(lambda state: state.phase is Phase.STOPPED)
    doubtful = labels_in(tmp_path / "home", LabelState.IN_DOUBT)
    assert len(doubtful) >= 1
    printed = printer.printed()
    assert not set(doubtful) & set(printed)
    assert len(printed) == len(set(printed))


def test_a_printer_that_is_gone_closes_acceptance_until_it_is_back(tmp_path, printer):
    with bench_line(tmp_path / "home", printer=ipp(printer)) as line:
        line.open_run(order=20)
        line.until(lambda state: state.phase is Phase.READY)
        printer.daemon.kill()
        closed = line.until(lambda state: bool(state.closed))
        assert closed.closed[0].startswith("the printer: ")
        assert closed.verb is Verb.CALL_LEAD
        printer.start()
        line.until(lambda state: not state.closed)
