"""The station's work without a screen: one verb a file."""
