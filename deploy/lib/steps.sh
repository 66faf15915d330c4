# Runs named steps to the end, times them, counts what they tested and sums up. Source it after common.sh.
#
# Each step is of a family of tests, and each family has a budget of seconds. To be over it is said and fails nothing: how long a step
# takes is also the machine's doing, and of whoever else is at work on it.
# shellcheck shell=bash

LOGS=$(mktemp -d)
on_exit rm -rf "$LOGS"
SUMMARY=()
PASSED=0
FAILED=0
FAMILIES=()
declare -A USED=() BUDGET=()

budget() { FAMILIES+=("$1"); USED[$1]=0; BUDGET[$1]=$2; } # budget FAMILY SECONDS: before the family's first step

check() { step check "$@"; } # check FAMILY NAME COMMAND...: passes or fails as one
tests() { step tests "$@"; } # tests FAMILY NAME COMMAND...: a runner of tests; one that runs none has failed

step() {
    local kind=$1 family=$2 name=$3 start=$SECONDS log=$LOGS/step took
    shift 3
    printf '\n=== %s\n' "$name"
    in_group logged "$log" "$@"
    count "$kind" "$CODE" "$log"
    took=$((SECONDS - start))
    USED[$family]=$((USED[$family] + took))
    SUMMARY+=("$(printf '%-6s %5s s  %-26s %s' "$OUTCOME" "$took" "$name" "$COUNTED")")
    printf '=== %s: %s after %s s\n' "$name" "$OUTCOME" "$took"
}

budgets() { # a table: what each family used of its budget, and all of it from the start of the script
    local family whole=0
    for family in "${FAMILIES[@]}"; do
        budget_line "$family" "${USED[$family]}" "${BUDGET[$family]}"
        whole=$((whole + BUDGET[$family]))
    done
    budget_line all "$SECONDS" "$whole"
}

budget_line() { # budget_line NAME USED BUDGET
    local over=
    [ "$2" -le "$3" ] || over=", over by $(($2 - $3)) s"
    printf '%-8s %5s s of %5s s%s\n' "$1" "$2" "$3" "$over"
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
    printf '\n=== Budgets, used by each family of tests\n'
    budgets
    printf '\n%s passed, %s failed\n' "$PASSED" "$FAILED"
    [ "$FAILED" = 0 ]
}
