"""The bench scale as a person and as a program on its line meet it."""

import threading
import time
from collections.abc import Callable, Iterator
from decimal import Decimal
from pathlib import Path

import pytest

from drivers.bench import BenchScale
from drivers.errors import BenchError
from drivers.frames import scp0499_commands as commands
from drivers.frames.base import AnswerKind, Condition, Item, Kind
from drivers.frames.scp0499 import Scp0499Parser
from drivers.port import PortSettings, open_port
from drivers.steady import Reading, SteadyRules
from tests.drivers.listening import linked


def until(true: Callable[[], bool], limit_s: float = 60.0) -> None:
    deadline = time.monotonic() + limit_s
    while not true():
        assert time.monotonic() < deadline, "did not happen in time"
        time.sleep(0.002)


@pytest.fixture
def scale() -> Iterator[BenchScale]:
    bench = BenchScale(speed=20, frames_per_s=200)
    bench.start()
    yield bench
    bench.stop()


def shows(scale: BenchScale, digits: str) -> bool:
    return scale.display.digits == digits and not scale.display.motion


def test_hands_and_display(scale: BenchScale) -> None:
    scale.put_bag(6)
    assert scale.has_bag
    scale.pour(240, 0.5)
    scale.pour(12, 0.5)
    until(lambda: shows(scale, "258"))
    assert scale.take_out(4) == 4
    until(lambda: shows(scale, "254"))
    assert scale.content_grams == pytest.approx(248)
    assert scale.load_grams == pytest.approx(254)
    assert scale.lift() == pytest.approx(254)
    assert not scale.has_bag
    until(lambda: scale.display.condition is Condition.CENTRE_OF_ZERO)
    assert scale.lift() == 0


def test_taking_out_more_than_there_is(scale: BenchScale) -> None:
    scale.put_bag(6)
    scale.pour(10)
    until(lambda: scale.content_grams == pytest.approx(10))
    assert scale.take_out(50) == pytest.approx(10)
    assert scale.load_grams == pytest.approx(6)


def test_residue_drift_unit_and_zero(scale: BenchScale) -> None:
    scale.residue(8)
    until(lambda: shows(scale, "8"))
    assert scale.press_zero()
    until(lambda: shows(scale, "0"))
    scale.residue(0)
    until(lambda: shows(scale, "-8"))
    scale.press_unit("kg")
    until(lambda: shows(scale, "-0.008"))
    scale.press_unit("g")
    assert scale.press_zero()
    scale.put_bag(300)
    until(lambda: shows(scale, "300"))
    assert not scale.press_zero(), "beyond 2 % of capacity"
    scale.drift(600)
    until(lambda: int(scale.display.digits or 0) > 305)


def test_power_cut_with_a_heavy_load(scale: BenchScale) -> None:
    scale.put_bag(700)
    until(lambda: shows(scale, "700"))
    scale.power_cycle()
    assert scale.display.condition is Condition.INITIAL_ZERO_ERROR


@pytest.mark.parametrize(
    "act",
    [
        lambda scale: scale.put_bag(0),
        lambda scale: scale.pour(-1, 1),
        lambda scale: scale.pour(1, -1),
        lambda scale: scale.take_out(0),
        lambda scale: scale.residue(-1),
        lambda scale: scale.noise_burst(0),
        lambda scale: scale.press_unit("st"),
        lambda scale: (scale.put_bag(6), scale.put_bag(6)),
        lambda scale: scale.put_bag(float("nan")),
        lambda scale: scale.put_bag(float("inf")),
        lambda scale: scale.pour(5, float("inf")),
        lambda scale: scale.residue(float("inf")),
        lambda scale: scale.drift(float("nan")),
    ],
)
def test_what_cannot_happen_is_refused(act: Callable[[BenchScale], object]) -> None:
    with pytest.raises(BenchError):
        act(BenchScale())


@pytest.mark.parametrize(
    ("options", "words"),
    [
        ({"capacity": "6 kg"}, "capacity '6 kg'"),
        ({"frames_per_s": 0}, "1 to 1000"),
        ({"speed": 0}, "speed"),
        ({"speed": float("inf")}, "speed"),
        ({"capacity": "600000000", "interval": "1000"}, "do not fit the 10 characters"),
        ({"transport": "usb"}, "allowed here are"),
        ({"unit": "st"}, "allowed are g, kg"),
    ],
)
def test_options_refused(options: dict, words: str) -> None:
    with pytest.raises(BenchError, match=words):
        BenchScale(**options)


class Host:
    """A program at the other end of the bench scale's line."""

    def __init__(self, url: str) -> None:
        self.port = open_port(PortSettings(url))
        self.parser = Scp0499Parser()

    def hear(self, count: int) -> list[Item]:
        items: list[Item] = []
        deadline = time.monotonic() + 60
        while len(items) < count:
            assert time.monotonic() < deadline, f"only {items}"
            items += self.parser.feed(self.port.read())
        return items

    def ask(self, command: bytes) -> Item:
        self.port.write(command)
        (item,) = self.hear(1)
        return item


@pytest.fixture(params=["pty", "tcp"])
def host(request: pytest.FixtureRequest) -> Iterator[tuple[BenchScale, Host]]:
    bench = BenchScale(speed=20, frames_per_s=200, transport=request.param)
    other = Host(bench.start())
    yield bench, other
    other.port.close()
    bench.stop()


def test_every_command_is_answered_over_the_line(host: tuple[BenchScale, Host]) -> None:
    """SMA SCP-0499 (1st ed., 1999), clause 4: the commands of Levels 1 and 2."""
    scale, line = host
    scale.put_bag(254)
    until(lambda: shows(scale, "254"))
    weights = [
        (commands.weight(), ("254", "g", Kind.GROSS)),
        (commands.preset_tare("6"), ("248", "g", Kind.NET)),
        (commands.report_tare(), ("6", "g", Kind.TARE)),
        (commands.weight(), ("248", "g", Kind.NET)),
        (commands.clear_tare(), ("254", "g", Kind.GROSS)),
        (commands.tare(), ("0", "g", Kind.NET)),
        (commands.clear_tare(), ("254", "g", Kind.GROSS)),
        (commands.select_unit("kg"), ("0.254", "kg", Kind.GROSS)),
        (commands.select_unit("st"), ("0.254", "kg", Kind.GROSS)),
        (commands.select_unit("g"), ("254", "g", Kind.GROSS)),
    ]
    for sent, shown in weights:
        item = line.ask(sent)
        assert (item.digits, item.unit, item.kind) == shown, sent
    texts = [
        (commands.about_first(), "SMA:"),
        (commands.about_next(), "MFG:"),
        (commands.information_first(), "SMA:"),
        (commands.information_next(), "TYP:S"),
        (commands.diagnostics(), "no fault"),
    ]
    for sent, start in texts:
        assert line.ask(sent).text.startswith(start)
    assert line.ask(commands.next_unit()).unit == "kg"
    assert line.ask(b"\nK\r").kind is AnswerKind.UNKNOWN_COMMAND
    refused = line.ask(commands.zero())  # beyond 2 % of capacity
    assert (refused.condition, refused.digits) == (Condition.ZERO_ERROR, None)
    assert line.ask(commands.high_resolution()).high_resolution


def test_repeats_until_escape(host: tuple[BenchScale, Host]) -> None:
    _, line = host
    line.port.write(commands.repeat())
    heard = line.hear(20)
    assert {item.digits for item in heard} == {"0"}
    line.port.write(commands.abort())
    until(lambda: line.port.read() == b"")  # ten times longer than between two frames
    assert line.ask(commands.weight()).digits is not None


def test_zero_is_refused_in_motion_and_done_at_rest(host: tuple[BenchScale, Host]) -> None:
    scale, line = host
    scale.put_bag(20)
    until(lambda: shows(scale, "20"))
    scale.speed = 1.0
    scale.pour(80, 20)  # 1 g within the rest time of a quarter second: twice the rest band
    until(lambda: scale.display.motion)
    assert line.ask(commands.weight()).motion
    assert line.ask(commands.zero()).condition is Condition.ZERO_ERROR
    assert not scale.press_zero()
    scale.speed = 40.0
    until(lambda: shows(scale, "100"))
    assert line.ask(commands.zero()).condition is Condition.CENTRE_OF_ZERO
    assert line.ask(commands.weight()).digits == "0"


def test_power_cut_over_the_line(host: tuple[BenchScale, Host]) -> None:
    scale, line = host
    scale.put_bag(254)
    until(lambda: shows(scale, "254"))
    line.ask(commands.preset_tare("6"))
    line.port.write(commands.repeat())
    line.hear(3)
    scale.power_cycle()
    until(lambda: line.port.read() == b"")
    line.parser = Scp0499Parser()
    weight = line.ask(commands.weight())
    assert (weight.digits, weight.kind) == ("0", Kind.GROSS), "zero is what lies on the pan"


def test_load_beyond_all_reason_is_over_capacity(host: tuple[BenchScale, Host]) -> None:
    scale, line = host
    scale.put_bag(1e12)
    until(lambda: line.ask(commands.weight()).condition is Condition.OVER_CAPACITY)
    scale.drift(-1e15)
    scale.lift()
    until(lambda: line.ask(commands.weight()).condition is Condition.UNDER_CAPACITY)


def test_faster_from_now_on_does_not_jump_or_halt(scale: BenchScale) -> None:
    scale.drift(60)
    until(lambda: int(scale.display.digits or 0) >= 3)
    shown = int(scale.display.digits or 0)
    scale.speed = 1.0
    assert int(scale.display.digits or 0) <= shown + 2
    scale.speed = 60.0
    until(lambda: int(scale.display.digits or 0) > shown + 10)


def test_plug_of_a_scale_that_does_not_run() -> None:
    idle = BenchScale()
    with pytest.raises(BenchError, match="start it first"):
        idle.unplug()
    idle.stop()


@pytest.mark.parametrize("transport", ["pty", "tcp"])
def test_plug_keeps_its_name_and_nothing_is_left_behind(transport: str) -> None:
    scale = BenchScale(transport=transport)
    url = scale.start()
    try:
        open_port(PortSettings(url)).close()
        for _ in range(3):
            scale.unplug()
            assert not scale.is_plugged
            scale.plug_in()
            assert scale.is_plugged
            assert scale.url == url
        open_port(PortSettings(url)).close()
    finally:
        scale.stop()
    assert not Path(url).parent.exists() or transport == "tcp"


def test_scale_that_was_never_started_leaves_nothing() -> None:
    scale = BenchScale()
    folder = Path(scale.url).parent
    scale.stop()
    assert not folder.exists()


def test_tcp_serves_one_at_a_time() -> None:
    scale = BenchScale(transport="tcp", frames_per_s=100)
    try:
        with linked(PortSettings(scale.start())) as (first, _):
            first.next(Reading)
            with linked(PortSettings(scale.url)) as (second, _):
                second.down()
            first.forget()
            first.next(Reading)
    finally:
        scale.stop()


def test_hands_of_many_threads(scale: BenchScale) -> None:
    rules = SteadyRules(interval=Decimal(1), unit="g")
    with linked(PortSettings(scale.url), rules) as (heard, _):
        scale.put_bag(6)

        def drop() -> None:
            for _ in range(20):
                scale.pour(1, 0.01)

        hands = [threading.Thread(target=drop) for _ in range(4)]
        for hand in hands:
            hand.start()
        for hand in hands:
            hand.join()
        heard.steady("86")
    assert scale.content_grams == pytest.approx(80)
