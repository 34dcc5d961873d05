"""The page, the service worker and the manifest are never stale and fit one release."""

import json
import re

import pytest
from django.test import Client

ROOT_PAGES = {
    "/": "text/html; charset=utf-8",
    "/sw.js": "text/javascript; charset=utf-8",
    "/manifest.webmanifest": "application/manifest+json",
}


@pytest.fixture
def client(built):
    return Client()


@pytest.mark.parametrize(("url", "kind"), ROOT_PAGES.items())
def test_a_root_page_is_always_asked_for_again(client, url, kind):
    answer = client.get(url)

    assert answer.status_code == 200
    assert answer["Content-Type"] == kind
    assert answer["Cache-Control"] == "no-cache"


@pytest.mark.parametrize("url", ROOT_PAGES)
def test_asking_again_is_cheap_while_the_release_stays(client, url):
    etag = client.get(url)["ETag"]

    assert client.get(url, headers={"If-None-Match": etag}).status_code == 304
    assert client.get(url, headers={"If-None-Match": '"another"'}).status_code == 200


@pytest.mark.parametrize("url", ROOT_PAGES)
def test_a_root_page_is_only_read(client, url):
    assert client.post(url).status_code == 405


@pytest.mark.parametrize("url", ["/", "/sw.js"])
def test_a_site_without_a_build_says_what_to_do(tmp_path, settings, url):
    settings.BUILD_DIR = tmp_path

    answer = Client().get(url)

    assert answer.status_code == 503
    assert "manage.py build" in answer.content.decode()


def test_the_page_carries_no_script_or_style_of_its_own(client):
    page = client.get("/").content.decode()

    assert re.findall(r"<script(?![^>]*\bsrc=)|<style|\sstyle=|\son\w+=", page) == []


def test_the_page_loads_only_files_of_its_release_and_they_are_on_its_list(client, built):
    page = client.get("/").content.decode()
    loaded = re.findall(r'(?:src|href)="([^"]+)"', page)

    assert f"{built.root}main.js" in loaded
    assert set(loaded) <= set(built.shell)


def test_the_service_worker_carries_its_release(client, built):
    worker = client.get("/sw.js").content.decode()

    first, _, source = worker.partition(";\n")
    told = json.loads(first.removeprefix("self.RELEASE = "))
    assert told["name"] == built.name
    assert told["shell"] == list(built.shell)
    assert "addEventListener('install'" in source
