"""The administration pages at ``/administration/``: accounts, clinics, roles, devices and the audit trail.

Closed to all but administrators who have shown their second factor. Nothing of the ledger is registered here, so no
page shows anything of a patient but the ids of the audit trail.

- ``site``: the door
- ``accounts``, ``devices``, ``trail``: what each page shows and does

Nothing is deleted here: an account is switched off, a device revoked, and the trail only read.
"""
