"""A TrueType font that is cut, packed and written out once, however many labels embed it.

Labels of one run need the same glyphs. reportlab cuts the font and formats its width table and
streams anew for each document; here the finished bytes are kept by the characters they cover. What
is embedded is the same.
"""

from functools import lru_cache

from reportlab.pdfbase import pdfdoc
from reportlab.pdfbase.ttfonts import SUBSETN, TTFont, TTFontFace, makeToUnicodeCMap

SUBSETS_KEPT = 32


class _Ready(pdfdoc.PDFObject):  # type: ignore[misc]  # reportlab ships no types
    """A PDF object whose bytes are already known."""

    def __init__(self, content: bytes) -> None:
        self._content = content

    def format(self, document: object) -> bytes:
        """Return the bytes of the object."""
        return self._content


def _stream(content: bytes, document: object, **entries: int) -> bytes:
    """Return a packed stream object as it stands in the file."""
    stream = pdfdoc.PDFStream(pdfdoc.PDFDictionary(dict(entries)), content)
    stream.filters = [pdfdoc.PDFZCompress]
    formatted: bytes = stream.format(document)
    return formatted


class KeptFont(TTFont):  # type: ignore[misc]
    """A `TTFont` that keeps the finished objects of each subset."""

    def __init__(self, name: str, filename: str) -> None:
        super().__init__(name, filename, asciiReadable=True)
        self._parts = lru_cache(SUBSETS_KEPT)(self._make_parts)

    def _make_parts(self, base_name: str, subset: tuple[int, ...]) -> tuple[bytes, bytes, bytes]:
        """Return font program, character map and widths of one subset."""
        face: TTFontFace = self.face
        document = pdfdoc.DummyDoc()
        program = face.makeSubset(list(subset))
        unicode_map = makeToUnicodeCMap(base_name, list(subset)).encode("ascii")
        widths = pdfdoc.PDFArray([face.getCharWidth(code) for code in subset]).format(document)
        return (
            _stream(program, document, Length1=len(program)),
            _stream(unicode_map, document),
            widths,
        )

    def addObjects(self, doc: pdfdoc.PDFDocument) -> None:  # noqa: N802  # reportlab's name
        """Add the font objects of one finished document to it."""
        state = self.state[doc]
        state.frozen = 1
        face = self.face
        for number, subset in enumerate(state.subsets):
            internal_name = self.getSubsetInternalName(number, doc)[1:]
            base_name = (SUBSETN(number) + b"+" + face.name + face.subfontNameX).decode("ascii")
            program, unicode_map, widths = self._parts(base_name, tuple(subset))
            descriptor = pdfdoc.PDFDictionary(
                {
                    "Type": "/FontDescriptor",
                    "Ascent": face.ascent,
                    "CapHeight": face.capHeight,
                    "Descent": face.descent,
                    "Flags": face.flags & ~32 | 4,  # symbolic: the subset has its own encoding
                    "FontBBox": pdfdoc.PDFArray(face.bbox),
                    "FontName": pdfdoc.PDFName(base_name),
                    "ItalicAngle": face.italicAngle,
                    "StemV": face.stemV,
                    "FontFile2": doc.Reference(_Ready(program), f"fontFile:{base_name}"),
                    "MissingWidth": face.defaultWidth,
                }
            )
            font = pdfdoc.PDFTrueTypeFont()
            font.Name = internal_name
            font.BaseFont = base_name
            font.FirstChar = 0
            font.LastChar = len(subset) - 1
            font.Widths = _Ready(widths)
            font.ToUnicode = doc.Reference(_Ready(unicode_map), f"toUnicodeCMap:{base_name}")
            font.FontDescriptor = doc.Reference(descriptor, f"fontDescriptor:{base_name}")
            doc.Reference(font, internal_name)
            doc.idToObject["BasicFonts"].dict[internal_name] = font
        del self.state[doc]
