"""What the page LOTS says: the lots on the line, deliveries, and what the line refuses."""

from __future__ import annotations

LINE = (
    *("LINE", "RECEIVE", "WHO"),
    *("LOAD", "both on the label", "LOAD CLEAN", "bin and belt empty", "FINISHING", "last of it"),
    *("EMPTY", "none left on line", "RETURN", "weigh the rest", "WASTE", "weigh it"),
    *("HOLD", "hold the button", "RELEASE", "QA holds the button"),
    *("not weighed", "touch to change", "not weighed in", "scan a lot, or touch one"),
    *("HELD", "on no label", "empty by now?", "finishing"),
    "bag {code}: rework of {lot}, last day {day}",
    "{code} is not known: receive it first",
    *("call QA", "take it off the line"),
    "out of bags",
)

RECEIVED = (
    *("What", "From", "day, month", "typed below", "tenths", "warm or damaged"),
    *("a new code is made", "Lot", "Came", "Arrived at"),
    "{digits} is no day: give day and month, like 2411 for 24 November",
    *("harvested", "packed", "last day", "code", "reference"),
    "it came too warm, or damaged: QA decides",
)

ANSWERS = (
    "Lot {lot} is held, and every bag that may hold some of it.",
    "Lot {lot} is released, and the bags that were held with it.",
    "Lot {lot} received.",
    "Lot {lot} received and held.",
    "Lot {lot}: {move}, on record.",
    *("loaded", "empty", "returned", "wasted", "rework"),
    "QA or a manager releases a lot: touch WHO and choose your name",
    "who says so? Touch WHO and choose your name",
    *("held at the line", "released at the line by QA"),
)

REFUSED = (
    "lot {lot}: {mass} is below nothing",
    "lot {lot}: waste needs its mass: weigh it",
    "lot {lot} is not on the line: on it are {lots}",
    "lot {lot} is not known: check the code",
    "lot {lot} is not known: receive it first",
    "lot {lot} is {status}: it must not be used, call QA",
    "lot {lot} had its last day on {day}: it must not be used",
    "lots changed while a bag was on the pan: lift it before the next change",
    "the bag on the pan may hold lot {lot}, which is held: set it aside and lift it, then change"
    " the lot",
    "take the old lot off and load the next in one step, or end the run",
    "rework of {lot} was packed {time} ago: it may go back on the line for {most}",
    "lot {lot}: no person holds it; lots.toml says what it is",
    "all 999 lot codes of {day} are used: give a code by hand",
    "lot {lot} is already in the record as another delivery ({component} from {supplier}, received"
    " {day}): leave the code empty to get a new one",
    "lot {lot} of {supplier} was received already on {day}: load it, do not receive it again",
    "component {component} is not known: allowed are {allowed}",
    "lot {lot}: {mass} came: give more than nothing, or no mass",
    "lot {lot}: packed {packed} after it was received {received}",
    "lot {lot}: harvested {harvested} after it was received {received}",
    "lot {lot}: {warmth} °C on arrival: allowed are {least} to {most} °C",
    "{name} stands for {first} and for {second}: look at the case and keep one",
    "lot code {code} cannot be printed: allowed are 1 to 20 of the characters A-Z 0-9 . / - (no"
    " blanks, no small letters)",
    "no lot of {component} may be used on {day}",
    *("free", "held", "expired"),
)

SENTENCES = (*LINE, *RECEIVED, *ANSWERS, *REFUSED)
