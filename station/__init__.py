"""The pack-line station: weighs, checks, labels and records every bag."""
