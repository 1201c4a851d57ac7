"""A network that fails at each octet of printing a label: never a second label, never a false word.

Each submit makes two connections, one for the printer's state and one for the page; the plan of the
proxy spoils them in this order, and what comes after is a sound network.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from random import Random

import pytest

from drivers.errors import PrinterError
from drivers.printer.base import PrintJob, PrintOutcome, PrintState
from drivers.printer.ipp import IppPrinter, Patience
from drivers.printer.ipp_link import ReplyLost
from tests.drivers.printer.ipp_printer.proxy import Proxy, Spoil
from tests.drivers.printer.ipp_printer.rig import TestPrinter, wait_for

HURRIED = Patience(answer_s=0.6, previous_s=0.2, busy_s=0.3, lost_s=0.4)
PAGE = b"%PDF-1.4\n" + bytes(range(256)) * 40
JOB = PrintJob("A1-000123", PAGE, 100, 60)
NEXT = PrintJob("A1-000124", PAGE + b"next", 100, 60)
IN_DOUBT = "look whether a label came out"
NOT_ACKNOWLEDGED = PrintOutcome(
    PrintState.SUBMITTED,
    "the printer says that it is out, but its reply to the page was lost: "
    "look whether the label is whole",
)


def ended(ipp: IppPrinter, name: str) -> PrintOutcome:
    return ipp.settle(name, 5)


@pytest.mark.parametrize(
    "spoil",
    [
        Spoil(cut_reply_after=0),
        Spoil(cut_reply_after=40),
        Spoil(stall=True),
        Spoil(garble=b""),
        Spoil(garble=b"\xff" * 300),
        Spoil(garble=b"HTTP/1.1 200 OK\r\nContent-Length: 4\r\n\r\nnone"),
        Spoil(garble=b"HTTP/1.1 200 OK\r\nContent-Length: 900\r\n\r\nnone"),
        Spoil(garble=b"HTTP/1.1 504 Gateway Timeout\r\nContent-Length: 0\r\n\r\n"),
        Spoil(drip_s=0.1),
    ],
    ids=str,
)
def test_reply_is_lost_and_the_label_is_found_in_the_queue(
    printer: TestPrinter, spoil: Spoil
) -> None:
    with Proxy(printer.port, None, spoil) as proxy:
        ipp = IppPrinter(proxy.address, patience=HURRIED)
        start = time.monotonic()
        ipp.submit(JOB)
        assert time.monotonic() - start < HURRIED.submit_s
        assert ended(ipp, JOB.name) == NOT_ACKNOWLEDGED
        assert ipp.submit(JOB) == NOT_ACKNOWLEDGED
        assert ipp.submit(NEXT).state in (PrintState.SPOOLED, PrintState.DONE)
        assert ended(ipp, NEXT.name) == PrintOutcome(PrintState.DONE)
    assert printer.printed() == [JOB.name, NEXT.name]
    assert printer.page(JOB.name) == JOB.document


def test_reply_is_lost_and_the_label_still_waits(printer: TestPrinter) -> None:
    held = PrintJob("A1-held", PAGE, 100, 60)
    with Proxy(printer.port, None, Spoil(cut_reply_after=0)) as proxy:
        ipp = IppPrinter(proxy.address, patience=HURRIED)
        assert ipp.submit(held).state is PrintState.SPOOLED
        with pytest.raises(PrinterError, match="A1-held is not out yet"):
            ipp.submit(NEXT)
        printer.release()
        assert ended(ipp, held.name) == NOT_ACKNOWLEDGED
    assert printer.printed() == [held.name]


@pytest.mark.parametrize("octets", [0, 1, 60, 300, 600, 900, 2000, 10_000])
def test_cut_while_sending(printer: TestPrinter, octets: int) -> None:
    """However far the page came it is in doubt: this printer prints what it got of a page, and
    reports it as completed.
    """
    with Proxy(printer.port, None, Spoil(cut_after=octets)) as proxy:
        ipp = IppPrinter(proxy.address, patience=HURRIED)
        ipp.submit(JOB)
        outcome = ended(ipp, JOB.name)
        assert ipp.submit(JOB) == outcome
        assert ipp.submit(NEXT).state in (PrintState.SPOOLED, PrintState.DONE)
        assert ended(ipp, NEXT.name) == PrintOutcome(PrintState.DONE)
    assert outcome.state is PrintState.SUBMITTED
    if JOB.name in printer.printed():
        assert outcome == NOT_ACKNOWLEDGED
        assert len(printer.page(JOB.name)) < len(PAGE)
    else:
        assert IN_DOUBT in outcome.why
    assert printer.printed().count(JOB.name) <= 1
    assert printer.printed()[-1] == NEXT.name


def test_page_that_never_arrived_is_in_doubt_and_not_sent_again(printer: TestPrinter) -> None:
    with Proxy(printer.port, None, Spoil(cut_after=0)) as proxy:
        ipp = IppPrinter(proxy.address, patience=HURRIED)
        outcome = ipp.submit(JOB)
        assert outcome.state is PrintState.SUBMITTED
        assert IN_DOUBT in outcome.why
        assert ended(ipp, JOB.name) == outcome
        assert ipp.submit(JOB) == outcome
    assert printer.requests("Print-Job") == 0


def test_reply_lost_and_then_no_network_at_all(printer: TestPrinter) -> None:
    """The page came out; nobody can tell until the network is back."""
    dead = [Spoil(cut_after=0)] * 60
    with Proxy(printer.port, None, Spoil(cut_reply_after=0), *dead) as proxy:
        ipp = IppPrinter(proxy.address, patience=HURRIED)
        outcome = ipp.submit(JOB)
        assert outcome.state is PrintState.SUBMITTED
        assert IN_DOUBT in outcome.why
        assert ipp.settle(JOB.name, 0.2).state is PrintState.SUBMITTED
        with pytest.raises(PrinterError, match="A1-000123 is not out yet"):
            ipp.submit(NEXT)
        proxy.mend()
        assert ended(ipp, JOB.name) == NOT_ACKNOWLEDGED
        assert ipp.submit(NEXT).state in (PrintState.SPOOLED, PrintState.DONE)
        assert ended(ipp, NEXT.name) == PrintOutcome(PrintState.DONE)
    assert printer.printed() == [JOB.name, NEXT.name]


def test_reply_lost_by_a_busy_printer(printer: TestPrinter) -> None:
    """The lost reply said busy: the label is in doubt, and no other way would be honest."""
    other = IppPrinter(printer.address, patience=HURRIED)
    other.submit(PrintJob("B7-held", PAGE, 100, 60))
    wait_for("the other's label", lambda: printer.is_holding("B7-held"))
    with Proxy(printer.port, None, Spoil(cut_reply_after=0)) as proxy:
        ipp = IppPrinter(proxy.address, patience=HURRIED)
        assert ipp.submit(JOB).state is PrintState.SUBMITTED
        printer.release()
        assert ended(other, "B7-held") == PrintOutcome(PrintState.DONE)
        assert ended(ipp, JOB.name).state is PrintState.SUBMITTED
    assert printer.printed() == ["B7-held"]


@pytest.mark.parametrize("spoil", [Spoil(cut_reply_after=40), Spoil(stall=True)], ids=str)
def test_state_of_the_printer_is_lost(printer: TestPrinter, spoil: Spoil) -> None:
    """Before the page is sent, a failure is a plain refusal and another try is safe."""
    with Proxy(printer.port, spoil) as proxy:
        ipp = IppPrinter(proxy.address, patience=HURRIED)
        with pytest.raises(ReplyLost):
            ipp.submit(JOB)
        assert printer.requests("Print-Job") == 0
        assert ipp.submit(JOB).state in (PrintState.SPOOLED, PrintState.DONE)
        assert ended(ipp, JOB.name) == PrintOutcome(PrintState.DONE)
    assert printer.printed() == [JOB.name]


@pytest.mark.parametrize(
    ("status", "why"),
    [
        ("401 Unauthorized", "wants a login"),
        ("403 Forbidden", "not allowed to print"),
        ("404 Not Found", "no printer under that path"),
        ("426 Upgrade Required", "write the address with ipps"),
        ("302 Found", "see its settings"),
    ],
)
def test_web_server_that_refuses(printer: TestPrinter, status: str, why: str) -> None:
    reply = f"HTTP/1.1 {status}\r\nContent-Length: 0\r\n\r\n".encode()
    with Proxy(printer.port, None, Spoil(garble=reply)) as proxy:
        ipp = IppPrinter(proxy.address, patience=HURRIED)
        with pytest.raises(PrinterError, match=why):
            ipp.submit(JOB)


def test_reply_to_another_question(printer: TestPrinter) -> None:
    stale = b"\x01\x01\x00\x00\x00\x00\x00\x63\x03"  # to number 99
    reply = b"HTTP/1.1 200 OK\r\nContent-Length: %d\r\n\r\n%b" % (len(stale), stale)
    with Proxy(printer.port, Spoil(garble=reply)) as proxy:
        ipp = IppPrinter(proxy.address, patience=HURRIED)
        with pytest.raises(ReplyLost, match="answers another request"):
            ipp.status()


def test_reply_without_end(printer: TestPrinter) -> None:
    endless = b"HTTP/1.1 200 OK\r\n\r\n" + bytes(5 << 20)
    with Proxy(printer.port, Spoil(garble=endless)) as proxy, pytest.raises(ReplyLost):
        IppPrinter(proxy.address, patience=Patience(answer_s=5)).status()


def test_network_fails_at_random(make_printer: Callable[..., TestPrinter]) -> None:
    """Forty labels over a network that spoils a third of the connections."""
    printer = make_printer()
    ways = [
        None,
        Spoil(cut_after=0),
        Spoil(cut_reply_after=0),
        Spoil(cut_after=500),
        Spoil(cut_reply_after=60),
        Spoil(garble=b"HTTP/1.1 502 Bad Gateway\r\nContent-Length: 0\r\n\r\n"),
    ]
    plan = Random(20261125).choices(ways, weights=(10, 1, 1, 1, 1, 1), k=400)
    quick = Patience(answer_s=0.5, previous_s=0.1, busy_s=0.2, lost_s=0.1)
    outcomes: dict[str, PrintOutcome] = {}
    with Proxy(printer.port, *plan) as proxy:
        ipp = IppPrinter(proxy.address, patience=quick)
        for number in range(40):
            name = f"A1-{number:06}"
            job = PrintJob(name, PAGE + name.encode(), 100, 60)
            for _ in range(3):
                try:
                    outcomes[name] = ipp.submit(job)
                except PrinterError:
                    continue
                outcomes[name] = ipp.settle(name, 0.3)
                break
        proxy.mend()
        ended_at_last = {name: ended(ipp, name) for name in outcomes}
    printed = printer.printed()
    assert len(printed) == len(set(printed)), "a label came out twice"
    done = {n for n, outcome in ended_at_last.items() if outcome.state is PrintState.DONE}
    doubtful = {n for n, outcome in ended_at_last.items() if outcome.state is PrintState.SUBMITTED}
    assert done <= set(printed) <= done | doubtful
    assert len(done) >= 3
    assert len(doubtful) >= 3
