"""The link on real lines: noisy, silent, held, misused, behind a network."""

import select
import time

import pytest

from drivers.bench import BenchScale
from drivers.budget import BudgetRules
from drivers.connection import LinkRules
from drivers.conversation import AskRules
from drivers.errors import PortError
from drivers.frames import scp0499_commands as command
from drivers.frames.base import Answer, AnswerKind, Garbage
from drivers.link import LinkDown, LinkUp
from drivers.parity import ParityLine
from drivers.port import PortSettings
from drivers.steady import Reading, is_stale
from drivers.wire import WireLog
from tests.drivers.listening import GRAMS, Listener, bare_line, frame, linked
from tests.drivers.rfc2217_server import rfc2217_server

MS = 1_000_000
QUICK = LinkRules(
    ask=AskRules(
        first_frame_ns=60 * MS,
        ask_every_ns=20 * MS,
        answer_ns=40 * MS,
        silent_after_ns=150 * MS,
        tell_again_ns=400 * MS,
    ),
    budget=BudgetRules(window_ns=300 * MS),
)


# --- the usual case ------------------------------------------------------------------------


def test_bag_is_read_from_the_line(scale: BenchScale) -> None:
    with linked(PortSettings(scale.url), GRAMS) as (heard, _):
        up = heard.up()
        assert (up.port, up.epoch) == (scale.url, 1)
        zero = heard.next(Reading, lambda r: r.steady)
        assert (zero.digits, zero.at_zero, zero.fault) == ("0", True, None)
        scale.put_bag(6)
        scale.pour(248, 0.5)
        heard.next(Reading, lambda r: not r.steady and r.spread > 0)
        full = heard.steady("254")
        assert (full.value, full.unit, full.epoch, full.at_zero) == (254, "g", 1, False)
        assert full.raw == frame("254")
        scale.lift()
        assert heard.steady("0").at_zero


def test_commands_are_answered_and_the_repeating_goes_on(scale: BenchScale) -> None:
    with linked(PortSettings(scale.url), GRAMS, rules=QUICK) as (heard, link):
        heard.steady("0")
        link.send(command.about_first())
        link.send(command.about_next())
        assert heard.next(Answer).text == "SMA:2/1.0"
        assert heard.next(Answer).text.startswith("MFG:")
        link.send(b"\nK\r")
        assert heard.next(Answer).kind is AnswerKind.UNKNOWN_COMMAND
        heard.steady("0")
        scale.residue(15)
        heard.steady("15")
        link.send(command.zero())
        assert heard.steady("0").at_zero


# --- bad lines ---------------------------------------------------------------------------------


def test_wrong_baud_is_told_in_words() -> None:
    # each bit arrives twice as long: bits of the frames spread over bytes that mean nothing
    bits = "".join(f"0{byte:08b}1" for byte in frame("254") * 20)
    doubled = "".join(bit * 2 for bit in bits)
    noise = bytes(int(doubled[n : n + 8], 2) | 0x80 for n in range(0, len(doubled) - 8, 10))
    with bare_line() as line, linked(PortSettings(line.name)) as (heard, _):
        heard.up()
        line.write(noise)
        told = heard.degraded()
        assert "none is a frame: check baud rate and parity (here: 9600 8N1)" in told.why
        assert told.bad == told.total >= 3


def test_noise_disturbs_for_a_while_and_every_reading_says_so(scale: BenchScale) -> None:
    with linked(PortSettings(scale.url), GRAMS, rules=QUICK) as (heard, _):
        heard.steady("0")
        scale.noise_burst(600)
        heard.next(Garbage)
        told = heard.degraded()
        assert "damaged" in told.why
        assert 0 < told.bad <= told.total
        marked = heard.next(Reading)
        assert (marked.fault, marked.steady, marked.at_zero) == (told.why, False, False)
        heard.steady("0")


def test_single_damaged_frame_restarts_agreement_only() -> None:
    with bare_line() as line, linked(PortSettings(line.name)) as (heard, _):
        heard.up()
        line.write(frame("254") * 3 + frame("254")[:-3] + frame("254"))
        heard.next(Garbage)
        assert heard.next(Reading).agreeing == 1
        line.write(frame("254"))
        assert heard.next(Reading).steady


def test_seven_bit_line_is_read_with_its_parity_checked() -> None:
    parity = ParityLine("E")
    with (
        bare_line() as line,
        linked(PortSettings(line.name, bytesize=7, parity="E")) as (heard, _),
    ):
        heard.up()
        assert select.select([line.end], [], [], 10)[0]
        assert line.read() == parity.sent(command.repeat())
        line.write(parity.sent(frame("254")) * 2)
        heard.steady("254")
        damaged = bytearray(parity.sent(frame("254")))
        damaged[13] ^= 1
        line.write(bytes(damaged))
        assert "not a number" in heard.next(Garbage).why


def test_seven_bit_line_taken_for_eight_bits_is_named() -> None:
    with bare_line() as line, linked(PortSettings(line.name)) as (heard, _):
        heard.up()
        line.write(ParityLine("E").sent(frame("254")) * 10)
        assert "even parity: set bits 7 and even parity" in heard.degraded().why


def test_frozen_scale_goes_stale_is_told_and_comes_back(scale: BenchScale) -> None:
    with linked(PortSettings(scale.url), GRAMS, rules=QUICK) as (heard, _):
        last = heard.steady("0")
        scale.freeze(True)
        heard.forget()
        told = heard.degraded()
        assert scale.url in told.why
        assert "has sent nothing for 0.15 s" in told.why
        assert is_stale(last, last.seen_at_ns + 501 * MS, GRAMS)
        heard.degraded()  # told again while it lasts
        scale.freeze(False)
        heard.steady("0")


# --- what a frame may say ------------------------------------------------------------------------


def test_other_unit_is_a_fault_in_words(scale: BenchScale) -> None:
    with linked(PortSettings(scale.url), GRAMS) as (heard, _):
        heard.steady("0")
        scale.press_unit("kg")
        other = heard.next(Reading, lambda r: r.unit == "kg")
        assert other.fault == "other unit kg, the line runs in g: set the scale back"
        assert not other.steady
        scale.press_unit("g")
        heard.steady("0")


def test_over_capacity_and_negative(scale: BenchScale) -> None:
    with linked(PortSettings(scale.url), GRAMS) as (heard, _):
        heard.steady("0")
        scale.put_bag(6050)
        over = heard.next(Reading, lambda r: r.over)
        assert over.fault == "over capacity: take the load off the pan"
        scale.lift()
        heard.steady("0")
        scale.residue(40)
        heard.steady("40")
        assert scale.press_zero()
        scale.residue(0)
        under = heard.next(Reading, lambda r: r.under and r.fault and r.digits == "-40")
        assert "set the scale to zero" in under.fault
        assert (under.value, under.steady, under.at_zero) == (-40, False, False)
        assert scale.press_zero()
        assert heard.steady("0").at_zero


# --- other scales, other hosts --------------------------------------------------------------


class AskedScale:
    """A Level 1 scale in memory: refuses to repeat, answers W."""

    name = "asked scale"
    identity = ""

    def __init__(self) -> None:
        self.sent: list[bytes] = []
        self.discarded = 0
        self._waiting = b""

    def read(self) -> bytes:
        time.sleep(0.001)
        chunk, self._waiting = self._waiting, b""
        return chunk

    def write(self, data: bytes) -> None:
        self.sent.append(data)
        self._waiting += frame("254") if data == command.weight() else b"\n?\r"

    def discard_input(self) -> None:
        self.discarded += 1

    def close(self) -> None:
        self._waiting = b""


def test_scale_that_cannot_repeat_is_asked_one_by_one() -> None:
    port = AskedScale()
    with linked(lambda: port, rules=QUICK) as (heard, _):
        assert heard.next(Answer).kind is AnswerKind.UNKNOWN_COMMAND
        assert heard.steady("254").agreeing == 2
    assert port.sent[0] == command.repeat()
    assert set(port.sent[1:]) == {command.weight()}


def test_program_held_for_a_while_forgets_what_arrived_meanwhile() -> None:
    now = [0]
    port = AskedScale()
    with linked(lambda: port, rules=QUICK, clock=lambda: now[0]) as (heard, _):
        now[0] += 1
        heard.next(Answer)
        before = port.discarded
        now[0] += 30_000 * MS  # as if the computer had slept
        for _ in range(50):  # readings asked for before the sleep may still be on their way
            heard.next(Reading)
            if port.discarded > before:
                break
        assert port.discarded == before + 1


def test_port_lost_on_write_is_opened_again() -> None:
    class Broken(AskedScale):
        def write(self, data: bytes) -> None:
            raise PortError("scale lost on broken", "the plug")

    ports = [Broken(), AskedScale()]
    with linked(lambda: ports.pop(0) if len(ports) > 1 else ports[0]) as (heard, _):
        assert heard.down().why == "scale lost on broken: the plug"
        assert heard.up().epoch == 2
        heard.next(Reading)


@pytest.mark.expects_log("the link to the scale failed")
def test_own_fault_is_told_and_does_not_end_the_link() -> None:
    class Wrong(AskedScale):
        def read(self) -> bytes:
            raise AttributeError("a bug of the port")

    ports = [Wrong(), AskedScale()]
    with linked(lambda: ports.pop(0) if len(ports) > 1 else ports[0], rules=QUICK) as (heard, _):
        assert "a bug of the port" in heard.down().why
        heard.steady("254")


@pytest.mark.expects_log("the listener failed on LinkUp")
def test_listener_that_fails_does_not_end_the_link() -> None:
    class Failing(Listener):
        def __call__(self, item: object) -> None:
            super().__call__(item)
            if isinstance(item, LinkUp):
                raise RuntimeError("a bug of the listener")

    with linked(AskedScale, listener=Failing(), rules=QUICK) as (heard, _):
        heard.steady("254")


@pytest.mark.filterwarnings("ignore:set(Daemon|Name).*deprecated:DeprecationWarning")
def test_serial_port_behind_rfc2217(tty_scale: BenchScale) -> None:
    """Against pyserial's own RFC 2217 server, which opens the bench scale's line."""
    with (
        rfc2217_server(tty_scale.url) as (url, _),
        linked(PortSettings(url), GRAMS) as (heard, _),
    ):
        assert heard.up().port == url
        heard.steady("0")
        tty_scale.put_bag(6)
        heard.steady("6")


@pytest.mark.filterwarnings("ignore:set(Daemon|Name).*deprecated:DeprecationWarning")
def test_server_of_rfc2217_that_goes_away(tty_scale: BenchScale) -> None:
    with (
        rfc2217_server(tty_scale.url) as (url, leave),
        linked(PortSettings(url), GRAMS) as (heard, _),
    ):
        heard.steady("0")
        leave.set()
        assert url in heard.down().why


def test_down_is_told_for_each_try() -> None:
    with linked(PortSettings("/dev/ttyNONE")) as (heard, _):
        waits = [heard.down().retry_in_s for _ in range(4)]
    assert waits == sorted(waits) or max(waits) <= 0.1
    assert all(isinstance(item, LinkDown) for item in heard.items)


def test_a_quick_line_is_read_in_gulps_and_every_weight_comes() -> None:
    log = WireLog()
    with bare_line() as line, linked(PortSettings(line.name), log=log) as (heard, _):
        heard.up()
        for n in range(100):
            line.write(frame(str(n)))
            time.sleep(0.001)
        digits = [heard.next(Reading).digits for _ in range(100)]
    assert digits == [str(n) for n in range(100)]
    gulps = [passed.at_ns for passed in log.newest() if not passed.sent]
    took_ms = (gulps[-1] - gulps[0]) / 1_000_000
    assert len(gulps) <= took_ms / 2 + 3  # of two waits in a row one is of 4 ms or more
