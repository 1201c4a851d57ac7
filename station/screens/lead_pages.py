"""The pages of the lead's panel: product, lots, crew and order, and the open run."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Signal, Slot
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.line.state import LineState
from station.screens.offer import Draft, LeadOffer
from station.screens.theme import Face, Palette, Ruler
from station.screens.tongue import mark, spoken, tr
from station.screens.widgets.gap_geometry import mass_text
from station.screens.widgets.number_pad import NumberPad
from station.screens.widgets.sheet import Page, ScanField, Text, Title, side_by_side
from station.screens.widgets.tiles import Tile, Tiles
from station.screens.words import long_date, lots_line, mean_text, short_date, why_not_free

_NAME_MM = 40.0
"""Width of a component's name beside its lots."""


class ProductPage(Page):
    """One tile per product.

    Signals:
        touched: str, the product's code.
    """

    touched = Signal(str)

    def __init__(self, palette: Palette, offer: LeadOffer, parent: QWidget | None = None) -> None:
        super().__init__(palette, parent)
        self._palette = palette
        self.tiles: Tiles | None = None
        self.set_offer(offer)

    def set_offer(self, offer: LeadOffer) -> None:
        """Show the products of an offer."""
        self.clear()
        tiles = [
            Tile(
                product.code,
                product.name,
                f"{mass_text(product.nominal)}  {product.code} v{product.version}",
            )
            for product in offer.products
        ]
        self.tiles = Tiles(self._palette, tiles, columns=2)
        self.tiles.touched.connect(self.touched)
        self.column.addWidget(self.tiles)
        self.column.addStretch(1)

    def check(self, draft: Draft) -> None:
        """Show which product is chosen."""
        if self.tiles is not None:
            self.tiles.check([draft.product.code] if draft.product else [])


class LotsPage(Page):
    """A scan field, and for each component its lots.

    Signals:
        touched: str, a lot code, from a tile or from the scan field.
    """

    touched = Signal(str)

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, parent)
        self._palette = palette
        self.scan = ScanField(palette, "scan or type a lot code, then Enter")
        self.scan.returnPressed.connect(self._scanned)
        self.rows: dict[str, Tiles] = {}
        self.column.addWidget(self.scan)
        self.column.addStretch(1)

    def show_lots(self, draft: Draft, offer: LeadOffer) -> None:
        """Show the lots of the chosen product's components."""
        self.scan.setParent(None)
        self.clear()
        self.rows = {}
        self.column.addWidget(self.scan)
        self.scan.show()
        for component in draft.product.components if draft.product else ():
            tiles = [
                Tile(
                    lot.code,
                    lot.code,
                    why_not_free(lot) or f"{lot.supplier}, {short_date(lot.received)}",
                    refused=why_not_free(lot) != "",
                )
                for lot in offer.lots_of(component.code)
            ]
            row = Tiles(self._palette, tiles, columns=3)
            row.touched.connect(self.touched)
            self.rows[component.code] = row
            name = Text(self._palette, component.name, Face.VERB, 5.2)
            name.setFixedWidth(Ruler.of(self.screen()).touch(_NAME_MM))
            self.column.addWidget(side_by_side(name, row))
        self.column.addStretch(1)
        self.check(draft)

    def check(self, draft: Draft) -> None:
        """Show which lots are chosen."""
        for row in self.rows.values():
            row.check(draft.lots)

    @Slot()
    def _scanned(self) -> None:
        code = self.scan.text().strip().upper()
        self.scan.clear()
        if code:
            self.touched.emit(code)


class CrewPage(Page):
    """Who leads, who is on the scale, and how many bags are ordered.

    Signals:
        changed: lead id, operator id, digits of the order.
    """

    changed = Signal(str, str, str)

    def __init__(self, palette: Palette, offer: LeadOffer, parent: QWidget | None = None) -> None:
        super().__init__(palette, parent)
        self._palette = palette
        self._lead, self._operator = "", ""
        self.leads: Tiles | None = None
        self.operators: Tiles | None = None
        self.pad = NumberPad(palette)
        self.pad.changed.connect(self._tell)
        self.order = Title(palette)
        self.set_offer(offer)

    def set_offer(self, offer: LeadOffer) -> None:
        """Show the people of an offer."""
        for kept in (self.pad, self.order):
            kept.setParent(None)
        self.clear()
        self.leads = Tiles(self._palette, [Tile(p.id, p.name, p.id) for p in offer.leads], 4)
        self.operators = Tiles(
            self._palette, [Tile(p.id, p.name, f"{p.id}, {p.role}") for p in offer.people], 4
        )
        self.leads.touched.connect(self._choose_lead)
        self.operators.touched.connect(self._choose_operator)
        for title, part in (
            (mark("Lead"), self.leads),
            (mark("On the scale"), self.operators),
        ):
            self.column.addWidget(Title(self._palette, title))
            self.column.addWidget(part)
        self.column.addWidget(self.order)
        self.column.addWidget(side_by_side(self.pad))
        self.order.show()
        self.column.addStretch(1)

    def check(self, draft: Draft) -> None:
        """Show who and how many are chosen."""
        self._lead, self._operator = draft.lead, draft.operator
        self.pad.digits = draft.order
        if self.leads is not None and self.operators is not None:
            self.leads.check([draft.lead])
            self.operators.check([draft.operator])
        self.order.setText(f"Order: {draft.order} bags" if draft.order else "Order: open")

    @Slot(str)
    def _choose_lead(self, person: str) -> None:
        self._lead = person
        self._tell()

    @Slot(str)
    def _choose_operator(self, person: str) -> None:
        self._operator = person
        self._tell()

    @Slot()
    def _tell(self) -> None:
        self.changed.emit(self._lead, self._operator, self.pad.digits)


class RunPage(Page):
    """The open run in words, and the labels nobody knows the fate of."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, parent)
        self.lead = ""
        """Who leads the open run."""
        self._shown: object = None
        self._state: LineState | None = None
        self.name = Text(palette, "", Face.VERB, 9.0)
        self.facts = Text(palette, "", Face.TEXT, 5.2)
        self.stop = Text(palette, "", Face.VERB, 6.4, palette.stop)
        self.doubt_title = Text(palette, "Labels in doubt", Face.VERB, 6.4)
        self.doubt = Text(palette, "", Face.CODE, 5.2)
        for part in (self.name, self.facts, self.stop, self.doubt_title, self.doubt):
            self.column.addWidget(part)
        self.column.addStretch(1)
        self.set_in_doubt(())

    def set_in_doubt(self, serials: tuple[str, ...]) -> None:
        """List serials whose label may or may not be on a bag."""
        self.doubt_title.setVisible(bool(serials))
        self.doubt.setVisible(bool(serials))
        self.doubt.setText("   ".join(serials))

    @override
    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange and self._state is not None:
            self.show_state(self._state)

    def show_state(self, state: LineState) -> None:
        """Show the run of a state; a state that says the same costs nothing."""
        run, tally = state.run, state.tally
        told = (run and (run.id, run.blend_lot), tally, state.phase, state.because, spoken())
        self._state = state
        if told == self._shown:
            return
        self._shown = told
        if run is None:
            self.lead = ""
            return
        self.lead = run.lead
        mean = tally.mean
        order = f" of {run.order_size}" if run.order_size else ""
        durable = tr(run.product.use_by_words)
        self.name.setText(run.product.name)
        self.facts.setText(
            "\n".join(
                (
                    lots_line(run),
                    f"{durable} {long_date(run.dating.use_by)}",
                    f"Good bags: {tally.good}{order}, set aside: {tally.rejects}",
                    f"Mean net {mean_text(mean)}" if mean is not None else "No good bag yet",
                    f"Lead {run.lead}, on the scale {run.operator}",
                )
            )
        )
        self.stop.setText(state.because if state.phase == "stopped" else "")
