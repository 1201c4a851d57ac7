"""Strings that have broken labels, bar codes, files or databases before: about 400 of them."""

import itertools

CONTROLS = [f"A{chr(code)}B" for code in (*range(0x20), *range(0x7F, 0xA0))]
BIDI = [
    f"A{chr(code)}B" for code in (0x200E, 0x200F, *range(0x202A, 0x202F), *range(0x2066, 0x206A))
]
INVISIBLE = [f"A{chr(code)}B" for code in (0xAD, 0x200B, 0x200C, 0x200D, 0x2060, 0xFEFF, 0x2028)]
PAIRS = [f"{number:02d}" for number in range(100)]
MARKUP = [
    *(
        "<img src='/etc/hosts'/>",
        "<b>bold</b>",
        "A<B",
        "&amp;",
        "<!--",
        "]]>",
        "<script>x</script>",
    ),
    *("<para>x</para>", "<font size=40>", "<a href='http://x.example'>x</a>", "&#0;", "<br/>"),
]
FILES = [
    *("../../x", "..\\..\\x", "/etc/passwd", "C:\\x", "NUL", "con", "a/b", "~root", "file:///x"),
    *("%00", "%2e%2e%2f", "$(id)", "`id`", "; rm -rf x", "| cat", "&& x", "$HOME", "%PATH%"),
]
SHEETS = ["=1+1", "=cmd|' /C x'!A0", "+1", "-1", "@SUM(A1)", "{=1}", "\t=1", "＝1+1", " =1"]
SQL = [
    *("' OR 1=1 --", "'; DROP TABLE pack; --", '" OR ""="', "1; SELECT 1", "\\'", "%' --", "NULL"),
]
PAGES = [
    "%PDF-1.4",
    ")Tj",
    "(((",
    ")))",
    "\\)",
    "\\000",
    "endstream",
    "endobj",
    "<< /X >>",
    "BT ET",
]
FORMATS = ["{0}", "{label.serial}", "%s", "%n%n", "${x}", "#{x}", "{{x}}", "{", "}", "%"]
LETTERS = [
    *(
        "ñ",
        "\xf1",
        "Ω",
        "ß",
        "ﬁ",
        "é",
        "e\u0301",
        "Ａ",
        "İ",
        "ı",
        "１",
        "١",
        "漢",
        "🥬",
        "👩‍🌾",
        "\ud800",
    ),
    *("א", "ข", "Ж", "ặ", "Å", "K", "℮", "™", "\u00a0", "\u3000", "\U0010ffff", "\ufffe", "Z͑ͫ̓ͪ̂"),
]
LENGTHS = ["", " ", "   ", *("A" * size for size in (20, 21, 40, 41, 80, 81, 200, 201, 10_000))]
CODES = [
    *("(01)", "(21)X", "]C1", "]d2", "[10]X", "A(10)B", "\\x1d", "^GS", "~1", "FNC1", "A#B", "A^B"),
    *("A|B", "A{B", "A~B", "A`B", "A@B", "A$B", "A[B", "A]B", "A\\B", "A B", "9912", "99", "00"),
]
EDGES = ["0", "-0", "1e5", "NaN", "Infinity", "None", "True", "null", "undefined", "0x1F", "1,5"]
PERIODS = [f"{first}{second}" for first, second in itertools.product("=+-@'\"", "A1(<%{")]

CORPUS = tuple(
    dict.fromkeys(
        itertools.chain(
            *(CONTROLS, BIDI, INVISIBLE, PAIRS, MARKUP, FILES, SHEETS, SQL, PAGES, FORMATS),
            *(LETTERS, LENGTHS, CODES, EDGES, PERIODS),
        )
    )
)
