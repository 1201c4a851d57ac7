"""The short way of a bag into the record writes what the long way would have written."""

from dataclasses import replace
from datetime import UTC, datetime

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from station.core.journal import Entry, EntryKind, canonical
from station.core.mass import Mass, Unit
from station.core.pack import LabelState, PackId, Residue, Weighing
from station.store import bodies, queries
from station.store.pack_form import PackForm, pack_row
from station.store.rebuild import rebuild
from station.store.verify import verify

CHAIN = ("HA", "L1A", 2**62 + 5)
UID = "01a214c6-eaff-770b-912b-946f8620b390"
fits = settings(suppress_health_check=[HealthCheck.function_scoped_fixture], deadline=None)


@fits
@given(
    kilograms=st.decimals("0.0001", "9.9999", places=4),
    reason=st.text(st.characters(exclude_categories=["Cs"]), max_size=20),
    frame=st.text("0123456789abcdef", max_size=40),
    dwell=st.integers(0, 10**6),
    residue=st.none() | st.decimals("-0.0100", "0.0100", places=4),
)
def test_a_bags_entry_is_byte_for_byte_the_canonical_one(
    world, kilograms, reason, frame, dwell, residue
):
    run = world.run()
    net, tare = Mass.of(kilograms, Unit.KILOGRAM), Mass.of("0.0125", Unit.KILOGRAM)
    weighing = Weighing(net + tare, tare, net, Mass.of("0.0005", Unit.KILOGRAM), dwell, 2, frame)
    pan = residue if residue is None else Mass.of(residue, Unit.KILOGRAM)
    draft = replace(
        world.draft(run, reason="too light" if reason else ""),
        weighing=weighing,
        reason=reason,
        residue=None if pan is None else Residue(datetime(2026, 3, 4, 7, tzinfo=UTC), pan),
    )
    frame_of_run, members = bodies.run_frame(run), bodies.lot_set_body(run.lot_set)
    identity = PackId(*CHAIN, 17)
    body = bodies.pack_body(frame_of_run, members, draft, identity, UID)
    entry = Entry(*CHAIN, 40, EntryKind.PACK, draft.judged_at, draft.operator, body)
    form = PackForm(CHAIN, frame_of_run, members, draft)
    kept, row = form.entry_and_row(draft, identity, UID, 40, 41, 3)
    assert kept == canonical(entry)
    assert row[:6] == (CHAIN[2], 17, identity.serial, UID, 41, 3)


def test_every_kind_of_bag_has_the_row_its_entry_gives(store, world):
    first, second = world.start(store), world.start(store, 2, ("LF-102", "CR-201"))
    at = datetime(2026, 3, 4, 7, tzinfo=UTC)
    for run in (first, second, first):
        store.add_pack(world.draft(run))
        store.add_pack(world.draft(run, "0.2405", 'too light, "torn"\nand wet: 5 %'))
        store.add_pack(replace(world.draft(run), operator="q.fern", blend_lot="L1X%"))
        pan = Residue(at, Mass.of("-0.0005", Unit.KILOGRAM))
        store.add_pack(replace(world.draft(run), residue=pan))
    store.close()
    assert verify(world.home).whole
    rebuild(world.home)
    assert verify(world.home).whole


def test_a_word_outside_its_list_and_half_a_mass_make_no_row(world):
    good = {
        "epoch": 1, "number": 1, "serial": "A", "uid": UID, "entry_row": 1, "blend_id": 1,
        "gross": "0.265 kg", "tare": "0.0125 kg", "net": "0.2525 kg", "verdict": "in window",
        "quality": "good", "reason": "", "label": "recorded", "operator": "p",
        "utc": "2026-03-04T07:00:00.000000Z", "offset_minutes": 0, "residue": None,
    }  # fmt: skip
    assert len(pack_row(**good)) == 26
    for name, wrong in (("verdict", "fine"), ("quality", ""), ("label", "glued"), ("net", "0.2")):
        with pytest.raises(ValueError, match=r"."):
            pack_row(**{**good, name: wrong})


def test_a_label_that_stayed_recorded_is_in_doubt_at_the_next_start_and_only_there(world):
    """Also one of a run that was ended since: no index holds it, the bags since the start do."""
    with world.stocked() as store:
        first = world.start(store)
        done, stuck = world.fill(store, first, 2)[0], store.add_pack(world.draft(first)).serial
        store.end_run(first.id, world.clock.now(), "p.marsh")
        second = world.start(store, 2)
        world.fill(store, second, 2)
    with world.open() as store:
        assert store.in_doubt() == (stuck,)
        other = store.add_pack(world.draft(second)).serial
    with world.open() as store:
        assert store.in_doubt() == (stuck, other)
        assert done in queries.labels_in(world.home, LabelState.APPLIED)
    assert verify(world.home).whole
