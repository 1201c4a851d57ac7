"""Sentences of the pages behind the lead's doors, one module for each subject."""
