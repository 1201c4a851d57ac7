"""Every bag, kept: the station's own database file and the only SQL about it."""
