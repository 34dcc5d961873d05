"""What holds for every response and every log line, whichever view answered.

- ``headers``: content policy and the other security headers
- ``body_limit``: no request body beyond the limit is read
- ``log_format``: log lines without patient data
"""
