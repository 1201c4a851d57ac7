"""Bytes in, bytes out: scales and printers. Stands alone."""
