"""Push and pull between devices and the clinic's ledger; :mod:`clinic.sync.protocol` is the specification."""
