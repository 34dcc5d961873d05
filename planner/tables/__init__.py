"""The dose tables: one TOML file each, with its provenance."""
