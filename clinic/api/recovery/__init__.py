"""The way back for a forgotten PIN or passphrase: ``PUT`` and ``GET`` of ``/api/v1/clinics/{clinic}/recovery``.

A device seals its records with a data key. It keeps a copy of that key, wrapped by a recovery key that it made, and
leaves the recovery key here. Neither half is of use alone: the clinic has never seen the wrapped copy, the device does
not keep the recovery key where it can be read without the PIN.

It is handed out only to the device that left it, only minutes after a sign-in on that very device (password, and the
second factor where the account has one), never to a revoked one; each handing out stands in the audit trail.
"""
