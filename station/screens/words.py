"""From facts to the words a screen shows."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime
from decimal import ROUND_HALF_EVEN, Decimal
from functools import lru_cache

from PySide6.QtCore import QDate, QLocale

from station.core.languages import Language
from station.core.lots import InputLot, LotStatus
from station.core.mass import Mass
from station.core.run import Run
from station.line.state import LineState, Phase, Verb
from station.screens.tongue import mark, say, spoken, tr, upper_first
from station.screens.widgets.gap_geometry import mass_text

NOTICE = mark(
    "The scale's own indication counts. If this screen and the scale differ, "
    "the scale counts: stop and call the lead."
)

_LOCALES = {
    Language.ENGLISH: ("en_US", "dddd d\u00a0MMMM", "d\u00a0MMM"),
    Language.SPANISH: ("es_ES", "dddd, d\u00a0'de'\u00a0MMMM", "d\u00a0MMM"),
    Language.FRENCH: ("fr_FR", "dddd d\u00a0MMMM", "d\u00a0MMM"),
    Language.PUNJABI: ("pa_IN", "dddd, d\u00a0MMMM", "d\u00a0MMM"),
    Language.VIETNAMESE: ("vi_VN", "dddd, d\u00a0MMMM", "d\u00a0MMM"),
    Language.CHINESE: ("zh_CN", "M月d日 dddd", "M月d日"),
    Language.TAGALOG: ("fil_PH", "dddd, MMMM\u00a0d", "MMM\u00a0d"),
    Language.PORTUGUESE: ("pt_PT", "dddd, d\u00a0'de'\u00a0MMMM", "d\u00a0MMM"),
}
"""Names of days and months are those of the Unicode CLDR, which Qt carries, and so is their order,
but for English, where the day stands first; the year is left out."""


def long_date(day: date) -> str:
    """Return ``Tuesday 1 December``: a weekday in words catches a wrong date."""
    locale, form, _ = _LOCALES[spoken()]
    return _in_words(day, locale, form)


def narrow_date(day: date) -> str:
    """Return ``Tuesday 1 Dec``: the weekday whole, the month short."""
    locale, form, _ = _LOCALES[spoken()]
    form = form.replace("MMMM", "MMM").replace("'de'\u00a0", "")
    if spoken() is Language.PORTUGUESE:
        form = form.replace("dddd", "ddd")  # segunda, as people say for segunda-feira
    return _in_words(day, locale, form)


def short_date(day: date) -> str:
    """Return ``1 Dec``."""
    locale, _, form = _LOCALES[spoken()]
    return _in_words(day, locale, form)


def with_year(day: date, said: str) -> str:
    """Return ``Tuesday 1 Dec 2026`` where the year was not typed and may be another than meant.

    Args:
        day: the day.
        said: it, in one of the forms above.
    """
    return f"{day.year}年{said}" if spoken() is Language.CHINESE else f"{said}\u00a0{day.year}"


def short_moment(at: datetime) -> str:
    """Return ``1 Dec 09:40``, in the time it is given in."""
    return f"{short_date(at.date())} {at:%H:%M}"


@lru_cache(maxsize=64)
def _in_words(day: date, locale: str, form: str) -> str:
    return QLocale(locale).toString(QDate(day.year, day.month, day.day), form)


def lots_line(run: Run) -> str:
    """Blend lot and every input lot, in the order of the recipe."""
    order = [component.code for component in run.product.components]
    uses = sorted(run.lot_set.uses, key=lambda use: (order.index(use.component), use.lot))
    return "  ".join((f"{run.blend_lot}  =", *(use.lot for use in uses)))


def mean_text(mean: Mass) -> str:
    """Return a mean to a tenth of its unit, for reading only."""
    return mass_text(Mass(mean.amount.quantize(Decimal("0.1"), ROUND_HALF_EVEN), mean.unit))


def why_not_free(lot: InputLot) -> str:
    """Why a lot may not be used; empty when it may."""
    return {
        LotStatus.FREE: "",
        LotStatus.HELD: mark("held – call QA"),
        LotStatus.EXPIRED: mark("expired – take it off the line"),
    }[lot.status]


@dataclass(frozen=True, slots=True)
class Instruction:
    """The big row: one verb, perhaps a number, and one sentence under it.

    Args:
        verb: the one thing to do.
        number: digits of the amount; may be empty.
        unit: its unit; empty with an empty number.
        because: why, with the next action; may be empty.
        note: what the scale shows, when there is nothing to explain.
    """

    verb: Verb
    number: str
    unit: str
    because: str
    note: str


def instruction(state: LineState, note: str | None = None) -> Instruction:
    """Return the big row of a line's state.

    Args:
        state: of the line.
        note: stands in it as it is; None for the one of the state.
    """
    number = mass_text(state.amount).split("\u00a0")[0] if state.amount is not None else ""
    unit = str(state.amount.unit) if state.amount is not None else ""
    because = upper_first(say(state.because))
    return Instruction(state.verb, number, unit, because, _note(state) if note is None else note)


def _note(state: LineState) -> str:
    """Net and the scale's own digits, small; nothing that cannot be believed."""
    shown = state.shown
    if shown is None or shown.net is None or state.phase is Phase.CLOSED:
        return ""
    scale = tr("scale shows {mass}, the scale's own indication counts").format(
        mass=f"{shown.digits}\u00a0{shown.unit}"
    )
    if shown.verdict is None:
        return scale
    return f"{tr('in the bag {mass}').format(mass=mass_text(shown.net))}   ·   {scale}"
