"""The parts of a label, each placing its own texts, plates and bar codes on a sheet."""
