"""Wire formats of scales: bytes in, frames out; no port and no clock."""
