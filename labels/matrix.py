"""Matrix symbols: GS1 DataMatrix (ISO/IEC 16022) and QR Code (ISO/IEC 18004).

zxing-cpp writes the DataMatrix: square always, since it would choose rectangles of any shape, and
with identifiers in square brackets, which character set 82 lacks, since a lot may hold round ones.
segno writes the QR Code.
"""

from collections.abc import Iterable

import numpy as np
import segno
import zxingcpp

from labels.digital_link import digital_link
from labels.errors import LabelError
from labels.gs1 import MOST_IN_MATRIX, Element, element_string, readable
from labels.symbol import Symbol

DATA_MATRIX_IDENTIFIER = "]d2"  # ISO/IEC 15424: ECC 200 with FNC1 first; without would be ]d1
QR_IDENTIFIER = "]Q1"  # plain QR: a Digital Link is a web address, never FNC1 data (]Q3)
DATA_MATRIX_QUIET = (1, 1)  # ISO/IEC 16022
QR_QUIET = (4, 4)  # ISO/IEC 18004
QR_CORRECTION = "m"  # about 15 % of the codewords may be lost


def gs1_data_matrix(elements: Iterable[Element]) -> Symbol:
    """Encode elements as one square GS1 DataMatrix symbol.

    Raises:
        LabelError: The elements do not make a valid element string, or too long a one.
    """
    row = tuple(elements)
    data = element_string(row, MOST_IN_MATRIX)
    content = "".join(f"[{element.ai}]{element.value}" for element in row)
    try:
        code = zxingcpp.create_barcode(
            content, zxingcpp.BarcodeFormat.DataMatrix, gs1=True, force_square=True
        )
    except ValueError as error:
        raise LabelError("DataMatrix", f"{readable(row)} cannot be encoded: {error}") from error
    dark = np.asarray(code.to_image(scale=1, add_quiet_zones=False)) < 128
    signs = np.where(dark, ord("1"), ord("0")).astype(np.uint8)
    rows = tuple(line.tobytes().decode("ascii") for line in signs)
    return Symbol(
        *(rows, readable(row), data.encode("ascii"), DATA_MATRIX_IDENTIFIER, row),
        DATA_MATRIX_QUIET,
    )


def digital_link_qr(stem: str, elements: Iterable[Element]) -> Symbol:
    """Encode elements as a plain QR Code with a GS1 Digital Link.

    Args:
        stem: What the address begins with, such as 'https://id.example.org'.
        elements: A key, its qualifiers and attributes, in any order.

    Raises:
        LabelError: The elements do not make a Digital Link.
    """
    row = tuple(elements)
    address = digital_link(stem, row)
    code = segno.make_qr(address, error=QR_CORRECTION, boost_error=False)
    rows = tuple("".join("1" if module else "0" for module in line) for line in code.matrix)
    return Symbol(rows, address, address.encode("ascii"), QR_IDENTIFIER, row, QR_QUIET)


def text_qr(text: str) -> Symbol:
    """Encode plain text as a QR Code, for paper that stays in the house.

    Raises:
        LabelError: The text is too long for one symbol.
    """
    try:
        code = segno.make_qr(text, error=QR_CORRECTION, boost_error=False)
    except segno.DataOverflowError as error:
        raise LabelError("QR Code", f"{len(text)} signs do not fit one symbol") from error
    rows = tuple("".join("1" if module else "0" for module in line) for line in code.matrix)
    return Symbol(rows, text, text.encode(), QR_IDENTIFIER, (), QR_QUIET)
