"""The numbers of a run, fed by the line and by the record, against the command line."""

import json
import threading
from dataclasses import replace
from datetime import UTC, timedelta

import pytest

from station.app.live_numbers import LiveNumbers
from station.app.places import demo_settings, packhouse
from station.app.practice_record import pack_record
from station.cli.entry import run
from station.cli.verbs import build
from station.clock import SystemClock
from station.core.facts import Fact, FactRecord
from station.core.ids import new_uid
from station.core.journal import EntryKind
from station.core.mass import Mass
from station.core.metrology.rehearsal import rehearse
from station.core.metrology.verdict import Verdict
from station.core.pack import PackDraft, PackId, PackRecord, Quality, Weighing
from station.line.duties import Duties
from station.line.fill_target import knee_of
from station.line.numbers import Span
from station.line.state import LastPack, LineState, Phase, Tally, Verb
from station.store.facts import facts
from station.store.verify import verify
from station.store.weighed import packs_of_run
from station.store.writer import StationStore

BAGS = 300


@pytest.fixture(scope="module")
def house():
    return packhouse(demo_settings())


@pytest.fixture(scope="module")
def clock(house):
    return SystemClock(house.settings.zone)


@pytest.fixture(scope="module")
def home(house, clock, tmp_path_factory):
    """300 bags of a product that is filled lower than its nominal quantity allows."""
    product = replace(
        next(iter(house.products.values())),
        floor=Mass.parse("196 g"),
        target=Mass.parse("198 g"),
        upper=Mass.parse("206 g"),
    )
    folder = tmp_path_factory.mktemp("numbers")
    pack_record(house, folder, BAGS, 1, product=product, ends=clock.now())
    return folder


@pytest.fixture
def numbers(home, clock):
    return LiveNumbers(home, clock)


@pytest.fixture
def station(capsys, monkeypatch):
    """Give a function: words of a command line -> its document."""
    monkeypatch.delenv("STATION_HOME", raising=False)
    monkeypatch.delenv("STATION_CONFIG", raising=False)

    def call(*words: object) -> dict:
        run(build(), [*map(str, words), "--json"])
        return json.loads(capsys.readouterr().out)

    return call


def test_the_figures_are_those_of_the_command_line(numbers, home, station):
    figures = numbers.figures(Span.RUN)
    said = station("forecast", "--run", "last", "--home", home)
    chance = figures.batch.outlook
    assert round(chance.passing, 6) == said["passing"]
    assert str(chance.outlook) == said["outlook"]
    assert str(float(figures.batch.packs.mean))[:9] == said["mean_so_far"][:9]
    assert figures.batch.t1_left == said["t1_left"]
    assert figures.batch.packs.n == said["n"] == BAGS


def test_the_target_is_that_of_the_command_line(numbers, home, station):
    advice = numbers.advice(lambda _: None)
    said = station("target", "--run", "last", "--home", home)
    assert advice.proposal.target == said["proposal"]["target"]
    assert round(advice.proposal.giveaway, 6) == said["proposal"]["giveaway"]
    assert advice.proposal.governing == said["proposal"]["governing"]
    assert round(advice.mean, 6) == said["now"]["mean"]


def test_the_knee_is_that_of_the_command_line(numbers, station):
    limits = numbers.figures(Span.RUN).limits
    said = station("target", "--sigma", "4g", "--rules", limits.rule_set, "--nominal", "200g")
    assert knee_of(limits).spread == pytest.approx(said["knee"], abs=1e-5)


def test_the_chance_agrees_with_the_official_sample_on_the_real_bags(numbers, home):
    """A seeded Monte-Carlo of the official sample, judged exactly, within 0.015."""
    figures = numbers.figures(Span.RUN)
    chance = figures.batch.outlook
    nets = [pack.net for pack in packs_of_run(home, "last").packs]
    drawn = rehearse(nets, figures.limits, chance.plan, draws=8000, seed=2)
    assert 0.5 < drawn.share < 0.95  # where the forecast could be wrong
    assert abs(drawn.share - chance.passing) < 0.015


def test_a_record_without_a_run_has_no_figures(tmp_path, house, clock):
    StationStore.open(tmp_path, house.settings.site, house.settings.station, clock).close()
    numbers = LiveNumbers(tmp_path, clock)
    assert numbers.figures(Span.RUN) is None
    assert numbers.advice(lambda _: None) is None


def record(number: int, clock, net: str = "200", quality: Quality = Quality.GOOD) -> PackRecord:
    mass, tare = Mass.parse(f"{net} g"), Mass.parse("6 g")
    now = clock.now()
    draft = PackDraft(
        run="r",
        weighing=Weighing(mass + tare, tare, mass, Mass.parse("0 g"), 500, 0, "00"),
        verdict=Verdict.IN_WINDOW,
        quality=quality,
        reason="" if quality is Quality.GOOD else "torn",
        blend_lot="B",
        lot_set="s",
        use_by=now.utc.date() + timedelta(days=7),
        production_day=now.utc.date(),
        operator="P02",
        judged_at=now,
    )
    return PackRecord(PackId("QH", "A1", 1, number), f"u{number}", draft, number, "00")


def line_state(serial: str, *, good: bool, run=None) -> LineState:
    last = LastPack(serial, Mass.parse("200 g"), good)
    return LineState(Phase.LIFT, Verb.LIFT_BAG, None, "", 1, None, run, Tally(), last, "")


def test_bags_of_the_line_are_added_without_the_record(numbers, clock, monkeypatch):
    numbers.figures(Span.RUN)
    monkeypatch.setattr("station.app.live_numbers.packs_of_run", None)  # not read again
    numbers.packed(record(9001, clock))
    numbers.packed(record(9002, clock, "180", Quality.REJECT))
    figures = numbers.figures(Span.RUN)
    assert figures.batch.packs.n == BAGS + 1
    numbers.packed(record(9001, clock))  # the record and the line may both tell of a bag
    assert numbers.figures(Span.RUN).batch.packs.n == BAGS + 1


def test_a_bag_taken_back_after_its_label_makes_the_record_be_read(numbers, clock):
    numbers.figures(Span.RUN)
    taken = record(9001, clock)
    numbers.packed(taken)
    numbers.state(line_state(taken.serial, good=True))
    assert numbers.figures(Span.RUN).batch.packs.n == BAGS + 1
    numbers.state(line_state(taken.serial, good=False))
    assert numbers.figures(Span.RUN).batch.packs.n == BAGS  # the record knows no such bag


def test_an_older_bag_whose_label_is_void_makes_the_record_be_read(numbers, clock):
    """It is not the last bag, so the line's state says nothing of it."""
    numbers.figures(Span.RUN)
    older, newer = record(9001, clock), record(9002, clock)
    numbers.packed(older)
    numbers.packed(newer)
    numbers.state(line_state(newer.serial, good=True))
    assert numbers.figures(Span.RUN).batch.packs.n == BAGS + 2
    Duties((numbers,)).taken_back(older.serial)
    assert numbers.figures(Span.RUN).batch.packs.n == BAGS  # the record knows neither


def test_a_disposition_makes_the_record_be_read(numbers, clock):
    numbers.figures(Span.RUN)
    numbers.packed(record(9001, clock))
    for kind, left in ((EntryKind.SCALE_CHECK, BAGS + 1), (EntryKind.DISPOSITION, BAGS)):
        numbers.figures(Span.RUN)
        now = clock.now()
        fact = Fact(kind, new_uid(now), "A1-00-000001", "done")
        numbers.noted(FactRecord(fact, now, "P05", 7))
        assert numbers.figures(Span.RUN).batch.packs.n == left


def test_a_run_is_open_while_the_line_says_so(numbers, home):
    assert not numbers.figures(Span.RUN).open
    numbers.state(line_state("x", good=True, run=packs_of_run(home, "last").run))
    assert numbers.figures(Span.RUN).open


def test_as_a_duty_it_closes_nothing(numbers, clock):
    assert numbers.closing(clock.now().utc) == ""
    assert numbers.due(clock.now().utc) is None


def test_the_line_never_waits_for_whoever_asks(numbers, clock, monkeypatch):
    """The record is read slowly; bags come meanwhile and are counted afterwards."""
    reading, go_on = threading.Event(), threading.Event()

    def slow(home, uid):
        found = packs_of_run(home, uid)
        reading.set()
        assert go_on.wait(5)
        return found

    monkeypatch.setattr("station.app.live_numbers.packs_of_run", slow)
    told = []
    asking = threading.Thread(target=lambda: told.append(numbers.figures(Span.RUN)))
    asking.start()
    assert reading.wait(5)
    numbers.packed(record(9001, clock))  # would hang here if it waited
    go_on.set()
    asking.join(5)
    assert told[0].batch.packs.n == BAGS
    assert numbers.figures(Span.RUN).batch.packs.n == BAGS + 1


def test_a_failed_reading_loses_no_bag(numbers, home, clock, monkeypatch):
    def fails(home, uid):
        raise ValueError("not now")

    with monkeypatch.context() as patch:
        patch.setattr("station.app.live_numbers.packs_of_run", fails)
        with pytest.raises(ValueError, match="not now"):
            numbers.figures(Span.RUN)
    assert numbers.figures(Span.RUN).batch.packs.n == BAGS


def test_the_proposal_goes_on_record_with_chance_target_and_knee(numbers, home, house, clock):
    figures, advice = numbers.figures(Span.RUN), numbers.advice(lambda _: None)
    fact = numbers.proposal(figures, advice)
    with StationStore.open(home, house.settings.site, house.settings.station, clock) as store:
        store.record((fact,), clock.now(), figures.run.lead)
    (kept,) = facts(home, (EntryKind.PROPOSAL,))
    assert kept.fact == fact
    assert kept.who == figures.run.lead
    assert kept.fact.run == figures.run.id
    assert {"passing", "target", "knee_spread"} <= set(kept.fact.details)
    assert kept.at.utc.tzinfo is UTC
    assert verify(home).whole
    assert packs_of_run(home, "last").run == figures.run  # a run is frozen
