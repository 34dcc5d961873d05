"""One module per sheet, each with ``page(value)``; ``parts`` is what they share."""
