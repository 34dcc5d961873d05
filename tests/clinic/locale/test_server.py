"""The server answers in the language that is asked for, from the catalogues that the build compiles."""

import json

import pytest
from django.test import Client

from clinic.locale.compiled import catalogue_files, for_the_server

ADDRESS = "/api/v1/session"


@pytest.fixture(autouse=True)
def compiled(tmp_path, settings):
    """Catalogues of this tree, wherever the last build left its own."""
    for language, path in catalogue_files(settings.BASE_DIR).items():
        place = tmp_path / language / "LC_MESSAGES" / "django.mo"
        place.parent.mkdir(parents=True)
        place.write_bytes(for_the_server(path))
    settings.LOCALE_PATHS = [tmp_path]


def refused(language):
    body = {
        "username": "amara",
        "password": "no such password",
        "device": {"id": "0b0b7a52-7b1f-4c46-9d5e-3e1c8d2f6a10", "name": "P"},
    }
    response = Client().post(
        ADDRESS, json.dumps(body), content_type="application/json", headers={"Accept-Language": language}
    )
    assert response.status_code in {401, 429}
    (error,) = response.json()["errors"]
    return response, error


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "The account name and the password do not fit."),
        ("de", "The account name and the password do not fit."),
        ("fr-CA, en;q=0.5", "Le nom de compte et le mot de passe ne vont pas ensemble."),
        ("ar", "اسم الحساب وكلمة المرور لا يتطابقان."),
    ],
)
def test_a_refusal_is_told_in_the_language_of_the_app_with_the_same_code(cast, language, text):
    _, error = refused(language)

    assert (error["code"], error["text"]) == ("sign_in_failed", text)


def test_a_refusal_with_a_figure_keeps_it(cast):
    for _ in range(12):
        response, error = refused("ar")
        if response.status_code == 429:
            break

    assert error["code"] == "locked_out"
    assert any(figure.isdigit() for figure in error["text"].split())
    assert "محاولات" in error["text"]


def test_the_shells_pages_are_one_for_all_languages(client):
    """The service worker keeps them: a page that varied would be missed offline."""
    response = client.get("/nowhere", headers={"Accept-Language": "ar"})

    assert "Accept-Language" not in response.headers.get("Vary", "")
    assert "Content-Language" not in response.headers
