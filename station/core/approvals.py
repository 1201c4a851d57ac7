"""What a manager signs: a fill target for the next run, and a version of a product as it is set.

An approval changes no settings file. It names what it approves by its digest or by the target it
was made for, so that settings which change afterwards lose it.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, fields, is_dataclass, replace
from datetime import date
from decimal import Decimal
from enum import StrEnum

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind, Value
from station.core.mass import Mass
from station.core.product import Product, ProductError

PROPOSED, APPROVED, REFUSED = "proposed", "approved", "refused"
PRODUCT = "product"
"""What a SETTING fact of this module is about."""


class Answer(StrEnum):
    """What a manager says."""

    APPROVED = APPROVED
    REFUSED = REFUSED


def digest_of(product: Product) -> str:
    """SHA-256 of everything a product version says, 64 hex digits; the same in every run.

    Args:
        product: as its settings have it.
    """
    text = json.dumps(_plain(product), sort_keys=True, ensure_ascii=False, separators=(",", ":"))
    return hashlib.sha256(text.encode()).hexdigest()


@dataclass(frozen=True, slots=True)
class TargetAnswer:
    """What was said about a target.

    Args:
        product: article code.
        version: of the product.
        approved: whether the next run fills to it.
        before: target of the settings it was made for.
        target: the one approved or refused, in the unit of ``before``.
        proposal: uid of the proposal it answers; empty for none.
        reason: why, in the manager's words.
    """

    product: str
    version: int
    approved: bool
    before: Mass
    target: Mass
    proposal: str
    reason: str = ""


def target_fact(uid: str, product: Product, target: Mass, proposal: str, reason: str = "") -> Fact:
    """The entry by which a target holds from the next run on.

    Args:
        uid: UUID version 7 as text.
        product: as its settings have it.
        target: in the unit of the product's own.
        proposal: uid of the proposal it answers; empty for none.
        reason: why.

    Raises:
        ProductError: the target does not lie between floor and upper limit.
    """
    replace(product, target=target)
    return _target(uid, product, target, proposal, reason, Answer.APPROVED)


def refused_fact(uid: str, product: Product, target: Mass, proposal: str, reason: str) -> Fact:
    """The entry by which a proposed target is refused.

    Raises:
        ProductError: there is no reason.
    """
    if not reason.strip():
        raise ProductError("a refusal needs a reason: write why")
    return _target(uid, product, target, proposal, reason, Answer.REFUSED)


def _target(
    uid: str, product: Product, target: Mass, proposal: str, reason: str, answer: Answer
) -> Fact:
    details: dict[str, Value] = {
        "answers": proposal,
        "version": product.version,
        "before": str(product.target),
        "target": str(target),
        "reason": reason.strip(),
    }
    return Fact(EntryKind.PROPOSAL, uid, product.code, str(answer), "", details)


def target_answer(record: FactRecord) -> TargetAnswer | None:
    """What a fact says about a target; None where it is no answer."""
    fact = record.fact
    if fact.kind is not EntryKind.PROPOSAL or fact.result not in tuple(Answer):
        return None
    details, version = fact.details, fact.details["version"]
    assert isinstance(version, int), "the entry was made here"
    return TargetAnswer(
        product=fact.subject,
        version=version,
        approved=fact.result == APPROVED,
        before=Mass.parse(str(details["before"])),
        target=Mass.parse(str(details["target"])),
        proposal=str(details["answers"]),
        reason=str(details["reason"]),
    )


def with_target(product: Product, answer: TargetAnswer | None) -> Product:
    """The product with an approved target; as it is without one, or where its settings changed."""
    if answer is None or not answer.approved:
        return product
    if (answer.product, answer.version) != (product.code, product.version):
        return product
    if answer.before != product.target:
        return product
    return replace(product, target=answer.target)


@dataclass(frozen=True, slots=True)
class VersionApproval:
    """One approved version.

    Args:
        product: article code.
        version: of the product.
        digest: of everything it says.
        effective: first production day; None from at once.
    """

    product: str
    version: int
    digest: str
    effective: date | None


def version_fact(uid: str, product: Product, effective: date | None = None) -> Fact:
    """The entry by which a manager approves a product version as it is set now.

    Args:
        uid: UUID version 7 as text.
        product: as its settings have it.
        effective: first production day; None from at once.
    """
    details: dict[str, Value] = {
        "what": PRODUCT,
        "version": product.version,
        "digest": digest_of(product),
        "effective": None if effective is None else effective.isoformat(),
    }
    return Fact(EntryKind.SETTING, uid, product.code, APPROVED, "", details)


def version_approval(record: FactRecord) -> VersionApproval | None:
    """The approval of a fact; None where it is another setting."""
    fact, details = record.fact, record.fact.details
    if fact.kind is not EntryKind.SETTING or details.get("what") != PRODUCT:
        return None
    version, effective = details["version"], details["effective"]
    assert isinstance(version, int), "the entry was made here"
    return VersionApproval(
        product=fact.subject,
        version=version,
        digest=str(details["digest"]),
        effective=None if effective is None else date.fromisoformat(str(effective)),
    )


def why_not(product: Product, approvals: Iterable[VersionApproval], day: date) -> str:
    """Why a product may not be run on a day by these approvals; empty when it may."""
    digest = digest_of(product)
    named = f"{product.code} version {product.version}"
    mine = [one for one in approvals if one.product == product.code and one.digest == digest]
    if not mine:
        return f"product {named}, as it is set, is not approved: a manager approves it (F11)"
    first = min((one.effective for one in mine if one.effective is not None), default=None)
    if all(one.effective is not None and one.effective > day for one in mine):
        return f"product {named} is approved from {first} on, not on {day}"
    return ""


def open_proposals(records: Iterable[FactRecord]) -> tuple[FactRecord, ...]:
    """Proposals of targets that nobody answered, oldest first; other kinds are left out."""
    kept = [one for one in records if one.fact.kind is EntryKind.PROPOSAL]
    answered = {found.proposal for one in kept if (found := target_answer(one)) is not None}
    return tuple(
        one for one in kept if one.fact.result == PROPOSED and one.fact.uid not in answered
    )


def _plain(value: object) -> Value:
    """A value as canonical JSON can keep it, every part of it named."""
    if isinstance(value, Mass):
        return str(value)
    if isinstance(value, Decimal):
        return format(value.normalize(), "f")
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, tuple | list):
        return [_plain(one) for one in value]
    if isinstance(value, Mapping):
        return {str(name): _plain(one) for name, one in value.items()}
    if is_dataclass(value):
        return {one.name: _plain(getattr(value, one.name)) for one in fields(value)}
    assert value is None or isinstance(value, str | int), f"{type(value)} has no plain form"
    return value
