"""What this screen is and is not: the notice, the rules a bag is judged by, the scale."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.line.state import LineState
from station.screens.theme import Face, Palette
from station.screens.tongue import mark, tr
from station.screens.widgets.gap_geometry import mass_text
from station.screens.widgets.lettering import Fitted, draw, fit
from station.screens.widgets.painted import Painted
from station.screens.words import NOTICE, long_date
from station.software_id import software_id


@dataclass(frozen=True, slots=True)
class About:
    """The notice and named facts, in the order they are shown."""

    notice: str = NOTICE
    facts: tuple[tuple[str, str], ...] = ()


def about(state: LineState) -> About:
    """Return what there is to say about a line's state."""
    facts = [
        (mark("scale line"), state.port or tr("closed")),
        (mark("software"), str(software_id())),
    ]
    run = state.run
    if run is not None:
        limits, window = run.window.limits, run.window
        facts += [
            (mark("scale"), f"{run.scale}, {run.unit}"),
            (mark("rule set"), f"{limits.rule_set}, {limits.version}"),
            (
                mark("T2, T1, nominal"),
                ", ".join(map(mass_text, (limits.t2, limits.t1, limits.nominal))),
            ),
            (
                mark("floor, target, upper"),
                ", ".join(map(mass_text, (window.floor, window.target, window.upper))),
            ),
            (mark("bag"), run.product.bag.name),
            (mark("tare"), mass_text(run.product.bag.tare)),
            (mark("production day"), long_date(run.dating.production_day)),
            (mark("lead, on the scale"), f"{run.lead}, {run.operator}"),
        ]
    return About(facts=tuple(facts))


class AboutPanel(Painted[About]):
    """Paints an About; a touch anywhere closes it."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        self.texts: list[tuple[Fitted, Fitted]] = []
        self.notice: Fitted | None = None
        super().__init__(palette, About(), parent)

    @override
    def arrange(self) -> None:
        unit, wide = self.unit, float(self.width())
        self.notice = fit(tr(self.view.notice), Face.VERB, 8.5 * unit, wide, 30 * unit)
        second = wide * 0.34
        self.texts = [
            (
                fit(tr(name), Face.TEXT, 5.2 * unit, second - 4 * unit),
                fit(fact, Face.FIGURES, 5.2 * unit, wide - second),
            )
            for name, fact in self.view.facts
        ]

    @override
    def paint(self, painter: QPainter) -> None:
        if self.notice is None:
            return
        unit = self.unit
        draw(painter, self.notice, 0, 3 * unit, self.colours.ink)
        y = 3 * unit + self.notice.height + 12 * unit
        room = (self.height() - y) / max(len(self.texts), 1)
        for name, fact in self.texts:
            draw(painter, name, 0, y, self.colours.muted)
            draw(painter, fact, self.width() * 0.34, y, self.colours.ink)
            y += min(9.6 * unit, room)
