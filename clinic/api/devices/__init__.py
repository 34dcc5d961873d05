"""A person's own devices: ``GET /api/v1/devices``, and ``DELETE /api/v1/devices/{device}`` to revoke one."""
