"""The desks behind the service page, on a real line and a real record."""

import shutil
import time
from dataclasses import replace
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest

from drivers.bench import BenchScale
from drivers.errors import DescriptionError, RecordingError
from drivers.frames.base import Condition, Kind, WeightFrame
from drivers.frames.description_file import load_description
from drivers.link_items import LinkDegraded, LinkDown, LinkUp
from drivers.port import PortSettings
from drivers.recording import Recorder, read_recording
from drivers.steady import SteadyReader, SteadyRules
from station.app.assembly import Audience, Station
from station.app.learn_desk import LearnDesk
from station.app.places import demo_settings
from station.app.practice import practice_station, run_choice
from station.app.scale_line import bench_house
from station.app.service_system import system_rows
from station.app.swap_desk import SwapDesk
from station.app.watch import Watch
from station.clock import SystemClock
from station.config.load import load, load_settings
from station.core.journal import EntryKind
from station.core.metrology.clause import RuleRefused
from station.core.metrology.scale_suitability import Level
from station.core.scale_swap import TAKEN, ScaleIdentity
from station.errors import BadInput
from station.line.opening import calendar_day
from station.line.state import Phase, Verb
from station.line.swap_duty import SwapDuty
from station.screens.service_source import ScaleCommand
from station.store.engine_facts import reset_bug_words
from station.store.facts import facts
from tests.drivers.chain import uart
from tests.drivers.listening import bare_line, frame
from tests.end_to_end.line import PATIENCE_S, SPEED, bench_line

EVEN, ODD = (
    bytes(n & 0x7F | ((n & 0x7F).bit_count() % 2 ^ odd) << 7 for n in range(256)) for odd in (0, 1)
)
SHIPPED = Path(__file__).parents[3] / "drivers" / "frames" / "descriptions"


def until(holds) -> None:
    ends = time.monotonic() + PATIENCE_S
    while not holds():
        assert time.monotonic() < ends
        time.sleep(0.01)


@pytest.fixture
def line(tmp_path):
    with bench_line(tmp_path) as line:
        yield line


def command(desk, name: str) -> ScaleCommand:
    return next(one for one in desk.commands() if one.name == name)


def test_scale_is_known_commanded_and_recorded(line):
    desk = line.station.service.desk
    until(lambda: len(desk.commands()) == 5)
    about = dict(desk.about_scale())
    assert about["Maker and model"] == "simulated bench scale"
    state = line.until(lambda state: state.shown is not None and state.shown.steady)
    now = desk.wire()
    assert (now.link.good, now.link.words) == (True, "weights arrive and are used")
    assert now.count.frames > 0
    assert now.rows[-1].what.startswith("0 g, gross")
    place = desk.record()
    assert desk.give(command(desk, "ZERO"), state) == ""
    until(lambda: desk.outcome[0] == 1)
    assert desk.outcome[1:] == (True, "zero: 0 g gross")
    assert desk.end_recording() == place
    assert read_recording(Path(place))


def test_commands_wait_where_they_would_harm(line):
    desk = line.station.service.desk
    until(lambda: len(desk.commands()) == 5)
    assert "not open" in desk.give(command(desk, "ZERO"), None)
    line.open_run()
    state = line.until(lambda state: state.phase is Phase.READY)
    assert "end the run" in desk.give(command(desk, "TARE"), state)
    line.bench.put_bag(60)
    state = line.until(lambda state: state.phase is Phase.LOADED)
    assert desk.give(command(desk, "ZERO"), state) == "ZERO waits: a bag is on the pan"
    moving = replace(state, run=None, shown=replace(state.shown, steady=False))
    assert "never set to zero in motion" in desk.give(command(desk, "ZERO"), moving)
    assert desk.give(command(desk, "DIAGNOSE"), replace(state, run=None)) == ""
    until(lambda: desk.outcome[0] == 1)
    assert desk.outcome[2] == "diagnosis: no fault"


@pytest.mark.parametrize(
    ("condition", "digits", "words"),
    [
        (Condition.UNDER_CAPACITY, "-20", "set the scale to zero"),
        (Condition.ZERO_ERROR, None, "set it to zero"),
    ],
)
def test_zero_is_given_where_the_station_asks_for_it(line, condition, digits, words):
    """The weights of such a scale are not used, so the line never shows a steady one."""
    desk = line.station.service.desk
    until(lambda: len(desk.commands()) == 5)
    state = line.until(lambda state: state.shown is not None)
    line.station.link.stop()
    state = replace(state, verb=Verb.NO_READING, shown=replace(state.shown, steady=False))
    told = WeightFrame(digits, "g", Kind.GROSS, False, False, condition, 1)
    reader = SteadyReader(SteadyRules())
    for frame_, refused in ((told, False), (told._replace(motion=True), True), (told, False)):
        reading = reader.feed(frame_, 0, 1)
        assert words in str(reading.fault) or frame_.motion
        desk.hear(reading)
        assert bool(desk.give(command(desk, "ZERO"), state)) is refused
    desk.hear(LinkDegraded(0, 0, "silent"))
    assert "never set to zero in motion" in desk.give(command(desk, "ZERO"), state)


def test_refusal_of_the_scale_is_told(line):
    desk = line.station.service.desk
    until(lambda: len(desk.commands()) == 5)
    line.bench.put_bag(2000)
    state = line.until(
        lambda s: s.shown is not None and s.shown.digits == "2000" and s.shown.steady
    )
    assert desk.give(command(desk, "ZERO"), state) == ""
    until(lambda: desk.outcome[0] == 1)
    assert not desk.outcome[1]
    assert "refused to set zero" in desk.outcome[2]


def test_link_is_told_in_words(line):
    desk = line.station.service.desk
    line.station.link.stop()
    desk.hear(LinkUp("/dev/ttyUSB0", 1, "12ab:0034/A1"))
    assert desk.wire().link.words == "the port is open, no weight was read yet"
    desk.hear(LinkDegraded(9, 9, "bytes arrive but none is a frame: check baud rate"))
    assert desk.wire().link.words.endswith("check baud rate")
    assert desk.wire().link.identity == "12ab:0034/A1"
    desk.hear(LinkDown("/dev/ttyUSB0", "the device is gone", 0.2))
    assert desk.wire().link.words == "the device is gone"
    assert desk.wire().link.good is False


def test_recording_that_cannot_be_made_is_refused(line):
    desk = line.station.service.desk
    desk.folder.write_text("a file in its place")
    with pytest.raises(RecordingError, match="recordings"):
        desk.record()


def test_system_tells_versions_disk_and_parts(line):
    rows = dict(line.station.service.desk.system())
    assert "not reviewed: es " in rows["Languages"]
    assert "Python 3." in rows["Station"]
    assert rows["SQLite"].endswith(reset_bug_words())
    assert "GB free" in rows["Disk"]
    assert rows["Printer"].endswith(": ready")
    assert rows["Scanner"] == rows["Centre"] == "none in the settings"
    assert "none yet" in dict(system_rows(Path("/nowhere/at/all"), "1", ""))["Record"]


# --- lessons ------------------------------------------------------------------------------------


def lesson(tmp_path: Path, settings: Path | None) -> LearnDesk:
    scale = load_settings(demo_settings()).scale
    return LearnDesk(scale, settings, tmp_path, None, None)  # type: ignore[arg-type]


def test_description_is_kept_and_used_by_the_settings(tmp_path):
    config = tmp_path / "settings"
    shutil.copytree(demo_settings(), config)
    desk = lesson(tmp_path, config)
    heron = replace(load_description(SHIPPED / "heron.toml"), name="Our Scale, bay 3")
    assert "scale-our-scale-bay-3.toml" in desk.save(heron)
    assert load_settings(config).scale.description == heron
    before = (config / "station.toml.before").read_text()
    assert before == (demo_settings() / "station.toml").read_text()


@pytest.mark.parametrize("name", ["Station", "products", "People", "customers", "Scale", "秤", ""])
def test_no_name_of_a_format_touches_another_settings_file(tmp_path, name):
    config = tmp_path / "settings"
    shutil.copytree(demo_settings(), config)
    before = {file.name: file.read_bytes() for file in config.iterdir() if file.is_file()}
    heron = replace(load_description(SHIPPED / "heron.toml"), name=name or "-")
    lesson(tmp_path, config).save(heron)
    assert load_settings(config).scale.description == heron
    changed = {name for name, raw in before.items() if (config / name).read_bytes() != raw}
    assert changed <= {"station.toml"}
    added = {file.name for file in config.iterdir() if file.is_file()} - before.keys()
    assert all(one.startswith("scale") for one in added - {"station.toml.before"})


def test_description_kept_under_a_name_again_leaves_the_one_before_beside_it(tmp_path):
    config = tmp_path / "settings"
    shutil.copytree(demo_settings(), config)
    heron = replace(load_description(SHIPPED / "heron.toml"), name="Scale")
    desk = lesson(tmp_path, config)
    desk.save(heron)
    desk.save(replace(heron, low=Decimal(-1000)))
    assert load_description(config / "scale.toml.before") == heron


def test_description_that_does_not_fit_is_not_kept(tmp_path):
    heron = load_description(SHIPPED / "heron.toml")
    with pytest.raises(BadInput, match="demo's settings stay"):
        lesson(tmp_path, None).save(heron)
    tern = load_description(SHIPPED / "tern.toml")
    kilograms = replace(
        tern, units={"kg": "kg"}, examples=tuple(one for one in tern.examples if one.unit == "kg")
    )
    with pytest.raises(BadInput, match="the settings are in g"):
        lesson(tmp_path, tmp_path).save(kilograms)
    broken = replace(heron, examples=(replace(heron.examples[0], value="1.0"),))
    with pytest.raises(BadInput, match="example 1"):
        lesson(tmp_path, tmp_path).save(broken)
    with pytest.raises(DescriptionError):
        load_description(tmp_path / "scale-heron-line-invented.toml")


# --- swaps --------------------------------------------------------------------------------------


def test_another_scale_packs_only_after_it_was_taken_into_use(tmp_path):
    """Serial numbers of two bench scales differ; the second starts where the first was in use."""
    home = tmp_path / "home"
    with bench_line(home) as line:
        until(lambda: getattr(line.station.swap_duty.here, "serial", "") == "1")
        take_into_use(line.station, line.watch, line.bench, "1")
        house = line.house
    other = BenchScale(capacity="3000", interval="1", unit="g", speed=SPEED, serial="2")
    other.start()
    watch = Watch()
    audience = Audience(watch.state, watch.answer, entered=watch.entered)
    station = practice_station(house, home, home / "labels", other, audience)
    station.start()
    try:
        day = calendar_day(station.clock.now())
        product = house.products["ROCKET-SPINACH-200"]
        station.line.start_run(run_choice(house, product, day, None))
        assert watch.next_answer(PATIENCE_S).started
        state = watch.until(lambda state: state.closed and state.verb is Verb.CALL_LEAD, PATIENCE_S)
        assert "another scale is here, simulated bench scale serial 2" in state.closed[0]
        take_into_use(station, watch, other, "2")
        watch.until(lambda state: not state.closed, PATIENCE_S)
        assert "plate 2" in station.service.swap.in_use
    finally:
        station.stop()
        other.stop()
    kept = [one for one in facts(home, (EntryKind.SETTING,)) if one.fact.result == TAKEN]
    assert [one.fact.details["plate_serial"] for one in kept] == ["1", "2"]


def test_check_of_one_scale_takes_no_other_into_use():
    house, duty = load(demo_settings(), date(2026, 11, 25)), SwapDuty()
    desk = SwapDesk(house, SystemClock("Europe/Dublin"), duty, None, 1)  # type: ignore[arg-type]
    duty.found(ScaleIdentity("Wharfe", "W3", "1", "1001", "12ab:0034/A1"))
    guided = desk.guided()
    duty.found(ScaleIdentity("Wharfe", "W3", "1", "1002", "12ab:0034/A1"))
    with pytest.raises(ValueError, match=r"checked was Wharfe W3 serial 1001.*CHECK IT again"):
        desk.swap(guided, "1002", "2026-03-31")
    desk.guided()
    with pytest.raises(RuleRefused, match="at least one load"):
        desk.swap(guided, "1002", "2026-03-31")


def take_into_use(station, watch, bench, serial: str) -> None:
    swap = station.service.swap
    guided = swap.guided()
    for number, planned in enumerate(guided.planned, start=1):
        if planned.mass.amount:
            bench.put_bag(float(planned.mass.amount))
        watch.until(
            lambda state, n=number: len(guided.readings) >= n or guided.see(state), PATIENCE_S
        )
        bench.lift()
    assert all(level is not Level.REFUSE for level, _ in swap.fitness().values())
    made = swap.swap(guided, serial, swap.today.isoformat())
    assert made.refusal == ""
    fact = swap.fact(made)
    station.line.enter((fact,), "M01")
    assert watch.next_entry(PATIENCE_S).recorded


def test_scale_is_looked_at_again_where_nothing_was_unplugged(line):
    duty = line.station.swap_duty
    until(lambda: duty.here is not None and duty.here.serial == "1")
    duty.here = None
    line.station.service.swap.look()
    until(lambda: duty.here is not None and duty.here.serial == "1")


def test_lesson_hears_the_newest_part_of_a_long_recording(tmp_path):
    recorder = Recorder(tmp_path / "long.rec", clock=iter(range(0, 10**12, 10**7)).__next__)
    for n in range(3_000):
        recorder.add(b"%d" % (n % 10) * 1_000)
    recorder.close()
    heard = lesson(tmp_path, None).play(tmp_path / "long.rec")
    assert len(heard) == 300
    assert heard[-1].data == b"9" * 1_000


# --- a recording in place of the scale ------------------------------------------------------------


def test_bags_of_a_recording_are_no_bags(tmp_path):
    """They were weighed once; played again each would get a serial and a label."""
    with bench_line(tmp_path) as line:
        house = line.house
    recorder = Recorder(tmp_path / "day.rec", clock=iter(range(0, 10**12, 50 * 10**6)).__next__)
    for digits in ["0"] * 20 + ["206"] * 60:
        recorder.add(frame(digits))
    recorder.close()
    watch = Watch()
    audience = Audience(watch.state, watch.answer, entered=watch.entered)
    port = PortSettings(f"replay://{tmp_path / 'day.rec'}?speed=4")
    station = Station(bench_house(house), tmp_path, port, tmp_path / "labels", audience)
    station.start()
    try:
        day = calendar_day(station.clock.now())
        product = house.products["ROCKET-SPINACH-200"]
        station.line.start_run(run_choice(house, product, day, None))
        assert watch.next_answer(PATIENCE_S).started
        state = watch.until(
            lambda state: state.shown is not None and state.shown.digits == "206", PATIENCE_S
        )
        assert "the scale is a recording: no bag is taken from it" in state.closed
        assert state.verb in (Verb.CALL_LEAD, Verb.NO_READING)
    finally:
        station.stop()


# --- a line with the wrong settings ---------------------------------------------------------------


@pytest.mark.parametrize(
    ("spoil", "words"),
    [
        (lambda data: uart(data, 2.0), "check baud rate and parity"),
        (lambda data: uart(data, 0.5), "check baud rate and parity"),
        (lambda data: data.translate(EVEN), "7 data bits with even parity"),
        (lambda data: data.translate(ODD), "7 data bits with odd parity"),
    ],
    ids=["half as fast", "twice as fast", "7E1", "7O1"],
)
def test_wrong_settings_of_the_line_are_said_within_ten_seconds(tmp_path, spoil, words):
    with bench_line(tmp_path / "bench") as line:
        house = line.house
    sent = spoil(frame("254") * 4)
    with bare_line() as wire:
        port = PortSettings(wire.name)
        station = Station(bench_house(house), tmp_path / "home", port, tmp_path / "labels")
        station.start()
        try:
            ends = time.monotonic() + PATIENCE_S
            while words not in station.service.desk.wire().link.words:
                assert time.monotonic() < ends, station.service.desk.wire().link.words
                wire.write(sent)
                time.sleep(0.1)
        finally:
            station.stop()
