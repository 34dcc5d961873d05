"""A person's own devices: listed, renamed and revoked under ``/api/v1/devices``."""
