"""Compressed forms hold the same bytes, and are made once for each content."""

import gzip

import brotli
import pytest

from clinic.build import compression
from clinic.build.compression import compress, forget, uncompressed

TEXT = b"a sentence that is repeated again and again. " * 100


@pytest.fixture
def site(tmp_path):
    site = tmp_path / "site"
    site.mkdir()
    (site / "long.js").write_bytes(TEXT)
    return site


def _compress(site, remembered):
    told = []
    compress(uncompressed(site), remembered, progress=told.append)
    return told


def test_both_forms_decompress_to_the_file(site, tmp_path):
    told = _compress(site, tmp_path / "remembered")

    assert brotli.decompress((site / "long.js.br").read_bytes()) == TEXT
    assert gzip.decompress((site / "long.js.gz").read_bytes()) == TEXT
    assert sum(told) == len(TEXT)


def test_a_file_with_both_forms_is_left_alone(site, tmp_path):
    _compress(site, tmp_path / "remembered")

    assert uncompressed(site) == ()


def test_a_file_whose_compression_was_interrupted_is_done_again(site, tmp_path):
    _compress(site, tmp_path / "remembered")
    (site / "long.js.gz").unlink()

    assert uncompressed(site) == (site / "long.js",)


def test_pictures_and_tiny_files_stay_as_they_are(site):
    (site / "icon.png").write_bytes(TEXT)
    (site / "tiny.txt").write_bytes(b"short")

    assert uncompressed(site) == (site / "long.js",)


def test_the_same_content_under_another_name_is_not_compressed_again(site, tmp_path, monkeypatch):
    _compress(site, tmp_path / "remembered")
    (site / "renamed.js").write_bytes(TEXT)
    monkeypatch.setattr(compression, "_brotli", lambda *_: pytest.fail("compressed twice"))

    _compress(site, tmp_path / "remembered")

    assert brotli.decompress((site / "renamed.js.br").read_bytes()) == TEXT


def test_forms_of_contents_that_are_gone_are_forgotten(site, tmp_path):
    (site / "other.js").write_bytes(TEXT + b"!")
    _compress(site, tmp_path / "remembered")
    (site / "other.js").unlink()

    forget(tmp_path / "remembered", site)

    assert len(list((tmp_path / "remembered").iterdir())) == 2
