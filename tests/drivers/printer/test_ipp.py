"""Labels on a real IPP printer: each printed once, byte for byte, and the truth told of each."""

from __future__ import annotations

import time
from collections.abc import Callable
from decimal import Decimal

import pytest

from drivers.errors import PrinterError
from drivers.printer.base import PrintJob, PrintOutcome, PrintState
from drivers.printer.ipp import IppPrinter, Patience
from drivers.printer.ipp_link import NotReached
from drivers.printer.ipp_values import GroupTag
from drivers.printer.ipp_wire import decode
from drivers.printer.pwg_raster import PWG_RASTER, Bitmap, pwg_raster
from tests.drivers.printer.ipp_printer.proxy import Proxy
from tests.drivers.printer.ipp_printer.rig import TestPrinter, wait_for

HURRIED = Patience(answer_s=2.0, previous_s=0.2, busy_s=0.3, lost_s=0.5)
PAGE = b"%PDF-1.4\n" + bytes(range(256)) * 40


def a_job(name: str = "A1-000123", **changes: object) -> PrintJob:
    fields = {"document": PAGE + name.encode(), "media_width_mm": 100, "media_height_mm": 60}
    return PrintJob(name, **(fields | changes))


def driver(printer: TestPrinter, **changes: object) -> IppPrinter:
    return IppPrinter(printer.address, **({"patience": HURRIED} | changes))


# --- All well ----------------------------------------------------------------------------


def test_label_arrives_byte_for_byte_on_its_own_size(printer: TestPrinter) -> None:
    ipp = driver(printer)
    job = a_job()
    assert ipp.submit(job).state in (PrintState.SPOOLED, PrintState.DONE)
    assert ipp.settle(job.name, 5) == PrintOutcome(PrintState.DONE)
    assert printer.page(job.name) == job.document
    assert printer.printed() == [job.name]
    settings = printer.settings(job.name)
    assert settings["CONTENT_TYPE"] == "application/pdf"
    assert settings["IPP_JOB_NAME"] == job.name
    assert settings["IPP_COPIES"] == "1"
    assert settings["IPP_PRINT_SCALING"] == "none"
    assert "media-size={x-dimension=10000 y-dimension=6000}" in settings["IPP_MEDIA_COL"]
    for side in ("top", "bottom", "left", "right"):
        assert f"media-{side}-margin=0" in settings["IPP_MEDIA_COL"]
    assert printer.address in ipp.describe()


def test_what_goes_over_the_wire(printer: TestPrinter) -> None:
    job = a_job()
    with Proxy(printer.port) as proxy:
        ipp = IppPrinter(proxy.address, user="line-1", patience=HURRIED)
        ipp.submit(job)
        ipp.settle(job.name, 5)
    head, body = bytes(proxy.sent[1]).split(b"\r\n\r\n", 1)
    assert head.startswith(b"POST /ipp/print HTTP/1.1\r\n")  # RFC 8010, section 4
    assert b"\r\nContent-Type: application/ipp\r\n" in head
    assert b"\r\nContent-Length: %d\r\n" % len(body) in head
    request = decode(body)
    assert request.code == 0x0002
    assert request.data == job.document
    operation = request.group(GroupTag.OPERATION)
    # Their order is fixed: RFC 8011, sections 4.1.4 and 4.1.5.
    assert [one.name for one in operation.attributes[:3]] == [
        "attributes-charset",
        "attributes-natural-language",
        "printer-uri",
    ]
    assert operation.text("attributes-charset") == "utf-8"
    assert operation.text("printer-uri") == proxy.address
    assert operation.text("requesting-user-name") == "line-1"
    assert operation.text("job-name") == job.name
    assert operation.all("ipp-attribute-fidelity") == (True,)
    assert operation.text("document-format") == "application/pdf"
    about_job = decode(bytes(proxy.sent[2]).split(b"\r\n\r\n", 1)[1])
    assert about_job.code == 0x0009
    names = [one.name for one in about_job.group(GroupTag.OPERATION).attributes[2:4]]
    assert names == ["printer-uri", "job-id"]


@pytest.mark.parametrize(
    ("width", "height", "expected"),
    [
        (Decimal("60.05"), 40, "x-dimension=6005 y-dimension=4000"),
        (50.8, 25.4, "x-dimension=5080 y-dimension=2540"),
        (100, 150, "x-dimension=10000 y-dimension=15000"),
    ],
)
def test_size_is_exact_to_a_hundredth(
    printer: TestPrinter, width: Decimal | float, height: float, expected: str
) -> None:
    ipp = driver(printer)
    ipp.submit(a_job(media_width_mm=width, media_height_mm=height))
    assert ipp.settle("A1-000123", 5).state is PrintState.DONE
    assert expected in printer.settings("A1-000123")["IPP_MEDIA_COL"]


def test_labels_come_out_in_order_one_each(printer: TestPrinter) -> None:
    ipp = driver(printer)
    names = [f"A1-{number:06}" for number in range(12)]
    for name in names:
        ipp.submit(a_job(name))
    assert ipp.settle(names[-1], 5).state is PrintState.DONE
    assert printer.printed() == names


def test_same_label_again_is_not_sent_again(printer: TestPrinter) -> None:
    ipp = driver(printer)
    job = a_job()
    ipp.submit(job)
    ipp.settle(job.name, 5)
    assert ipp.submit(job) == PrintOutcome(PrintState.DONE)
    assert printer.printed() == [job.name]
    assert printer.requests("Print-Job") == 1
    with pytest.raises(PrinterError, match="one name stands for one page"):
        ipp.submit(a_job(document=b"%PDF-1.4 other"))
    assert printer.requests("Print-Job") == 1


def test_printer_without_pdf_gets_the_dots(make_printer: Callable[..., TestPrinter]) -> None:
    asked: list[tuple[bytes, int]] = []
    bitmap = Bitmap(800, 480, bytes(range(100)) * 480)

    def rasterise(document: bytes, dots_per_inch: int) -> Bitmap:
        asked.append((document, dots_per_inch))
        return bitmap

    printer = make_printer(formats=[PWG_RASTER])
    ipp = driver(printer, rasterise=rasterise)
    job = a_job()
    ipp.submit(job)
    assert ipp.settle(job.name, 5).state is PrintState.DONE
    assert asked == [(job.document, 203)]
    assert printer.page(job.name) == pwg_raster(bitmap, 203, 10000, 6000)
    assert printer.settings(job.name)["CONTENT_TYPE"] == PWG_RASTER


def test_check_prints_nothing(printer: TestPrinter) -> None:
    ipp = driver(printer)
    ipp.check(a_job())
    assert printer.requests("Validate-Job") == 1
    assert printer.requests("Print-Job") == 0
    assert ipp.look_up("A1-000123") is None


def test_label_is_found_by_its_name_after_a_restart_of_the_station(printer: TestPrinter) -> None:
    before = driver(printer)
    before.submit(a_job())
    before.settle("A1-000123", 5)
    after = driver(printer)
    assert after.look_up("A1-000123") == PrintOutcome(PrintState.DONE)
    assert after.look_up("A1-000124") is None
    with pytest.raises(PrinterError, match="was not sent from here"):
        after.settle("A1-000123", 1)


# --- Refused: nothing is printed ---------------------------------------------------------


@pytest.mark.parametrize(
    ("changes", "why"),
    [
        ({"media_width_mm": Decimal("99.995")}, "whole hundredths of a millimetre"),
        ({"format": "image/png"}, "does not take image/png"),
    ],
)
def test_label_that_the_printer_cannot_print_is_refused(
    printer: TestPrinter, changes: dict[str, object], why: str
) -> None:
    ipp = driver(printer)
    with pytest.raises(PrinterError, match=why):
        ipp.check(a_job(**changes))
    with pytest.raises(PrinterError, match=why):
        ipp.submit(a_job(**changes))
    assert ipp.submit(a_job()).state in (PrintState.SPOOLED, PrintState.DONE)
    assert ipp.settle("A1-000123", 5).state is PrintState.DONE
    assert printer.printed() == ["A1-000123"]


def test_a_size_off_the_roll_is_refused_or_told_to_the_printer_as_it_is(
    printer: TestPrinter,
) -> None:
    """ippeveprinter refuses such a size up to CUPS 2.4.2; 2.4.10 leaves it to its print command."""
    ipp, job = driver(printer), a_job(media_width_mm=210, media_height_mm=297)
    refusal = ""
    try:
        ipp.submit(job)
    except PrinterError as refused:
        refusal = str(refused)
    if refusal:
        assert "not possible: media-col" in refusal
        assert printer.printed() == []
        return
    assert ipp.settle(job.name, 5).state is PrintState.DONE
    assert "x-dimension=21000 y-dimension=29700" in printer.settings(job.name)["IPP_MEDIA_COL"]


def test_printer_without_pdf_and_nobody_to_make_dots(
    make_printer: Callable[..., TestPrinter],
) -> None:
    ipp = driver(make_printer(formats=[PWG_RASTER]))
    with pytest.raises(PrinterError, match=r"takes image/pwg-raster; needed is application/pdf"):
        ipp.submit(a_job())


def test_wrong_path(printer: TestPrinter) -> None:
    ipp = IppPrinter(printer.address.replace("/ipp/print", "/ipp/elsewhere"), patience=HURRIED)
    with pytest.raises(PrinterError, match=r"does not know of it \(0x0406"):
        ipp.submit(a_job())
    assert printer.requests("Print-Job") == 0


def test_port_closed(printer: TestPrinter) -> None:
    printer.daemon.stop()
    ipp = driver(printer)
    with pytest.raises(NotReached, match=r"nothing listens there.*switched on"):
        ipp.submit(a_job())
    printer.start()
    assert ipp.submit(a_job()).state in (PrintState.SPOOLED, PrintState.DONE)
    assert ipp.settle("A1-000123", 5).state is PrintState.DONE
    assert printer.printed() == ["A1-000123"]


# --- Accepted, and then ------------------------------------------------------------------


def test_fault_while_printing(printer: TestPrinter) -> None:
    ipp = driver(printer)
    ipp.submit(a_job("A1-fault"))
    outcome = ipp.settle("A1-fault", 5)
    assert outcome == PrintOutcome(PrintState.FAILED, "the printer gave up")
    assert ipp.submit(a_job("A1-fault")) == outcome
    assert printer.printed() == []
    ipp.submit(a_job("A1-000124"))
    assert ipp.settle("A1-000124", 5).state is PrintState.DONE
    assert printer.printed() == ["A1-000124"]


def test_no_labels_left_stops_the_next_before_it_is_sent(printer: TestPrinter) -> None:
    ipp = driver(printer)
    ipp.submit(a_job("A1-empty"))
    start = time.monotonic()
    outcome = ipp.settle("A1-empty", 10)
    assert outcome == PrintOutcome(PrintState.SPOOLED, "no labels left: load a roll")
    assert time.monotonic() - start < 5, "waits on although a person is needed"
    for number in range(50):
        with pytest.raises(PrinterError, match="no labels left: load a roll"):
            ipp.submit(a_job(f"A1-{number:06}"))
    assert printer.requests("Print-Job") == 1
    assert printer.printed() == []
    assert ipp.status().trouble() == "no labels left: load a roll"


def test_slow_label_holds_back_the_next_one(printer: TestPrinter) -> None:
    ipp = driver(printer)
    start = time.monotonic()
    assert ipp.submit(a_job("A1-held")).state is PrintState.SPOOLED
    assert ipp.settle("A1-held", 0.2) == PrintOutcome(PrintState.SPOOLED, "it is printing")
    with pytest.raises(PrinterError, match=r"A1-held is not out yet: it is printing"):
        ipp.submit(a_job("A1-000124"))
    assert time.monotonic() - start < 2.0
    printer.release()
    assert ipp.submit(a_job("A1-000124")).state in (PrintState.SPOOLED, PrintState.DONE)
    assert ipp.settle("A1-000124", 5).state is PrintState.DONE
    assert printer.printed() == ["A1-held", "A1-000124"]


def test_busy_printer_is_asked_again(printer: TestPrinter) -> None:
    other = driver(printer)
    other.submit(a_job("B7-held"))
    wait_for("the other's label", lambda: printer.is_holding("B7-held"))
    ipp = driver(printer)
    with pytest.raises(PrinterError, match=r"busy with another job \(0x0507"):
        ipp.submit(a_job())
    printer.release()
    patient = driver(printer, patience=Patience(busy_s=5))
    assert patient.submit(a_job()).state in (PrintState.SPOOLED, PrintState.DONE)
    assert patient.settle("A1-000123", 5).state is PrintState.DONE
    assert printer.printed() == ["B7-held", "A1-000123"]


def test_cancelled_label_that_comes_out_all_the_same_is_in_doubt(printer: TestPrinter) -> None:
    """This printer answers that the job is cancelled, and prints it: so do others."""
    ipp = driver(printer)
    ipp.submit(a_job("A1-held"))
    wait_for("label", lambda: printer.is_holding("A1-held"))
    waiting = ipp.cancel("A1-held", 0.1)
    assert waiting.state is PrintState.SPOOLED
    printer.release()
    outcome = ipp.settle("A1-held", 5)
    assert outcome.state is PrintState.SUBMITTED
    assert "look whether a label came out" in outcome.why
    assert printer.printed() == ["A1-held"]
    assert ipp.submit(a_job("A1-held")) == outcome
    assert printer.requests("Print-Job") == 1


def test_cancel_of_a_label_that_is_out_changes_nothing(printer: TestPrinter) -> None:
    ipp = driver(printer)
    ipp.submit(a_job())
    ipp.settle("A1-000123", 5)
    assert ipp.cancel("A1-000123", 1) == PrintOutcome(PrintState.DONE)
    with pytest.raises(PrinterError, match="was not sent from here"):
        ipp.cancel("A1-000999", 1)


def test_printer_dies_with_the_label(printer: TestPrinter) -> None:
    ipp = driver(printer)
    ipp.submit(a_job("A1-held"))
    wait_for("label", lambda: printer.is_holding("A1-held"))
    printer.daemon.kill()
    outcome = ipp.settle("A1-held", 0.3)
    assert outcome.state is PrintState.SUBMITTED
    assert "is not reached" in outcome.why
    with pytest.raises(PrinterError, match="A1-held is not out yet"):
        ipp.submit(a_job("A1-000124"))

    printer.start()  # it knows nothing of the job any more
    outcome = ipp.settle("A1-held", 5)
    assert outcome.state is PrintState.SUBMITTED
    assert "does not know job A1-held" in outcome.why
    assert ipp.submit(a_job("A1-held")) == outcome
    assert ipp.submit(a_job("A1-000124")).state in (PrintState.SPOOLED, PrintState.DONE)
    assert ipp.settle("A1-000124", 5).state is PrintState.DONE
    assert printer.printed() == ["A1-000124"]


def test_restarted_printer_with_another_job_of_that_number(printer: TestPrinter) -> None:
    ipp = driver(printer)
    ipp.submit(a_job("A1-held"))
    wait_for("label", lambda: printer.is_holding("A1-held"))
    printer.daemon.kill()
    printer.start()
    other = driver(printer)
    other.submit(a_job("B7-000001"))  # gets number 1, as A1-held had
    other.settle("B7-000001", 5)
    outcome = ipp.settle("A1-held", 5)
    assert outcome.state is PrintState.SUBMITTED
    assert "another job in place of A1-held" in outcome.why


def test_frozen_printer_costs_no_more_than_the_time_allowed(printer: TestPrinter) -> None:
    ipp = driver(printer, patience=Patience(0.4, 0.2, 0.3, 0.3))
    ipp.submit(a_job("A1-held"))
    printer.daemon.freeze()
    start = time.monotonic()
    assert ipp.settle("A1-held", 0.5).state is PrintState.SUBMITTED
    assert time.monotonic() - start < 1.5
    with pytest.raises(PrinterError, match="A1-held is not out yet"):
        ipp.submit(a_job("A1-000124"))
    printer.daemon.thaw()
    printer.release()
    assert ipp.settle("A1-held", 5).state is PrintState.DONE
    assert printer.printed() == ["A1-held"]


# --- What is asked for -------------------------------------------------------------------


@pytest.mark.parametrize("wrong", [0, -1, float("nan"), float("inf")])
@pytest.mark.parametrize("field", ["answer_s", "previous_s", "busy_s", "lost_s"])
def test_waits_are_above_zero(field: str, wrong: float) -> None:
    with pytest.raises(ValueError, match="above 0 seconds"):
        Patience(**{field: wrong})
