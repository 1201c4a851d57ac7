"""What the page LABELS says: doubts, first-off, scans, rolls, and labels printed again."""

from __future__ import annotations

DOUBT = (
    *("DOUBT", "FIRST-OFF", "SCAN", "ROLL", "REPRINT"),
    "No label is in doubt",
    "{count} labels to answer for: look at each bag",
    "{product}, weighed {time}",
    *("ON ITS BAG", "I see it there", "DESTROYED", "its bag goes out", "PRINT AGAIN"),
    *("it never came out", "this one is destroyed"),
    "the station ended before the label's fate was recorded",
    "a copy was printed",
    "the label of bag {serial} is {state}: {fate}",
    *("in doubt", "applied", "destroyed", "not printed", "never printed"),
    *("seen on its bag", "label destroyed", "label never printed"),
    "the label of bag {serial} is {state}: nothing to answer",
)

REPRINT = (
    *("LAST", "of the last bag", "which label?", "Print again: {what}"),
    *("OLD ONE DESTROYED", "torn up, seen by me", "NEVER CAME OUT", "only where in doubt"),
    "Refused. Say which label, why, and where the old one is.",
    "label {serial} is printed again, marked {mark}",
    "bag {serial} is held: it gets no label before QA has released it",
    "the label of bag {serial} is {state}, so it was printed: destroy it first",
    "bag {serial} has had {copies} already: the lead signs for the next one",
    "no copy",
    "the label of bag {serial} is {state}: only one that is {states} is printed again",
    "bag {serial} has had {count} copies: set it aside",
    *("PRINT", "APPROVE"),
)

FIRST_OFF = (
    *("two people sign", "approved", "REFUSE", "No run is open"),
    "{product}, version {version}",
    "Use by {day}",
    "Best before {day}",
    "Refused. Touch the two who sign, the lead first.",
    "{who} is nobody in people.toml",
    "{who} does not lead: the lead signs first",
)

SCAN = (
    *("OK", "MISMATCH", "read"),
    "{serial}: as recorded",
    "{serial} must say",
    "the scan of label {serial} did not match",
    "no bag of this run is labelled yet: pack one, then scan its label",
    "no scan differed: there is nothing to clear",
    "only a lead goes on after a mismatch",
)

ROLL = (
    *("ROLL IN", "ROLL OUT", "No roll is in", "in the printer"),
    "Roll {roll} is in. Count it out",
    "labels on it {count}",
    "roll {code}",
    *("returned {count}", "spoiled {count}", "samples {count}"),
    *("RETURNED", "SPOILED", "SAMPLES"),
    "{number} missing",
    "{number} too many",
    "Roll {roll}: why {difference}?",
    "{count} issued, {used} used so far",
    *("open", "adds up"),
    "Refused. Scan the roll and key in its labels first.",
    "touch and key in all three counts first",
    "roll {roll} is in: take it out first",
    "no roll is in",
)

SENTENCES = (*DOUBT, *REPRINT, *FIRST_OFF, *SCAN, *ROLL)
