# Installs what is missing: by apt-get as root, otherwise it says exactly what to install. Source it after common.sh.
# shellcheck shell=bash

MISSING=()

need() { # need PACKAGE TEST...: notes the package when the test fails
    local package=$1
    shift
    "$@" >/dev/null 2>&1 || MISSING+=("$package")
}

has() { command -v "$1"; }
has_libc_headers() { printf '#include <stdio.h>\nint main(void){return 0;}\n' | cc -x c - -o /dev/null; }
has_font() {
    [ -n "$(find /usr/share/fonts "$HOME/.fonts" "$HOME/.local/share/fonts" -name '*.[to]tf' -print -quit 2>/dev/null)" ]
}
has_certificates() { [ -s /etc/ssl/certs/ca-certificates.crt ] || [ -n "${SSL_CERT_FILE:-}" ]; }
node_is_new_enough() { node -e 'process.exit(Number(process.versions.node.split(".")[0]) >= 18 ? 0 : 1)'; }

need_to_build() {
    need build-essential has_libc_headers
    need ca-certificates has_certificates
    need nodejs node_is_new_enough
    need npm has npm
}
need_postgres() { need postgresql postgres_bin; }
need_relay() { need coturn has turnserver; }
need_firefox() { need firefox-esr has firefox-esr; }
need_browser() {
    need chromium find_chromium
    need fonts-liberation has_font
}

find_chromium() {
    local candidate
    for candidate in "${LEEWARD_CHROMIUM:-}" chromium chromium-browser google-chrome; do
        [ -n "$candidate" ] && command -v "$candidate" && return
    done
    return 1
}

# Installs all that the need_* calls before it found missing.
install_missing() {
    [ ${#MISSING[@]} -gt 0 ] || return 0
    if ! is_root || ! has apt-get >/dev/null; then
        warn "Missing on this machine. Please install:"
        lacking "    sudo apt-get install --no-install-recommends ${MISSING[*]}"
    fi
    say "Installing ${MISSING[*]} (a minute or two)"
    must "apt-get could not install: ${MISSING[*]} (its words are above)" apt_install "${MISSING[@]}"
    MISSING=()
    hash -r
}

apt_install() {
    local log
    log=$(mktemp)
    without_stray_cluster without_services quietly "$log" apt_get "$@"
    rm -f "$log"
}

apt_get() {
    export DEBIAN_FRONTEND=noninteractive
    apt-get update -qq && apt-get install -y -qq --no-install-recommends "$@"
}

quietly() { # quietly LOG COMMAND...: shows the output only when the command fails
    local log=$1
    shift
    "$@" >"$log" 2>&1 || { tail -n 40 "$log" >&2; return 1; }
}

# Debian's package makes a cluster of its own at installation unless told otherwise; ours are private. The note
# is taken away again afterwards: what else is installed on this machine later is not our business.
without_stray_cluster() {
    local note=/etc/postgresql-common/createcluster.d/leeward.conf code=0
    mkdir -p "$(dirname "$note")"
    say "create_main_cluster = false" >"$note"
    "$@" || code=$?
    rm -f "$note"
    return "$code"
}

# Debian starts a service as soon as its package is there. What we need of them we start ourselves, in folders and on ports of their own. A policy
# that stands already is the machine's own.
without_services() {
    local policy=/usr/sbin/policy-rc.d code=0
    [ ! -e "$policy" ] || { "$@"; return; }
    printf '#!/bin/sh\nexit 101\n' >"$policy"
    chmod 755 "$policy"
    "$@" || code=$?
    rm -f "$policy"
    return "$code"
}

# A tool of cargo's, of this very version: built once for the machine. Without optimisation, since it runs for seconds.
need_cargo_tool() { # need_cargo_tool NAME VERSION, after need_rust and install_missing
    local name=$1 version=$2 log
    PATH=${CARGO_HOME:-$HOME/.cargo}/bin:$PATH
    cargo "$name" --version 2>/dev/null | grep -qwF "$version" && return
    say "Building cargo-$name $version (a minute or two)"
    log=$(mktemp)
    # Beside the workspace, whose choice of target folder is none of its business.
    must "cargo-$name could not be built (the reason is above)." quietly "$log" env -C / -u CARGO_TARGET_DIR cargo install --locked --debug --force "cargo-$name@$version"
    rm -f "$log"
}

# Rust comes from rustup, not from Debian, whose compiler is too old; so it is asked for, never installed here.
need_rust() { # need_rust COMPONENT...
    local least have component
    least=$(sed -n 's/^rust-version = "\(.*\)"/\1/p' "$ROOT/Cargo.toml")
    has cargo >/dev/null || PATH=${CARGO_HOME:-$HOME/.cargo}/bin:$PATH
    has cargo >/dev/null || lacking "The Rust toolchain is missing. Install Rust $least or newer as https://rustup.rs says, then run this again."
    have=$(cd "$ROOT" && rustc --version | cut -d' ' -f2)
    [ "$(printf '%s\n' "$least" "$have" | sort -V | head -n1)" = "$least" ] ||
        lacking "Rust $have is too old; Leeward needs $least or newer. Try: rustup update stable"
    for component; do
        (cd "$ROOT" && cargo "$component" --version >/dev/null 2>&1) ||
            lacking "cargo $component is missing. Try: rustup component add ${component/#fmt/rustfmt}"
    done
}
