"""The sheet on which people sign: who, and a PIN on big keys or a badge."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

from PySide6.QtCore import Qt, QTimer, Signal, Slot
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QShowEvent
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLineEdit, QVBoxLayout, QWidget
from typing_extensions import override

from station.core.pins import LEAST_BADGE
from station.core.rights import Signed, Signer
from station.screens.signing import AT_SCREEN, SignedIntents, Then, at_screen
from station.screens.theme import LIGHT, Face, Palette, Ruler
from station.screens.tongue import mark, say
from station.screens.widgets.pin_pad import PinPad
from station.screens.widgets.sheet import Message, Page, ScanField, Text
from station.screens.widgets.tiles import Tile, Tiles
from station.screens.widgets.touch_button import TouchButton
from station.screens.work import Work

_PATIENCE_MS = 120_000
_DOT = "●"
_NONE_YET = mark("no PIN or badge yet")
_CHECKING = mark("checking …")


@dataclass(slots=True)
class _Asked:
    needed: tuple[Signer, ...]
    then: Then
    dropped: Callable[[], None]
    by: list[str] = field(default_factory=list)

    @property
    def next(self) -> Signer:
        return self.needed[len(self.by)]


class SigningSheet(QWidget):
    """Covers the page that asked, until everybody signed or somebody gives up.

    Args:
        signing: whose signatures these are.
        palette: colours.

    Signals:
        closed: nothing is asked any more.
    """

    closed = Signal()

    def __init__(
        self, signing: SignedIntents, palette: Palette = LIGHT, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self._palette, self._source = palette, signing.source
        self._people, self._hints = signing.people, signing.hints
        self._waiting: deque[_Asked] = deque()
        self.who = ""
        self.title = Text(palette, "", Face.VERB, 7.0)
        self.names = Page(palette)
        self.tiles: Tiles | None = None
        self.dots = Text(palette, "", Face.VERB, 8.0)
        self.badge = ScanField(palette, "or scan a badge")
        self.badge.setEchoMode(QLineEdit.EchoMode.Password)
        self.badge.setMaximumHeight(self.badge.minimumHeight())
        self.message = Message(palette, 4.6)
        self.pad = PinPad(palette)
        self.drop_button = TouchButton(palette, "DO NOT SIGN")
        self.work = Work("signing", self)
        self._patience = QTimer(self)
        self._patience.setSingleShot(True)
        self._patience.setInterval(_PATIENCE_MS)
        self._compose()
        self._patience.timeout.connect(self.drop)
        self.pad.changed.connect(self._show_dots)
        self.pad.done.connect(self._sign)
        self.badge.returnPressed.connect(self._scan)
        self.drop_button.clicked.connect(self.drop)
        self.work.done.connect(self._tried)
        self.work.failed.connect(self._refuse)
        self.work.ended.connect(self._free)
        self.hide()
        signing.asker = self

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        gap = ruler.touch(5)
        left = QVBoxLayout()
        left.setSpacing(gap)
        left.addWidget(self.title)
        left.addWidget(self.names, 1)
        left.addWidget(self.message)
        foot = QHBoxLayout()
        foot.setSpacing(gap)
        self.drop_button.cap_px = ruler.px(4.2)
        foot.addWidget(self.badge, 2)
        foot.addWidget(self.drop_button, 1)
        left.addLayout(foot)
        self.dots.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.dots.setMinimumHeight(round(ruler.px(14)))
        right = QVBoxLayout()
        right.setSpacing(gap)
        right.addWidget(self.dots)
        right.addWidget(self.pad, 1)
        whole = QGridLayout(self)
        margin = round(ruler.px(7))
        whole.setContentsMargins(margin, margin, margin, margin)
        whole.setSpacing(2 * gap)
        whole.addLayout(left, 0, 0)
        whole.addLayout(right, 0, 1)
        whole.setColumnStretch(0, 1)

    # --- what is asked --------------------------------------------------------------------------

    def ask(self, needed: Sequence[Signer], then: Then, dropped: Callable[[], None]) -> None:
        """Get signatures, one after another; what is asked meanwhile waits for its turn."""
        self._waiting.append(_Asked(tuple(needed), then, dropped))
        if len(self._waiting) == 1:
            self._begin()

    def unlock(self, then: Callable[[], None]) -> None:
        """Ask who is at the screen, and go on once somebody signed on."""
        self.ask((at_screen(),), lambda _: then(), lambda: None)

    @Slot()
    def drop(self) -> None:
        """Nobody signs; whoever asked is told. What is being checked by now signs nothing."""
        self.work.stop()
        asked, self._waiting = self._waiting, deque()
        self._close()
        for one in asked:
            one.dropped()

    def _begin(self) -> None:
        """Show what is to be signed next."""
        asked = self._waiting[0]
        while len(asked.by) < len(asked.needed) and self._source.covers(asked.next):
            asked.by.append(asked.next.who)
        if len(asked.by) == len(asked.needed):
            self._finish()
            return
        wanted = asked.next
        self.title.setText(_title(wanted, len(asked.by) > 0))
        self.names.clear()
        tiles = [self._tile(who, role) for who, role in self._allowed(wanted, asked.by)]
        self.tiles = Tiles(self._palette, tiles, columns=2)
        self.tiles.touched.connect(self._touch)
        self.names.column.addWidget(self.tiles)
        self.names.column.addStretch(1)
        able = [tile.key for tile in tiles if not tile.refused]
        first = wanted.who if wanted.who in able else ""
        self.pad.clear()
        self.message.say("")
        self.choose(first or (able[0] if len(able) == 1 else ""))
        if not able:
            self._refuse("nobody who may sign has a PIN or badge: station people pin")
        self._patience.start()
        self.show()
        self.raise_()
        self.badge.setFocus()

    def _allowed(self, wanted: Signer, signed: Sequence[str]) -> list[tuple[str, str]]:
        people = [
            (one.id, str(role))
            for one in self._people
            if (role := self._source.roles.get(one.id)) in wanted.roles
        ]
        if wanted.fixed:
            people = [one for one in people if one[0] == wanted.who]
        return [one for one in people if one[0] not in signed]

    def _tile(self, who: str, role: str) -> Tile:
        name = next((one.name for one in self._people if one.id == who), who)
        able = self._source.can_sign(who)
        small = f"{who}, {say(role)}" if able else say(_NONE_YET)
        return Tile(who, name, f"{small}  {self._hints.get(who, '')}".strip(), refused=not able)

    # --- what people do -------------------------------------------------------------------------

    @Slot(str)
    def choose(self, who: str) -> None:
        """Let one person sign."""
        self.who = who if self._source.can_sign(who) else ""
        if self.tiles is not None:
            self.tiles.check([self.who])
        self._show_dots(0)
        self.pad.clear()

    @Slot(str)
    def _touch(self, who: str) -> None:
        """A name was chosen by hand: what was refused before is over, and keys type a PIN."""
        self.choose(who)
        if not self.work.busy:
            self.message.say("")
        self.badge.setFocus()

    @Slot(str)
    def _sign(self, pin: str) -> None:
        who, stays = self.who, not (self._waiting and self._waiting[0].by)
        if not who:
            self._refuse("Touch your name first.")
            return
        self._try(lambda _: self._source.sign(who, pin, stays=stays))

    @Slot()
    def _scan(self) -> None:
        code, stays = self.badge.text(), not (self._waiting and self._waiting[0].by)
        self.badge.clear()
        if code.isdigit() and len(code) < LEAST_BADGE:
            self._sign(code)  # keyed in on a keyboard: no badge is that short
        elif code:
            self._try(lambda _: self._source.sign_with_badge(code, stays=stays))

    def _try(self, task: Callable[[Callable[[int], None]], object]) -> None:
        if self.work.begin(task):
            self.pad.setEnabled(False)
            self.message.say(_CHECKING)
            self._patience.start()

    @Slot(object)
    def _tried(self, signed: Signed) -> None:
        """Take a signature, or say why it does not count."""
        asked = self._waiting[0]
        if not signed.who:
            self._refuse(signed.words)
        elif signed.who not in [who for who, _ in self._allowed(asked.next, asked.by)]:
            self._refuse(f"{signed.who} cannot sign this")
        else:
            asked.by.append(signed.who)
            if len(asked.by) < len(asked.needed):
                self._begin()
            else:
                self._finish()

    def _finish(self) -> None:
        done = self._waiting.popleft()
        if self._waiting:
            self._begin()
        else:
            self._close()
        done.then(tuple(done.by))

    def _close(self) -> None:
        self._patience.stop()
        self.pad.clear()
        self.badge.clear()
        self.hide()
        self.closed.emit()

    @Slot()
    def _free(self) -> None:
        self.pad.setEnabled(True)
        if self.message.text() == say(_CHECKING):  # nothing came of it
            self.message.say("")

    @Slot(str)
    def _refuse(self, words: str) -> None:
        self.message.say(words[:1].upper() + words[1:], refused=True)

    @Slot(int)
    def _show_dots(self, count: int) -> None:
        self.dots.setText(_DOT * count if count else "PIN")

    # --- Qt -------------------------------------------------------------------------------------

    @override
    def showEvent(self, event: QShowEvent) -> None:
        self.badge.setFocus()

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._palette.ground))
        painter.end()


def _title(wanted: Signer, second: bool) -> str:
    if wanted == at_screen():
        return f"Sign to {AT_SCREEN}"
    if second:
        return f"Sign as the second person to {wanted.act}"
    return f"Sign to {wanted.act}"
