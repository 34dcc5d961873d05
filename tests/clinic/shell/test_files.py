"""Built files are served compressed and for ever; what is not there is an honest 404."""

import brotli
import pytest
from django.test import Client

from clinic.shell.files import is_unchanging

FOREVER = "max-age=315360000, public, immutable"


@pytest.fixture(params=[True, False], ids=["looking at each request", "looking at the start"])
def client(built, settings, request):
    """The two ways to find files: the demo looks at each request, production once when it starts."""
    settings.WHITENOISE_AUTOREFRESH = request.param
    return Client(headers={"Accept-Encoding": "br, gzip"})


def _bytes(answer):
    """Read to its end, the test client finishes the request without the database; closed by hand, it would not."""
    return b"".join(answer.streaming_content) if answer.streaming else answer.content


def test_every_file_on_the_list_is_served(client, built):
    urls = [*built.shell, *(url for bundle in built.engine.values() for url in bundle)]

    failed = {}
    for url in urls:
        answer = client.get(url)
        _bytes(answer)
        if answer.status_code != 200:
            failed[url] = answer.status_code

    assert failed == {}


def test_a_release_file_never_changes_and_comes_as_brotli(client, built):
    answer = client.get(f"{built.root}main.js")

    assert answer["Cache-Control"] == FOREVER
    assert answer["Content-Encoding"] == "br"
    assert answer["Content-Type"] == 'text/javascript; charset="utf-8"'
    assert b"startEngine" in brotli.decompress(_bytes(answer))


def test_the_engine_comes_as_what_the_browser_compiles_while_it_loads(client, built):
    url = next(url for url in built.engine["runtime"] if url.endswith(".wasm"))
    answer = client.get(url)
    _bytes(answer)

    assert answer["Content-Type"] == "application/wasm"
    assert answer["Content-Encoding"] == "br"
    assert answer["Cache-Control"] == FOREVER


def test_a_phone_without_brotli_gets_gzip_and_one_without_either_the_file(built):
    url = f"{built.root}main.js"
    with_gzip = Client(headers={"Accept-Encoding": "gzip"}).get(url)
    with_neither = Client(headers={"Accept-Encoding": "identity"}).get(url)

    assert with_gzip["Content-Encoding"] == "gzip"
    assert "Content-Encoding" not in with_neither
    assert b"startEngine" in _bytes(with_neither)
    _bytes(with_gzip)


def test_only_the_engine_s_worker_may_compile_webassembly(client, built):
    with_rights = [
        url for url in [*built.shell, *built.engine["runtime"], "/sw.js"] if "wasm-unsafe-eval" in _policy(client, url)
    ]

    assert with_rights == [f"{built.root}engine/worker.js"]


def _policy(client, url):
    answer = client.get(url)
    _bytes(answer)
    return answer["Content-Security-Policy"]


@pytest.mark.parametrize(
    "path",
    ["main.js.map", "nothing.css", "../main.js", "parts/", "engine/worker.js/"],
    ids=lambda path: f"release {path}",
)
def test_a_missing_file_of_a_release_is_a_404_and_not_the_page(client, built, path):
    answer = client.get(f"{built.root}{path}")

    assert answer.status_code == 404
    assert b"<html" not in answer.content


@pytest.mark.parametrize("url", ["/static/app/0.0.0-gone/main.js", "/icons/none.png", "/favicon.png", "/index.html"])
def test_a_missing_file_is_a_404(client, url):
    assert client.get(url).status_code == 404


@pytest.mark.parametrize(
    ("url", "unchanging"),
    [
        ("/static/app/1.0.0-abc/main.js", True),
        ("/static/engine/abc/pyodide.asm.wasm", True),
        ("/static/app/1.0.0-abc/", False),
        ("/static/other/main.js", False),
        ("/icons/icon.svg", False),
        ("/sw.js", False),
    ],
)
def test_only_what_lies_in_a_named_folder_is_unchanging(url, unchanging):
    assert is_unchanging("", url) is unchanging
