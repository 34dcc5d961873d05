"""Records in the open: ``manage.py export_fhir`` writes a clinic's ledger, or one patient's part, as a FHIR Bundle.

What maps to what is :mod:`planner.exchange.fhir`; the phone makes the same Bundle by itself. Here an export stands in
the audit trail before the file is whole, and a file that is there is never written over. Import has no command: what is
brought is pushed by the person who brings it, and judged like everything that is pushed.
"""
