"""What the page SERVICE says of the wire to the scale, of lessons and of scales put to use."""

from __future__ import annotations

READ = (
    "gross",
    "at rest",
    "in motion",
    "no weight",
    "high resolution",
    "centre of zero",
    "over capacity",
    "under capacity",
    "zero error",
    "initial zero error",
    "tare error",
    "weight not displayed",
    "sent to the scale",
    "unknown command",
    "line error",
    "bytes that belong to no frame",
    "bytes that belong to no line",
    "frame cut off after {count} bytes by the start of the next",
    "frame without an end within {count} bytes",
    "frame of {count} bytes, a weight has {number}",
    "weight is {shown}, not a number of the standard's form",
    "{field} is {shown}, allowed is {allowed}",
    "status {code} with the weight {shown}, it needs ten dashes",
    "line that does not fit the pattern of its description",
    "checksum {code} does not agree",
    "unit {shown} is not in the description",
    "value is {shown}, not a number as described",
    "value is {number}, {why}",
    "not a multiple of {number}",
    "below the lowest of the description, {number}",
    "above the highest of the description, {number}",
    "flags that contradict",
    "line cut off after {count} bytes by the start of the next",
    "line without an end within {count} bytes",
)
"""What a line of the scale was, or why it was nothing."""

LESSON = (
    "none of what was heard is a weight by this description",
    "{count} lines are weights, {number} are not: look at each of them",
    "all {count} lines are weights: compare them with what the scale showed",
    "From the recording {file}: TAKE a line.",
    "No whole line was heard yet.",
    "Is the scale on, and are baud rate and parity those of its menu?",
    "A scale that is to be asked needs its request above.",
    "{count} kept.",
    "Put another weight on, and TAKE a line at rest and one in motion too.",
    "PROPOSE when they differ enough.",
    "No description yet",
    "lines",
    "line {number}",
    "mark two or more, with different weights on the pan",
    "mark the same fields on each line, in the same order",
    "mark the value on each line",
    "its marks overlap or leave the line",
    "they do not all end with the same control characters",
    "mark no control characters, and nothing after the end",
    "field {code}",
    "between the fields stands {one} and also {other}: mark what changes",
    "it changes: mark it on each line",
    "no checksum known here agrees on all lines: mark another field, or none",
    "example {number}, {line}",
    "{field} is read as {shown}, not {due}",
    "the demo's settings stay as they are",
    "teach a scale of your own",
    "these lines are in {units}",
    "the settings are in {code}",
    "set unit, interval and capacity under [scale] of station.toml first",
    "kept as {file} and named in station.toml",
    "the settings before are in station.toml.before",
    "Stop and start the station to use it",
)
"""Teaching the lines of an unknown scale."""

SWAP = (
    "IN USE.",
    "Bags since the last good check of the scale before are covered by no check of it any"
    " more: QA decides about them.",
    "Put its number into station.toml.",
    "Recorded as refused",
    "it failed its check with test weights: have it adjusted, then check it again",
    "it does not suit {products}: use another scale",
    "serial number {shown}: give the 1 to 40 characters of the plate",
    "verified {shown}: give the day as in {day}",
    "verified {day}: give a day from {first} to today, {today}",
    "serial {code}",
    "{name} serial {code}",
    "connected by {device}",
    "a scale that says nothing",
    "no scale yet",
    "none was taken into use on record yet",
    "then its number, its verification and who answers for it",
    "checked was {known}, here is {found}: CHECK IT again",
)
"""Taking a scale into use."""

SUITS = (
    "heaviest gross {mass} against Max {most}",
    "nominal {mass} against Min {least}",
    "Max / e = {number}, class {code} allows {least} to {most}",
    "any number",
    "scale interval {mass} against {share} of {limit} = {most}",
    "in-service error at {gross} gross {mass} against {share} of {limit} = {most}",
    "nominal {mass} against {count} intervals of {interval}",
    "scale interval {mass} against at most {most} for {nominal}",
    "class {code} knows no scale interval of {interval} (R 76 Table 3)",
    "no single test weight of {mass}: use 1, 2 or 5 times a power of ten from 1 g to 20 kg",
    "a check needs test weights: name at least one",
    "the test weights come to {total} for the load {load} of {mass}: at least {percent} of it"
    " are needed",
    "test weights of class {code} for {mass} may be wrong by {own}, more than a third of the"
    " {allowed} the scale may be: use a finer class",
)
"""How well a scale suits a product, and test weights a check."""

COMMANDS = (
    "{name} would change what the bags of the open run weigh: end the run",
    "{name} waits: a bag is on the pan",
    "wait until the scale stands still: it is never set to zero in motion",
    "the scale's line is not open",
    "the scale does not do that",
    "it reached the scale damaged, nothing was done",
    "the scale gave no answer, look at its display",
    "the scale refused to set zero: empty the pan",
    "CLEAR TARE",
    "DIAGNOSE",
    "UNIT {code}",
)
"""What the scale is told, and what became of it."""

FACTS = (
    "class {code}",
    "interval {mass}",
    "Version",
    "Protocol",
    "Range",
    "Parts",
    "Record",
    "Languages",
    "Threads",
    "SMA SCP-0499 level {code}",
    "{name} not installed",
    "this version can damage a file that two connections write at once",
    "the station writes and checkpoints through one, so it cannot happen here",
    "the known fault of older versions is mended in this one",
    "{number} % full",
    "{count} {code} free",
    "change every {count} ms",
    "{code} {count} of {whole}",
)
"""Of the scale and of the station."""

LINK = (
    "another program has it: close that program, or name another port",
    "it is not there: check the plug",
    "it is no serial port",
    "present are",
    "scale's port {code} cannot be opened",
    "the scale on {code} has sent nothing for {number} s: check that it is switched on, its"
    " cable, and its communication settings",
    "on {code} comes back what the station sends, and nothing else: check that the scale is"
    " switched on, its cable, and its communication settings",
    "one line comes again and again and is no weight ({why}): see what the scale shows, such as an"
    " error, another unit or another mode, and set it back",
    "weights come {number} s apart, and one counts for {most} s: set the scale, or the converter on"
    " its line, to send more often and at once",
    "the scale is a recording: no bag is taken from it",
    "the scale has just come back: its weights count in a moment",
    "more bytes arrive than a scale sends: is this the scale's line?",
)
"""How the line to the scale is."""

DOUBTS = (
    "over capacity: take the load off the pan",
    "the scale reports a zero error: empty the pan and set it to zero",
    "the scale found no zero when it was switched on: empty the pan and switch it on again",
    "the scale reports a tare error: empty the pan and clear the tare",
    "the scale shows no weight",
    "the scale came back at zero and a load lay on the pan before: take everything off, then press"
    " the pan once with a hand",
    "a load was taken for zero when the scale came back: with the pan empty set the scale to zero,"
    " or switch it off and on",
    "other unit {found}, the line runs in {unit}: set the scale back",
    "{mass} is in high resolution, which is not the indication",
    "{mass} is the tare, not the load",
    "the scale sent dashes instead of a weight",
    "{mass} is not a multiple of {interval}",
    "{mass} is more than the scale weighs, {most}",
    "{mass} is below what the scale weighs: see that the pan lies right and nothing lifts it, empty"
    " it and set the scale to zero",
    "the scale shows less than zero: see that the pan lies right and nothing lifts it, empty it and"
    " set the scale to zero",
    "the scale says centre of zero and shows {mass}",
    "the computer slept or was held up: what the scale sent is too old",
)
"""Why a reading may not be used."""

FAULTS = (
    "even parity",
    "odd parity",
    "the scale sends 7 data bits with {parity}: set bits 7 and {same} for this port ({here}), or"
    " 8N1 on the scale",
    "the scale sends 7 data bits with {parity}: set the same on the converter, or 8N1 on the scale",
    "bytes arrive but none is a frame: check baud rate and parity of the converter",
    "bytes arrive but no line ever starts or ends: check baud rate and parity of the converter, and"
    " that this is the scale",
    "text arrives but none of it is a weight of this protocol: is another device on this port, or"
    " another output format set on the scale? If not, check baud rate and parity of the converter",
    "what the station sends comes back in front of the answers: switch the echo of the converter or"
    " of the scale off",
    "many frames arrive damaged: check plug and cable, keep it away from motors, and see that no"
    " other program reads this port",
    "bytes arrive but no line ever starts or ends: check baud rate and parity ({here}), and that"
    " this is the scale",
    "text arrives but none of it is a weight of this protocol: is another device on this port, or"
    " another output format set on the scale? If not, check baud rate and parity ({here})",
    "the scale on {code} has sent nothing for {number} s: check that it is switched on, its cable,"
    " and its communication settings ({here})",
    "on {code} comes back what the station sends, and nothing else: check that the scale is"
    " switched on, its cable, and its communication settings ({here})",
    "{what} lost on {code}",
    "the device is gone, or another program reads the same port",
    "check the plug, the cable and the {what}'s power",
    "check the plug",
    "it comes back without help",
    "this user may not use it: add the user to the group that owns it (on most Linux systems"
    " dialout) and sign in again",
    "another device is at {code}",
    "it is {found}, the {what}'s is {known}: plug that one in again, or stop and start the station"
    " to take this one",
    "no USB device",
)
"""What is wrong with the line, and what to do."""

SENTENCES = (
    *(*READ, *LESSON, *SWAP, *SUITS),
    *(*COMMANDS, *FACTS, *LINK),
    *(*DOUBTS, *FAULTS),
)
