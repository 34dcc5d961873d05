"""What signing in takes, and what the session answers."""

from __future__ import annotations

from typing import Any

from rest_framework import serializers

from clinic.people.role import Role


class DeviceSerializer(serializers.Serializer[Any]):
    """The device that somebody signs in from."""

    id = serializers.UUIDField(help_text="Made by the device itself, once.")
    name = serializers.CharField(max_length=80, help_text="What people call it.")


class SignInSerializer(serializers.Serializer[Any]):
    """Username, password and device."""

    username = serializers.CharField(max_length=60)
    password = serializers.CharField(max_length=200, trim_whitespace=False)
    device = DeviceSerializer()
    code = serializers.CharField(
        max_length=10,
        required=False,
        allow_blank=True,
        help_text="Of the authenticator app, once the answer was second_factor_required.",
    )


class PersonSerializer(serializers.Serializer[Any]):
    """The account that is signed in."""

    username = serializers.CharField()
    full_name = serializers.CharField()


class ClinicSerializer(serializers.Serializer[Any]):
    """A clinic that the person belongs to, and the role there."""

    id = serializers.UUIDField()
    name = serializers.CharField()
    role = serializers.ChoiceField(choices=Role.choices)
    card_keys = serializers.ListField(
        child=serializers.CharField(), help_text="What card codes are sealed with, the newest first; kept sealed."
    )


class SessionSerializer(serializers.Serializer[Any]):
    """The session."""

    csrf_token = serializers.CharField(help_text="Goes into the X-CSRFToken header of every write.")
    server_time = serializers.DateTimeField()
    minimum_client = serializers.IntegerField(help_text="The oldest app protocol that is still answered.")
    user = PersonSerializer(allow_null=True)
    clinics = ClinicSerializer(many=True)
