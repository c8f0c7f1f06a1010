#!/usr/bin/env bash
# dump.sh SHOP.db > NAME.sql: a record as text, for a fixture. The search index is left out, which is made anew from its table when the text is read.
set -euo pipefail
echo "PRAGMA application_id = $(sqlite3 "$1" 'PRAGMA application_id');"
sqlite3 "$1" .dump | sed -E \
    -e '/^PRAGMA /d' \
    -e "/'FindableText_|INTO FindableText_/d" \
    -e "/^INSERT INTO sqlite_schema.*Findable(Text|Terms)/{s/.*'(CREATE VIRTUAL TABLE.*)'\);\$/\1;/;s/''/'/g}" \
    -e 's/\r$//' \
    -e "s/^COMMIT;\$/INSERT INTO \"FindableText\" (\"FindableText\") VALUES ('rebuild');\nCOMMIT;/"
