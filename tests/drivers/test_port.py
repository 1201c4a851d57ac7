"""Opening ports: every refusal names the port, the cause and what to do."""

import os
import socket
import threading
from collections.abc import Callable
from pathlib import Path

import pytest

from drivers.errors import PortError
from drivers.parity import ParityLine
from drivers.port import PortSettings, open_port
from tests.drivers.listening import bare_line


@pytest.mark.parametrize(
    ("given", "words"),
    [
        ({"baud": 9601}, "baud is 9601: allowed are 300, 600"),
        ({"bytesize": 9}, "bytesize is 9: allowed are 7, 8"),
        ({"parity": "X"}, "parity is 'X': allowed are N, E, O"),
        ({"stopbits": 3}, "stopbits is 3: allowed are 1, 2"),
        ({"bytesize": 7}, "7 bits go with parity"),
    ],
)
def test_settings_refuse(given: dict, words: str) -> None:
    with pytest.raises(PortError, match=words) as refused:
        PortSettings("/dev/ttyS9", **given)
    assert "/dev/ttyS9" in str(refused.value)


@pytest.mark.parametrize(
    "url",
    [
        "http://scale:80",
        "socket://scale",
        "socket://:4001",
        "socket://scale:0",
        "socket://scale:70000",
        "socket://scale:x",
        "loop://",
        "rfc2217://[scale",
    ],
)
def test_address_refused(url: str) -> None:
    with pytest.raises(PortError, match="allowed are a serial port, socket://host:port"):
        PortSettings(url)


def test_no_port_named() -> None:
    with pytest.raises(PortError, match="no port is named: present are"):
        PortSettings(" ")


def test_missing_port_lists_what_is_there() -> None:
    with pytest.raises(PortError, match=r"ttyNONE cannot be opened: it is not there: .*present"):
        open_port(PortSettings("/dev/ttyNONE"))


def test_file_is_no_port(tmp_path: Path) -> None:
    path = tmp_path / "file"
    path.write_text("x")
    with pytest.raises(PortError, match="it is no serial port"):
        open_port(PortSettings(str(path)))


def test_second_opener_is_refused_and_then_let_in() -> None:
    with bare_line() as line:
        port = open_port(PortSettings(line.name))
        with pytest.raises(PortError, match="another program has it") as refused:
            open_port(PortSettings(line.name))
        assert line.name in str(refused.value)
        port.close()
        open_port(PortSettings(line.name)).close()


def as_plain_user(task: Callable[[], bool]) -> bool:
    """Run ``task`` in a child that gives up the administrator's rights where it has them."""
    child = os.fork()
    if child == 0:
        done = False
        try:
            if os.getuid() == 0:
                os.setgid(65534)
                os.setuid(65534)
            done = task()
        finally:
            os._exit(not done)
    _, status = os.waitpid(child, 0)
    return os.waitstatus_to_exitcode(status) == 0


def test_port_of_another_user_names_the_group() -> None:
    def refused() -> bool:
        try:
            open_port(PortSettings(line.name))
        except PortError as fault:
            return "dialout" in str(fault)
        return False

    with bare_line() as line:
        Path(line.name).chmod(0)
        assert as_plain_user(refused)


def test_plain_user_may_open_again_after_closing() -> None:
    def twice() -> bool:
        for _ in range(2):
            open_port(PortSettings(line.name)).close()
        return True

    with bare_line() as line:
        Path(line.name).chmod(0o666)
        assert as_plain_user(twice)


@pytest.mark.parametrize("scheme", ["socket", "rfc2217"])
def test_nothing_answers_at_an_address(scheme: str) -> None:
    with socket.create_server(("127.0.0.1", 0)) as taken:
        number = taken.getsockname()[1]
    with pytest.raises(PortError, match="nothing answers there: check the address"):
        open_port(PortSettings(f"{scheme}://127.0.0.1:{number}"))


def test_no_machine_of_that_name() -> None:
    # RFC 6761, 6.4: names under invalid. never resolve
    with pytest.raises(PortError, match="opened: no machine of that name is known: check the addr"):
        open_port(PortSettings("socket://scale.invalid:4001"))


@pytest.mark.filterwarnings("ignore:set(Daemon|Name).*deprecated:DeprecationWarning")
def test_server_that_does_not_speak_rfc2217() -> None:
    threads = threading.active_count()
    with socket.create_server(("127.0.0.1", 0)) as silent:
        url = f"rfc2217://127.0.0.1:{silent.getsockname()[1]}?timeout=0.1"
        with pytest.raises(PortError, match=r"rfc2217://127.* does not speak RFC 2217.*socket://"):
            open_port(PortSettings(url))
    assert threading.active_count() == threads


@pytest.mark.skipif(not hasattr(socket, "TCP_USER_TIMEOUT"), reason="a setting of Linux")
def test_far_end_that_lost_its_power_is_missed_soon() -> None:
    """Linux, tcp(7): what is not confirmed within TCP_USER_TIMEOUT ends the connection."""
    with socket.create_server(("127.0.0.1", 0)) as server:
        port = open_port(PortSettings(f"socket://127.0.0.1:{server.getsockname()[1]}"))
        beneath = port._device._socket
        assert beneath.getsockopt(socket.IPPROTO_TCP, socket.TCP_USER_TIMEOUT) == 10_000
        port.close()


def test_bytes_both_ways_and_old_input_discarded() -> None:
    with bare_line() as line:
        port = open_port(PortSettings(line.name))
        assert port.read() == b""
        line.write(b"old")
        port.discard_input()
        line.write(b"new")
        assert port.read() == b"new"
        port.write(b"\nW\r")
        assert line.read() == b"\nW\r"
        port.close()


def test_seven_bits_with_parity_are_checked_here() -> None:
    with bare_line() as line:
        port = open_port(PortSettings(line.name, bytesize=7, parity="E"))
        parity = ParityLine("E")
        line.write(parity.sent(b"254g"))
        assert port.read() == b"254g"
        line.write(bytes([parity.sent(b"C")[0] ^ 0x80]))
        assert port.read() == b"\xff"
        port.write(b"C")
        assert line.read() == b"\xc3"
        port.close()


def test_pulled_plug_on_every_call() -> None:
    with bare_line() as line:
        port = open_port(PortSettings(line.name))
        line.close()
        for call in (port.read, lambda: port.write(b"x"), port.discard_input):
            with pytest.raises(PortError, match=r"scale lost on .*check the plug"):
                call()
        port.close()
        port.close()
        with pytest.raises(PortError, match="scale lost"):
            port.read()
