"""What the page CHANGE says: count, clear line, stop, clock."""

from __future__ import annotations

COUNT = (
    *("COUNT", "CLEAR LINE", "CLOCK"),
    "There is no run before",
    "{product}: {mass} kg net",
    "On record {bags}, counted {count}",
    "On record {bags}, counted {count}: {difference} more. Why?",
    "On record {bags}, counted {count}: {difference} fewer. Why?",
    "{count} bags {more} than recorded: count again, or say why",
    *("more", "fewer"),
    "there is no run before: nothing is to be counted",
    "signed with a difference",
)

CLEAR = (
    "Look, then touch",
    "not clear yet: {point}",
    "not yet: {what}",
    "Why does the line stop?",
    "Line stands: {reason}. Look, then touch",
    "the line does not stand",
)

CLOCK = (
    "An open run keeps the dates it was opened with.",
    "Nothing is open.",
    "nothing about the clock is open",
    "no time service has kept the clock right for {time}",
    "the clock jumped {way} by {time}",
    "the clock jumped {way} by {time}, to another day",
    *("ahead", "back"),
    "the offset from UTC changed by {time}, as daylight saving does",
    "the year {year} is not believed",
    "the clock is {time} behind the newest entry of the record",
    "the newest entry of the record is {time} old",
    "the machine slept for {time}",
    "{first}, and {count} more",
)

ANSWERS = (
    "Signed and on record.",
    *("Refused. Touch who signs.", "Refused. Count the bags first."),
    "Refused. Look at another clock and say why first.",
    "Refused. No run is open.",
    *("recorded", "Refused", "GO ON"),
)

SENTENCES = (*COUNT, *CLEAR, *CLOCK, *ANSWERS)
