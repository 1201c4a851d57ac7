"""A practice record is made by the true cycle and store, without paper and in no time."""

import json
from dataclasses import replace
from datetime import timedelta

import pytest

from station.app.demo import demo
from station.app.places import demo_settings, packhouse
from station.app.practice_answer import record
from station.app.practice_record import BAG_S, PracticeClock, pack_record
from station.cli.entry import run
from station.cli.verbs import build
from station.clock import SystemClock
from station.core.mass import Mass
from station.core.pack import LabelState, Quality
from station.core.product import PackMode
from station.errors import BadInput
from station.store.queries import summary
from station.store.verify import verify
from station.store.weighed import packs_of_run

BAGS = 60


@pytest.fixture(scope="module")
def house():
    return packhouse(demo_settings())


@pytest.fixture(scope="module")
def ends(house):
    return SystemClock(house.settings.zone).now()


@pytest.fixture(scope="module")
def made(house, ends, tmp_path_factory):
    home = tmp_path_factory.mktemp("practice")
    said = []
    return pack_record(house, home, BAGS, 1, said.append, ends=ends), said


def test_every_bag_is_on_record_and_the_journal_is_whole(made):
    practice, said = made
    assert practice.good == BAGS == said[-1]
    assert verify(practice.home).whole
    counts = summary(practice.home)
    assert counts.good == BAGS
    assert counts.labels == {LabelState.APPLIED: BAGS}
    assert counts.runs == 1


def test_bags_are_topped_up_to_the_floor_and_stay_below_the_upper_limit(made):
    packs = packs_of_run(made[0].home, "last")
    window = packs.run.window
    assert not packs.open
    assert {pack.quality for pack in packs.packs} == {Quality.GOOD}
    assert all(window.floor <= pack.net <= window.upper for pack in packs.packs)
    assert len({pack.net for pack in packs.packs}) > 3


def test_the_shift_lies_in_the_past_and_goes_at_its_pace(made, ends):
    practice, _ = made
    took = practice.ended - practice.began
    assert practice.ended < ends.utc
    assert abs(took - timedelta(seconds=BAG_S * BAGS)) < timedelta(seconds=45)
    times = [pack.at for pack in packs_of_run(practice.home, "last").packs]
    assert times == sorted(times)


def test_the_same_seed_gives_the_same_bags(made, house, ends, tmp_path):
    again = pack_record(house, tmp_path / "again", 20, 1, ends=ends)
    other = pack_record(house, tmp_path / "other", 20, 2, ends=ends)
    first, same, different = (
        [str(pack.net) for pack in packs_of_run(home, "last").packs][:20]
        for home in (made[0].home, again.home, other.home)
    )
    assert first == same != different


def test_sealed_bags_outside_the_window_are_set_aside(house, ends, tmp_path):
    product = next(one for one in house.products.values() if one.mode is PackMode.CHECK)
    narrow = replace(product, upper=product.target + Mass.parse("0.002 kg"))
    practice = pack_record(house, tmp_path, 20, 4, product=narrow, ends=ends)
    packs = packs_of_run(tmp_path, "last").packs
    assert practice.rejects == sum(pack.quality is Quality.REJECT for pack in packs) > 0


def test_a_used_home_is_refused(made, house, ends):
    with pytest.raises(BadInput, match="fresh folder"):
        pack_record(house, made[0].home, 1, 1, ends=ends)


def test_the_answer_says_that_nothing_was_printed(tmp_path):
    answer = record(5, "SLAW-340", tmp_path, None, 1, quiet=True)
    assert answer.document["labels_printed"] == 0
    assert answer.document["packs"] == 5
    assert answer.document["product"] == "SLAW-340"
    json.dumps(answer.document)


@pytest.mark.parametrize(
    ("bags", "product", "words"),
    [(0, None, "1 to"), (20_001, None, "1 to"), (5, "NO-SUCH", "SLAW-340")],
)
def test_wrong_options_are_refused_in_words(bags, product, words, tmp_path):
    with pytest.raises(BadInput, match=words):
        record(bags, product, tmp_path, None, 1, quiet=True)


def test_the_practice_clock_follows_the_plant_through_a_change_of_offset():
    start = (
        SystemClock("Europe/Dublin")
        .now()
        .utc.replace(year=2026, month=10, day=25, hour=0, minute=59, second=59, microsecond=0)
    )
    clock = PracticeClock("Europe/Dublin", start)
    assert clock.now().offset_minutes == 60
    clock.move(2.5)
    assert clock.now().offset_minutes == 0
    assert clock.monotonic_ns() == 2_500_000_000


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--record-only", "5", "--packs", "5"), "leave out --packs"),
        (("--product", "SLAW-340"), "is for --record-only"),
    ],
)
def test_options_that_do_not_go_together_are_refused(words, said, capsys):
    verbs = build()
    verbs.command("demo")(demo)
    assert run(verbs, ["demo", "--headless", *words]) == 2
    assert said in capsys.readouterr().err


def test_the_verb_makes_the_record(capsys, tmp_path):
    verbs = build()
    verbs.command("demo")(demo)
    words = ["demo", "--record-only", "3", "--home", str(tmp_path), "--seed", "9", "--json"]
    assert run(verbs, words) == 0
    assert json.loads(capsys.readouterr().out)["packs"] == summary(tmp_path).good == 3
