"""One module of data for each body of law."""
