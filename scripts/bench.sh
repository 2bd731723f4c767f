#!/bin/sh
# bench.sh GO [TAGS]: prints the benchmarks; our flight beside scipy's solve_ivp
# for the same flight, tolerance, events and dense output, measured in one run;
# and how fast the real window plays and follows a drag.
set -eu
go=$1
tags=${2:-migrated_fynedo,no_emoji}
packages=$("$go" list -e ./... | grep -v '^homeside/cmd/homeside$')
out=$(mktemp)
trap 'rm -f "$out"' EXIT
# shellcheck disable=SC2086 # one word a package
CGO_ENABLED=0 "$go" test -run '^$' -bench . -benchtime 0.5s -p 1 $packages | grep -E '^(Benchmark|FAIL|pkg:)' | tee "$out"
ours=$(awk '/^pkg:/ { in_flight = ($2 == "homeside/model/flight") } in_flight && $1 ~ /^BenchmarkFly(-[0-9]+)?$/ { print $3 }' "$out")
theirs=$("${PYTHON:-/usr/bin/python3}" model/flight/testdata/solveivp_bench.py)
awk -v ours="$ours" -v theirs="$theirs" 'BEGIN {
	printf "one flight: %.1f us here, %.0f us with scipy solve_ivp, ratio %.0f\n", ours / 1000, theirs / 1000, theirs / ours
}'
CGO_ENABLED=1 "$go" test -tags "$tags,window" -run '^$' -bench . -benchtime 1x ./cmd/homeside 2>/dev/null | grep -E '^(Benchmark|FAIL|pkg:|load)' | tee -a "$out"
! grep -q '^FAIL' "$out"
