"""Plugs pulled while bags are packed: no wrong record, the screen says so, the line goes on."""

import json
import os
import resource
import signal
import subprocess
import sys
import time
from dataclasses import replace
from decimal import Decimal

import pytest

from station.app.practice import run_choice
from station.core.metrology.rule_sets.registry import rule_set
from station.line.opening import calendar_day
from station.line.state import Phase, Verb
from station.store.queries import rejects_of_day, summary, trace_pack
from station.store.verify import verify
from tests.end_to_end.line import Bench, bench_line

CALM = 12.0
"""Slow enough that a packer played here never pours while a steady reading waits for its turn."""
MAIN = (sys.executable, "-m", "station.app.main")


class Witness:
    """Compares each recorded net with what truly lies in the bag at that moment."""

    def __init__(self):
        self.line: Bench | None = None
        self.wrong = []
        self.last = None
        self.records = 0

    def __call__(self, state):
        if state.last is None or state.last.serial == self.last or self.line is None:
            return
        self.last = state.last.serial
        self.records += 1
        run = state.run
        true_net = self.line.bench.load_grams - float(run.product.bag.tare.grams)
        if abs(true_net - float(state.last.net.grams)) > 1.0:
            self.wrong.append((state.last, true_net))


def test_pulling_the_scales_line_in_mid_run_leaves_no_wrong_record(tmp_path):
    witness = Witness()
    with bench_line(tmp_path, witness, speed=CALM) as line:
        witness.line = line
        product = line.open_run()
        with line.packer(product):
            for number in range(1, 6):
                line.until(lambda state, n=number: state.tally.good >= 2 * n)
                line.until(lambda state: state.phase is Phase.LOADED)
                line.bench.unplug()
                gone = line.until(lambda state: state.verb is Verb.NO_READING)
                assert gone.because
                assert gone.port == ""
                line.bench.plug_in()
                line.until(lambda state: state.verb is not Verb.NO_READING)
            line.until(lambda state: state.tally.good >= 12)
        line.until(
            lambda state: state.phase in (Phase.LIFT, Phase.CLEAR_PAN, Phase.READY, Phase.LOADED)
        )
    assert witness.records >= 12
    assert witness.wrong == []
    assert verify(tmp_path).whole
    assert summary(tmp_path).duplicate_serials == 0


def test_noise_on_the_line_leaves_no_wrong_record(tmp_path):
    witness = Witness()
    with bench_line(tmp_path, witness, speed=CALM) as line:
        witness.line = line
        product = line.open_run()
        with line.packer(product):
            for number in range(1, 9):
                line.until(lambda state, n=number: state.tally.good >= n)
                line.bench.noise_burst(40)
    assert witness.records >= 8
    assert witness.wrong == []


def test_a_bag_filled_on_after_it_was_weighed_is_taken_back(tmp_path):
    with bench_line(tmp_path, speed=CALM) as line:
        product = line.open_run()
        line.until(lambda state: state.verb is Verb.BAG_ON)
        line.bench.put_bag(float(product.bag.tare.grams))
        line.bench.pour(float(product.target.grams))
        line.until(lambda state: state.verb is Verb.LIFT_BAG)
        line.bench.pour(20)
        changed = line.until(lambda state: state.verb is Verb.SET_ASIDE)
        line.bench.lift()
        line.until(lambda state: state.verb is Verb.BAG_ON)
        serial = line.watch.newest.last.serial
        tally = line.watch.newest.tally
    assert "changed after weighing" in changed.because
    assert (tally.good, tally.rejects) == (0, 1)
    [reject] = rejects_of_day(tmp_path, line.watch.newest.run.dating.production_day)
    assert (reject.serial, reject.reason) == (serial, "changed after weighing")
    assert reject.label == "voided"


def test_another_unit_stops_the_line_in_words_until_it_is_set_back(tmp_path):
    with bench_line(tmp_path) as line:
        line.open_run()
        line.until(lambda state: state.phase is Phase.READY)
        line.bench.press_unit("kg")
        state = line.until(lambda state: state.verb is Verb.NO_READING)
        assert "kg" in state.because
        assert "g" in state.because
        line.bench.press_unit("g")
        line.until(lambda state: state.verb is Verb.BAG_ON)


def test_a_frozen_stream_is_noticed_and_said(tmp_path):
    with bench_line(tmp_path) as line:
        line.open_run()
        line.until(lambda state: state.phase is Phase.READY)
        line.bench.freeze(True)
        state = line.until(lambda state: state.verb is Verb.NO_READING)
        assert "silent" in state.because or "no" in state.because
        line.bench.freeze(False)
        line.until(lambda state: state.verb is Verb.BAG_ON)


def test_over_capacity_and_below_zero_are_said_and_judge_nothing(tmp_path):
    with bench_line(tmp_path) as line:
        line.open_run()
        line.until(lambda state: state.phase is Phase.READY)
        line.bench.pour(4000)
        state = line.until(lambda state: state.verb is Verb.NO_READING)
        assert "over capacity" in state.because
        line.bench.lift()
        line.bench.residue(0)
        line.until(lambda state: state.verb is Verb.BAG_ON)
        line.bench.residue(20)
        line.until(lambda state: state.shown.digits == "20" and state.shown.steady)
        assert line.bench.press_zero()
        line.until(lambda state: state.verb is Verb.BAG_ON)
        line.bench.residue(0)
        state = line.until(lambda state: state.verb is Verb.WIPE_PAN)
        assert "-20 g" in state.because
        assert state.tally.good == 0


def test_a_printer_that_cannot_take_a_label_puts_it_in_doubt_and_stops_the_line(tmp_path):
    with bench_line(tmp_path) as line:
        product = line.open_run()
        with line.packer(product):
            line.until(lambda state: state.tally.good >= 1 and state.phase is Phase.READY)
            line.labels.rename(tmp_path / "moved")
            line.labels.write_text("in the way")
            state = line.until(lambda state: state.verb is Verb.CALL_LEAD)
        assert state.last is not None
        assert state.last.serial in state.because
        serial = state.last.serial
    assert trace_pack(tmp_path, serial).label == "in doubt"
    (tmp_path / "labels").unlink()
    with bench_line(tmp_path) as again:
        assert again.station.in_doubt == (serial,)


def test_a_run_with_a_held_lot_is_refused_and_the_line_stays_closed(tmp_path):
    with bench_line(tmp_path) as line:
        held = next(lot for lot in line.house.lots.values() if lot.status == "held")
        product = next(
            one
            for one in line.house.products.values()
            if held.component in {component.code for component in one.components}
        )
        day = calendar_day(line.station.clock.now())
        choice = run_choice(line.house, product, day, None)
        line.station.line.start_run(replace(choice, lots=(*choice.lots, held.code)))
        answer = line.watch.next_answer(10)
        assert not answer.started
        assert held.code in answer.words
        assert "held" in answer.words
        assert line.watch.newest.phase is Phase.CLOSED


def test_the_verdicts_on_record_follow_the_published_limits(tmp_path):
    """T1 and T2 of 2270 g by EU 76/211/EEC Annex I 2.4: 1.5 % is 34.05, rounded up to 34.1 g."""
    limits = rule_set("eu-76-211").limits
    with bench_line(tmp_path) as line:
        check = next(one for one in line.house.products.values() if one.mode == "check")
        assert limits(check.nominal).tolerable.grams == Decimal("34.1")
        product = line.open_run(check.code)
        with line.packer(product):
            line.until(lambda state: state.tally.rejects >= 2)
        day = line.watch.newest.run.dating.production_day
    for row in rejects_of_day(tmp_path, day):
        net = row.net.grams
        expected = (
            "below T2" if net < Decimal("2201.8")
            else "below T1" if net < Decimal("2235.9")
            else "below floor" if net < 2270
            else "over"
        )  # fmt: skip
        assert row.verdict == expected
        assert row.label == "none"


def test_a_full_disk_ends_the_demo_in_words_and_loses_nothing(tmp_path):
    """A limit on the size of files stands for a disk that is full: writes are refused alike."""

    def limit():
        resource.setrlimit(resource.RLIMIT_FSIZE, (1_500_000, 1_500_000))

    done = subprocess.run(
        [*MAIN, "demo", "--headless", "--packs", "300", "--home", str(tmp_path)],
        capture_output=True,
        text=True,
        check=False,
        timeout=120,
        preexec_fn=limit,
    )
    assert done.returncode == 3
    assert "the line stopped" in done.stderr
    assert "disk" in done.stderr
    assert "Traceback" not in done.stderr
    printed = {path.stem for path in (tmp_path / "labels").glob("*.pdf")}
    assert printed
    with bench_line(tmp_path):
        pass
    assert verify(tmp_path).whole
    for serial in printed:
        trace_pack(tmp_path, serial)


@pytest.mark.parametrize("after", [3, 9])
def test_a_killed_station_keeps_every_bag_and_asks_about_open_labels(tmp_path, after):
    words = ["demo", "--headless", "--packs", "400", "--json", "--home", str(tmp_path)]
    left = tmp_path / "left"  # a killed process takes nothing away behind itself
    left.mkdir()
    process = subprocess.Popen(
        [*MAIN, *words],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        env={**os.environ, "TMPDIR": str(left)},
    )
    labels = tmp_path / "labels"
    deadline = time.monotonic() + 180
    while len(list(labels.glob("*.pdf"))) < after:
        assert time.monotonic() < deadline
        assert process.poll() is None
        time.sleep(0.01)
    process.send_signal(signal.SIGKILL)
    process.communicate()
    printed = {path.stem for path in labels.glob("*.pdf")}
    with bench_line(tmp_path) as line:
        in_doubt = line.station.in_doubt
    assert verify(tmp_path).whole
    assert len(in_doubt) <= 1
    for serial in printed:
        trace_pack(tmp_path, serial)  # raises for a label without a record
    kept = summary(tmp_path)
    assert kept.duplicate_serials == 0
    assert kept.good >= len(printed)
    done = subprocess.run(
        [*MAIN, *words[:3], "4", *words[4:]],
        capture_output=True,
        check=True,
    )
    assert json.loads(done.stdout)["packs"] == 4
