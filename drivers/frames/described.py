"""Reads lines by a description; see drivers.frames.base.FrameParser. Pure."""

from __future__ import annotations

import re
from decimal import Decimal

from drivers.errors import DescriptionError
from drivers.frames.base import Condition, Garbage, Item, Kind, WeightFrame
from drivers.frames.description import MAX_LINE, Bit, Description, Example, Meaning, Meanings
from drivers.frames.pattern import compiled

_NO_FRAME = "bytes that belong to no line"
_CONDITIONS = (  # the first that is said holds
    (Meaning.ERROR, Condition.NOT_DISPLAYED),
    (Meaning.OVER, Condition.OVER_CAPACITY),
    (Meaning.UNDER, Condition.UNDER_CAPACITY),
    (Meaning.ZERO, Condition.CENTRE_OF_ZERO),
)
_KINDS = {Meaning.GROSS: Kind.GROSS, Meaning.NET: Kind.NET, Meaning.TARE: Kind.TARE}
_CONTRARY = (frozenset({Meaning.OVER, Meaning.UNDER}), frozenset({Meaning.ZERO, Meaning.OVER}))


class DescribedParser:
    """Parses what a scale sends by a description that holds its own examples.

    Args:
        description: of the lines.

    Raises:
        DescriptionError: an example is not read as it says; names it and what was read.
    """

    MAX_PENDING = MAX_LINE
    MOST_KNOWN = 1024
    """Different lines kept in mind; when there are more, all are forgotten."""

    def __init__(self, description: Description) -> None:
        self._form = description
        self._line = compiled(description.parts)
        self._number = _number(description)
        self._pending = b""
        self._known: dict[bytes, Item] = {}
        for place, example in enumerate(description.examples, start=1):
            self._check(place, example)

    @property
    def frame_start(self) -> bytes:
        """What every line starts with; may be empty."""
        return self._form.start

    @property
    def pending(self) -> int:
        """Number of bytes kept that are not yet part of an item."""
        return len(self._pending)

    def feed(self, chunk: bytes) -> list[Item]:
        """Take the next bytes of the stream; return what is complete, in order."""
        data = self._pending + chunk
        items: list[Item] = []
        start, size = 0, len(data)
        while start < size:
            item, end = self._next(data, start)
            if item is None:
                break
            items.append(item)
            start = end
        self._pending = data[start:]
        return items

    # --- where lines begin and end ----------------------------------------------------------

    def _next(self, data: bytes, start: int) -> tuple[Item | None, int]:
        """Return the item at ``start`` and where it ends, or None while it is incomplete."""
        mark, limit = self._form.start, start + MAX_LINE
        if mark and not data.startswith(mark, start):
            edge = data.find(mark, start, limit)
            if edge >= 0:
                return Garbage(data[start:edge], _NO_FRAME), edge
            if len(data) < limit:
                return None, start
            kept = _overlap(data[start:limit], mark)
            return Garbage(data[start : limit - kept], _NO_FRAME), limit - kept
        end = data.find(self._form.end, start + len(mark), limit - self._form.tail)
        again = data.find(mark, start + len(mark), limit if end < 0 else end) if mark else -1
        if again >= 0:
            why = f"line cut off after {again - start} bytes by the start of the next"
            return Garbage(data[start:again], why), again
        if end < 0:
            if len(data) < limit:
                return None, start
            kept = _overlap(data[start:limit], mark)
            why = f"line without an end within {MAX_LINE} bytes"
            return Garbage(data[start : limit - kept], why), limit - kept
        end += len(self._form.end) + self._form.tail
        if end > len(data):
            return None, start
        return self._remembered(data[start:end]), end

    def _remembered(self, raw: bytes) -> Item:
        item = self._known.get(raw)
        if item is None:
            item = self._read(raw)
            if isinstance(item, WeightFrame):
                if len(self._known) >= self.MOST_KNOWN:
                    self._known.clear()
                self._known[raw] = item
        return item

    # --- what a line says ---------------------------------------------------------------------

    def _read(self, raw: bytes) -> Item:
        form = self._form
        tail = raw[len(raw) - form.tail :]
        body = raw[len(form.start) : len(raw) - form.tail - len(form.end)]
        found = self._line.fullmatch(body)
        if found is None:
            return Garbage(raw, "line that does not fit the pattern of its description")
        fields = {name: text.decode("latin-1") for name, text in found.groupdict().items()}
        if form.checksum is not None and not self._sums_up(body, tail, fields):
            return Garbage(raw, f"checksum {form.checksum.kind} does not agree")
        unit = form.units.get(fields["unit"]) if "unit" in fields else form.unit
        if unit is None:
            return Garbage(raw, f"unit {fields['unit']!r} is not in the description")
        says, known = self._says(fields)
        shown = fields["value"].strip(" ")
        if shown in form.value.words:
            says |= form.value.words[shown]
            return self._frame(raw, None, unit, says, known, fields)
        digits = self._digits(shown, fields.get("sign", ""), says)
        if digits is None:
            return Garbage(raw, f"value is {fields['value']!r}, not a number as described")
        if why := self._misfit(Decimal(digits)):
            return Garbage(raw, f"value is {digits}, {why}")
        return self._frame(raw, digits, unit, says, known, fields)

    def _sums_up(self, body: bytes, tail: bytes, fields: dict[str, str]) -> bool:
        form = self._form
        assert form.checksum is not None
        written = fields.get("check", "").encode("latin-1")
        covered = body[: len(body) - len(written)]
        if form.checksum.with_start:
            covered = form.start + covered
        if form.checksum.with_end:
            covered += form.end
        return form.checksum.agrees(covered, tail or written)

    def _says(self, fields: dict[str, str]) -> tuple[Meanings, bool]:
        """Return everything the flags say, and whether all of them are known."""
        says: Meanings = frozenset()
        known = True
        for name, tokens in self._form.flags.items():
            told = tokens.get(fields[name])
            known = known and told is not None
            says |= told or frozenset()
        for name, bits in self._form.bits.items():
            says |= _of_bits(bits, ord(fields[name]))
        return says - {Meaning.NOTHING}, known

    def _digits(self, shown: str, sign: str, says: Meanings) -> str | None:
        """Return a value as digits with a decimal point, or None where it is no number."""
        found = self._number.fullmatch(shown)
        if found is None:
            return None
        minus = (found["sign"] == "-") + (sign == "-") + (Meaning.MINUS in says)
        if minus > 1:
            return None
        whole, part = found["whole"], found["part"] or ""
        implied = self._form.value.implied_decimals
        if implied:
            whole = whole.rjust(implied + 1, "0")
            whole, part = whole[:-implied], whole[-implied:]
        plain = whole.lstrip("0") or "0"
        return ("-" if minus else "") + plain + (f".{part}" if part else "")

    def _misfit(self, value: Decimal) -> str:
        form = self._form
        if form.interval is not None and value % form.interval:
            return f"not a multiple of {form.interval}"
        if form.low is not None and value < form.low:
            return f"below the lowest of the description, {form.low}"
        if form.high is not None and value > form.high:
            return f"above the highest of the description, {form.high}"
        return ""

    def _frame(
        self,
        raw: bytes,
        digits: str | None,
        unit: str,
        says: Meanings,
        known: bool,
        fields: dict[str, str],
    ) -> WeightFrame | Garbage:
        kinds = [kind for meaning, kind in _KINDS.items() if meaning in says]
        if len(kinds) > 1 or any(pair <= says for pair in _CONTRARY):
            return Garbage(raw, f"flags that contradict: {', '.join(sorted(says))}")
        at_rest = Meaning.STABLE in says and Meaning.MOTION not in says
        condition = next((then for said, then in _CONDITIONS if said in says), Condition.NORMAL)
        if digits is None and condition in (Condition.NORMAL, Condition.CENTRE_OF_ZERO):
            condition = Condition.NOT_DISPLAYED
        return WeightFrame(
            digits=None if condition is Condition.NOT_DISPLAYED else digits,
            unit=unit,
            kind=kinds[0] if kinds else Kind.GROSS,
            high_resolution=False,
            motion=not known or (self._form.tells_rest and not at_rest),
            condition=condition,
            range_no=int(fields.get("range", "1")),
            raw=raw,
        )

    # --- the description's own examples -------------------------------------------------------

    def _check(self, place: int, example: Example) -> None:
        title = f"example {place}, {example.line!r}"
        items = self.feed(example.line)
        left, self._pending = self._pending, b""
        if len(items) != 1 or left:
            raise DescriptionError(title, "is not exactly one whole line with its start and end")
        read = items[0]
        if not isinstance(read, WeightFrame):
            assert isinstance(read, Garbage)
            raise DescriptionError(title, read.why)
        due = (example.value, example.unit, example.says - {Meaning.NOTHING})
        got = (read.digits, read.unit, self.said(example.line))
        for name, one, other in zip(("value", "unit", "says"), due, got, strict=True):
            if one != other:
                raise DescriptionError(
                    title, f"{name} is read as {_shown(other)}, not {_shown(one)}"
                )

    def said(self, line: bytes) -> Meanings:
        """Return everything the flags of one whole line that fits the pattern say."""
        body = line[len(self._form.start) : len(line) - self._form.tail - len(self._form.end)]
        found = self._line.fullmatch(body)
        assert found is not None
        fields = {name: text.decode("latin-1") for name, text in found.groupdict().items()}
        words = self._form.value.words.get(fields["value"].strip(" "), frozenset())
        return (self._says(fields)[0] | words) - {Meaning.NOTHING}


def _of_bits(bits: tuple[Bit, ...], status: int) -> Meanings:
    says: Meanings = frozenset()
    for bit in bits:
        says |= bit.when_set if status >> bit.number & 1 else bit.when_clear
    return says


def _number(form: Description) -> re.Pattern[str]:
    apart = " *" if form.value.sign_apart else ""
    part = rf"(?:{re.escape(form.value.point)}(?P<part>[0-9]+))?"
    if form.value.implied_decimals is not None:
        part = "(?P<part>)"
    return re.compile(rf"(?P<sign>[-+]?){apart}(?P<whole>[0-9]+){part}")


def _overlap(data: bytes, mark: bytes) -> int:
    """How many bytes at the end of ``data`` may be the beginning of ``mark``."""
    for kept in range(min(len(mark) - 1, len(data)), 0, -1):
        if data.endswith(mark[:kept]):
            return kept
    return 0


def _shown(value: object) -> str:
    if isinstance(value, frozenset):
        return ", ".join(sorted(value)) or "nothing"
    return "no value" if value is None else repr(value)
