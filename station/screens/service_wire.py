"""The live line of the scale: bytes, frames, garbage with its reason, and how the link is."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from drivers.errors import RecordingError
from station.screens.service_source import ServiceSource, WireNow
from station.screens.theme import Palette, Ruler
from station.screens.widgets.sheet import Message, Text
from station.screens.widgets.touch_button import TouchButton
from station.screens.widgets.wire_list import WireList


def count_words(now: WireNow) -> str:
    """What came of late, in words."""
    count = now.count
    said = (
        f"{count.seconds} s: {count.frames} weights, {count.garbage} not understood"
        f" ({count.bad_percent} %, 5 % are allowed), {count.bytes} bytes"
    )
    if count.gap_ms is not None:
        said += f"; a weight every {count.gap_ms} ms"
    device = f"; device {now.link.identity}" if now.link.identity else ""
    return f"{said}; port {now.link.port}{device}"


class WirePanel(QWidget):
    """Shows the line five times a second; a recording is started and stopped here.

    Args:
        source: knows the line.
        palette: colours.
    """

    def __init__(
        self, source: ServiceSource, palette: Palette, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._source = source
        self.link = Message(palette, 5.0)
        self.count = Text(palette, "", mm=3.4)
        self.rows = WireList(palette)
        self.note = Text(palette, "", mm=3.4)
        self.record_button = TouchButton(palette, "RECORD", small="R")
        self.still_button = TouchButton(palette, "HOLD STILL", small="H")
        self.still_button.setCheckable(True)
        self._compose()
        self.record_button.clicked.connect(self.record)

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        self.rows.set_unit(ruler.px(1))
        foot = QHBoxLayout()
        foot.setSpacing(ruler.touch(6))
        foot.addWidget(self.note, 4)
        for button in (self.still_button, self.record_button):
            button.cap_px = ruler.px(4.6)
            foot.addWidget(button, 2)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(round(ruler.px(3)))
        whole.addWidget(self.link)
        whole.addWidget(self.count)
        whole.addWidget(self.rows, 1)
        whole.addLayout(foot)

    @property
    def keyed(self) -> tuple[TouchButton, ...]:
        """Buttons that their own key presses."""
        return (self.record_button, self.still_button)

    def refresh(self) -> None:
        """Show what passes now."""
        now = self._source.wire()
        self.link.say(now.link.words, refused=not now.link.good)
        self.count.setText(count_words(now))
        if not self.still_button.isChecked():
            self.rows.set(now.rows)
        self.record_button.setText("STOP RECORDING" if now.recording else "RECORD")
        if now.recording:
            self.note.setText(f"Everything the scale sends goes into {now.recording}")
        elif now.note:
            self.note.setText(f"The recording ended: {now.note}")

    @Slot()
    def record(self) -> None:
        """Start a recording, or end the one that goes on."""
        try:
            if self._source.wire().recording:
                self.note.setText(f"Recorded: {self._source.end_recording()}")
            else:
                self._source.record()
        except RecordingError as refused:
            self.note.setText(str(refused))
        self.refresh()
