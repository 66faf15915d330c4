# Runs named steps to the end, times them, counts what they tested and sums up. Source it after common.sh.
# shellcheck shell=bash

LOGS=$(mktemp -d)
on_exit rm -rf "$LOGS"
SUMMARY=()
PASSED=0
FAILED=0

check() { step check "$@"; } # check NAME COMMAND...: passes or fails as one
tests() { step tests "$@"; } # tests NAME COMMAND...: a runner of tests; one that runs none has failed

step() {
    local kind=$1 name=$2 start=$SECONDS log=$LOGS/step
    shift 2
    printf '\n=== %s\n' "$name"
    in_group logged "$log" "$@"
    count "$kind" "$CODE" "$log"
    SUMMARY+=("$(printf '%-6s %5s s  %-26s %s' "$OUTCOME" "$((SECONDS - start))" "$name" "$COUNTED")")
    printf '=== %s: %s after %s s\n' "$name" "$OUTCOME" "$((SECONDS - start))"
}

logged() {
    local log=$1
    shift
    (set -e; "$@") 2>&1 | tee "$log"
}

# Reads the closing lines of cargo test and of node's test runner.
total() { # total LOG passed|failed
    local cargo=$2 node=pass
    [ "$2" = passed ] || node=fail
    sed -nE "s/^test result: .* ([0-9]+) $cargo;.*/\\1/p; s/^(ℹ|#) $node ([0-9]+)$/\\2/p" "$1" | awk '{ sum += $1 } END { print sum + 0 }'
}

count() { # count KIND CODE LOG: sets OUTCOME and COUNTED
    local passed=0 failed=0
    if [ "$1" = tests ]; then
        passed=$(total "$3" passed)
        failed=$(total "$3" failed)
        [ $((passed + failed)) -gt 0 ] || { warn "No test was run."; failed=1; }
    else
        passed=$(($2 == 0))
    fi
    [ "$2" = 0 ] || [ "$failed" -gt 0 ] || failed=1
    PASSED=$((PASSED + passed))
    FAILED=$((FAILED + failed))
    if [ "$failed" = 0 ]; then OUTCOME=ok; else OUTCOME=FAILED; fi
    COUNTED=
    [ "$1" = check ] || COUNTED="$passed passed, $failed failed"
}

finish() { # prints the summary; the exit code says whether all passed
    printf '\n=== Summary, %s s in all\n' "$SECONDS"
    printf '%s\n' "${SUMMARY[@]}"
    printf '%s passed, %s failed\n' "$PASSED" "$FAILED"
    [ "$FAILED" = 0 ]
}
