"""Every verb that takes a record says what a file is that it cannot read, and leaves it alone."""

import shutil
import sqlite3
from contextlib import closing
from pathlib import Path
from shutil import copytree

import pytest
import typer

from station.app.main import every_verb
from station.app.places import demo_settings
from station.cli.entry import run
from station.store.engine import database
from station.store.shape import HEAD, KEPT, THIS

RECORDS = Path(__file__).parents[2] / "data" / "records"
DAY = ("--day", "2026-11-25")
SIGNED = ("--who", "L01", "--why", "as told")
SYNC = '[sync]\ncentre = "postgresql://s@127.0.0.1:1/x"\ntls = "require"\n'
BAG = "A1-AA-000001"

READING = {
    "about": (),
    "backup": ("--to", "OUT"),
    "batch": ("--run", "last"),
    "cases list": (),
    "checks": (),
    "evidence": ("--run", "last", "--out", "OUT/pack"),
    "export": ("--kind", "plain", "--out", "OUT/x.txt", *DAY),
    "forecast": ("--run", "last", "--expected", "10"),
    "giveaway": (),
    "handover": DAY,
    "journal head": (),
    "journal prove": ("--entry", "1"),
    "journal rebuild": (),
    "journal verify": (),
    "label": ("--pdf", "OUT/label.pdf", "--pack", BAG),
    "labels": (),
    "lots list": (),
    "purge": (),
    "recall": DAY,
    "record": DAY,
    "rejects": DAY,
    "release": (),
    "report": DAY,
    "scale-check": (),
    "suspects": (),
    "sync drain": ("--minutes", "0.001"),
    "sync once": (),
    "sync reconcile": (),
    "sync status": (),
    "target": ("--run", "last"),
    "trace": ("--pack", BAG),
}
"""What is asked of each verb that reads a record, so that it comes to reading it."""

WRITING = {
    "cases fill": ("--bag", BAG, "--who", "L01"),
    "cases pallet": ("095201234567891248", "--gross", "12 kg", "--who", "L01"),
    "cases ship": ("095201234567891248", "--customer", "C1", "--paper", "1", "--who", "L01"),
    "cases undo": ("095201234567891248", *SIGNED),
    "hold": ("--serial", BAG, *SIGNED),
    "journal key": ("--new", *SIGNED),
    "labels resolve": (BAG, "--fate", "applied", "--who", "L01"),
    "lots hold": ("SM-WC26323", *SIGNED),
    "lots receive": ("--supplier", "S", "--component", "SLAW-W", "--who", "L01"),
    "lots release": ("SM-WC26323", *SIGNED),
    "people add": ("P99", "--name", "Nobody", "--role", "packer", *SIGNED),
    "people badge": ("P01", *SIGNED),
    "people disable": ("P01", *SIGNED),
    "people pin": ("P01", *SIGNED),
    "purge": ("--really", "--to", "OUT", *SIGNED),
    "rejects bin": ("1", *DAY, *SIGNED),
    "rejects decide": (BAG, "--as", "dumped", *SIGNED),
    "release": (BAG, *SIGNED),
}
"""The same of verbs that write; an older record they bring up to date, as a start does."""

SETTLING = {"labels resolve", "release"}
"""Verbs that need settings for what they are asked here, and not for all they do."""

OTHER = {"demo", "people list", "restore", "run", "week"}
"""Verbs that start a station or make a record, and one that reads another file of a home."""


def verbs():
    """The words of every verb that takes a home, and whether it needs settings too."""

    def below(command, words):
        subs = getattr(command, "commands", {})
        for name, sub in subs.items():
            yield from below(sub, (*words, name))
        options = {option: one for one in command.params for option in one.opts}
        if "--home" in options:
            yield " ".join(words), options["--config"].required

    return dict(below(typer.main.get_command(every_verb()), ()))


def test_no_verb_that_takes_a_record_is_forgotten():
    assert {*READING, *WRITING, *OTHER} == set(verbs())


# --- files that are no record of this shape -------------------------------------------------------


def changed(*statements):
    """Give a maker of a home out of one of this shape."""

    def make(home, packed):
        copytree(packed, home, dirs_exist_ok=True)
        with closing(sqlite3.connect(database(home), isolation_level=None)) as file:
            for statement in statements:
                file.execute(statement)

    return make


def nothing(home, _):
    (home / "labels").mkdir()


def empty(home, _):
    database(home).touch()


def text(home, _):
    database(home).write_text("bag,net\n1,342\n" * 99)


def recipes(home, _):
    with closing(sqlite3.connect(database(home))) as file:
        file.execute("CREATE TABLE recipes (x)")
        file.execute("CREATE TABLE alembic_version (version_num TEXT)")
        file.execute("INSERT INTO alembic_version VALUES ('1b2c3d')")
        file.commit()


def saved(number):
    def make(home, _):
        shutil.copy(RECORDS / f"shape-{number}.sqlite", database(home))

    return make


OLDER = f"this program reads {THIS}: start the station once (`station run`), which brings the"
NEWER = f"this program reads {THIS}: install the newer one; nothing was changed"
BETWEEN = "a program between two releases made it"

HOMES = {
    "nothing": (nothing, "no station record in", "give the folder that holds station.sqlite"),
    "empty": (empty, "is empty, there is no record in it", "restore the last backup"),
    "text": (text, "is no station record, or its head is damaged", "give the right folder"),
    "recipes": (recipes, "is no station record", "tables alembic_version, recipes"),
    "first": (saved("0001"), "older shape 0001, last opened by version 0.1.0 on 2026-", OLDER),
    "second": (saved("0002"), "older shape 0002, last opened by version 0.1.0 on 2026-", OLDER),
    "earlier": (
        changed(
            "ALTER TABLE blend DROP COLUMN kept_ug",
            "ALTER TABLE blend DROP COLUMN aside_ug",
            f"PRAGMA user_version = {KEPT - 1}",
        ),
        f"older shape {HEAD}.{KEPT - 1}, last opened by version",
        OLDER,
    ),
    "later": (
        changed("ALTER TABLE run ADD COLUMN more TEXT", f"PRAGMA user_version = {KEPT + 1}"),
        f"newer shape {HEAD}.{KEPT + 1}, last opened by version",
        NEWER,
    ),
    "next": (
        changed("UPDATE alembic_version SET version_num = '0004'"),
        "newer shape 0004, last opened by version",
        NEWER,
    ),
    "without a column": (
        changed("ALTER TABLE unit DROP COLUMN copies"),
        f"shape {THIS} without column copies of table unit, last opened by version",
        BETWEEN,
    ),
    "without a table": (
        changed("DROP TABLE standing", "PRAGMA user_version = 0"),
        f"shape {HEAD}.0 without table standing, last opened by version",
        BETWEEN,
    ),
}
"""What stands in a home, and what is said of it."""

ONE_OF_EACH_WAY = {verb: READING[verb] for verb in ("journal rebuild", "sync once", "trace")}
"""The ways to a record: for building it anew, for the centre, for a question."""


@pytest.fixture
def asked(tmp_path, packed, capsys, monkeypatch):
    """A function that makes a home and asks verbs of it: gives what each said, and the changes."""
    for name in ("STATION_HOME", "STATION_CONFIG"):
        monkeypatch.delenv(name, raising=False)
    config = copytree(demo_settings(), tmp_path / "settings")
    station = config / "station.toml"
    told = station.read_text("utf-8").replace('pins = "required"', 'pins = "off"')
    station.write_text(f"{told}\n{SYNC}", "utf-8")
    home, out = tmp_path / "home", tmp_path / "out"
    home.mkdir()
    out.mkdir()
    app, needy = every_verb(), verbs()

    def ask(make, words):
        make(home, packed.home)
        before = files(home)
        said = {}
        for verb, rest in words.items():
            rest = [one.replace("OUT", str(out)) for one in rest]
            settings = ("--config", str(config)) if needy[verb] or verb in SETTLING else ()
            code = run(app, [*verb.split(), *rest, "--home", str(home), *settings])
            said[verb] = (code, *capsys.readouterr())
            assert (verb, files(home) == before, list(out.iterdir())) == (verb, True, [])
        return said

    return ask


def files(home):
    """All files of a home but what SQLite lays beside a file that is read."""
    return {
        path: path.read_bytes()
        for path in sorted(home.rglob("*"))
        if path.is_file() and not path.name.endswith(("-shm", "-wal"))
    }


@pytest.mark.parametrize("home", ["nothing", "second", "next"])
def test_every_verb_that_reads_says_what_the_record_is(asked, home):
    make, *words = HOMES[home]
    for verb, said in asked(make, READING).items():
        assert_told(verb, said, words, 2)


@pytest.mark.parametrize("home", sorted({*HOMES} - {"nothing", "second", "next", "text"}))
def test_each_way_to_a_record_says_what_it_is(asked, home):
    make, *words = HOMES[home]
    for verb, said in asked(make, ONE_OF_EACH_WAY).items():
        assert_told(verb, said, words, 2)


def test_a_file_that_is_no_database_may_be_a_damaged_record(asked):
    """So it is a fault of the surroundings, and verifying names the page."""
    make, *words = HOMES["text"]
    said = asked(make, READING)
    code, out, err = said.pop("journal verify")
    assert (code, "page 1 of the file is damaged" in " ".join(out.split()), err) == (1, True, "")
    for verb, each in said.items():
        assert_told(verb, each, words, 3)


@pytest.mark.parametrize("home", ["recipes", "later", "next", "without a column"])
def test_no_verb_that_writes_changes_a_record_it_does_not_know(asked, home):
    make, *words = HOMES[home]
    verbs_asked = WRITING if home == "next" else {"hold": WRITING["hold"]}
    for verb, said in asked(make, verbs_asked).items():
        assert_told(verb, said, words, 2)


def assert_told(verb, said, words, code):
    """In one line on the error stream, with what it is and what to do."""
    found, out, err = said
    assert (verb, found, out, err.count("\n")) == (verb, code, "", 1)
    for word in words:
        assert (verb, word in err) == (verb, True), err
    assert (verb, "no such" in err) == (verb, False)
