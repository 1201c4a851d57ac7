"""Real certificates before a real server: nothing is sent to one that does not prove itself."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from station.errors import BadInput
from station.sync.address import CentreAddress, Tls
from station.sync.connection import connect
from station.sync.errors import CentreGone
from tests.station.sync.certificates import Authority
from tests.station.sync.server import ADMIN, Server
from tests.station.sync.tls_front import TlsFront

HOST = "localhost"
Address = Callable[..., CentreAddress]


@pytest.fixture(scope="module")
def authority() -> Authority:
    return Authority()


@pytest.fixture
def file(tmp_path: Path) -> Callable[[str, bytes], Path]:
    def write(name: str, content: bytes) -> Path:
        path = tmp_path / name
        path.touch(mode=0o600)
        path.write_bytes(content)
        return path

    return write


@pytest.fixture
def front(server: Server, authority: Authority, tmp_path: Path) -> Iterator[TlsFront]:
    with TlsFront(server.port, tmp_path, authority.issue(HOST, HOST)) as one:
        yield one


def address(port: int, host: str = HOST, **more: object) -> CentreAddress:
    return CentreAddress(f"postgresql://{ADMIN}@{host}:{port}/postgres", **more)  # type: ignore[arg-type]


def test_a_server_that_proves_who_it_is_is_spoken_to(front, authority, file):
    ours = file("a.pem", authority.pem)
    with (
        connect(address(front.port, authority=ours), "test", 10) as connection,
        connection.within(10),
    ):
        assert connection.execute("SELECT 1").fetchone() == (1,)
    assert front.spoken


@pytest.mark.parametrize("tls", [Tls.FULL, Tls.AUTHORITY])
def test_another_authority_is_refused(front, file, tls):
    other = file("b.pem", Authority("somebody else").pem)
    with pytest.raises(CentreGone, match="certificate verify failed"):
        connect(address(front.port, authority=other, tls=tls), "test", 10)
    assert not front.spoken


def test_the_same_server_under_another_name_is_refused(front, authority, file):
    ours = file("a.pem", authority.pem)
    with pytest.raises(CentreGone, match="does not match host name"):
        connect(address(front.port, "127.0.0.1", authority=ours), "test", 10)
    assert not front.spoken
    connect(address(front.port, "127.0.0.1", authority=ours, tls=Tls.AUTHORITY), "test", 10).close()


def test_a_certificate_past_its_end_is_refused(server, authority, tmp_path, file):
    ours = file("a.pem", authority.pem)
    with TlsFront(server.port, tmp_path, authority.issue(HOST, HOST, days=-1)) as front:
        with pytest.raises(CentreGone, match="certificate verify failed"):
            connect(address(front.port, authority=ours), "test", 10)
        assert not front.spoken
        connect(address(front.port, tls=Tls.ENCRYPTED), "test", 10).close()


def test_a_server_without_tls_is_refused(server, authority, file):
    with pytest.raises(CentreGone, match="does not support SSL"):
        connect(address(server.port, authority=file("a.pem", authority.pem)), "test", 10)
    with pytest.raises(BadInput, match="needs the certificate of the authority"):
        address(server.port)


def test_a_station_may_prove_itself_by_a_certificate(server, authority, tmp_path, file):
    pem = authority.issue("station_HA_L1A")
    ours = file("a.pem", authority.pem)
    shown = {"certificate": file("c.pem", pem.certificate), "key": file("c.key", pem.key)}
    server_s = authority.issue(HOST, HOST)
    with TlsFront(server.port, tmp_path, server_s, clients=authority.pem) as front:
        connect(address(front.port, authority=ours, **shown), "test", 10).close()
        with pytest.raises(CentreGone):
            connect(address(front.port, authority=ours), "test", 10)
