"""The append-only ledger: everything that a person enters becomes a record, and no record ever changes.

- ``models``: ``Record``, ``Supersession``, ``FeedCounter``; they and the database's own triggers (``guards``) refuse
  to update or delete
- ``commands``: the one way to write: lock the clinic's counter, append; ``rows`` hands the rows to the database
- ``heads``: which records are current, as a query and as a pure function
- ``upto``: records up to a position, found by what else is asked of them

A body is kept as its canonical JSON text (RFC 8785): the digest is the SHA-256 of exactly the stored bytes, on SQLite
and PostgreSQL alike, and a pull hands the text out as it stands.
"""
