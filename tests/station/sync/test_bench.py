"""The benchmarks of the centre measure real work; their figures are for people."""

import json

from typer.testing import CliRunner

from station.app.speed.verb import verbs
from station.cli.verbs import build


def call(*arguments: object):
    app = build()
    app.add_typer(verbs(), name="bench")
    return CliRunner().invoke(app, ["bench", *map(str, arguments)])


def test_sending_is_measured_beside_bare_copy(server):
    server.make_database("sending")
    done = call(
        "sending", "--centre", server.url("sending"), "--tls", "disable", "--pieces", 10, "--json"
    )
    assert done.exit_code == 0, done.output
    rows = json.loads(done.stdout)["rows"]
    assert [row["floor"] for row in rows] == ["bare COPY of them", "bare COPY, then ON CONFLICT"]
    assert all(row["calls"] == 10 and row["ratio"] > 0 for row in rows)
    with server.connect("sending") as connection:
        for table in ("centre.entry", "bare_copy", "bare_conflict"):
            (count,) = connection.execute(f"SELECT count(*) FROM {table}").fetchone()
            assert count == 7500, table


def test_a_fleet_sends_at_once_and_is_asked(server):
    server.make_database("fleet")
    at = ("--centre", server.url("fleet"), "--tls", "disable")
    done = call("fleet", *at, "--stations", 2, "--bags", 60, "--json")
    assert done.exit_code == 0, done.output
    found = json.loads(done.stdout)
    assert found["stations"] == 2
    assert found["recalled"] > 0
    assert found["rate"] > 0
    with server.connect("fleet") as connection:
        rows = connection.execute("SELECT site, station, seq FROM centre.watermark").fetchall()
        assert {row[:2] for row in rows} == {("F000", "S00"), ("F000", "S01")}
        assert found["entries"] == sum(row[2] for row in rows)
        (packs,) = connection.execute("SELECT count(*) FROM centre.pack").fetchone()
        assert packs == 120


def test_what_is_out_of_range_is_refused():
    at = ("--centre", "postgresql://a@127.0.0.1:1/b", "--tls", "disable")
    assert call("sending", *at, "--pieces", 3).exit_code == 2
    assert call("fleet", *at, "--stations", 0).exit_code == 2
    assert call("fleet", *at, "--stations", 1, "--bags", 10).exit_code == 3
