"""Writes a PDF file: fonts, pages, what the file is about, and the table of its objects.

The fonts come first and are the same bytes for every label of a run; only pages and facts are
written anew. No time and no chance enters: the same pages always give the same bytes.

Source: ISO 32000-1 (PDF), 7.5 (file structure), 7.9.2.2 (text strings), 14.3.3 (information).
"""

import itertools
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import lru_cache

from labels.embedding import FontSet

HEADER = b"%PDF-1.4\n%\xe2\xe3\xcf\xd3\n"  # bytes above 127: the file is binary
HEADS_KEPT = 32
FREE = b"0000000000 65535 f \n"


@dataclass(frozen=True, slots=True)
class Leaf:
    """One page: its width and height in points, and the operators that ink it."""

    width: float
    height: float
    marks: bytes


@dataclass(frozen=True, slots=True)
class Facts:
    """What a file says of itself."""

    title: str
    subject: str
    maker: str


def document(fonts: FontSet, leaves: Sequence[Leaf], facts: Facts) -> bytes:
    """Return the bytes of a PDF file with these pages."""
    head, rows, used = _head(fonts.objects)
    pages = used + 1
    first = pages + 1
    kids = " ".join(f"{first + 2 * place} 0 R" for place in range(len(leaves)))
    objects = [f"<< /Type /Pages /Count {len(leaves)} /Kids [{kids}] >>".encode("ascii")]
    for place, leaf in enumerate(leaves):
        content = first + 2 * place + 1
        objects += [
            b"<< /Type /Page /Parent %d 0 R /MediaBox [0 0 %s %s] /Resources %s /Contents %d 0 R >>"
            % (pages, _number(leaf.width), _number(leaf.height), fonts.resources, content),
            b"<< /Length %d >>\nstream\n%s\nendstream" % (len(leaf.marks), leaf.marks),
        ]
    catalog = used + len(objects) + 1
    objects += [
        f"<< /Type /Catalog /Pages {pages} 0 R >>".encode("ascii"),
        b"<< /Title %s /Subject %s /Creator %s /Producer %s >>"
        % tuple(map(_string, (facts.title, facts.subject, facts.maker, facts.maker))),
    ]
    body, more = _numbered(objects, used + 1, len(head))
    size = catalog + 2
    table = b"xref\n0 %d\n%s%s%s" % (size, FREE, rows, more)
    trailer = b"trailer\n<< /Size %d /Root %d 0 R /Info %d 0 R >>\nstartxref\n%d\n%%%%EOF\n" % (
        *(size, catalog, catalog + 1),
        len(head) + len(body),
    )
    return b"".join((head, body, table, trailer))


@lru_cache(HEADS_KEPT)
def _head(objects: tuple[bytes, ...]) -> tuple[bytes, bytes, int]:
    """Return the beginning of a file up to its fonts, their rows of the table, their number."""
    body, rows = _numbered(objects, 1, len(HEADER))
    return HEADER + body, rows, len(objects)


def _numbered(objects: Iterable[bytes], first: int, start: int) -> tuple[bytes, bytes]:
    """Return objects as they stand in a file from byte `start` on, and their rows of its table."""
    written = [b"%d 0 obj\n%s\nendobj\n" % (n, one) for n, one in enumerate(objects, first)]
    places = itertools.accumulate(map(len, written[:-1]), initial=start)
    return b"".join(written), b"".join(b"%010d 00000 n \n" % place for place in places)


def _number(value: float) -> bytes:
    return f"{value:.3f}".encode("ascii")


def _string(text: str) -> bytes:
    """Return a text as a string object: plain where it is ASCII, else UTF-16."""
    if text.isascii() and text.isprintable():
        escaped = text.replace("\\", r"\\").replace("(", r"\(").replace(")", r"\)")
        return f"({escaped})".encode("ascii")
    return b"<FEFF%s>" % text.encode("utf-16-be").hex().upper().encode("ascii")
