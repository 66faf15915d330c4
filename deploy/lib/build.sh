# Builds the pages' scripts and styles, and the programs. Source it after common.sh.
# shellcheck shell=bash

export SQLX_OFFLINE=true # queries are checked against the committed .sqlx, so a build needs no database

npm_install() { # npm_install FOLDER: what its lock file says, unless that is there already
    local folder=$ROOT/$1
    [ "$folder/node_modules/.package-lock.json" -nt "$folder/package-lock.json" ] &&
        [ "$folder/node_modules/.package-lock.json" -nt "$folder/package.json" ] && return
    (cd "$folder" && npm ci --no-audit --no-fund --loglevel=error)
}

# Left alone when nothing changed: new files in web/dist would have the release build embed them all over again.
build_web() {
    local stamp=$ROOT/web/node_modules/.built
    npm_install web
    if [ -e "$stamp" ] && [ -d "$ROOT/web/dist" ] &&
        [ -z "$(find "$ROOT/web" \( -name node_modules -o -name dist \) -prune -o -type f -newer "$stamp" -print -quit)" ]; then
        return
    fi
    (cd "$ROOT/web" && npm run --silent build)
    touch "$stamp"
}

programs_folder() { # programs_folder PROFILE: debug or release
    local target=${CARGO_TARGET_DIR:-target}
    (cd "$ROOT" && realpath -m "$target/$1")
}

build_programs() { # build_programs CARGO-OPTION...
    (cd "$ROOT" && cargo build --locked "$@")
}
