"""What the page CHECKS says: the scale, empty bags, and bags a failed check made suspect."""

from __future__ import annotations

SCALE = (
    *("SCALE", "EMPTY BAG", "SUSPECT BAGS", "hold down"),
    *("CHECK THE SCALE", "NO RUN IS OPEN", "LIFT THE WEIGHTS OFF", "EMPTY THE PAN"),
    "PUT ON {weights}",
    "THE SCALE HOLDS",
    "THE SCALE HOLDS, beyond its first limit: have it adjusted soon",
    "THE SCALE FAILS: its bags are held, call maintenance",
    "Open a run first: a check is made at its loads.",
    "Checked {stage}. Bags wait meanwhile.",
    "The next check is {stage}.",
    "as left, after its adjustment",
    "Due at {time}.",
    "The run ended: the check was given up.",
    "The run ended: nothing is recorded.",
    "Given up: nothing is recorded.",
    "Not recorded: {why}",
    "nothing on the pan",
    "{error}, may be {limit}",
    "{error}, beyond {limit}",
    *("NOW", "GOOD", "WARN", "FAILS"),
    "all loads are taken",
    "wait until the scale shows a steady weight",
)

EMPTY_BAGS = (
    *("WEIGH AN EMPTY BAG", "SCAN THE FILM LOT", "LIFT THE BAG OFF", "PUT AN EMPTY BAG ON"),
    "STUDY {count} BAGS",
    "{number} of {whole}",
    "{mass} FITS ({against})",
    "{mass} DOES NOT FIT ({against})",
    "declared tare {mass}",
    "study of its film lot: {study}",
    "Study kept: mean {mean}, s {spread}, {count} bags",
    "mean {mean}, s {spread}, {count} bags",
    "the bags scatter too much for a mean tare ({study}): use other bags",
    "the study has {study}, more than the tare {tare} taken off: raise the tare of {bag}",
)

SUSPECT = (
    "No bag is suspect.",
    "{count} bags from {begin} to {end} are held: {why}.",
    "Zero stepped by {step} between {before} and {after}.",
    "{count} more windows wait.",
    "{number} held",
    "{number} failed",
    "solid: {error} from the first bag on, dashed: growing",
    "solid: {error} from the first bag on, dashed: growing, step: as dated",
    "{case}: mean {mean}, {count} below T1: passes",
    "{case}: mean {mean}, {count} below T1: FAILS",
    "not judged: {why}",
    *("as weighed", "whole error", "even growth", "dated step"),
    *("serial", "time", "net", "whole", "even"),
    "Weigh again in this order: net as shown, less the whole error, less even growth",
    "why: scan or type the reason",
    *("weighed again", "within both bounds", "taken apart"),
    *("Who decides?", "Why? Choose or type the reason.", "What becomes of the bags?"),
    "asked the line …",
    "the clock was set between the checks: the bags have no sure order in time",
)

SENTENCES = (*SCALE, *EMPTY_BAGS, *SUSPECT)
