"""The OpenAPI description at ``/api/v1/schema``.

``components`` adds the engine's records and answers to what drf-spectacular finds in the views, drawn by ``shapes``
from the same dataclasses that the codec reads; ``security`` describes the session cookie.
"""
