"""A small simulated week, made once: a record of fifteen runs with every planted fault."""

from datetime import date

import pytest

from station.app.places import demo_settings
from station.app.week.make import Week
from station.app.week.plan import LEAST_BAGS, plan_week
from station.app.week.tally import WeekMade
from station.config.load import load

WEEK_ENDS = date(2026, 11, 20)


@pytest.fixture(scope="session")
def week(tmp_path_factory: pytest.TempPathFactory) -> WeekMade:
    """The week in a folder to be read only; copy it before anything is added."""
    house = load(demo_settings(), WEEK_ENDS)
    home = tmp_path_factory.mktemp("week")
    return Week(house, home, plan_week(house, LEAST_BAGS, 1, WEEK_ENDS), seed=1).make()
