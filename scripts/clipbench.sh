#!/bin/sh
# clipbench.sh GO [KIND...]: builds what draws clips, ours and the baseline in C,
# and measures them side by side. Kinds are such as .gif; all if none is given.
set -eu
go=$1
shift
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
# shellcheck disable=SC2046 # one word a flag
cc -O2 -Wall -Wextra -o "$folder/baseline" testdata/baseline/baseline.c $(pkg-config --cflags --libs cairo cairo-ft freetype2)
CGO_ENABLED=0 "$go" build -o "$folder/homeside-cli" ./cmd/homeside-cli
CGO_ENABLED=0 "$go" build -o "$folder/clipbench" ./cmd/clipbench
"$folder/clipbench" "$folder/homeside-cli" "$folder/baseline" "$@"
