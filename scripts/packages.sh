#!/bin/sh
# packages.sh WHY PACKAGE...: installs the Debian packages that are missing,
# saying which and why. Does nothing where all are there.
set -eu
why=$1
shift
missing=
for p in "$@"; do
	status=$(dpkg-query -W -f '${Status}' "$p" 2>/dev/null || true)
	[ "$status" = "install ok installed" ] || missing="$missing $p"
done
[ -n "$missing" ] || exit 0
echo "Installing$missing ($why)."
if ! command -v apt-get >/dev/null; then
	echo "There is no apt-get here: install the counterparts of$missing yourself." >&2
	exit 1
fi
as_root=
if [ "$(id -u)" != 0 ]; then
	as_root=sudo
	command -v sudo >/dev/null || { echo "Run as root: apt-get install$missing" >&2; exit 1; }
fi
$as_root apt-get update -qq
# shellcheck disable=SC2086 # one word a package
DEBIAN_FRONTEND=noninteractive $as_root apt-get install -y -qq --no-install-recommends $missing >/dev/null
