"""Damage that only signed heads, or heads kept elsewhere, can show."""

import shutil
import sqlite3
from contextlib import closing

import pytest

from station.core.journal import GENESIS, entry_hash
from station.core.tree_head import SaidHead, SignedHead
from station.errors import EnvironmentFault
from station.store.day_heads import read_witness
from station.store.head_check import Elsewhere
from station.store.head_now import head_now
from station.store.heads import SeenHead, write_head
from station.store.quick_verify import verify_since_head
from station.store.rebuild import rebuild
from station.store.signing import make_key, read_key
from station.store.verify import verify
from tests.station.store.signed_world import DayClock, fill_two_days, key_of, opened

UNGUARDED = ("DROP TRIGGER journal_no_update", "DROP TRIGGER journal_no_delete")


@pytest.fixture(scope="session")
def signed_once(tmp_path_factory):
    from tests.station.store.conftest import World

    world = World(tmp_path_factory.mktemp("signed") / "home")
    fill_two_days(world)
    return world


@pytest.fixture
def signed(world, signed_once):
    """A copy of the signed record with its key, to be spoilt."""
    shutil.copytree(signed_once.home, world.home)
    shutil.copy(key_of(signed_once), key_of(world))
    return world


def printed(world):
    """The head as the sheet of now would show it."""
    head = head_now(world.home, key_of(world)).head
    return SaidHead(head.size, head.words)


def make_anew(world, change):
    """Rewrite the journal as a person with a database tool and this very code could: change one
    entry and make every hash after it anew, blocks and tables too."""
    world.tamper(*UNGUARDED, change)
    before = GENESIS
    with closing(sqlite3.connect(world.database)) as connection:
        rows = connection.execute("SELECT id, canonical FROM journal ORDER BY id").fetchall()
        for row, kept in rows:
            before = entry_hash(before, kept)
            connection.execute("UPDATE journal SET hash = ? WHERE id = ?", (before, row))
        epoch, seq = connection.execute(
            "SELECT epoch, seq FROM journal ORDER BY id DESC LIMIT 1"
        ).fetchone()
        connection.commit()
    write_head(world.home, SeenHead(epoch, seq, before.hex()))


CHANGE = (
    "UPDATE journal SET canonical = CAST(replace(CAST(canonical AS TEXT), 'event 150', 'event 951')"
    " AS BLOB) WHERE CAST(canonical AS TEXT) LIKE '%event 150\"%'"
)


def test_signed_heads_are_counted_and_the_newest_is_told(signed):
    report = verify(signed.home)
    assert (report.whole, report.heads) == (True, 2)
    assert report.signed.head.size == report.head_seq - 1
    assert report.signed.key == read_key(key_of(signed)).public


def test_a_chain_made_anew_from_one_changed_entry_on_is_shown_by_the_head_of_the_day(signed):
    make_anew(signed, CHANGE)
    report = verify(signed.home)
    assert not report.whole
    assert "its head is not the one of entries 1 to" in report.why
    quick = verify_since_head(signed.home)
    assert not quick.whole


def test_a_signature_that_does_not_hold_is_named(signed):
    found = verify(signed.home)
    digits = found.signed.text()[-6:]
    spoilt = "000000" if digits != "000000" else "111111"
    make_anew(
        signed,
        f"UPDATE journal SET canonical = CAST(replace(CAST(canonical AS TEXT), '{digits}\"',"
        f" '{spoilt}\"') AS BLOB) WHERE seq = {found.head_seq}",
    )
    report = verify(signed.home)
    assert report.first_break == found.head_seq
    assert "has a signature that does not hold" in report.why
    quick = verify_since_head(signed.home)
    assert (quick.first_break, quick.whole) == (found.head_seq, False)


def test_a_printed_head_finds_a_record_that_holds_in_itself(world, tmp_path):
    """The whole record made anew by somebody else, without a key: only paper can tell."""
    with world.stocked() as store:
        for number in range(200):
            store.note(f"event {number}", world.clock.now(), "station")
    said = printed(world)
    make_anew(world, CHANGE)
    rebuild(world.home)
    assert verify(world.home).whole
    report = verify(world.home, Elsewhere(said=(said,)))
    assert not report.whole
    assert f'the head "{said.words}" over {said.size} entries is none of this record' in report.why


def test_a_printed_head_of_this_record_holds_later_too(signed):
    said = printed(signed)
    clock = DayClock(signed.clock, 2)
    with opened(signed, clock, key_of(signed)) as store:
        store.note("later", clock.now(), "station")
    assert verify(signed.home, Elsewhere(said=(said,))).whole
    assert verify_since_head(signed.home, Elsewhere(said=(said,))).whole


def test_an_old_image_of_the_whole_home_is_found_by_paper_by_the_signed_head_and_at_the_start(
    signed, tmp_path
):
    image = tmp_path / "image"
    shutil.copytree(signed.home, image)
    clock = DayClock(signed.clock, 2)
    with opened(signed, clock, key_of(signed)) as store:
        store.note("later", clock.now(), "station")
    said, last = printed(signed), read_witness(key_of(signed))
    shutil.rmtree(signed.home)
    shutil.copytree(image, signed.home)
    assert verify(signed.home).whole  # in itself it is
    for elsewhere in (Elsewhere(said=(said,)), Elsewhere(signed=(last,))):
        for report in (verify(signed.home, elsewhere), verify_since_head(signed.home, elsewhere)):
            assert not report.whole
            assert "the end is missing, or an older copy was put here" in report.why
    with pytest.raises(EnvironmentFault, match="kept beside the station key"):
        opened(signed, clock, key_of(signed))


def test_heads_of_another_key_are_another_record_s(signed, tmp_path):
    other = make_key(tmp_path / "other.key").public
    for report in (
        verify(signed.home, Elsewhere(key=other)),
        verify_since_head(signed.home, Elsewhere(key=other)),
    ):
        assert not report.whole
        assert "key" in report.why


def test_a_head_signed_by_somebody_else_is_refused(signed, tmp_path):
    now, other = head_now(signed.home, key_of(signed)), make_key(tmp_path / "other.key")
    at = now.signed.at
    forged = SignedHead(now.head, at, other.public, other.sign(now.head.statement(at)))
    report = verify(signed.home, Elsewhere(signed=(forged,)))
    assert "was signed with the key" in report.why


def test_the_quick_look_reads_only_what_came_since(signed):
    quick = verify_since_head(signed.home)
    assert (quick.whole, quick.since, quick.why) == (True, 1, "")
    clock = DayClock(signed.clock, 1)
    store = opened(signed, clock, key_of(signed))
    for number in range(7):
        store.note(f"later {number}", clock.now(), "station")
    assert verify_since_head(signed.home).since == 1 + 1 + 7  # head, start, notes
    store.close()


def test_an_overwritten_page_is_named_by_both_looks(signed):
    with closing(sqlite3.connect(signed.database)) as connection:
        *_, (seq, kept) = connection.execute("SELECT seq, canonical FROM journal ORDER BY id")
    content = bytearray(signed.database.read_bytes())
    page = bytes(content).index(kept) // 4096
    content[page * 4096 : (page + 1) * 4096] = b"\xa5" * 4096
    signed.database.write_bytes(content)
    found, quick = verify(signed.home), verify_since_head(signed.home)
    assert (found.whole, found.page) == (False, page + 1)
    assert found.first_break == found.entries + 1 <= seq
    assert f"page {page + 1} of the file is damaged, entry {found.first_break} cannot" in found.why
    assert not quick.whole
    assert f"page {page + 1} of the file is damaged, the end of the journal cannot" in quick.why


@pytest.mark.parametrize(
    ("statement", "words"),
    [
        ("UPDATE journal SET canonical = x'7b7d' WHERE id = (SELECT max(id) FROM journal)", "chan"),
        ("UPDATE journal SET hash = zeroblob(32) WHERE seq = 300", "are not those that were sig"),
        ("UPDATE tree_block SET root = zeroblob(32)", "are not those that were signed"),
        ("DELETE FROM tree_block", "is missing: run `station journal rebuild`"),
        ("DELETE FROM journal WHERE id = (SELECT max(id) FROM journal)", "the end is missing"),
    ],
)
def test_the_quick_look_names_what_it_sees(signed, statement, words):
    signed.tamper(*UNGUARDED, statement)
    quick = verify_since_head(signed.home)
    assert not quick.whole
    assert words in quick.why


def test_without_a_signed_head_the_quick_look_says_so(world):
    with world.stocked():
        pass
    assert "no signed head" in verify_since_head(world.home).why
