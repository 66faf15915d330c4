# Keeps .sqlx, the committed facts about every SQL query, true to the migrations. Source it after postgres.sh.
# shellcheck shell=bash

# Applies the migrations as the owner without the portal, which cannot be built while .sqlx is behind.
migrate_by_file() {
    local file
    for file in "$ROOT"/migrations/*.sql; do
        [ -e "$file" ] || continue
        "$PG_BIN/psql" -X -q -v ON_ERROR_STOP=1 --single-transaction "$LEEWARD_OWNER_URL" <"$file" >/dev/null ||
            die "migrations/$(basename "$file") fails on an empty database"
    done
}

# lint_and_collect FOLDER: clippy with every query asked of the migrated database; what it learns goes to FOLDER.
# The odd configuration name makes clippy look at each of our packages anew, and with it at each query.
lint_and_collect() {
    asking_queries "$1" cargo clippy --locked --workspace --all-targets -- -D warnings --cfg "asked_at_${EPOCHSECONDS}_$$"
}

# lint_and_build FOLDER: the same where nothing is built yet. Clippy's compiler goes on to programs and tests, where `cargo clippy` has every
# package read for it alone and for the build once more. Later builds find all of it while the two settings stand.
lint_and_build() {
    asking_queries "$1" cargo build --locked --workspace --bins --tests
}
lint_as_built() { export RUSTC_WORKSPACE_WRAPPER=clippy-driver CLIPPY_ARGS=-Dwarnings; }
build_as_usual() { unset RUSTC_WORKSPACE_WRAPPER CLIPPY_ARGS; }

asking_queries() { # asking_queries FOLDER COMMAND...
    mkdir -p "$1"
    (cd "$ROOT" && SQLX_OFFLINE=false SQLX_OFFLINE_DIR=$1 DATABASE_URL=$LEEWARD_OWNER_URL "${@:2}")
}

queries_match() { # queries_match FOLDER: is the committed .sqlx what was learnt?
    local kept=$ROOT/.sqlx
    [ -d "$kept" ] || kept=$(mktemp -d)
    diff -rq "$kept" "$1" && return
    warn "The committed .sqlx is not what the queries and migrations say. Run: tests/run --queries, and commit .sqlx"
    return 1
}

queries_replace() { # queries_replace FOLDER: makes what was learnt the .sqlx to commit
    rm -rf "$ROOT/.sqlx"
    cp -r "$1" "$ROOT/.sqlx"
    chmod -R u=rwX,go=rX "$ROOT/.sqlx"
    say "$(find "$ROOT/.sqlx" -name 'query-*.json' | wc -l) queries written to .sqlx"
}
