# Shared by deploy/demo, tests/run and the browser tests' house. Source it; do not run it.
# shellcheck shell=bash
#
# Whoever sources this file gets `set -euo pipefail`, a list of undo steps that runs on every way out, and
# ROOT, the checkout's real path.

set -euo pipefail
# shellcheck disable=SC2034 # for those who source this
ROOT=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd -P)

say()  { printf '%s\n' "$*"; }
warn() { printf '%s\n' "$*" >&2; }
die()  { warn "$*"; exit 1; }

# Exit code 2 means: this machine lacks something that you have to install.
lacking() { warn "$*"; exit 2; }

is_root() { [ "$(id -u)" = 0 ]; }

UNDO=()

# on_exit COMMAND [ARGUMENT...]: runs when the script ends, last one first.
on_exit() { UNDO+=("$(printf '%q ' "$@")"); }

undo_all() {
    local code=$? i
    trap '' INT TERM HUP
    trap - EXIT
    stop_group
    for ((i = ${#UNDO[@]} - 1; i >= 0; i--)); do
        eval "${UNDO[i]}" || warn "could not: ${UNDO[i]}"
    done
    exit "$code"
}
trap undo_all EXIT
trap 'exit 130' INT
trap 'exit 143' TERM
trap 'exit 129' HUP

# stop_pid PID SIGNAL SECONDS: asks a child to end, waits, and insists when it does not.
stop_pid() {
    local pid=$1 signal=$2 tries=$(($3 * 20))
    kill "-$signal" "$pid" 2>/dev/null || return 0
    while kill -0 "$pid" 2>/dev/null && [ $((tries--)) -gt 0 ]; do sleep 0.05; done
    if kill -0 "$pid" 2>/dev/null; then
        warn "process $pid did not stop in $3 s; ending it"
        kill -KILL "$pid" 2>/dev/null || true
    fi
    wait "$pid" 2>/dev/null || true
}

GROUP=

stop_group() {
    [ -n "$GROUP" ] || return 0
    kill -TERM -- "-$GROUP" 2>/dev/null || true
    wait "$GROUP" 2>/dev/null || true
    GROUP=
}

# in_group COMMAND...: runs a command or function as a process group of its own and puts its exit code into CODE.
# Waiting for a background job, unlike running in the foreground, lets a signal end this script at once.
# CODE, not the return code: called in a condition, a function would go on past its own failing lines.
in_group() {
    CODE=0
    set -m
    (set -e; trap - INT TERM HUP; "$@") </dev/null &
    GROUP=$!
    set +m
    wait "$GROUP" || CODE=$?
    GROUP=
}

must() { # must MESSAGE COMMAND...: in_group, or dies with MESSAGE
    local message=$1
    shift
    in_group "$@"
    [ "$CODE" = 0 ] || die "$message"
}

# supervised USER SIGNAL COMMAND...: replaces this process. The command is sent SIGNAL when our shell dies,
# however it dies, so nothing outlives us; its own session keeps the terminal's Ctrl-C away from it, so that we
# choose the order in which things stop. USER "" stays who we are.
supervised() {
    local user=$1 signal=$2
    shift 2
    if [ -n "$user" ]; then
        exec setsid setpriv --reuid "$user" --regid "$user" --init-groups --pdeathsig "$signal" -- "$@"
    fi
    exec setsid setpriv --pdeathsig "$signal" -- "$@"
}

port_is_taken() {
    # Both families: a browser may try either address for "localhost".
    (: <"/dev/tcp/127.0.0.1/$1") 2>/dev/null || (: <"/dev/tcp/::1/$1") 2>/dev/null
}

# free_port FIRST: prints the first port from FIRST on that nobody serves.
free_port() {
    local port=$1
    while port_is_taken "$port"; do
        port=$((port + 1))
        [ "$port" -lt 65536 ] || die "no free port from $1 on"
    done
    printf '%s\n' "$port"
}

# Below the range from which Linux hands out ports for outgoing connections, spread so that parallel runs seldom meet.
any_free_port() { free_port $((12000 + (RANDOM + $$) % 18000)); }
