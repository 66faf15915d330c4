# One running Leeward: a folder of its own, a database, a key file, the portal. Source it after postgres.sh.
# shellcheck shell=bash
#
# The folder is either kept, one for each checkout, or thrown away when the script ends. Its parents can be passed
# by the postgres user even when the checkout lies in a private folder.

PORTAL_PID=

# house_keep: the folder that this checkout (with this database, when one is given) always gets.
house_keep() {
    local key base=${XDG_DATA_HOME:-$HOME/.local/share}/leeward
    key=$(printf '%s\n' "$ROOT" "${LEEWARD_OWNER_URL:-}" | sha256sum | cut -c1-12)
    if is_root; then base=/var/lib/leeward; fi
    HOUSE=$base/$key
    mkdir -p "$HOUSE"
    if is_root; then chmod 0711 "$base" "$HOUSE"; else chmod 0700 "$HOUSE"; fi
    printf '%s\n' "$ROOT" >"$HOUSE/checkout"
}

house_throw_away() {
    HOUSE=$(mktemp -d /tmp/leeward.XXXXXX)
    on_exit rm -rf "$HOUSE"
    if is_root; then chmod 0711 "$HOUSE"; fi
}

# house_lock: true when no other run uses this folder. The lock falls with the last process that holds it.
house_lock() {
    exec {HOUSE_LOCK}>>"$HOUSE/lock"
    flock --nonblock "$HOUSE_LOCK"
}

# database_is_given: true when the two URLs name a database to use instead of a private cluster.
database_is_given() {
    local urls=${LEEWARD_DATABASE_URL:+app}${LEEWARD_OWNER_URL:+owner}
    [ -z "$urls" ] || [ "$urls" = appowner ] ||
        lacking "Set both LEEWARD_DATABASE_URL (the app role's) and LEEWARD_OWNER_URL (the owner's), or neither."
    [ -n "$urls" ]
}

house_database() {
    if database_is_given; then say "Using the database of LEEWARD_DATABASE_URL"; else cluster_start "$HOUSE/cluster"; fi
}

# house_key PROGRAMS: the key file outside the database, made once.
house_key() {
    export LEEWARD_KEY_FILE=$HOUSE/key
    [ -e "$LEEWARD_KEY_FILE" ] || "$1/leeward" key new "$LEEWARD_KEY_FILE"
}

# portal_start PROGRAMS PORT [OPTION...]: serves, and returns when connections are accepted. Sets LEEWARD_ORIGIN.
portal_start() {
    local programs=$1 log=$HOUSE/portal.log
    export LEEWARD_LISTEN=127.0.0.1:$2 LEEWARD_ORIGIN=http://localhost:$2
    shift 2
    : >"$log"
    # The owner's rights are for migrating and seeding; what serves does not get to know them.
    (unset LEEWARD_OWNER_URL && supervised "" TERM "$programs/leeward" serve "$@") </dev/null >>"$log" 2>&1 &
    PORTAL_PID=$!
    on_exit portal_stop
    portal_wait_ready "$log"
}

portal_wait_ready() {
    local tries=600
    until grep -qF "ready on $LEEWARD_ORIGIN" "$1"; do
        kill -0 "$PORTAL_PID" 2>/dev/null || { tail -n 30 "$1" >&2; die "the portal did not start (its words are above)"; }
        [ $((tries--)) -gt 0 ] || { tail -n 30 "$1" >&2; die "the portal was not ready after 30 s"; }
        sleep 0.05
    done
}

portal_stop() {
    [ -n "$PORTAL_PID" ] || return 0
    stop_pid "$PORTAL_PID" TERM 15
    PORTAL_PID=
}
