"""One shape for every error: ``{"errors": [{"code", "text", "field", "value", "allowed"}, ...]}``.

``shape`` makes it; ``views`` are what Django calls where no view answers; :mod:`clinic.api.error_handler` is the API's.
"""
