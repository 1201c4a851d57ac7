"""How the database file came to its present shape, step by step."""
