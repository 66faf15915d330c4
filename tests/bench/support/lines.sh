# What tests/bench/live and tests/bench/call share: makes ready what their lines need, and runs them.
# shellcheck shell=bash

# To add a line, put a file into lines/live or lines/call; its name without .mjs is what LINE says. It exports by default
#
#     { name, needs, run }
#
# name    what is printed after the verdict
# needs   what is made ready beforehand, a list of: "portal" (release build of all programs in LEEWARD_PROGRAMS, Postgres, the pages
#         built), "browser" (in LEEWARD_CHROMIUM), "relay" (coturn); may be left out
# run     async (context) => one result or a list of them, { verdict: "PASS" | "SHORT" | "NOISY" | "SKIP", text };
#         support/judge.mjs makes them. context.web("live/clock") resolves to the exports of web/src/live/clock.ts.
#         A line that throws is SHORT, with its words.

. "$(dirname "${BASH_SOURCE[0]}")/../../../deploy/lib/common.sh"
for part in install postgres build house; do . "$ROOT/deploy/lib/$part.sh"; done
unset LEEWARD_DATABASE_URL LEEWARD_OWNER_URL DATABASE_URL

lines() { node "$ROOT/tests/bench/lines.mjs" "$@"; }

prepare_portal() {
    must "The pages' scripts could not be built (the reason is above)." build_web
    must "The programs could not be built (the reason is above)." build_programs --release --workspace --bins
    LEEWARD_PROGRAMS=$(programs_folder release)
    export LEEWARD_PROGRAMS
}

prepare_browser() {
    LEEWARD_CHROMIUM=$(find_chromium)
    export LEEWARD_CHROMIUM
}

prepare_relay() { :; }

# run_lines TABLE [LINE...]: the lines of the folder lines/TABLE, or those that are named.
run_lines() {
    local need needs folder
    # Thousands of sockets are open at a time, on both sides.
    ulimit -Sn hard
    need nodejs node_is_new_enough
    need npm has npm
    install_missing
    for folder in web tests/browser tests/bench; do
        must "The packages of $folder could not be installed (the reason is above)." npm_install "$folder"
    done
    needs=$(lines --needs "$@")
    for need in $needs; do
        case $need in
        portal) need_rust; need_to_build; need_postgres ;;
        browser) need_browser ;;
        relay) need_relay ;;
        *) die "A line needs \"$need\", which is not known here." ;;
        esac
    done
    install_missing
    for need in $needs; do "prepare_$need"; done
    lines "$@"
}
