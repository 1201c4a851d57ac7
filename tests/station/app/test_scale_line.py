"""The scale of the settings: parser, questions and rules; each kind of scale packs its bag."""

import time
from dataclasses import replace
from decimal import Decimal
from pathlib import Path

import pytest

import drivers.frames
from drivers.frames.checksum import KINDS
from drivers.frames.description_file import load_description
from drivers.frames.hid_scale import HidScaleParser
from drivers.frames.scp0499 import Scp0499Parser
from drivers.frames.scp0499_facts import ScaleFacts
from drivers.frames.scp0499_outcome import unanswered
from drivers.port import PortSettings
from drivers.recording import Recorder, read_recording
from drivers.wire import WireLog
from station.app.line_event import line_event
from station.app.scale_line import bench_house, link_rules, new_parser, scale_link, steady_rules
from station.config.load import load
from station.config.packhouse import ScaleSettings
from tests.drivers.chain import Chain, Tape
from tests.drivers.listening import Listener, bare_line
from tests.station.config.conftest import DEMO, TODAY

FOLDER = Path(drivers.frames.__path__[0]) / "descriptions"
HOUSE = load(DEMO, TODAY)
CLOCK = time.monotonic_ns
PLAIN = HOUSE.settings.scale
HERON = replace(PLAIN, protocol="described", description=load_description(FOLDER / "heron.toml"))
LANTERN = replace(HERON, description=load_description(FOLDER / "lantern.toml"))
HID = replace(PLAIN, protocol="hid")


def heron(tenths: int) -> bytes:
    body = f"A+{tenths:06d};".encode()
    return b"<" + body + f"{KINDS['xor'].of(body):02X}>".encode()


@pytest.mark.parametrize(
    ("scale", "parser", "asks", "discovers"),
    [
        (PLAIN, Scp0499Parser, b"\nR\r", True),
        (HID, HidScaleParser, b"", False),
        (LANTERN, None, b"", False),
        (HERON, None, b"?w;", False),
    ],
)
def test_each_protocol_is_asked_and_read_its_own_way(
    scale: ScaleSettings, parser: type | None, asks: bytes, discovers: bool
) -> None:
    rules = link_rules(scale)
    assert (rules.ask.repeat, rules.discover) == (asks, discovers)
    made = new_parser(scale)()
    assert parser is None or isinstance(made, parser)


def test_rules_of_a_reading_come_from_the_settings() -> None:
    rules = steady_rules(PLAIN, 500, 40.0)
    assert (rules.unit, rules.interval, rules.capacity) == ("g", Decimal(1), Decimal(3000))
    assert (rules.agree_frames, rules.zero_band) == (2, Decimal("0.5"))
    assert rules.stale_after_ns == 500_000_000
    assert rules.spread_window_ns == 12_500_000


def test_bench_stands_for_any_scale() -> None:
    house = replace(HOUSE, settings=replace(HOUSE.settings, scale=HERON))
    scale = bench_house(house).settings.scale
    assert (scale.protocol, scale.description, scale.unit) == ("scp0499", None, PLAIN.unit)


@pytest.mark.parametrize(
    ("scale", "zero", "bag"),
    [
        (HERON, heron(0), heron(2580)),
        (LANTERN, b"z=       0 g \r\n", b"q=     258 g \r\n"),
        (HID, b"\x06\x03\x02\x02\0\0\0", b"\x06\x03\x04\x02\0\x02\x01"),
    ],
    ids=["heron", "lantern", "hid"],
)
def test_scale_of_each_protocol_packs_a_bag(scale: ScaleSettings, zero: bytes, bag: bytes) -> None:
    tape = Tape()
    for line, count in ((zero, 6), (bag, 14), (zero, 6)):
        for _ in range(count):
            tape.send(line)
    chain = Chain(new_parser(scale), steady_rules(scale, 500, 1.0), link_rules(scale))
    assert [Decimal(digits) for digits in chain.play(tape)] == [258]


def test_polled_scale_is_asked_for_each_line_on_a_real_tty(tmp_path: Path) -> None:
    record = tmp_path / "scale.rec"
    heard = Listener()
    rules = steady_rules(HERON, 500, 1.0)
    with bare_line() as line:
        log = WireLog(CLOCK)
        log.record(record)
        link = scale_link(HERON, PortSettings(line.name), rules, heard, CLOCK, log)
        link.start()
        try:
            heard.up()
            for _ in range(3):
                assert line.read().startswith(b"?w;")
                line.write(heron(2580))
            assert heard.steady("258.0").unit == "g"
        finally:
            link.stop()
            log.end_recording()
    recorded = b"".join(chunk.data for chunk in read_recording(record))
    assert recorded.startswith(heron(2580) * 2)


def test_recording_packs_its_bag_again(tmp_path: Path) -> None:
    now = [0]
    recorder = Recorder(tmp_path / "bag.rec", lambda: now[0])
    for line, count in ((heron(0), 6), (heron(2580), 14), (heron(0), 6)):
        for _ in range(count):
            now[0] += 50_000_000
            recorder.add(line)
    recorder.close()
    tape = Tape()
    for chunk in read_recording(tmp_path / "bag.rec"):
        tape.connections[0].append((chunk.at_us // 1000, chunk.data))
    chain = Chain(new_parser(HERON), steady_rules(HERON, 500, 1.0), link_rules(HERON))
    assert chain.play(tape) == ["258.0"]


def test_facts_and_outcomes_mean_nothing_to_the_line() -> None:
    assert line_event(ScaleFacts()) is None
    assert line_event(unanswered(b"\nZ\r", "zero")) is None
