"""Accounts, clinics, and the role that a person has in a clinic.

An account is never deleted and never renamed, since records name their author by it; it is switched off
(``is_active``). A role is not deleted either: it ends (:mod:`clinic.devices.leaving`).
"""
