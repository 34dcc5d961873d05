"""The settings of a server that takes nothing from an app that speaks today's protocol."""

from clinic.settings import *  # noqa: F403 - all of them, but one

MINIMUM_CLIENT = 2
