"""The key by which the clinic knows a device's records when another one brings them: ``GET /api/v1/carrying``.

See "Carried records" in :mod:`clinic.sync.protocol`. It is handed out to the device itself alone, over the session that
was opened on it; who has that session could push as the same person anyway.
"""
