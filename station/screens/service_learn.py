"""The wizard for an unknown scale: hear its lines, mark the fields, test a proposal, keep it."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QTimer, Slot
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from drivers.errors import DescriptionError, RecordingError
from drivers.frames.description import Description, Meaning
from drivers.frames.lesson import (
    ASK_EVERY_MS,
    FIELDS,
    carried,
    lines_of,
    teach,
    verdict,
    with_mark,
)
from drivers.frames.proposal import MarkedLine
from drivers.wire import Passed
from station.errors import StationError
from station.line.state import Intents
from station.screens.pan_bar import PanBar
from station.screens.service_source import LearnSource
from station.screens.theme import KEY_MM, Palette, Ruler
from station.screens.widgets.byte_strip import ByteStrip, Strip
from station.screens.widgets.entry_field import EntryField
from station.screens.widgets.sheet import Message
from station.screens.widgets.touch_button import TouchButton
from station.screens.widgets.wire_list import WireList

BAR, BAR_WORDS = "scale lesson", "somebody teaches the station the lines of this scale: SERVICE"
_SAYS = (
    ("AT REST", Meaning.STABLE),
    ("MOVING", Meaning.MOTION),
    ("NET", Meaning.NET),
    ("ZERO", Meaning.ZERO),
    ("OVER", Meaning.OVER),
)
_NAMES = {"sign": "PLUS/MINUS"}
"""Of fields whose own name says something else elsewhere."""
_KEYS = {"value": "V", "unit": "U", "flag": "F", "sign": "G", "check": "C"}
_FIRST = "LISTEN to the scale, or open a RECORDING; put a known weight on the pan and TAKE a line."


class LearnPanel(QWidget):
    """Leads from bytes to a description in the settings.

    Args:
        intents: keeps bags out meanwhile.
        source: lends the line.
        palette: colours.
        bar: keeps bags out until the known weight is off the pan; its owner lets it see the line.
    """

    def __init__(
        self,
        intents: Intents,
        source: LearnSource,
        palette: Palette,
        bar: PanBar,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._intents, self._source, self._palette, self._bar = intents, source, palette, bar
        self.listening = False
        self._played: tuple[Passed, ...] = ()
        self._tapes: list[Path] = []
        self._seen: tuple[tuple[Passed, ...], Description | None] | None = None
        """What was shown last, and by which proposal."""
        self._kept: tuple[Passed, ...] = ()
        """What was heard when each line was taken: the verdict covers it too."""
        self.taught: list[MarkedLine] = []
        self.proposed: Description | None = None
        self.message = Message(palette, 4.2)
        self.rows = WireList(palette)
        self.strip = ByteStrip(palette)
        self.name = EntryField(palette, "name of the format")
        self.request = EntryField(palette, r"asked by, as in W\r\n")
        self.shown = EntryField(palette, "digits it shows")
        self.listen_button = self._button("LISTEN", "L", checkable=True)
        self.tape_button = self._button("RECORDING")
        self.take_button = self._button("TAKE LINE", "T")
        self.keep_button = self._button("KEEP LINE", "K")
        self.propose_button = self._button("PROPOSE", "P")
        self.save_button = self._button("SAVE", "S")
        self.again_button = self._button("START OVER")
        self.fields = {
            one: self._button(_NAMES.get(one, one.upper()), _KEYS[one]) for one in FIELDS
        }
        self.clear_button = self._button("NO MARKS")
        self.units = {one: self._button(one, checkable=True) for one in source.units}
        self.says = {one: self._button(words, checkable=True) for words, one in _SAYS}
        self._asking = QTimer(self)
        self._asking.setInterval(ASK_EVERY_MS)
        self._compose()
        self._connect()
        self.begin()

    @property
    def keyed(self) -> tuple[TouchButton, ...]:
        """Buttons that their own key presses."""
        steps = (self.listen_button, self.take_button, self.keep_button, self.propose_button)
        return (*steps, self.save_button, *self.fields.values())

    def _button(self, words: str, small: str = "", checkable: bool = False) -> TouchButton:
        button = TouchButton(self._palette, words, small=small, least_mm=KEY_MM)
        button.setCheckable(checkable)
        button.cap_px = Ruler.of(self.screen()).px(3.6)
        return button

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        for part in (self.rows, self.strip):
            part.set_unit(ruler.px(1))
        self.strip.setFixedHeight(round(ruler.px(18)))
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(round(ruler.px(2)))
        whole.addLayout(_row((self.listen_button, self.tape_button, self.request, self.name)))
        whole.addWidget(self.message)
        whole.addWidget(self.rows, 1)
        whole.addWidget(self.strip)
        whole.addLayout(_row((*self.fields.values(), self.clear_button)))
        whole.addLayout(_row((*self.units.values(), *self.says.values())))
        steps = (self.take_button, self.keep_button, self.propose_button, self.save_button)
        whole.addLayout(_row((self.shown, *steps, self.again_button)))

    def _connect(self) -> None:
        self.listen_button.clicked.connect(self.listen)
        self.tape_button.clicked.connect(self.play)
        self.take_button.clicked.connect(self.take)
        self.keep_button.clicked.connect(self.keep)
        self.propose_button.clicked.connect(self.propose)
        self.save_button.clicked.connect(self.save)
        self.again_button.clicked.connect(self.begin)
        self.clear_button.clicked.connect(self.clear_marks)
        for field, button in self.fields.items():
            button.clicked.connect(lambda _=False, one=field: self.mark(one))
        for unit, button in self.units.items():
            button.clicked.connect(lambda _=False, one=unit: self.choose_unit(one))
        self._asking.timeout.connect(self._ask)

    # --- hearing ----------------------------------------------------------------------------------

    @Slot()
    def begin(self) -> None:
        """Forget everything taught."""
        self.taught, self.proposed, self._kept = [], None, ()
        self.strip.set(Strip())
        self.shown.clear()
        for button in (*self.says.values(), *self.units.values()):
            button.setChecked(False)
        self.message.say(_FIRST)
        self._enable()

    @Slot()
    def listen(self) -> None:
        """Ask the scale nothing and hear what it sends, or leave it to the line again."""
        self.listening = self.listen_button.isChecked()
        self._played = ()
        self._source.listen(self.listening)
        if self.listening:
            self._intents.bar(BAR, BAR_WORDS)
            self._asking.start()
        else:
            self._bar.begin()
            self._bar.end()
            self._intents.bar(BAR, "")
            self._asking.stop()
        self._enable()

    @Slot()
    def play(self) -> None:
        """Take the next recording of the station instead of the line, the newest first."""
        self._tapes = self._tapes or list(self._source.recordings())
        if not self._tapes:
            self.message.say("There is no recording: make one on the page WIRE.", refused=True)
            return
        tape = self._tapes.pop(0)
        try:
            self._played = self._source.play(tape)
        except RecordingError as refused:
            self.message.say(str(refused), refused=True)
        else:
            self.message.say(f"From the recording {tape.name}: TAKE a line.")
        self.refresh()
        self._enable()

    def stop(self) -> None:
        """Leave the scale to the line again."""
        if self.listening:
            self.listen_button.setChecked(False)
            self.listen()

    def refresh(self) -> None:
        """Show what is heard now, by the proposal where there is one."""
        heard = self._heard()
        seen = (heard, self.proposed)
        if self._played and self._seen is not None and seen == self._seen:
            return  # a recording stays the same, and a long one takes its time
        self._seen = seen
        if self.proposed is not None:
            self.rows.set(verdict(self.proposed, heard).rows[-60:])
        else:
            self.rows.set(lines_of(heard)[-60:])

    def _heard(self) -> tuple[Passed, ...]:
        if self._played:
            return self._played
        return self._source.heard() if self.listening else ()

    @Slot()
    def _ask(self) -> None:
        request = self._request()
        if request and not self._played:
            self._source.ask(request)

    def _request(self) -> bytes:
        text = self.request.text()
        for written, meant in ((r"\r", "\r"), (r"\n", "\n"), (r"\x1b", "\x1b")):
            text = text.replace(written, meant)
        return text.encode("ascii", "ignore")

    # --- marking ----------------------------------------------------------------------------------

    @Slot()
    def take(self) -> None:
        """Take the newest whole line, with the marks of the one before where they fit."""
        rows = lines_of(self._heard())
        if not rows:
            self.message.say(
                "No whole line was heard yet. Is the scale on, and are baud rate and parity those"
                " of its menu? A scale that is to be asked needs its request above.",
                refused=True,
            )
            return
        line = rows[-1].data
        before = self.taught[-1] if self.taught else None
        marks = self.strip.view.marks if self.strip.view.line == line else ()
        if before is not None:
            marks = carried(before.marks, before.line, line)
        self.proposed = None
        self.strip.set(Strip(line, marks))
        self.strip.setFocus()
        self.message.say(
            "Choose cells, then say what they are: VALUE and, where they are there, UNIT, FLAG,"
            " CHECK. Type the digits of the scale's display, its unit, and what else is true now."
        )
        self._enable()

    def mark(self, field: str) -> None:
        """Say what the chosen cells are."""
        strip = self.strip.view
        if strip.begin >= strip.end:
            self.message.say("Choose the cells first: touch them, or use the arrow keys.")
            return
        marks = with_mark(strip.marks, field, strip.begin, strip.end)
        self.strip.set(Strip(strip.line, marks))
        self._enable()

    @Slot()
    def clear_marks(self) -> None:
        """Take all marks off the line."""
        self.strip.set(Strip(self.strip.view.line))
        self._enable()

    def choose_unit(self, unit: str) -> None:
        """Say in which unit the scale shows."""
        for one, button in self.units.items():
            button.setChecked(one == unit)
        self._enable()

    @Slot()
    def keep(self) -> None:
        """Keep the marked line and what the scale showed with it."""
        strip = self.strip.view
        unit = next((one for one, button in self.units.items() if button.isChecked()), "")
        if not strip.line or not strip.marks or not unit:
            self.message.say("Take a line, mark its value and say the unit first.", refused=True)
            return
        says = frozenset(one for one, button in self.says.items() if button.isChecked())
        shown = self.shown.text().strip() or None
        self.taught.append(MarkedLine(strip.line, strip.marks, shown, unit, says))
        self._kept = (*self._kept, Passed(0, strip.line))
        self.strip.set(Strip())
        self.shown.clear()
        kept = len(self.taught)
        self.message.say(
            f"{kept} kept. Put another weight on, and TAKE a line at rest and one in motion too."
            + (" PROPOSE when they differ enough." if kept > 1 else "")
        )
        self._enable()

    # --- the proposal -----------------------------------------------------------------------------

    @Slot()
    def propose(self) -> None:
        """Work a description out and test it on everything heard."""
        name = self.name.text().strip() or "Scale"
        try:
            self.proposed = teach(name, self.taught, self._request())
        except DescriptionError as refused:
            self.proposed = None
            self.message.say(f"No description yet: {refused}", refused=True)
        else:
            judged = verdict(self.proposed, self._heard() or self._kept)
            self.rows.set(judged.rows[-60:])
            self.message.say(
                f"{self.proposed.pattern}   {judged.words}", refused=judged.refused > 0
            )
        self._enable()

    @Slot()
    def save(self) -> None:
        """Keep the description in the settings."""
        if self.proposed is None:
            return
        try:
            self.message.say(self._source.save(self.proposed))
        except StationError as refused:
            self.message.say(str(refused), refused=True)

    def _enable(self) -> None:
        has_line = bool(self.strip.view.line)
        self.take_button.setEnabled(self.listening or bool(self._played))
        self.keep_button.setEnabled(has_line and bool(self.strip.view.marks))
        self.propose_button.setEnabled(len(self.taught) > 1)
        self.save_button.setEnabled(self.proposed is not None)
        for button in (*self.fields.values(), self.clear_button):
            button.setEnabled(has_line)
        ready = (self.save_button, self.keep_button, self.take_button)
        first = next((button for button in ready if button.isEnabled()), None)
        for button in ready:
            button.strong = button is first
            button.update()


def _row(parts: Sequence[QWidget]) -> QHBoxLayout:
    row = QHBoxLayout()
    for part in parts:
        row.addWidget(part, 2 if isinstance(part, EntryField) else 1)
    return row
