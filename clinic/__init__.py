"""The Django site that keeps a clinic's records and hands them out.

- ``people``: accounts, clinics, and who may do what in which clinic
- ``devices``: the phones and tablets that people signed in from
- ``ledger``: the append-only records and the clinic's gap-free feed of them
- ``audit``: who read and wrote what
- ``sync``: push and pull; ``sync/protocol.py`` is the specification
- ``api``: JSON over HTTPS, one folder per resource
- ``administration``: the pages for administrators
- ``backup``: the whole database into a file and back
- ``metrics``: figures for whoever runs the server; ``deploy``: examples of how to run it
- ``errors``: the one shape of every error
- ``protection``: headers, limits and log format that hold for every response
- ``shell``, ``build``, ``demo``: the app's pages, its build, and the demo clinic

Imports point one way: ``api`` -> ``sync`` -> ``audit`` -> ``ledger`` -> ``devices`` -> ``people``; all of them may
import ``planner``, and ``planner`` imports none of them.
"""
