"""Whole-plant questions against what the stations' own records say."""

from collections import Counter
from datetime import date
from pathlib import Path

import pytest

from station.core.dispositions import Decided, Disposition, disposition_fact
from station.core.journal import Entry, EntryKind, JournalError, entry_hash
from station.core.receiving import hold_lot_fact, release_lot_fact
from station.reports.giveaway import period_sums
from station.reports.recall import Scope, recall
from station.store.lot_reach import bags_with
from station.store.queries import rejects_of_day
from station.sync.projection import Projection
from station.sync.projector import BroughtUp, bring_up, start_over
from station.sync.questions import Plant
from tests.station.store.conftest import DAY, World
from tests.station.sync.centre import Centre, assert_level, send_all

STATIONS = (("HA", "L1A"), ("HA", "L2A"), ("ZB", "L1A"))


@pytest.fixture
def three(tmp_path: Path, centre: Centre) -> list[World]:
    """Three lines at two sites; LF-101 is used on all of them, LF-102 on one."""
    worlds = []
    for number, (site, station) in enumerate(STATIONS):
        world = World(tmp_path / f"{site}-{station}", site=site, station=station)
        with world.stocked() as store:
            run = world.start(store, number + 1)
            serials = world.fill(store, run, 7 + number)
            store.take_back(serials[0], "torn", world.clock.now(), "i.sedge")
            store.end_run(run.id, world.clock.now(), "p.marsh")
            if number == 0:
                run = world.start(store, 9, ("LF-102", "CR-201"))
                world.fill(store, run, 4)
        worlds.append(world)
        send_all(world.home, centre.station(site, station))
    return worlds


def plant(centre: Centre, ask):
    with centre.owner() as connection:
        bring_up(connection)
        return ask(Plant(connection))


def test_a_lot_on_three_lines_at_two_sites_is_recalled_in_one_answer(three, centre):
    reached = plant(centre, lambda all_: all_.recall("LF-101"))
    assert {(group.site, group.station) for group in reached.groups} == set(STATIONS)
    counts, micrograms = Counter(), 0
    for group in reached.groups:
        counts[group.now] += group.bags
        micrograms += group.net_ug
    ours: Counter[str] = Counter()
    sums = 0
    for world in three:  # each station's own recall is the measure
        found = recall([world.home], Scope.LOT, "LF-101", world.clock.now().utc)
        ours.update(found.total.counts)
        sums += found.total.micrograms
    assert counts == ours
    assert micrograms == sums
    assert sum(counts.values()) == 7 + 8 + 9
    assert {lot.supplier for lot in reached.lots} == {"Ashbrook Growers"}


def test_rejects_of_a_day_are_those_of_all_stations(three, centre):
    rows = plant(centre, lambda all_: all_.rejects(DAY))
    theirs = {(row.site, row.station, row.serial, row.reason) for row in rows}
    ours = {
        (world.site, world.station, row.serial, row.reason)
        for world in three
        for row in rejects_of_day(world.home, DAY)
    }
    assert theirs == ours
    assert len(rows) > 6
    assert plant(centre, lambda all_: all_.rejects(date(2026, 3, 5))) == []


def test_a_bag_is_traced_with_its_lots(three, centre):
    (pack,) = plant(centre, lambda all_: all_.packs(recorded(three[1])))
    assert (pack.site, pack.station, pack.line) == ("HA", "L2A", "L1")
    assert pack.lots == ["CR-201", "LF-101"]
    assert pack.production_day == DAY
    assert plant(centre, lambda all_: all_.packs("L9Z-00-000001")) == []
    blend = plant(centre, lambda all_: all_.blend(pack.blend_lot))
    assert sum(group.bags for group in blend) == 8


def recorded(world: World) -> str:
    reach = recall([world.home], Scope.LOT, "LF-101", world.clock.now().utc)
    return reach.stations[0].packs[2].serial


def test_what_is_given_away_adds_up(three, centre):
    rows = plant(centre, lambda all_: all_.given_away(DAY))
    assert {(row.site, row.station) for row in rows} == set(STATIONS)
    for row in rows:
        assert row.net_ug - row.nominal_ug == row.bags * 2_500_000  # 252.5 g in bags of 250 g


def test_holds_and_releases_change_what_bags_are_worth(three, centre):
    world = three[0]
    with world.open() as store:
        ranges = bags_with(world.home, "LF-101")
        hold = hold_lot_fact("h-1", "LF-101", "metal", ranges)
        store.record((hold,), world.clock.now(), "q.rush")
    send_all(world.home, centre.station("HA", "L1A"))
    worth = Counter()
    for group in plant(centre, lambda all_: all_.recall("LF-101")).groups:
        if group.station == "L1A" and group.site == "HA":
            worth[group.now] += group.bags
    assert worth == {"held": 4, "reject": 3}
    with world.open() as store:
        free = release_lot_fact("h-2", "LF-101", "h-1", "looked at")
        store.record((free,), world.clock.now(), "q.rush")
    send_all(world.home, centre.station("HA", "L1A"))
    groups = plant(centre, lambda all_: all_.recall("LF-101")).groups
    mine = {g.now: g.bags for g in groups if (g.site, g.station) == ("HA", "L1A")}
    found = recall([world.home], Scope.LOT, "LF-101", world.clock.now().utc)
    assert mine == dict(found.total.counts) == {"released": 4, "reject": 3}


def test_what_became_of_bags_is_told_as_their_station_tells_it(three, centre):
    """Every decision and a correction after the clock went back; the station is the measure."""
    decide_all(three[0])
    send_all(three[0].home, centre.station("HA", "L1A"))
    told_alike(three[0], centre)
    centre.tell("DELETE FROM centre.pack_change WHERE quality NOT IN ('reject', 'reworked')")
    told_alike(three[0], centre)  # tables of a program that knew no decisions


def test_a_decision_in_words_not_known_here_leaves_no_row(world):
    """With a row it would look like one that an older program left out, at every question."""
    decided = Decided("L1A-AA-000001", Disposition.SAMPLE, "light")
    body = disposition_fact(decided, "d1", "r1").body() | {"result": "composted"}
    made = Projection()
    with pytest.raises(JournalError, match="another form"):
        made.add(Entry("HA", "L1A", 1, 1, EntryKind.DISPOSITION, world.clock.now(), "q.rush", body))
    assert not any(made.rows.values())


def decide_all(world: World) -> None:
    with world.open() as store:
        run = world.start(store, 5)

        def decide(serial, end, uid, into="", corrects=""):
            decided = Decided(serial, end, "light", "p.marsh", into=into, corrects=corrects)
            return disposition_fact(decided, uid, run.id)

        def enter(*facts):
            store.record(facts, world.clock.now(), "q.rush")

        serials = world.fill(store, run, 9)  # every third is a reject
        for place, end in ((2, Disposition.SAMPLE), (5, Disposition.DUMP)):
            enter(decide(serials[place], end, f"d{place}"))
        whole = bags_with(world.home, "LF-101")
        enter(hold_lot_fact("h-9", "LF-101", "metal", whole))
        enter(decide(serials[0], Disposition.DUMP, "d0"))
        enter(decide(serials[1], Disposition.SAMPLE, "d1"))
        enter(release_lot_fact("h-10", "LF-101", "h-9", "looked at"))
        enter(decide(serials[8], Disposition.REWEIGH, "d8", into=world.fill(store, run, 1)[0]))
        world.clock.count -= 40
        enter(decide(serials[5], Disposition.DOWNGRADE, "d9", corrects="d5"))


def told_alike(world: World, centre: Centre) -> None:
    groups = plant(centre, lambda all_: all_.recall("LF-101")).groups
    theirs: Counter[str] = Counter()
    for group in groups:
        if (group.site, group.station) == ("HA", "L1A"):
            theirs[group.now] += group.bags
    found = recall([world.home], Scope.LOT, "LF-101", world.clock.now().utc)
    assert theirs == found.total.counts
    assert {"dumped", "sampled", "repacked", "downgraded", "released"} <= theirs.keys()
    aside = plant(centre, lambda all_: all_.rejects(DAY))
    assert {(row.serial, row.reason, row.now) for row in aside if row.site == "HA"
            and row.station == "L1A"} == {
        (row.serial, row.reason, row.quality) for row in rejects_of_day(world.home, DAY)
    }  # fmt: skip
    (given,) = (
        row
        for row in plant(centre, lambda all_: all_.given_away(DAY))
        if (row.site, row.station) == ("HA", "L1A")
    )
    whole = period_sums(world.home, DAY, DAY, {}).whole
    assert (given.bags, given.net_ug) == (whole.in_batch, whole.net)
    assert given.nominal_ug == whole.nominal


def test_tables_made_anew_are_the_same(three, centre):
    def tables():
        return {
            name: sorted(map(repr, centre.ask(f"SELECT * FROM centre.{name}")))
            for name in ("pack", "lot_use", "lot", "run", "run_end", "fact", "pack_change",
                         "hold_range", "hold_end", "projected")
        }  # fmt: skip

    with centre.owner() as connection:
        first = bring_up(connection)
        before = tables()
        assert bring_up(connection) == BroughtUp(0, 0)
        start_over(connection)
        assert bring_up(connection) == first
    assert tables() == before
    assert before["pack"]
    for world in three:
        assert_level(world.home, centre)


def test_an_entry_that_cannot_be_read_is_noted_and_the_others_go_on(three, centre):
    """A newer program's entry: its bytes are kept, its form is not known here."""
    newer = b'{"v":2,"kind":"pack"}'
    (epoch, seq, digest) = centre.ask(
        "SELECT epoch, seq, hash FROM centre.watermark WHERE site = 'ZB'"
    )[0]
    follows = entry_hash(bytes(digest), newer)
    centre.tell(
        "INSERT INTO centre.entry VALUES ('ZB', 'L1A', %s, %s, 'pack', %s, %s)",
        epoch, seq + 1, follows, newer,
    )  # fmt: skip
    centre.tell(
        "UPDATE centre.watermark SET seq = %s, hash = %s WHERE site = 'ZB'", seq + 1, follows
    )
    with centre.owner() as connection:
        assert bring_up(connection).noted == 1
    ((where, why),) = centre.quarantine()
    assert where == seq + 1
    assert "needs a newer program" in why
    assert plant(centre, lambda all_: all_.rejects(DAY))


def test_bytes_changed_at_the_centre_are_noted(three, centre):
    centre.tell(
        "UPDATE centre.entry SET canonical = replace(convert_from(canonical, 'UTF8'), '252', "
        "'251')::bytea WHERE site = 'ZB' AND kind = 'pack' AND seq = (SELECT min(seq) FROM "
        "centre.entry WHERE site = 'ZB' AND kind = 'pack')"
    )
    with centre.owner() as connection:
        assert bring_up(connection).noted == 1
    ((_, why),) = centre.quarantine()
    assert why == "its bytes do not have its hash"


def test_the_centre_knows_when_a_station_spoke_last(three, centre):
    rows = plant(centre, lambda all_: all_.stations())
    assert [row.name for row in rows] == ["HA/L1A", "HA/L2A", "ZB/L1A"]
    assert all(row.contact is None and row.quarantined == 0 for row in rows)
