"""The bench scale as a person and as a program on its line meet it."""

import threading
import time
from collections.abc import Callable, Iterator
from decimal import Decimal
from pathlib import Path

import pytest

from drivers.bench import BenchScale
from drivers.errors import BenchError
from drivers.frames.base import Condition
from drivers.port import PortSettings, open_port
from drivers.steady import Reading, SteadyRules
from tests.drivers.listening import linked


def until(true: Callable[[], bool], limit_s: float = 5.0) -> None:
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
        ({"transport": "usb"}, "allowed here are"),
        ({"unit": "st"}, "allowed are g, kg"),
    ],
)
def test_options_refused(options: dict, words: str) -> None:
    with pytest.raises(BenchError, match=words):
        BenchScale(**options)


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
