"""Settings of the site, read from the environment; a wrong value stops the start with its name.

``CLINIC_MODE`` is ``production``, ``loopback`` (the demo and the tests: production code on this machine alone, over
plain HTTP) or ``development`` (``loopback`` with Django's error pages). The server's door, :mod:`clinic.wsgi`, demands
that it is set; commands and tests take ``loopback``, which answers to no name but this machine's own.

    CLINIC_MODE          production, loopback, development
    CLINIC_HOSTS         production: the host names it answers to, comma-separated
    CLINIC_SECRET_KEY    production: at least 50 random characters
    CLINIC_SECRET_KEY_FALLBACKS  former keys, comma-separated: sessions and receipts made under them still count
    CLINIC_PROXIES       number of reverse proxies in front (0: none; their X-Forwarded-Proto and -For are trusted)
    CLINIC_BUILD         folder of what manage.py build makes; default .build
    CLINIC_STATE         folder of the SQLite database and the demo's secret; default .clinic
    DATABASE_URL         postgresql://... or sqlite:///...; default SQLite in CLINIC_STATE
    CLINIC_LOG_LEVEL     DEBUG, INFO, WARNING, ERROR
    CLINIC_LOG_FORMAT    plain, or json: one object a line
    CLINIC_METRICS_TOKEN who has it reads /metrics; without one, this machine alone does
    CLINIC_REVOKED_DAYS  for how many days after its revocation a device may still send what it holds
    CLINIC_SYNC_PER_MINUTE  how many pushes, and how many pulls, of one session each process answers in a minute
    CLINIC_THEATRE_DAYS  for how many days after its arrival a signed plan is given to theatre devices
"""

from pathlib import Path

from clinic import database, environment
from clinic.shell.files import is_unchanging

BASE_DIR = Path(__file__).resolve().parent.parent
BUILD_DIR = Path(environment.text("CLINIC_BUILD", default=str(BASE_DIR / ".build"))).absolute()

MODE = environment.choice("CLINIC_MODE", ("production", "loopback", "development"), default="loopback")
PRODUCTION = MODE == "production"
DEBUG = MODE == "development"
STATE_DIR = environment.folder("CLINIC_STATE", default=BASE_DIR / ".clinic")

environment.READ |= {"CLINIC_HOSTS", "CLINIC_SECRET_KEY"}
LOOPBACK_HOSTS = ["localhost", "127.0.0.1", "[::1]"]
ALLOWED_HOSTS = environment.words("CLINIC_HOSTS") if PRODUCTION else LOOPBACK_HOSTS
SECRET_KEY = environment.text("CLINIC_SECRET_KEY") if PRODUCTION else environment.kept_secret(STATE_DIR / "secret-key")

SECRET_KEY_FALLBACKS = environment.words("CLINIC_SECRET_KEY_FALLBACKS", least=0, default="")

INSTALLED_APPS = [
    "django.contrib.admin.apps.SimpleAdminConfig",
    "django.contrib.auth",
    "django.contrib.contenttypes",
    "django.contrib.sessions",
    "django.contrib.messages",
    "django.contrib.staticfiles",
    "django_otp",
    "django_otp.plugins.otp_totp",
    "rest_framework",
    "drf_spectacular",
    "clinic.apps.ClinicConfig",
    "clinic.people",
    "clinic.devices",
    "clinic.ledger",
    "clinic.audit",
    "clinic.sync",
    "clinic.api",
    "clinic.administration",
    "clinic.backup",
    "clinic.exchange",
    "clinic.build",
    "clinic.locale",
    "clinic.shell",
    "clinic.demo",
]

# The headers come first, so that they are also on what the middleware below answers itself: redirects, static files.
MIDDLEWARE = [
    "clinic.protection.headers.SecurityHeaders",
    "django.middleware.security.SecurityMiddleware",
    "whitenoise.middleware.WhiteNoiseMiddleware",
    "clinic.metrics.middleware.Metrics",
    "clinic.protection.body_limit.BodyLimit",
    "clinic.protection.client_age.ClientAge",
    "django.contrib.sessions.middleware.SessionMiddleware",
    "clinic.locale.middleware.Language",
    "django.middleware.common.CommonMiddleware",
    "django.middleware.csrf.CsrfViewMiddleware",
    "django.contrib.auth.middleware.AuthenticationMiddleware",
    "django_otp.middleware.OTPMiddleware",
    "django.contrib.messages.middleware.MessageMiddleware",
    "django.middleware.clickjacking.XFrameOptionsMiddleware",
    "clinic.audit.middleware.Audit",
]

ROOT_URLCONF = "clinic.urls"
WSGI_APPLICATION = "clinic.wsgi.application"
APPEND_SLASH = False

TEMPLATES = [
    {
        "BACKEND": "django.template.backends.django.DjangoTemplates",
        "APP_DIRS": True,
        "OPTIONS": {
            "context_processors": [
                "django.template.context_processors.request",
                "django.contrib.auth.context_processors.auth",
                "django.contrib.messages.context_processors.messages",
            ]
        },
    }
]

DATABASES = {
    "default": database.database(environment.text("DATABASE_URL", default=f"sqlite:///{STATE_DIR / 'clinic.sqlite3'}"))
}
DEFAULT_AUTO_FIELD = "django.db.models.BigAutoField"

AUTH_USER_MODEL = "people.User"
PASSWORD_HASHERS = [
    "django.contrib.auth.hashers.Argon2PasswordHasher",
    "django.contrib.auth.hashers.PBKDF2PasswordHasher",
]
OTP_TOTP_ISSUER = "Primary Position"
AUTH_PASSWORD_VALIDATORS = [
    {"NAME": "django.contrib.auth.password_validation.UserAttributeSimilarityValidator"},
    {"NAME": "django.contrib.auth.password_validation.MinimumLengthValidator", "OPTIONS": {"min_length": 10}},
    {"NAME": "django.contrib.auth.password_validation.CommonPasswordValidator"},
    {"NAME": "django.contrib.auth.password_validation.NumericPasswordValidator"},
]

# Plain HTTP is for this machine alone; everything else is HTTPS.
SECURE_SSL_REDIRECT = PRODUCTION
SECURE_HSTS_SECONDS = 365 * 24 * 3600 if PRODUCTION else 0
SECURE_HSTS_INCLUDE_SUBDOMAINS = PRODUCTION
SECURE_HSTS_PRELOAD = PRODUCTION
# Not "no-referrer": some browsers then send "Origin: null" with a write of our own, which the CSRF check must refuse.
SECURE_REFERRER_POLICY = "same-origin"
SECURE_REDIRECT_EXEMPT = [r"^(health|ready|metrics)$"]
PROXIES = environment.whole("CLINIC_PROXIES", default=0, low=0, high=5)
if PROXIES:
    SECURE_PROXY_SSL_HEADER = ("HTTP_X_FORWARDED_PROTO", "https")
X_FRAME_OPTIONS = "DENY"

# An outreach team is away for days: a session that ends sooner would only lock them out of sending.
SESSION_COOKIE_AGE = 14 * 24 * 3600
SESSION_COOKIE_SECURE = PRODUCTION
SESSION_COOKIE_HTTPONLY = True
SESSION_COOKIE_SAMESITE = "Strict"
CSRF_COOKIE_SECURE = PRODUCTION
CSRF_COOKIE_HTTPONLY = True
CSRF_COOKIE_SAMESITE = "Strict"
CSRF_FAILURE_VIEW = "clinic.errors.views.csrf_failed"

MEBIBYTE = 1024 * 1024
BODY_LIMIT = 8 * MEBIBYTE
"""Bytes of one request, unpacked: a full push of records of 16 kB each."""
SERVER_READS = 2 * BODY_LIMIT
"""Bytes that the server in front takes at all: what is somewhat too large is refused in our own words."""
DATA_UPLOAD_MAX_MEMORY_SIZE = BODY_LIMIT
DATA_UPLOAD_MAX_NUMBER_FIELDS = 100
DATA_UPLOAD_MAX_NUMBER_FILES = 0

LANGUAGE_CODE = "en-gb"
LANGUAGES = [("en-gb", "English"), ("fr", "French"), ("ar", "Arabic")]
LOCALE_PATHS = [BUILD_DIR / "locale"]
USE_I18N = True
USE_TZ = True
TIME_ZONE = "UTC"

STATIC_URL = "/static/"
STATICFILES_FINDERS = ["clinic.administration.files.AdministrationFiles"]
WHITENOISE_USE_FINDERS = True
WHITENOISE_ROOT = BUILD_DIR / "site"
WHITENOISE_AUTOREFRESH = not PRODUCTION  # a new build is served without a new start
WHITENOISE_IMMUTABLE_FILE_TEST = is_unchanging
WHITENOISE_ALLOW_ALL_ORIGINS = False

METRICS_TOKEN = environment.text("CLINIC_METRICS_TOKEN", default="")
MINIMUM_CLIENT = 1
"""The oldest app protocol that is still answered; the session tells it to the app."""
SYNC_PER_MINUTE = environment.whole("CLINIC_SYNC_PER_MINUTE", default=1200, low=10, high=1_000_000)
REVOKED_DAYS = environment.whole("CLINIC_REVOKED_DAYS", default=30, low=0, high=366)
THEATRE_DAYS = environment.whole("CLINIC_THEATRE_DAYS", default=14, low=1, high=366)

REST_FRAMEWORK = {
    "DEFAULT_AUTHENTICATION_CLASSES": ["clinic.api.authentication.SessionCookie"],
    "DEFAULT_PERMISSION_CLASSES": ["rest_framework.permissions.IsAuthenticated"],
    "DEFAULT_RENDERER_CLASSES": ["rest_framework.renderers.JSONRenderer"],
    "DEFAULT_PARSER_CLASSES": ["clinic.api.body.JSONBody"],
    "DEFAULT_SCHEMA_CLASS": "drf_spectacular.openapi.AutoSchema",
    "EXCEPTION_HANDLER": "clinic.api.error_handler.answer",
    "NUM_PROXIES": PROXIES,
    "UNAUTHENTICATED_USER": "django.contrib.auth.models.AnonymousUser",
}

SPECTACULAR_SETTINGS = {
    "TITLE": "Primary Position",
    "DESCRIPTION": "Records of strabismus surgery: session, push, pull, computed options and the theatre card.",
    "VERSION": "1",
    "SERVE_INCLUDE_SCHEMA": False,
    "SERVE_PUBLIC": True,
    "COMPONENT_SPLIT_REQUEST": False,
    "OAS_VERSION": "3.1.1",
    "POSTPROCESSING_HOOKS": ["clinic.api.schema.components.add_components"],
}

LOG_LEVEL = environment.choice("CLINIC_LOG_LEVEL", ("DEBUG", "INFO", "WARNING", "ERROR"), default="INFO")
LOG_FORMAT = environment.choice("CLINIC_LOG_FORMAT", ("plain", "json"), default="plain")
LOGGING = {
    "version": 1,
    "disable_existing_loggers": False,
    "formatters": {
        "plain": {"()": "clinic.protection.log_format.WithoutData"},
        "json": {"()": "clinic.protection.log_format.AsJson"},
    },
    "handlers": {"console": {"class": "logging.StreamHandler", "formatter": LOG_FORMAT}},
    "root": {"handlers": ["console"], "level": LOG_LEVEL},
    "loggers": {
        "django": {"handlers": [], "level": LOG_LEVEL, "propagate": True},
        "django.db.backends": {"level": "INFO"},  # below that it writes every query with its values
    },
}
