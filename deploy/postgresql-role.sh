#!/bin/sh
# Run once by the PostgreSQL image: a role for the servers that owns its database and is no superuser, so that
# row-level security holds it.
set -eu
psql -v ON_ERROR_STOP=1 -v password="$SHELF_PASSWORD" --username postgres <<'SQL'
CREATE ROLE broodshelf LOGIN PASSWORD :'password';
CREATE DATABASE broodshelf OWNER broodshelf;
SQL
