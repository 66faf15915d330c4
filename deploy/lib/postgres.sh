# A private, supervised Postgres cluster without a service manager. Source it after common.sh.
# shellcheck shell=bash
#
# It listens on a Unix socket only, in a folder that nobody but its owner (and root) can enter; that folder is what
# guards it, so connections over it are trusted. As root it runs as the postgres user (Postgres refuses root).

POSTGRES_PORT=5432 # names the socket file; nothing listens on a network port
POSTGRES_PID=
CLUSTER_SETTINGS=()

postgres_bin() { # prints the folder of the server's programs; of version $1 when given
    local folder
    for folder in $(printf '%s\n' /usr/lib/postgresql/"${1:-*}"/bin | sort -rV); do
        [ -x "$folder/initdb" ] && { printf '%s\n' "$folder"; return; }
    done
    folder=$(dirname "$(command -v initdb || echo none/none)")
    [ -x "$folder/postgres" ] || return 1
    [ -z "${1:-}" ] || "$folder/postgres" --version | grep -q " $1[.]" || return 1
    printf '%s\n' "$folder"
}

postgres_user() {
    is_root || return 0
    id postgres >/dev/null 2>&1 || die "there is no user \"postgres\" on this machine, and Postgres refuses to run as root"
    echo postgres
}

as_postgres() {
    local user
    user=$(postgres_user)
    if [ -n "$user" ]; then (cd / && setpriv --reuid "$user" --regid "$user" --init-groups -- "$@"); else "$@"; fi
}

# cluster_start FOLDER: makes the cluster in FOLDER unless it is there, starts it unless it runs, creates roles and
# database unless they exist; sets LEEWARD_DATABASE_URL, LEEWARD_OWNER_URL and SUPERUSER_URL.
# FOLDER's parents must be passable for the postgres user. CLUSTER_SETTINGS, an array, holds settings beyond the usual ones.
cluster_start() {
    CLUSTER=$1
    PG_BIN=$(postgres_bin "$(cat "$CLUSTER/data/PG_VERSION" 2>/dev/null || true)") ||
        die "no Postgres programs of the version that made $CLUSTER (version $(cat "$CLUSTER/data/PG_VERSION"))"
    cluster_make
    if cluster_runs; then
        CLUSTER_SOCKET=$(sed -n 5p "$CLUSTER/data/postmaster.pid")
    else
        cluster_launch
    fi
    cluster_prepare
    # Signing in goes to the same place under its own name, never to where somebody's setting leads.
    unset LEEWARD_SIGNIN_URL LEEWARD_SIGNIN_URL_FILE
    export LEEWARD_DATABASE_URL LEEWARD_OWNER_URL
    LEEWARD_DATABASE_URL=$(cluster_url leeward_app leeward)
    LEEWARD_OWNER_URL=$(cluster_url leeward_owner leeward)
    # shellcheck disable=SC2034 # for the tests
    SUPERUSER_URL=$(cluster_url postgres postgres)
}

cluster_url() { printf 'postgres://%s@localhost/%s?host=%s&port=%s\n' "$1" "$2" "$CLUSTER_SOCKET" "$POSTGRES_PORT"; }

cluster_make() {
    [ ! -e "$CLUSTER/data" ] || return 0
    local user
    user=$(postgres_user)
    install -d -m 0700 ${user:+-o "$user" -g "$user"} "$CLUSTER"
    # Made beside and moved into place: an interrupted initdb leaves nothing that looks finished.
    as_postgres rm -rf "$CLUSTER/data.new"
    as_postgres "$PG_BIN/initdb" --pgdata "$CLUSTER/data.new" --username postgres --auth-local trust --auth-host reject \
        --data-checksums --encoding UTF8 --locale C.UTF-8 >/dev/null
    as_postgres mv "$CLUSTER/data.new" "$CLUSTER/data"
}

cluster_runs() { as_postgres "$PG_BIN/pg_ctl" --pgdata "$CLUSTER/data" status >/dev/null 2>&1; }

# A socket's path may have 107 bytes, and it travels in a URL: where the cluster's own folder is too long or has
# other characters, a fresh private folder in /tmp serves.
cluster_socket_folder() {
    CLUSTER_SOCKET=$CLUSTER/socket
    if [ ${#CLUSTER_SOCKET} -gt 90 ] || [[ $CLUSTER_SOCKET =~ [^A-Za-z0-9/._-] ]]; then
        CLUSTER_SOCKET=$(as_postgres mktemp -d /tmp/leeward-socket.XXXXXX)
        on_exit rm -rf "$CLUSTER_SOCKET"
    fi
    as_postgres mkdir -p -m 0700 "$CLUSTER_SOCKET"
}

cluster_launch() {
    local user log=$CLUSTER/log settings
    cluster_socket_folder
    settings=(
        listen_addresses= "unix_socket_directories=$CLUSTER_SOCKET" unix_socket_permissions=0700 "port=$POSTGRES_PORT"
        fsync=on synchronous_commit=on max_connections=200
        # No value of a person may reach the log by way of a statement's parameters.
        log_statement=none log_parameter_max_length=0 log_parameter_max_length_on_error=0
        logging_collector=off log_timezone=UTC timezone=UTC
        "${CLUSTER_SETTINGS[@]}"
    )
    user=$(postgres_user)
    (cd / && supervised "$user" INT "$PG_BIN/postgres" -D "$CLUSTER/data" "${settings[@]/#/--}") </dev/null >>"$log" 2>&1 &
    POSTGRES_PID=$!
    on_exit cluster_stop
    cluster_wait_ready "$log"
}

cluster_wait_ready() {
    local tries=600
    until as_postgres "$PG_BIN/pg_isready" -q -h "$CLUSTER_SOCKET" -p "$POSTGRES_PORT"; do
        kill -0 "$POSTGRES_PID" 2>/dev/null || { tail -n 20 "$1" >&2; die "Postgres did not start; its log is $1"; }
        [ $((tries--)) -gt 0 ] || die "Postgres was not ready after 60 s; its log is $1"
        sleep 0.1
    done
}

# Stops the cluster only when this very run started it. SIGINT: Postgres' fast shutdown.
cluster_stop() {
    [ -n "$POSTGRES_PID" ] || return 0
    stop_pid "$POSTGRES_PID" INT 30
    POSTGRES_PID=
}

# As superuser, so that neither role needs the right to make any.
cluster_prepare() {
    as_postgres "$PG_BIN/psql" -X -q -v ON_ERROR_STOP=1 -h "$CLUSTER_SOCKET" -p "$POSTGRES_PORT" -U postgres -d postgres \
        <"$ROOT/deploy/roles.sql"
}
