"""Figures for whoever runs the server, at ``GET /metrics`` in Prometheus' text format.

- ``figures``: what is counted: calls by method, route and status, and how long they took
- ``middleware``: counts them
- ``views``: hands them out: with the token of ``CLINIC_METRICS_TOKEN``, or, where none is set, to this machine alone

Labels are routes without their values, so no figure names a patient, a record or a person. Each process counts its own;
with several, each is asked at its own port, and Prometheus adds them up.
"""
