"""JSON over HTTPS: one folder per resource, each with its views and, where it takes input, its serializers.

Every error, wherever it comes from, has the shape of :mod:`clinic.errors`. A write needs the session cookie and the
``X-CSRFToken`` header; without a session the answer is 401, without the right 403, and a clinic that one does not
belong to does not exist (404). No URL carries patient data, and no answer is cached.
"""
