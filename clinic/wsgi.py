"""The server's door. It does not open before somebody has said which kind of server this is."""

import os

from django.core.exceptions import ImproperlyConfigured
from django.core.wsgi import get_wsgi_application

os.environ.setdefault("DJANGO_SETTINGS_MODULE", "clinic.settings")
if not os.environ.get("CLINIC_MODE"):
    raise ImproperlyConfigured("Set CLINIC_MODE to production, loopback or development before serving.")

application = get_wsgi_application()
