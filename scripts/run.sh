#!/bin/sh
# run.sh GO TAGS LESSON BUILTIN: builds and opens the editor. Without a display
# it exports the built-in lesson to out/ instead.
set -eu
go=$1 tags=$2 lesson=$3 builtin=$4
if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
	echo "Building the editor (a first build takes about three minutes)."
	CGO_ENABLED=1 "$go" build -tags "$tags" -o bin/homeside ./cmd/homeside
	if [ -n "$lesson" ]; then exec bin/homeside "$lesson"; fi
	exec bin/homeside
fi
lesson=${lesson:-$builtin}
echo "There is no display here, so the editor cannot open. Exporting $lesson to out/ instead."
CGO_ENABLED=0 "$go" build -o bin/homeside-cli ./cmd/homeside-cli
mkdir -p out
for ext in png gif avi; do
	bin/homeside-cli export "$lesson" --out "out/lesson.$ext"
	echo "$PWD/out/lesson.$ext"
done
