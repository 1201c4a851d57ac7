"""Runs migrations on the connection and inside the transaction that ``migrate`` began."""

from __future__ import annotations

from alembic import context

from station.store.schema import metadata

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=metadata,
    render_as_batch=True,
)
context.run_migrations()
