import os
import re
import shutil
import sqlite3
import subprocess
import sys
from contextlib import closing
from pathlib import Path

import pytest
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from alembic.script import ScriptDirectory

from station.errors import BadInput, EnvironmentFault
from station.store.engine import database, scratch_engine, writer_engine
from station.store.migrate import SCRIPTS, upgrade
from station.store.rebuild import rebuild
from station.store.schema import metadata
from station.store.shape import HEAD, THIS
from station.store.verify import verify

RECORDS = Path(__file__).parents[2] / "data" / "records"

SECOND = """
import sqlalchemy as sa
from alembic import op

revision = "9999"
down_revision = "HEAD"


def upgrade():
    with op.batch_alter_table("lot", table_kwargs={"sqlite_strict": True}) as lot:
        lot.add_column(sa.Column("grower", sa.Text, nullable=False, server_default=""))
        lot.create_check_constraint(op.f("ck_lot_component"), "component <> ''")
    EXTRA
"""


@pytest.fixture
def scripts(tmp_path):
    """The real migrations and one more that rebuilds a table others refer to."""
    return lambda extra="": _with_second(tmp_path, extra)


def _with_second(tmp_path, extra):
    folder = tmp_path / "migrations"
    shutil.copytree(SCRIPTS, folder, ignore=shutil.ignore_patterns("__pycache__"))
    text = SECOND.replace("EXTRA", extra).replace("HEAD", HEAD)
    (folder / "versions" / "9999_test.py").write_text(text)
    return folder


def ask(path, statement):
    with closing(sqlite3.connect(path)) as connection:
        return connection.execute(statement).fetchall()


def counts(path):
    tables = [name for (name,) in ask(path, "SELECT name FROM sqlite_schema WHERE type='table'")]
    return {name: ask(path, f"SELECT count(*) FROM {name}")[0][0] for name in tables}


@pytest.fixture
def populated(world):
    with world.stocked() as store:
        run = world.start(store)
        world.fill(store, run, 6)
    return world.database


def test_the_newest_migration_is_the_one_the_program_asks_for():
    assert ScriptDirectory(SCRIPTS).get_heads() == [HEAD]


def test_an_empty_folder_gives_strict_tables_only(tmp_path):
    path = tmp_path / "station.sqlite"
    assert upgrade(path) is None
    tables = [row for row in ask(path, "PRAGMA table_list") if row[2] == "table"]
    own = {row[1]: row[5] for row in tables if not row[1].startswith("sqlite_")}
    assert set(own) == {*metadata.tables, "alembic_version"}
    assert set(own.values()) == {1}


def test_the_migrated_file_has_the_shape_the_program_works_with(tmp_path):
    path = tmp_path / "station.sqlite"
    upgrade(path)
    engine, scratch = writer_engine(path), scratch_engine()
    with engine.connect() as connection, scratch.connect() as fresh:
        assert compare_metadata(MigrationContext.configure(connection), metadata) == []
        metadata.create_all(fresh)
        shapes = []
        for each in (connection, fresh):
            rows = each.exec_driver_sql(
                "SELECT name, sql FROM sqlite_schema WHERE type IN ('table', 'index')"
                " AND sql IS NOT NULL AND name <> 'alembic_version'"
            )
            # A column added later stands behind the constraints, so the order says nothing.
            shapes.append({name: sorted(re.findall(r"\w+", sql)) for name, sql in rows})
        assert shapes[0] == shapes[1]
    engine.dispose()
    scratch.dispose()


def test_every_constraint_has_a_name():
    for table in metadata.tables.values():
        for constraint in table.constraints:
            assert constraint.name, f"{table.name}: {constraint}"


def test_an_up_to_date_file_is_left_alone(populated):
    before = populated.read_bytes()
    assert upgrade(populated) is None
    assert populated.read_bytes() == before


def test_a_populated_file_is_backed_up_and_keeps_every_row(populated, scripts, world):
    before = counts(populated)
    backup = upgrade(populated, scripts(), "9999")
    assert backup is not None
    assert counts(backup) == before
    assert ask(backup, "SELECT version_num FROM alembic_version") == [(HEAD,)]
    assert counts(populated) == before
    assert ask(populated, "SELECT version_num FROM alembic_version") == [("9999",)]
    assert ask(populated, "PRAGMA foreign_key_check") == []
    (strict,) = [row[5] for row in ask(populated, "PRAGMA table_list") if row[1] == "lot"]
    assert strict == 1
    assert [file for file in world.home.iterdir() if file.suffix == ".unfinished"] == []


def test_a_second_backup_does_not_overwrite_the_first(populated, scripts):
    broken = scripts('op.execute("SELECT * FROM nowhere")')
    for _ in range(2):
        with pytest.raises(EnvironmentFault):
            upgrade(populated, broken, "9999")
    kept = sorted(file.name for file in populated.parent.glob(f"*.shape-{HEAD}.*"))
    assert kept == [f"station.shape-{HEAD}.{number}.sqlite" for number in (1, 2)]


@pytest.mark.parametrize(
    ("extra", "words"),
    [
        ('op.execute("SELECT * FROM nowhere")', "nowhere"),
        ("op.execute(\"DELETE FROM lot WHERE code = 'LF-101'\")", "lot_use refers to nothing"),
    ],
)
def test_a_migration_that_fails_leaves_the_file_as_it_was(populated, scripts, extra, words):
    schema = ask(populated, "SELECT sql FROM sqlite_schema ORDER BY name")
    before = counts(populated)
    with pytest.raises(EnvironmentFault, match=words):
        upgrade(populated, scripts(extra), "9999")
    assert ask(populated, "SELECT sql FROM sqlite_schema ORDER BY name") == schema
    assert counts(populated) == before


def test_a_newer_file_is_refused_untouched(populated, scripts):
    upgrade(populated, scripts(), "9999")
    before = populated.read_bytes()
    with pytest.raises(BadInput, match=rf"newer shape 9999, .* reads {THIS}: "):
        upgrade(populated)
    assert populated.read_bytes() == before


def test_another_program_s_database_is_refused(tmp_path):
    path = tmp_path / "station.sqlite"
    with closing(sqlite3.connect(path)) as other:
        other.execute("CREATE TABLE recipes (x)")
    with pytest.raises(BadInput, match="is no station record"):
        upgrade(path)


def test_it_works_from_any_folder_and_says_nothing(tmp_path):
    code = (
        "import logging, pathlib; logging.basicConfig(level=logging.DEBUG);"
        "from station.store.migrate import upgrade; upgrade(pathlib.Path('station.sqlite'))"
    )
    done = subprocess.run(
        [sys.executable, "-c", code],
        cwd=tmp_path,
        capture_output=True,
        check=False,
        env={**os.environ, "PYTHONPATH": str(SCRIPTS.parents[2])},
        timeout=60,
    )
    assert (done.returncode, done.stdout, done.stderr) == (0, b"", b"")
    assert (tmp_path / "station.sqlite").is_file()


@pytest.mark.parametrize("saved", sorted(RECORDS.glob("shape-*")), ids=lambda path: path.stem)
def test_a_saved_record_of_every_shape_comes_up_to_date_with_every_row(tmp_path, saved):
    home = tmp_path / "home"
    home.mkdir()
    shutil.copy(saved, database(home))
    before = counts(database(home))
    assert upgrade(database(home)) is not None
    after = counts(database(home))
    assert {name: after[name] for name in before} == before
    assert verify(home).whole
    rebuild(home)
    assert counts(database(home)) == after


def test_a_record_of_every_shape_but_the_newest_is_saved():
    shapes = {script.revision for script in ScriptDirectory(SCRIPTS).walk_revisions()}
    assert {saved.stem for saved in RECORDS.iterdir()} == {
        f"shape-{one}" for one in shapes - {HEAD}
    }
