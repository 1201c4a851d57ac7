"""Dates in words: the weekday and the month never stand as a number on a label.

Regulation (EU) No 1169/2011 Annex X 1(b) and 2(b): day, month and possibly year, in that order and
in uncoded form. United States: no order is prescribed for food; month, day, year is common
practice. Canada: year, month, day, the month as two letters that serve both languages (Food and
Drug Regulations B.01.007). The tables are our own, so that a label does not follow the locale of
a PC.
"""

import datetime
from dataclasses import dataclass

from labels.errors import LabelError, shown

# Canada's bilingual months, January to December (Food and Drug Regulations B.01.007).
CANADIAN_MONTHS = ("JA", "FE", "MR", "AL", "MA", "JN", "JL", "AU", "SE", "OC", "NO", "DE")


@dataclass(frozen=True, slots=True)
class Calendar:
    """How one language writes a day.

    Attributes:
        weekdays: Monday to Sunday, as they begin a date on a label.
        months: January to December, in the case a day takes before it.
        pattern: {weekday}, {day}, {month} and {year}; the weekday first, set off by a blank.
    """

    weekdays: tuple[str, ...]
    months: tuple[str, ...]
    pattern: str = "{weekday} {day} {month} {year}"


def _calendar(weekdays: str, months: str, pattern: str = "{day} {month} {year}") -> Calendar:
    return Calendar(tuple(weekdays.split()), tuple(months.split()), "{weekday} " + pattern)


CALENDARS = {
    "en": _calendar(
        "Monday Tuesday Wednesday Thursday Friday Saturday Sunday",
        "January February March April May June July August September October November December",
    ),
    "fr": _calendar(
        "lundi mardi mercredi jeudi vendredi samedi dimanche",
        "janvier février mars avril mai juin juillet août septembre octobre novembre décembre",
    ),
    "de": _calendar(
        "Montag Dienstag Mittwoch Donnerstag Freitag Samstag Sonntag",
        "Januar Februar März April Mai Juni Juli August September Oktober November Dezember",
        "{day}. {month} {year}",
    ),
    "es": _calendar(
        "lunes martes miércoles jueves viernes sábado domingo",
        "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre",
        "{day} de {month} de {year}",
    ),
    "it": _calendar(
        "lunedì martedì mercoledì giovedì venerdì sabato domenica",
        "gennaio febbraio marzo aprile maggio giugno luglio agosto settembre ottobre novembre "
        "dicembre",
    ),
    "nl": _calendar(
        "maandag dinsdag woensdag donderdag vrijdag zaterdag zondag",
        "januari februari maart april mei juni juli augustus september oktober november december",
    ),
    "pl": _calendar(
        "poniedziałek wtorek środa czwartek piątek sobota niedziela",
        "stycznia lutego marca kwietnia maja czerwca lipca sierpnia września października "
        "listopada grudnia",
    ),
    "sv": _calendar(
        "måndag tisdag onsdag torsdag fredag lördag söndag",
        "januari februari mars april maj juni juli augusti september oktober november december",
    ),
    "da": _calendar(
        "mandag tirsdag onsdag torsdag fredag lørdag søndag",
        "januar februar marts april maj juni juli august september oktober november december",
        "{day}. {month} {year}",
    ),
    "nb": _calendar(
        "mandag tirsdag onsdag torsdag fredag lørdag søndag",
        "januar februar mars april mai juni juli august september oktober november desember",
        "{day}. {month} {year}",
    ),
    "fi": _calendar(
        "maanantai tiistai keskiviikko torstai perjantai lauantai sunnuntai",
        "tammikuuta helmikuuta maaliskuuta huhtikuuta toukokuuta kesäkuuta heinäkuuta elokuuta "
        "syyskuuta lokakuuta marraskuuta joulukuuta",
        "{day}. {month} {year}",
    ),
    "el": _calendar(
        "Δευτέρα Τρίτη Τετάρτη Πέμπτη Παρασκευή Σάββατο Κυριακή",
        "Ιανουαρίου Φεβρουαρίου Μαρτίου Απριλίου Μαΐου Ιουνίου Ιουλίου Αυγούστου Σεπτεμβρίου "
        "Οκτωβρίου Νοεμβρίου Δεκεμβρίου",
    ),
}


def calendar_of(language: str) -> Calendar:
    """Return how a language writes a day.

    Raises:
        LabelError: No table of names exists for the language.
    """
    if language not in CALENDARS:
        raise LabelError(
            "Language of dates",
            f"no weekday and month names for {shown(language)}; known: "
            f"{', '.join(sorted(CALENDARS))}",
        )
    return CALENDARS[language]


def date_in_words(day: datetime.date, language: str = "en") -> str:
    """Return a date with its weekday, such as 'Sunday 29 November 2026'.

    Raises:
        LabelError: No table of names exists for the language.
    """
    calendar = calendar_of(language)
    weekday = calendar.weekdays[day.weekday()]
    return calendar.pattern.format(
        weekday=weekday[0].upper() + weekday[1:],
        day=day.day,
        month=calendar.months[day.month - 1],
        year=f"{day.year:04d}",
    )


def short_date_in_words(day: datetime.date, language: str = "en") -> str:
    """Return a date without its weekday, such as '24 November 2026'."""
    return date_in_words(day, language).split(" ", 1)[1]


def date_for_market(day: datetime.date, market: str, language: str = "en") -> str:
    """Return a date as the labels of a market carry it.

    'Sunday 29 November 2026' in Europe; 'Sunday, November 29, 2026' in the United States;
    '2026 NO 29' in Canada, in both languages.

    Raises:
        LabelError: No table of names exists for the language.
    """
    return dates_for_market(day, market, language)[0]


def dates_for_market(day: datetime.date, market: str, language: str = "en") -> tuple[str, ...]:
    """Return the ways a market's labels may write a date: with its weekday, and shorter without.

    Raises:
        LabelError: No table of names exists for the language.
    """
    if market == "CA":
        return (f"{day.year:04d} {CANADIAN_MONTHS[day.month - 1]} {day.day:02d}",)
    if market == "US" and language == "en":
        calendar = calendar_of(language)
        weekday, month = calendar.weekdays[day.weekday()], calendar.months[day.month - 1]
        short = f"{month} {day.day}, {day.year:04d}"
        return (f"{weekday}, {short}", short)
    return (date_in_words(day, language), short_date_in_words(day, language))
