#!/bin/sh
# Checks everything, on a Debian machine that has a Rust toolchain and a C compiler:
#
#   sh tests/run.sh               format, lint, and every test: pure rooms alone, documentation,
#                                 both databases, pages, real browser
#   sh tests/run.sh ARGUMENTS     only `cargo nextest run ARGUMENTS`, with a database
#   sh tests/run.sh --postgres    only starts a PostgreSQL for tests, leaves it running and prints
#                                 what to `eval` so that `cargo nextest run` finds it
#   sh tests/run.sh --axe         only fetches axe-core, by which a browser test judges every page
#
# Missing Debian packages are installed (as root, or by sudo). PostgreSQL is a throw-away cluster
# in a temporary folder, gone at the end; it listens on a socket in that folder and nowhere else.
# A FELLSEAM_TEST_POSTGRES that is set already is used instead.
set -eu
cd "$(dirname "$0")/.."

install_missing() {
    missing=
    command -v chromium >/dev/null || missing="$missing chromium"
    command -v chromedriver >/dev/null || missing="$missing chromium-driver"
    command -v pdftotext >/dev/null || missing="$missing poppler-utils"
    command -v npm >/dev/null || missing="$missing npm"
    [ -x /usr/bin/aiosmtpd ] || missing="$missing python3-aiosmtpd"
    ls /usr/share/fonts/truetype/noto/NotoSans-Regular.* >/dev/null 2>&1 ||
        missing="$missing fonts-noto-core"
    ls /usr/share/fonts/opentype/noto/NotoSansCJK* >/dev/null 2>&1 || missing="$missing fonts-noto-cjk"
    ls /usr/lib/postgresql/*/bin/initdb >/dev/null 2>&1 || missing="$missing postgresql"
    if [ -n "$missing" ]; then
        echo "installing:$missing" >&2
        sudo=
        [ "$(id -u)" = 0 ] || sudo=sudo
        $sudo apt-get update -q >&2
        # shellcheck disable=SC2086
        $sudo env DEBIAN_FRONTEND=noninteractive \
            apt-get install -q -y --no-install-recommends $missing >&2
    fi
    cargo nextest --version >/dev/null 2>&1 || cargo install cargo-nextest --locked >&2
}

# Into the folder that cargo builds in, in the version that tests/package.json names; the sum is that
# of the one file that is used.
fetch_axe() {
    sum=29348999450cdf2849a8e70b7912fc2da85a849da39c0d0d5394f51d4a9ed95c
    axe=${CARGO_TARGET_DIR:-target}/axe
    script=$axe/node_modules/axe-core/axe.min.js
    echo "$sum  $script" | sha256sum --check --status 2>/dev/null && return 0
    mkdir -p "$axe"
    cp tests/package.json "$axe/"
    (cd "$axe" && npm install --no-package-lock --no-audit --no-fund --ignore-scripts) >&2
    echo "$sum  $script" | sha256sum --check --quiet >&2
}

# PostgreSQL refuses to run as root.
as_postgres() {
    if [ "$(id -u)" = 0 ]; then
        (cd / && exec runuser -u postgres -- "$@")
    else
        "$@"
    fi
}

start_postgres() {
    # The newest installed one: the last that the pattern finds.
    for bin in /usr/lib/postgresql/*/bin; do :; done
    cluster=$(mktemp -d /tmp/fellseam-postgres.XXXXXX)
    [ "$(id -u)" != 0 ] || chown postgres "$cluster"
    as_postgres "$bin/initdb" -D "$cluster/data" -U postgres -A trust -E UTF8 \
        --locale=C.UTF-8 --no-sync >"$cluster.log" 2>&1 || { cat "$cluster.log" >&2; return 1; }
    as_postgres "$bin/pg_ctl" -D "$cluster/data" -l "$cluster/log" -w start -o "-k $cluster \
        -c listen_addresses= -c fsync=off -c synchronous_commit=off -c full_page_writes=off \
        -c max_connections=300" >"$cluster.log" 2>&1 </dev/null ||
        { cat "$cluster.log" "$cluster/log" >&2; return 1; }
    rm -f "$cluster.log"
    FELLSEAM_TEST_POSTGRES="postgres://postgres@localhost/postgres?host=$cluster"
    export FELLSEAM_TEST_POSTGRES
}

stop_postgres() {
    [ -n "${cluster:-}" ] || return 0
    as_postgres "$bin/pg_ctl" -D "$cluster/data" -m immediate stop >/dev/null 2>&1 || true
    rm -rf "$cluster" "$cluster.log"
    cluster=
}

step() {
    echo "== $*" >&2
    "$@"
}

install_missing

if [ "${1:-}" = --axe ]; then
    fetch_axe
    exit
fi

if [ "${1:-}" = --postgres ]; then
    cluster=
    start_postgres
    echo "export FELLSEAM_TEST_POSTGRES='$FELLSEAM_TEST_POSTGRES'"
    echo "to end it: $bin/pg_ctl -D $cluster/data -m immediate stop (as its user); rm -r $cluster" >&2
    exit
fi

trap stop_postgres EXIT
trap 'exit 130' INT
trap 'exit 143' TERM HUP
[ -n "${FELLSEAM_TEST_POSTGRES:-}" ] || start_postgres

if [ $# -gt 0 ]; then
    step cargo nextest run "$@"
    exit
fi

step fetch_axe
step cargo fmt --check
step cargo clippy --all-targets -- -D warnings
step cargo clippy --lib --no-default-features -- -D warnings
step cargo nextest run --no-default-features --lib
step cargo test --doc
step cargo nextest run
