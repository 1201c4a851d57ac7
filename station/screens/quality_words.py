"""What the pages of QA say: rows of tables and sentences, from facts alone."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from datetime import datetime, tzinfo

from station.core.checks.qa import QaLimit, qa_check_of
from station.core.complaint import BagSeen, Complaint
from station.core.facts import FactRecord
from station.core.holds import Releasable, ScopeKind
from station.core.inbox_items import Grave, Item
from station.core.journal import EntryKind
from station.core.metrology.batch import Judgement
from station.core.metrology.exact import decimal_of
from station.core.metrology.rehearsal import Rehearsal
from station.core.pack import Quality
from station.core.reference_test import ReferenceTest
from station.core.reject_ledger import BinState, LedgerRow
from station.screens.widgets.touch_table import TableRow
from station.screens.words import short_moment

_PLACES = 2
_SHOWN = 12
_WORTH = {Quality.REJECT: "open"}


def item_row(item: Item, zone: tzinfo) -> TableRow:
    """One open thing."""
    at = "" if item.at is None else short_moment(item.at.astimezone(zone))
    word = {Grave.STOP: "STOP", Grave.ATTEND: "ATTEND", Grave.TELL: "TELL"}[item.grave]
    cells = (word, item.words, at)
    return TableRow(f"{item.where} {item.key}", cells, item.grave is Grave.STOP)


def reject_row(row: LedgerRow) -> TableRow:
    """One reject."""
    now = _WORTH.get(row.quality, str(row.quality))
    cells = (f"{row.at:%H:%M}", row.serial, f"{row.net}", row.reason, now)
    return TableRow(row.serial, cells, row.open)


def reject_words(row: LedgerRow, shift: str) -> str:
    """Everything about one reject but its neighbours."""
    window = row.window
    lots = ", ".join(use.lot for use in row.lots)
    lines = [
        f"{row.serial}",
        f"{row.name}, {row.product} v{row.version}",
        f"net {row.net}: {row.verdict}",
        f"allowed {window.floor} to {window.upper}, T1 {window.limits.t1}, T2 {window.limits.t2}",
        f"set aside: {row.reason}",
        f"{row.at:%Y-%m-%d %H:%M:%S}{f', shift {shift}' if shift else ''}, by {row.operator}",
        f"blend {row.blend_lot}, use-by {row.use_by}",
        f"lots {lots}",
    ]
    if row.decision is not None:
        made = row.decision.decided
        into = f", new bag {made.into}" if made.into else ""
        seen = f", witness {made.witness}" if made.witness else ""
        lines.append(f"{made.disposition} by {row.decision.record.who}{seen}{into}: {made.reason}")
    return "\n".join(lines)


def neighbours_words(complaint: Complaint) -> str:
    """Bags around one, one on a line."""
    lines = []
    for one in complaint.in_order:
        mark = "▶" if one.serial == complaint.bag.serial else " "
        lines.append(f"{mark} {one.at:%H:%M:%S} {one.serial} {one.net}  {one.quality}")
    place = next(n for n, line in enumerate(lines) if line.startswith("▶"))
    return "\n".join(lines[max(0, place - 5) : place + 6])


def bin_words(state: BinState) -> str:
    """What lies in the bin, and whether it was counted."""
    words = f"{state.expected} bags lie in the bin by the record"
    count = state.counted
    if count is None:
        return f"{words}; not counted yet"
    if not count.difference:
        return f"{words}; counted {count.counted}, agrees"
    return f"{words}; counted {count.counted}, {count.difference:+d}: {count.explanation}"


def with_gone(words: str, gone: str) -> str:
    """What is said of a day, under what was purged of it."""
    return f"{gone}\n{words}" if gone else words


def reject_filters() -> tuple[tuple[str, Callable[[LedgerRow], str]], ...]:
    """Dimensions a day's rejects are filtered by, shift apart."""
    return (
        ("product", lambda row: row.product),
        ("run", lambda row: row.blend_lot),
        ("reason", lambda row: row.reason),
        ("position", lambda row: row.operator),
    )


def release_row(one: Releasable, zone: tzinfo) -> TableRow:
    """One thing that could be released."""
    state = "READY" if not one.blocked else f"BLOCKED {len(one.blocked)}"
    at = short_moment(one.at.astimezone(zone))
    about = one.subject if one.scope != ScopeKind.WINDOW else one.reason
    cells = (one.scope, about, f"{one.bags}", at, state)
    return TableRow(one.key, cells, bool(one.blocked))


def release_words(one: Releasable) -> str:
    """What keeps it, in words."""
    head = f"{one.scope}: {one.subject}\n{one.bags} bags, {one.reason}, {one.who}"
    if not one.blocked:
        return f"{head}\nNothing keeps it."
    return "\n".join((head, "It cannot be released:", *(f"– {words}" for words in one.blocked)))


def due_words(limit: QaLimit, due: datetime | None, now: datetime, *, failed: bool) -> str:
    """When a check is due, in a word or two."""
    if failed:
        return "FAILED: check again"
    if due is None:
        return "not due"
    minutes = int((due - now).total_seconds() // 60)
    return f"OVERDUE {-minutes} min" if minutes < 0 else f"in {minutes} min" if minutes else "NOW"


def check_row(record: FactRecord, zone: tzinfo) -> TableRow:
    """One check of QA on record."""
    made = qa_check_of(record)
    at = short_moment(record.at.utc.astimezone(zone))
    note = "; ".join(filter(None, (made.note, made.action)))
    cells = (at, record.fact.subject, made.words, str(made.limit), record.fact.result, note)
    return TableRow(record.fact.uid, cells, not made.good)


def bag_row(one: BagSeen, asked: str) -> TableRow:
    """One bag among its neighbours."""
    cells = (f"{one.at:%H:%M:%S}", one.serial, f"{one.net}", str(one.quality), str(one.label))
    return TableRow(one.serial, cells, one.serial == asked)


def complaint_words(found: Complaint) -> str:
    """The bag itself, as who answers a complaint reads it."""
    lots = "\n".join(f"  {name}: {code} from {who}" for name, code, who in found.lots)
    about = [f"{one.fact.kind}: {one.fact.result}" for one in found.about]
    aside = [f"set aside: {found.reason}"] if found.reason else []
    return "\n".join(
        (
            f"{found.bag.serial}: {found.product} v{found.version}, {found.bag.net}",
            f"packed {found.bag.at:%Y-%m-%d %H:%M:%S} by {found.operator}, "
            f"production day {found.production_day}",
            f"blend {found.blend_lot}, use-by {found.use_by}; "
            f"{found.bag.quality}, label {found.bag.label}",
            *aside,
            *about,
            "lots",
            lots,
        )
    )


def around_words(found: Complaint, zone: tzinfo) -> str:
    """Checks before and after the bag, the nearest ones of each."""
    lines = [_fact_line(one, zone) for one in found.before[-_SHOWN:]]
    lines.append(f"{short_moment(found.bag.at)}  ▶ THE BAG")
    lines += [_fact_line(one, zone) for one in found.after[:_SHOWN]]
    return "\n".join(lines)


def _fact_line(record: FactRecord, zone: tzinfo) -> str:
    fact = record.fact
    said = qa_check_of(record).words if fact.kind is EntryKind.QA_CHECK else fact.result
    at = short_moment(record.at.utc.astimezone(zone))
    subject = fact.subject if len(fact.subject) < 28 else f"{fact.subject[:8]}…"
    return f"{at}  {fact.kind}, {subject}: {said}"


def standing_words(test: ReferenceTest, judged: Judgement | None) -> str:
    """The criterion as it stands."""
    plan = test.plan
    done, picked = len(test.nets), len(test.picked)
    lines = [f"{test.lot_size} bags in the batch; {plan}", f"{picked} picked, {done} weighed"]
    if judged is None:
        return "\n".join(lines)
    unit = test.nominal.unit
    met = "met" if judged.mean_ok else "NOT MET"
    lines += [
        f"mean {decimal_of(judged.mean, _PLACES)} {unit}, s {round(judged.s, _PLACES)} {unit}",
        f"mean + {plan.factor} s ≥ {test.nominal}: {met} so far",
        f"below T1: {judged.t1_count} of at most {judged.t1_accept}",
        f"below T2: {judged.t2_count}"
        + ("" if plan.t2_accept is None else f" of at most {plan.t2_accept}"),
    ]
    if done >= plan.n and not judged.second_needed:
        lines.append("WOULD BE ACCEPTED" if judged.accepted else "WOULD NOT BE ACCEPTED")
    return "\n".join(lines)


def rehearsal_words(found: Rehearsal) -> str:
    """What the rehearsal of the official sample on the stored bags says."""
    return (
        f"{found.passed} of {found.draws} rehearsed samples of the stored bags pass "
        f"(failed: mean {found.mean_failed}, T1 {found.t1_failed}, T2 {found.t2_failed})"
    )


def sentence(words: str) -> str:
    """Words with a capital."""
    return words[:1].upper() + words[1:]


def together(parts: Iterable[str]) -> str:
    """Parts that are not empty, in one line."""
    return ", ".join(filter(None, parts))
