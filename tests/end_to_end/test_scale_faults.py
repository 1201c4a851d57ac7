"""Faults of the scale itself while a whole station packs: no wrong record, and the line goes on."""

from drivers.bench import BenchScale
from drivers.zero_gate import PRESS_PAN, ZERO_IT
from station.app.assembly import Audience
from station.app.practice import practice_station, run_choice
from station.app.watch import Watch
from station.line.opening import calendar_day
from station.line.state import Phase, Verb
from tests.end_to_end.line import PATIENCE_S, SPEED, bench_line
from tests.end_to_end.test_faults import Witness


def test_scale_that_was_off_with_a_bag_on_it_never_gives_a_wrong_record(tmp_path):
    """It takes the bag for zero; what is poured after that would be all that is weighed."""
    witness = Witness()
    with bench_line(tmp_path, witness) as line:
        witness.line = line
        product = line.open_run()
        line.until(lambda state: state.phase is Phase.READY)
        line.bench.put_bag(6)
        line.bench.pour(100)
        line.until(lambda state: state.phase is Phase.LOADED and state.shown.digits == "106")
        line.bench.freeze(True)
        line.bench.power_cycle()
        line.until(lambda state: state.verb is Verb.NO_READING)
        line.bench.freeze(False)
        line.until(lambda state: state.because == PRESS_PAN)
        line.bench.pour(float(product.target.grams) + 6)
        line.until(lambda state: state.shown.digits == str(int(product.target.grams) + 6))
        assert line.watch.newest.tally.good == 0
        line.bench.lift()
        line.until(lambda state: state.because == ZERO_IT)
        with line.packer(product):
            line.until(lambda state: state.tally.good >= 2)
    assert witness.wrong == []


def test_bag_lifted_while_the_scale_was_silent_costs_a_hand_on_the_pan(tmp_path):
    with bench_line(tmp_path) as line:
        product = line.open_run()
        line.until(lambda state: state.phase is Phase.READY)
        line.bench.put_bag(60)
        line.until(lambda state: state.phase is Phase.LOADED and state.shown.digits == "60")
        line.bench.freeze(True)
        line.until(lambda state: state.verb is Verb.NO_READING)
        line.bench.lift()
        line.bench.freeze(False)
        line.until(lambda state: state.because == PRESS_PAN)
        with line.packer(product):
            line.until(lambda state: state.tally.good >= 1)


def test_scale_that_says_it_is_another_takes_no_bag(tmp_path):
    """What the Information dialogue says of the interval differs from the settings."""
    with bench_line(tmp_path / "first") as line:
        house = line.house
    scale = house.settings.scale
    other = BenchScale(capacity="3000", interval="2", unit=str(scale.unit), speed=SPEED)
    other.start()
    try:
        watch = Watch()
        audience = Audience(watch.state, watch.answer)
        home = tmp_path / "second"
        station = practice_station(house, home, home / "labels", other, audience)
        station.start()
        try:
            day = calendar_day(station.clock.now())
            product = next(iter(house.products.values()))
            station.line.start_run(run_choice(house, product, day, None))
            assert watch.next_answer(PATIENCE_S).started
            state = watch.until(lambda state: state.verb is Verb.CALL_LEAD, PATIENCE_S)
            assert "the scale says it has intervals of 2 g, the settings say 1 g" in state.because
        finally:
            station.stop()
    finally:
        other.stop()
