"""Backup and restore of the whole database: ``manage.py backup FILE``, ``manage.py restore FILE``.

Each database is copied by its own tool, while the clinic works on:

- SQLite (``lite``) by its online backup; the copy is an ordinary database file
- PostgreSQL (``post``) by ``pg_dump`` in its custom format, from the same snapshot that the digest is taken of

A dump of our own that fits both would be one more format that can be wrong, slower, and would not bring back what
Django keeps beside our tables; a copy by the database's own tool can be looked at without us.

``fingerprint`` says what is in a ledger, for comparing: a backup prints it, and a restore prints it again.
``restoring`` does what is the same for both: it refuses to write over records unasked, brings tables up to date, gives
every feed a new id (devices then pull afresh), and ends all sessions.

Sessions are left out: their keys are what browsers sign in with, so whoever found a backup would be everybody.

A backup holds patient data in clear: keep it as you keep the database, and encrypt what leaves the machine.
"""
