"""One module per item of the set-up sheet, each with ``RULES``; :mod:`planner.setup.register` lists them."""
