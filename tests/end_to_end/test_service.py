"""An unknown scale on a real line is taught by touch; after a restart the station packs with it.

Three formats invented for this test: a line that sends by itself, one framed by control characters
with a check after its end, and one that is asked for every line and has no flags at all.
"""

import os
import select
import shutil
import threading
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path

import pytest
from PySide6.QtCore import Qt

from drivers.frames.checksum import KINDS
from drivers.frames.description import Meaning
from drivers.port import PortSettings
from drivers.zero_gate import PRESS_PAN
from station.app.assembly import Audience, Station
from station.app.places import demo_settings
from station.app.practice import run_choice
from station.app.watch import Watch
from station.config.load import load
from station.line.opening import calendar_day
from station.line.state import LineState, Phase
from station.screens.bridge import Bridge
from station.screens.service import ServicePage
from tests.drivers.listening import BareLine
from tests.end_to_end.line import PATIENCE_S, without_gates, without_papers, without_pins
from tests.station.screens.service_rig import PEOPLE

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only
EVERY_S = 0.04
TRIES = 30
"""So often a bag is put on again, or a hand, before the test gives up."""
HAND = 400


@dataclass
class Scale:
    """Sends lines over a pty: what is on its pan, at rest or not."""

    line: Callable[[int, bool], bytes]
    request: bytes = b""
    grams: int = 0
    still: bool = True
    wire: BareLine = field(default_factory=BareLine)
    _stopping: threading.Event = field(default_factory=threading.Event)

    def __post_init__(self) -> None:
        os.set_blocking(self.wire.end, False)
        self._thread = threading.Thread(target=self._work)
        self._thread.start()

    def put(self, grams: int, still: bool = True) -> None:
        self.grams, self.still = grams, still

    def close(self) -> None:
        self._stopping.set()
        self._thread.join()
        self.wire.close()

    def _work(self) -> None:
        asked = b""
        while not self._stopping.wait(EVERY_S):
            if select.select([self.wire.end], [], [], 0)[0]:
                asked = (asked + self.wire.read())[-200:]
            times = asked.count(self.request) if self.request else 1
            asked = b"" if times else asked
            for _ in range(min(times, 2)):
                try:
                    self.wire.write(self.line(self.grams, self.still))
                except BlockingIOError:
                    continue  # nobody reads just now


def plain(grams: int, still: bool) -> bytes:
    return f"{'q' if still else 'w'}={grams:>8} g \r\n".encode()


def framed(grams: int, still: bool) -> bytes:
    body = f"{'Y' if still else 'N'} {grams * 10:06d}~".encode()
    return b"\x02" + body + b"\x03" + bytes([KINDS["xor"].of(body + b"\x03")])


def bare(grams: int, still: bool) -> bytes:
    return f"w {grams}\r\n".encode()


@dataclass(frozen=True)
class Format:
    name: str
    line: Callable[[int, bool], bytes]
    marks: Callable[[bytes], dict[str, tuple[int, int]]]
    shown: Callable[[int], str] = str
    flags: bool = True
    request: bytes = b""
    typed: str = ""


FORMATS = (
    Format("Plain", plain, lambda _: {"flag": (0, 1), "value": (2, 10), "unit": (11, 13)}),
    Format("Framed", framed, lambda _: {"flag": (1, 2), "value": (3, 9)}, lambda n: f"{n}.0"),
    Format(
        "Bare asked",
        bare,
        lambda line: {"value": (2, len(line) - 2)},
        flags=False,
        request=b"?w\r",
        typed=r"?w\r",
    ),
)


class Rig:
    """A station on a pty, and its service page."""

    def __init__(self, config: Path, home: Path, scale: Scale, bridge: Bridge | None = None):
        today = datetime.now(UTC).date()  # noqa: TID251  the demo's lots are days old
        self.house = without_pins(without_papers(without_gates(load(config, today))))
        self.watch = Watch()
        self.pages: list[bytes] = []

        def state(one) -> None:
            self.watch.state(one)
            if bridge is not None:
                bridge.publish(one)

        audience = Audience(state, self.watch.answer, label=self.pages.append)
        port = PortSettings(scale.wire.name)
        self.station = Station(self.house, home, port, home / "l", audience, settings=config)
        self.station.start()

    def close(self) -> None:
        self.station.stop()

    def until(self, holds):
        return self.watch.until(holds, PATIENCE_S)


@pytest.mark.parametrize("form", FORMATS, ids=lambda form: form.name)
def test_unknown_scale_is_taught_and_then_packs_a_bag(qtbot, tmp_path, form: Format):
    config = tmp_path / "settings"
    shutil.copytree(demo_settings(), config)
    scale = Scale(form.line, form.request)
    try:
        teach(qtbot, config, tmp_path / "home", scale, form)
        rig = Rig(config, tmp_path / "home", scale)
        try:
            assert rig.house.settings.scale.protocol == "described"
            pack_two(rig, scale)
        finally:
            rig.close()
    finally:
        scale.close()


def teach(qtbot, config: Path, home: Path, scale: Scale, form: Format) -> None:
    bridge = Bridge()
    rig = Rig(config, home, scale, bridge)
    line, desks = rig.station.line, rig.station.service
    page = ServicePage(bridge, line, desks.desk, desks.learn, desks.swap, PEOPLE)
    qtbot.addWidget(page, before_close_func=lambda one: one.stop())
    try:
        page.resize(1024, 768)
        page.show()
        page.choose(3)
        panel = page.learn
        qtbot.keyClicks(panel.name, form.name)
        qtbot.keyClicks(panel.request, form.typed)
        click(qtbot, panel.listen_button)
        click(qtbot, panel.units["g"])
        for grams, still in ((0, True), (254, True), (1200, not form.flags), (12, True)):
            scale.put(grams, still)
            due = form.line(grams, still)
            qtbot.waitUntil(
                lambda due=due: bool(panel.rows.view) and panel.rows.view[-1].data == due
            )
            click(qtbot, panel.take_button)
            assert panel.strip.view.line == due
            if not panel.strip.view.marks:
                for name, (begin, end) in form.marks(due).items():
                    drag(qtbot, panel.strip, begin, end)
                    click(qtbot, panel.fields[name])
            qtbot.keyClicks(panel.shown, form.shown(grams))
            if form.flags:
                for meaning, on in ((Meaning.STABLE, still), (Meaning.MOTION, not still)):
                    if panel.says[meaning].isChecked() is not on:
                        click(qtbot, panel.says[meaning])
            click(qtbot, panel.keep_button)
        click(qtbot, panel.propose_button)
        assert panel.proposed is not None, panel.message.text()
        assert "lines are weights" in panel.message.text()
        click(qtbot, panel.save_button)
        assert "Stop and start the station" in panel.message.text()
    finally:
        page.stop()
        rig.close()


def click(qtbot, button) -> None:
    assert button.isEnabled(), button.text()
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def drag(qtbot, strip, begin: int, end: int) -> None:
    left = Qt.MouseButton.LeftButton
    qtbot.mousePress(strip, left, pos=strip.centre(begin).toPoint())
    qtbot.mouseMove(strip, strip.centre(end - 1).toPoint())
    qtbot.mouseRelease(strip, left, pos=strip.centre(end - 1).toPoint())


def pack_two(rig: Rig, scale: Scale) -> None:
    """Put two bags on, one after the other; each is recorded, labelled and lifted."""
    product = next(iter(rig.house.products.values()))
    day = calendar_day(rig.station.clock.now())
    scale.put(0)
    rig.station.line.start_run(run_choice(rig.house, product, day, None))
    answer = rig.watch.next_answer(PATIENCE_S)
    assert answer.started, answer.words
    gross = int(product.target.grams + product.bag.tare.grams)
    for number in (1, 2):
        state = pack(rig, scale, gross, number)
        assert state.last.net.grams == gross - product.bag.tare.grams
    assert len(rig.pages) >= 2


def pack(rig: Rig, scale: Scale, gross: int, number: int) -> LineState:
    """Put one bag on until it counts, from an empty pan each time, as the line asks for it.

    A scale that is asked says a weight five times a second; where this machine leaves its thread
    without a turn for half a second the line believes no bag that lay on the pan meanwhile. One
    that was lifted meanwhile it wants proved by a hand on the pan.
    """
    for _ in range(TRIES):
        scale.put(0)
        state = rig.until(lambda state: state.phase is Phase.READY or state.because == PRESS_PAN)
        if state.because == PRESS_PAN:
            scale.put(HAND)
            rig.until(lambda state: state.shown is not None and state.shown.digits == str(HAND))
            scale.put(0)
            rig.until(lambda state: state.because != PRESS_PAN)
            continue
        if state.tally.good == number:
            return state
        scale.put(gross // 2, still=False)
        rig.until(lambda state: state.phase in (Phase.LOADED, Phase.CLEAR_PAN))
        scale.put(gross)
        rig.until(lambda state: state.phase in (Phase.LIFT, Phase.CLEAR_PAN))
    pytest.fail(f"bag {number} did not count in {TRIES} tries: {rig.watch.newest}")
