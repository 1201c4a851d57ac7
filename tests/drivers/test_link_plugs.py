"""The link whose plug is pulled and put back, missing, or in the hands of another."""

import select
import threading
import time
from pathlib import Path

from drivers.backoff import Backoff
from drivers.bench import BenchScale
from drivers.frames import scp0499_commands as command
from drivers.frames.base import Garbage
from drivers.frames.scp0499 import Scp0499Parser
from drivers.link import ScaleLink
from drivers.port import PortSettings, open_port
from drivers.steady import Reading
from tests.campaigns.scale_plugs import pull_plugs
from tests.drivers.listening import GRAMS, Listener, bare_line, frame, linked


def test_unplugged_while_idle_and_plugged_in_again(scale: BenchScale) -> None:
    with linked(PortSettings(scale.url), GRAMS) as (heard, _):
        heard.steady("0")
        scale.freeze(True)
        scale.unplug()
        down = heard.down()
        assert scale.url in down.why
        assert "check the plug" in down.why
        assert 0 < down.retry_in_s <= 0.1
        assert "cannot be opened" in heard.down().why
        scale.plug_in()
        scale.freeze(False)
        assert heard.up().epoch == 2
        first = heard.next(Reading)
        assert (first.epoch, first.steady) == (2, False)
        heard.steady("0")


def test_unplugged_in_mid_frame_while_the_listener_is_busy() -> None:
    class Slow(Listener):
        def __call__(self, item: object) -> None:
            super().__call__(item)
            if isinstance(item, Reading):
                busy.set()
                gone.wait(10)

    busy, gone = threading.Event(), threading.Event()
    with bare_line() as line, linked(PortSettings(line.name), listener=Slow()) as (heard, _):
        heard.up()
        line.write(frame("254") * 5 + frame("254")[:11])
        assert busy.wait(10)
        line.close()
        gone.set()
        assert "check the plug" in heard.down().why
        readings = [item for item in heard.items if isinstance(item, Reading)]
        assert {reading.digits for reading in readings} == {"254"}


def test_what_was_sent_before_opening_is_never_read() -> None:
    with bare_line() as line:
        line.write(frame("111") * 20 + frame("111")[:7])
        with linked(PortSettings(line.name)) as (heard, _):
            select.select([line.end], [], [], 10)  # the link has discarded, and now asks
            assert line.read() == command.repeat()
            line.write(frame("111")[7:] + frame("254") * 2)
            heard.steady("254")
        assert not [i for i in heard.items if isinstance(i, Reading) and i.digits == "111"]
        assert not [i for i in heard.items if isinstance(i, Garbage)]


def test_missing_port_is_told_with_what_is_there_and_found_when_it_comes(tmp_path: Path) -> None:
    name = tmp_path / "tty-scale"
    with linked(PortSettings(str(name))) as (heard, _):
        down = heard.down()
        assert str(name) in down.why
        assert "present are:" in down.why
        with bare_line() as line:
            name.symlink_to(line.name)
            assert heard.up().epoch == 1


def test_second_station_on_one_port_is_told(tty_scale: BenchScale) -> None:
    with linked(PortSettings(tty_scale.url)) as (first, _):
        first.steady("0")
        with linked(PortSettings(tty_scale.url)) as (second, _):
            assert "another program has it" in second.down().why
        first.forget()
        first.steady("0")


def test_thirty_plugs_pulled_at_any_byte_give_no_wrong_weight(tmp_path: Path) -> None:
    assert pull_plugs(30, tmp_path, lambda _: None) == []


def test_stops_at_once_in_every_state(tmp_path: Path) -> None:
    never = ScaleLink(PortSettings("/dev/ttyNONE"), Scp0499Parser, GRAMS, Listener())
    never.stop()
    patient = Backoff(60, 60)
    began = time.monotonic()
    with linked(PortSettings(str(tmp_path / "none")), backoff=patient) as (heard, _):
        heard.down()
    with bare_line() as line, linked(PortSettings(line.name)) as (heard, _):
        heard.up()
    assert time.monotonic() - began < 30  # no wait between two tries was waited for


def test_port_is_free_after_the_stop() -> None:
    with bare_line() as line:
        with linked(PortSettings(line.name)) as (heard, _):
            heard.up()
        open_port(PortSettings(line.name)).close()
