import sqlite3

import pytest

from station.store.engine_facts import engine_facts, has_reset_bug


@pytest.mark.parametrize(
    ("version", "affected"),
    [
        # SQLite's release history: since 3.7.0, fixed in 3.51.3 and 3.53.0; 3.52.0 was withdrawn
        ((3, 6, 23), False),
        ((3, 7, 0), True),
        ((3, 40, 1), True),
        ((3, 46, 1), True),
        ((3, 51, 2), True),
        ((3, 51, 3), False),
        ((3, 52, 0), True),
        ((3, 53, 0), False),
        ((4, 0, 0), False),
    ],
)
def test_versions_with_the_reset_bug(version, affected):
    assert has_reset_bug(version) is affected


def test_what_the_service_screen_shows(world):
    with world.stocked() as store:
        world.fill(store, world.start(store), 3)
        found = engine_facts(world.home)
    assert found.version == sqlite3.sqlite_version
    assert found.affected is has_reset_bug(sqlite3.sqlite_version_info)
    assert found.journal_mode == "wal"
    assert dict(found.pragmas)["synchronous"] == "2"
    assert dict(found.pragmas)["wal_autocheckpoint"] == "0"
    assert found.page_size * found.pages > 0
    assert found.log_bytes > 0
    assert ("through one" in found.words) is found.affected
