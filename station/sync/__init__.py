"""The way to the centre: what a station sends, what it gets back, and the centre itself."""
