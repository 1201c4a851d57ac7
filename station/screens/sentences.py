"""What core, line and printer say in whole sentences, so that screens can say it in any language.

Their English words are the record's words and the keys of the translations. A hole in braces takes
whatever stands there: a code or figure, which stays, or words that are listed here themselves. A
test holds each sentence against the code that says it. Sentences not listed are shown in English.
What one page behind the lead's doors says stands in a module of ``station/screens/catalogue``.
"""

from __future__ import annotations

from enum import StrEnum

from station.core import clearance, clock_guard
from station.core.alarms import RULES, AlarmKind
from station.core.checks import first_off, rolls, scan_back, suspect
from station.core.checks.qa import QaKind
from station.core.dispositions import Disposition
from station.core.genealogy import Stage
from station.core.holds import ScopeKind
from station.core.label_life import ReprintReason
from station.core.metrology.plans import PlanKind
from station.core.metrology.scale_check import CheckLoad, CheckStage
from station.core.metrology.suspect import ErrorSign
from station.core.pack import LabelState, Quality
from station.core.pauses import Look, Reason
from station.core.rights import Act, Role
from station.core.training import MARK, NO_PRODUCT
from station.line.state import Verb
from station.screens.catalogue import (
    alarms,
    change,
    checks,
    labels,
    lots,
    manager,
    numbers,
    office,
    quality,
    shipping,
    wire,
)

PLACES = (
    "RUN, then {door} ({key})",
    "CHANGE, CLOCK",
)
"""Where something is done, at the end of a sentence."""

READING = (
    "waiting for the scale's first reading",
    "the scale is silent: check its cable and power",
    "over capacity: take the load off",
    "the scale shows {unit}, the run is in {other}: set the scale back",
    "the scale shows a net weight: clear its tare, the station subtracts the bag itself",
    "a check goes on at the scale: put no bag on it",
    "the station is behind the scale: lift the bag off and wait",
)
"""Why a reading is not believed, or not taken."""

PAN = (
    "no run is open: the lead starts one",
    "not labelled: {reason}",
    "label is void",
    "{count} bags are packed: the lead ends the run",
    "the pan must be empty before the next bag counts",
    "the empty pan shows {mass}: wipe it, then zero the scale",
    "setting aside: {reason}",
    "changed after weighing: {net} is recorded, {found} is on the pan",
    "changed after weighing",
)
"""What stands under the verb."""

LABELS = (
    "label {serial} is in doubt: {why}",
    "this bag is not recorded and has no label: {why}",
    "the printer: {why}",
    "it was not out after {seconds} s: look whether it comes out",
    "its run ended before the printer said that it came out",
    "its use-by {day} is past: end the run",
    "label {serial} may still come out: cancel it at the printer, or wait",
    "label {serial} is not out yet: look at the printer",
    "{count} labels in doubt, first {serial}: answer in {where}",
    "no label roll is in: scan one in at {where}",
    "the label was refused ({why}): end the run, or approve it at {where}",
    "{why}: two people approve the label at {where}",
    "the run begins with a first-off",
    "a new roll begins with a first-off",
    "the scan of label {serial} does not match: the lead clears it at {where}",
    "scan the {what}: {where}",
    "first label",
    "label of the roll",
    "the scan of a label is overdue: {where}",
)

CHECKS = (
    "the scale failed its check: adjust it, then check it as left: {where}",
    "{count} suspect bags are held: QA or the lead decides: {where}",
    "the run begins with a check of the scale: {where}",
    "check the scale after {what}: {where}",
    "a pause",
    "the check of the scale is overdue: {where}",
    "the empty bag of {mass} does not fit its {what}: weigh another: {where}",
    "bag {code}, film lot {lot} has no tare study: make one: {where}",
    "{what} failed its check: put it right, then check it again: {where}",
    "{count} bags are held after a failed check: QA decides: {where}",
    "the run begins with a check of {what}: {where}",
    "the check of {what} is overdue: {where}",
)

RUN = (
    "count the bags of the run before: {where}",
    "clear the line and sign for it: {where}",
    "lot {lot} is held: take it off and load another: {where}",
    "lot {lot} is on the line and on no label: take it off: {where}",
    "the centre stops {what} {code} ({reason}): {end}",
    "take it off: {where}",
    "end the run",
    "the line stands, {reason}: RUN, then CHANGE (F8) to go on",
    "{what}: look at date and time, then sign at {where}",
    "a run is open: end it before the next one starts",
    "run of {product} open, blend lot {lot}",
    "no run is open",
    "a bag is on the pan: finish it and lift it, then end the run",
    "run of {product} ended",
    "nobody signed",
)

DUE = (
    "scale check",
    "scale check at the end of the run",
    "scan of a label",
    "scan the last label",
    "weigh an empty bag within {count} bags",
    "check of {what}",
    "{what} in {minutes} min",
    "{what} now",
)
"""What is due soon."""

LEAD = (
    "Refused. {why}",
    "Order: {count} bags",
    "{count} bags",
    "open order",
    "on the scale: {who}",
    "Next: {what}",
    "choose a product",
    "choose a lot of {component}",
    "say who leads",
    "say who is on the scale",
    "choose the product first, then its lots",
    "lot {lot} is not known: receive it first",
    "lot {lot} is {component}, which {product} does not contain: allowed are {allowed}",
    "lot {lot} is {why}",
    "Good bags: {count} of {order}, set aside: {aside}",
    "Good bags: {count}, set aside: {aside}",
    "Mean net {mass}",
    "No good bag yet",
    "Lead {who}, on the scale {person}",
    "Use by",
    "Best before",
)
"""On the lead's panel."""

PRINTER = (
    "it does not answer: is it switched on, is its cable in?",
    "the printer has stopped: see its panel",
    "the printer gave up",
    "look whether a label came out",
    "look whether the label is whole",
    "look whether it comes out",
    "{why}, after printing may have begun",
    "{why}, after a page was out",
    "it was cancelled",
    "it was cancelled before printing",
    "it was not out after {seconds} s",
    "it was not out after {seconds} s ({why})",
    "the printer gives no known job state",
    "the printer says that it is out, but its reply to the page was lost",
    "it is held until a person releases it",
    "the folder for labels is gone: make {folder} again",
    "the disk is full: free some space, then print again",
    "the queue cannot reach the printer: switch it on, check its cable",
    "the printer is offline: switch it on, check its cable",
    "the printer is switched off",
    "the printer is paused: press its button to go on",
    "a cover is open: close it",
    "a door is open: close it",
    "no labels left: load a roll",
    "labels are jammed: clear them",
    "labels are not taken away: take them away",
    "ribbon or ink is used up: change it",
    "ribbon or ink is missing: put it in",
)
"""The usual troubles of a printer; the rest is shown in English."""

ALARMS = (
    *(str(kind) for kind in AlarmKind),
    *dict.fromkeys(rule.answer for rule in RULES.values()),
    "since {time}",
    "since {time}, seen by {who}",
    "shelved until {time}",
    "and {count} more, below these",
)

TRAINING = (MARK, NO_PRODUCT)

SIGNATURES = (
    "too many wrong PINs: wait {time}",
    "too many wrong badges: wait {time}",
    "this PIN is not right",
    "this badge is not right",
    "this PIN is not right: wait {time}",
    "this badge is not right: wait {time}",
    "{who} cannot sign this",
    "{who} may not sign here",
    "{who} did not sign: to {act}, a PIN or badge is needed",
    "Sign to {act}",
    "Sign as the second person to {act}",
    "work at this screen",
)

SENTENCES = (
    *(*PLACES, *READING, *PAN, *LABELS, *CHECKS, *RUN, *DUE),
    *(*LEAD, *PRINTER, *ALARMS, *TRAINING, *SIGNATURES),
    *(*checks.SENTENCES, *change.SENTENCES, *lots.SENTENCES, *labels.SENTENCES),
    *(*alarms.SENTENCES, *quality.SENTENCES, *numbers.SENTENCES, *shipping.SENTENCES),
    *(*office.SENTENCES, *manager.SENTENCES, *wire.SENTENCES),
)
"""All of them."""

_TABLES: tuple[type[StrEnum], ...] = (
    *(Verb, Reason, Look, Role, Act, QaKind, CheckLoad, CheckStage, ErrorSign),
    *(ReprintReason, Disposition, ScopeKind, Quality, LabelState, Stage, PlanKind),
    *(clearance.Gate, clearance.Point, clearance.Explanation, clock_guard.Reason),
    *(first_off.Refusal, rolls.Explanation, scan_back.Clearing, suspect.Decision),
)
_CAPITALS: tuple[type[StrEnum], ...] = (CheckLoad, QaKind, Disposition, ScopeKind, LabelState)
_UPPER = tuple(str(one).upper() for table in _CAPITALS for one in table)
"""Those a button or a plate shows in capitals."""

DOORS = (
    *("NUMBERS", "CHECKS", "LABELS", "LOTS", "TRACE", "CHANGE"),
    *("SERVICE", "QUALITY", "MANAGER", "SHIPPING", "ALARMS"),
)
SEALS = ("LINE", "LOTS", "STOP", "QA", "SCALE", "SCAN", "TARE", "ROLL", "FIRST-OFF")
MARKS = ("target", "upper")
"""Of the strip; T2, T1 and N are signs of the trade."""

WORDS = (*(str(one) for table in _TABLES for one in table), *_UPPER, *DOORS, *SEALS, *MARKS)
"""Single words that a screen shows as they are."""
