"""What stands beside an alarm, what the disk says, and what is refused at any page."""

from __future__ import annotations

CAUSES = (
    "{count} bags weigh less than {mass} in the mean",
    "fewer than {count} labels are left",
    "the oldest entry has waited for more than 30 minutes",
    "lot {lot} is held",
    "lot {lot} is nearly empty",
    "this cannot be shelved, {what}: {answer}",
    "an alarm is not shelved for {minutes} minutes: allowed are {allowed}",
    *("the scale failed its check", "{what} failed its check", "the store is closed"),
    "an empty bag weighs {mass}, {more} more than the tare taken off",
    "lot {code}",
)

DISK = (
    "the disk is {percent} % full, {free} free: take old files off it, or call maintenance",
    "the disk is {percent} % full, {free} free: {why}",
    "the disk is nearly full: free {more} on it, then packing goes on by itself",
    "the disk cannot be asked: {why}",
    "there is room again: {free} free",
    "the record's log takes {size}: another program has been reading the record for long, close it",
)

LINE = (
    "the station has a fault ({what}): call maintenance",
    "another scale is here, {here}; in use is {known}: take it into use, {where}",
    "RUN, then SERVICE (F9), SWAP",
    "product {product} cannot run on this scale: {why}",
    "product {product} is not known: choose one of {allowed}",
    "product {product} is at version {version} now, not {other}: choose it again",
    "an order of {count} bags: give 1 or more, or leave it open",
    "a run needs a lead and a person on the scale",
    "lot {lot} is not in the record: receive it before the run",
    "setting bag {serial} aside needs a reason: choose one",
    "gone on after a stop: {why}",
    "bags are taken again: {why}",
    "no bag is taken: {why}",
)

SCREEN = (
    "nobody who may sign has a PIN or badge: station people pin",
    "{who} has no PIN: the manager sets one, station people pin {id}",
    "refused: {why}",
    "{count} characters, at most {most}",
    "it does not end with Enter",
    "it came too slowly, or was too short, for a scanner",
    "the code presses keys that are no text",
    "the code holds a character that no code of ours has",
    "it lacks what the station's scanner types first",
    "{count} characters, allowed are {least} to {most}",
    "{count} minutes",
)

SENTENCES = (*CAUSES, *DISK, *LINE, *SCREEN)
