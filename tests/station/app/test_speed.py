"""The benchmark measures real pairs; its figures are for people, so only their form is tested."""

import json

import pytest
from typer.testing import CliRunner

from station.app.speed.row import Row, measure
from station.app.speed.verb import verbs
from station.cli.verbs import build

ROWS = (
    "parse 1000 frames strictly",
    "parse 1000 frames strictly, each one new",
    "judge a bag exactly",
    "judge and forecast 10000 bags",
    "forecast 10000 bags when half are packed",
    "record a bag durably",
    "draw a label",
    "release a label: draw it, read it back",
    "list the bags of a lot among 2000",
    "list a day's rejects among 2000",
    "start on a record of 2000",
)


@pytest.fixture(scope="module")
def app():
    app = build()
    app.add_typer(verbs(), name="bench")
    return app


def test_every_row_holds_a_ratio_of_medians(app):
    done = CliRunner().invoke(app, ["bench", "--calls", "20", "--json"])
    assert done.exit_code == 0, done.output
    rows = json.loads(done.stdout)["rows"]
    assert tuple(row["name"] for row in rows) == ROWS
    for row in rows:
        assert 0 < row["ours_us"]["p50"] <= row["ours_us"]["p99"]
        assert row["ratio"] > 0
        assert row["best_cpu_us"][0] > 0
        assert row["best_cpu_ratio"] > 0
    per_second = [row["a_second"] for row in rows]
    assert all(per_second[:2])
    assert not any(per_second[2:])


def test_too_few_calls_are_refused(app):
    done = CliRunner().invoke(app, ["bench", "--calls", "3"])
    assert done.exit_code == 2


def test_both_sides_are_called_as_often():
    calls = []
    row = measure("ours", lambda: calls.append(1), "floor", lambda: calls.append(2), 10)
    assert calls == [1, 2] * 11
    assert len(row.ours) == len(row.floor) == 10


def test_the_ratio_is_of_medians():
    assert Row("a", "b", (1.0, 4.0, 100.0), (2.0, 2.0, 2.0)).ratio == 2.0


def test_processor_time_is_the_least_of_all_calls_and_told_by_the_piece():
    row = Row("a", "b", (9.0, 8.0), (4.0, 4.0), (2.5, 1.0), pieces=1000)
    assert (row.best_ratio, row.a_second) == (2.5, 400_000_000)
    assert Row("a", "b", (9.0,), (4.0,)).document()["best_cpu_ratio"] is None
    took = measure("ours", lambda: sum(range(20_000)), "floor", lambda: sum(range(2_000)), 20)
    assert took.best is not None
    assert took.best[0] <= max(took.ours)
    assert took.best_ratio is not None
    assert took.best_ratio > 1
