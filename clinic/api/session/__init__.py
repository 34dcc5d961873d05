"""Who is signed in: ``GET``, ``POST`` (sign in) and ``DELETE`` (sign out) of ``/api/v1/session``."""
