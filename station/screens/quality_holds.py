"""Holds, suspect windows and runs, each with what keeps it; new holds by any scope."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from station.core.checks.suspect import Decision, FiledWindow
from station.core.holds import Releasable, ScopeKind
from station.screens.quality_host import Host
from station.screens.quality_sources import HoldsSource, InboxSource
from station.screens.quality_words import release_row, release_words
from station.screens.theme import Face, Palette, Ruler
from station.screens.widgets.sheet import Page, ScanField, Text
from station.screens.widgets.tiles import Tile, Tiles
from station.screens.widgets.touch_button import TouchButton
from station.screens.widgets.touch_table import Column, TableRow, TouchTable
from station.screens.words import short_moment

_COLUMNS = (
    Column("by", 4),
    Column("what", 6),
    Column("bags", 2, figures=True),
    Column("since", 5),
    Column("state", 4),
)
_SCOPES = (
    (ScopeKind.SERIALS, "first serial", "last serial"),
    (ScopeKind.TIME, "from, such as 09:00", "until, such as 09:40"),
    (ScopeKind.RUN, "id of the run", ""),
    (ScopeKind.BLEND, "blend lot code", ""),
    (ScopeKind.LOT, "input lot code", ""),
    (ScopeKind.ROLL, "id of the label roll", ""),
)
_REASONS = ("seal in doubt", "foreign body", "wrong label", "too warm")
_RELEASE_REASONS = ("checked again, good", "weighed again, good", "not fit to sell", "complete")


class HoldsPanel(QWidget):
    """Two pages: the release list, and a new hold."""

    def __init__(
        self,
        host: Host,
        source: HoldsSource,
        zone: InboxSource,
        palette: Palette,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._host, self._source, self._zone = host, source, zone.zone
        self.windows: dict[str, FiledWindow] = {}
        self.list: dict[str, Releasable] = {}
        self.kind = ScopeKind.SERIALS
        self.table = TouchTable(palette, _COLUMNS)
        self.scope = Page(palette)
        self.detail = Page(palette)
        self.words = Text(palette, "", Face.TEXT, 4.0)
        self.why_release = ScanField(palette, "why it may go, or must be dumped")
        self.why_release.setMaxLength(200)
        self.ready_release = Tiles(
            palette, [Tile(one, one) for one in _RELEASE_REASONS], len(_RELEASE_REASONS)
        )
        self.hold_button = TouchButton(palette, "NEW HOLD")
        self.stays_button = TouchButton(palette, "HOLD STAYS", small="hold down", hold=True)
        self.dump_button = TouchButton(palette, "DUMP", small="hold down", hold=True)
        self.release_button = TouchButton(palette, "RELEASE", small="hold down", hold=True)
        self.scopes = Tiles(palette, [Tile(str(k), str(k).upper()) for k, _, _ in _SCOPES], 6)
        self.first, self.last = ScanField(palette, "first"), ScanField(palette, "last")
        self.why_hold = ScanField(palette, "why: scan or type the reason")
        self.why_hold.setMaxLength(200)
        self.ready_hold = Tiles(palette, [Tile(one, one) for one in _REASONS], len(_REASONS))
        self.back_button = TouchButton(palette, "BACK")
        self.enter_button = TouchButton(palette, "HOLD", small="hold down", hold=True)
        self.pages = QStackedWidget()
        self._compose()
        self._connect()
        self.choose_scope(str(ScopeKind.SERIALS))
        self._enable()

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        self.detail.column.addWidget(self.words)
        self.detail.column.addStretch(1)
        grid = QGridLayout()
        grid.setHorizontalSpacing(ruler.touch(5))
        grid.addWidget(self.table, 0, 0)
        grid.addWidget(self.detail, 0, 1)
        grid.setColumnStretch(0, 5)
        grid.setColumnStretch(1, 3)
        buttons = (self.hold_button, self.stays_button, self.dump_button, self.release_button)
        shown = (self.why_release, self.ready_release)
        self.pages.addWidget(_page(ruler, grid, shown, buttons))
        fields = QHBoxLayout()
        fields.addWidget(self.first)
        fields.addWidget(self.last)
        self.scope.column.addWidget(self.scopes)
        self.scope.column.addLayout(fields)
        self.scope.column.addStretch(1)
        new = QVBoxLayout()
        new.addWidget(self.scope)
        ends = (self.back_button, self.enter_button)
        self.pages.addWidget(_page(ruler, new, (self.why_hold, self.ready_hold), ends))
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(self.pages)

    def _connect(self) -> None:
        self.table.touched.connect(self.show_one)
        self.ready_release.touched.connect(self.why_release.setText)
        self.ready_hold.touched.connect(self.why_hold.setText)
        self.scopes.touched.connect(self.choose_scope)
        self.hold_button.clicked.connect(lambda: self.pages.setCurrentIndex(1))
        self.back_button.clicked.connect(lambda: self.pages.setCurrentIndex(0))
        self.enter_button.held.connect(self._hold)
        self.release_button.held.connect(self._release)
        self.stays_button.held.connect(self._stays)
        self.dump_button.held.connect(self._dump)

    def look(self) -> None:
        """Read what is held and what could go."""

        def read() -> tuple[tuple[FiledWindow, ...], tuple[Releasable, ...]]:
            return self._source.windows(), self._source.releases()

        self._host.ask(read, self.show_list)

    def recorded(self) -> None:
        """Something was held or let go."""
        self.pages.setCurrentIndex(0)
        for field in (self.first, self.last, self.why_hold, self.why_release):
            field.clear()
        self.look()

    def show_list(self, found: tuple[tuple[FiledWindow, ...], tuple[Releasable, ...]]) -> None:
        """Show suspect windows, holds and runs; a hold of a window stands under its window."""
        windows, releases = found
        of_windows = {uid for window in windows for uid in window.holds}
        self.windows = {window.uid: window for window in windows}
        self.list = {one.key: one for one in releases if one.key not in of_windows}
        rows = [self._window_row(one) for one in windows]
        rows += [release_row(one, self._zone) for one in self.list.values()]
        self.table.show_rows(rows)
        if self.table.chosen:
            self.show_one(self.table.chosen[0])
        else:
            self.words.setText("Touch a line." if rows else "Nothing is held or packed.")
        self._enable()

    @Slot(str)
    def show_one(self, key: str) -> None:
        """Show what keeps one of them."""
        window = self.windows.get(key)
        if window is not None:
            self.words.setText(
                f"suspect window of {window.scale}\n{window.bags} bags held, packed after "
                f"{short_moment(window.opened.astimezone(self._zone))} until "
                f"{window.closed.astimezone(self._zone):%H:%M}\n"
                "QA decides: release all, or let the hold stay"
            )
        elif key in self.list:
            self.words.setText(release_words(self.list[key]))
        self._enable()

    @Slot(str)
    def choose_scope(self, word: str) -> None:
        """Choose by what bags are held."""
        self.kind = ScopeKind(word)
        self.scopes.check([word])
        _, first, last = next(one for one in _SCOPES if one[0] is self.kind)
        self.first.set_hint(first)
        self.last.set_hint(last)
        self.last.setVisible(bool(last))

    def _window_row(self, one: FiledWindow) -> TableRow:
        at = short_moment(one.closed.astimezone(self._zone))
        cells = ("suspect", one.scale, f"{one.bags}", at, "DECIDE")
        return TableRow(one.uid, cells, attend=True)

    def _enable(self) -> None:
        key = next(iter(self.table.chosen), "")
        self.stays_button.setEnabled(key in self.windows)
        one = self.list.get(key)
        self.dump_button.setEnabled(one is not None and bool(one.hold and one.bags))
        self.release_button.setEnabled(key in self.windows or (one is not None and not one.blocked))

    @Slot()
    def _hold(self) -> None:
        kind, first, last = self.kind, self.first.text(), self.last.text()
        why, host = self.why_hold.text(), self._host
        told = f"Held: {kind} {first} {last}".strip()
        host.enter(lambda: (self._source.hold(kind, first, last, why, host.who),), told)

    @Slot()
    def _release(self) -> None:
        key, host = next(iter(self.table.chosen), ""), self._host
        why = self.why_release.text()
        if key in self.windows:
            self._decide(Decision.RELEASED)
        elif key in self.list:
            one = self.list[key]
            second = host.second if self._source.two else ""
            told = f"{one.frees} bags are released."
            host.enter(lambda: (self._source.release(one, host.who, second, why),), told)

    @Slot()
    def _dump(self) -> None:
        one, host = self.list[next(iter(self.table.chosen))], self._host
        why = self.why_release.text()
        witness = host.second if self._source.witnessed else ""
        told = f"{one.bags} bags are dumped: they lie in the reject bin. Release the empty hold."
        host.enter(lambda: self._source.dump(one, host.who, witness, why), told)

    @Slot()
    def _stays(self) -> None:
        self._decide(Decision.HOLD_STAYS)

    def _decide(self, decision: Decision) -> None:
        key, host = next(iter(self.table.chosen), ""), self._host
        window, why = self.windows[key], self.why_release.text()
        told = f"Decided: {decision}."
        host.enter(lambda: self._source.decide(window, decision, why, host.who), told)


def _page(
    ruler: Ruler,
    body: QGridLayout | QVBoxLayout,
    parts: tuple[QWidget, ...],
    buttons: tuple[TouchButton, ...],
) -> QWidget:
    page = QWidget()
    column = QVBoxLayout(page)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(round(ruler.px(2)))
    column.addLayout(body, 1)
    for part in parts:
        column.addWidget(part)
    row = QHBoxLayout()
    row.setSpacing(ruler.touch(6))
    for button in buttons:
        button.cap_px = ruler.px(4.8)
        button.setMinimumHeight(ruler.touch(26))
        row.addWidget(button, 1)
    column.addLayout(row)
    return page
