"""The composition root: builds, starts and stops everything; imported by nothing."""
