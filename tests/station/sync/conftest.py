"""One real server for all tests of this folder; a fresh database and a fresh record for each."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.station.store.conftest import World
from tests.station.sync.centre import Centre
from tests.station.sync.proxy import Proxy
from tests.station.sync.server import QUICK, Server


@pytest.fixture(scope="session")
def server() -> Iterator[Server]:
    one = Server(QUICK)
    yield one
    one.close()


@pytest.fixture(scope="session")
def founded(server: Server) -> str:
    """Name of a database to copy: an empty centre that admits three stations."""
    return Centre(server, ("HA", "L1A"), ("HA", "L2A"), ("ZB", "L1A")).name


@pytest.fixture
def centre(server: Server, founded: str) -> Iterator[Centre]:
    one = Centre(server, copied_from=founded)
    yield one
    one.close()


@pytest.fixture
def proxy(server: Server) -> Iterator[Proxy]:
    with Proxy(server.port) as one:
        yield one


@pytest.fixture
def world(tmp_path: Path) -> World:
    """Station L1A of site HA."""
    return World(tmp_path / "home")


@pytest.fixture
def packed(world: World) -> World:
    """The same with 12 bags and a closed record."""
    with world.stocked() as store:
        run = world.start(store)
        world.fill(store, run, 12)
    return world
