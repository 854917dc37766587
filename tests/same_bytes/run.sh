#!/bin/sh
# Two builds of the page, the same bytes: from two folders at paths of different length and depth, each
# with a target folder, a locale, a time zone and a umask of its own, a cargo home by another path, and
# files that were made in another order. No .wasm may name a folder of the machine that built it. With
# "built", the page as it lies in web/dist/ is the first of the two.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
stop() { printf '\nStopped: %s\n' "$*" >&2; exit 1; }

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cargo_home=${CARGO_HOME:-$HOME/.cargo}

# A copy of what git knows or would take, as it is in the folder now; the npm packages are shared.
copy() { # folder, then how the list is sorted
  folder=$1
  shift
  mkdir -p "$folder"
  (cd "$root" && git ls-files --cached --others --exclude-standard | LC_ALL=C sort "$@" |
    while read -r file; do [ ! -f "$file" ] || printf '%s\n' "$file"; done |
    tar --create --no-recursion --files-from -) | tar --extract --directory "$folder"
  rm -rf "$folder/web/node_modules"
  ln -s "$root/web/node_modules" "$folder/web/node_modules"
}

build() { # folder
  CARGO_TARGET_DIR="$1.target" sh "$1/web/build.sh" >"$1.said" 2>&1 || {
    cat "$1.said" >&2
    stop "the page could not be built in $1."
  }
}

if [ "${1:-}" = built ]; then
  first="$root"
else
  first="$work/one"
  copy "$first"
  (umask 022; export LC_ALL=C.UTF-8 TZ=UTC; build "$first")
fi
second="$work/two/somewhere/quite else"
copy "$second" --reverse
mkdir "$work/a home"
ln -s "$cargo_home" "$work/a home/.cargo"
(umask 077; export LC_ALL=C TZ=Asia/Kathmandu CARGO_HOME="$work/a home/.cargo"; build "$second")

diff --recursive --brief "$first/web/dist" "$second/web/dist" || stop "the two builds differ."

# "src/" is what remains of the place of a panic in a library.
for wasm in "$second"/web/dist/pkg/*.wasm; do
  for path in "$root" "$work" "$HOME" "$cargo_home" "$(rustc --print sysroot)" /rustc/ .cargo src/; do
    ! grep --quiet --text --fixed-strings -e "$path" "$wasm" || stop "${wasm##*/} names $path."
  done
done
echo "the same bytes twice: $(find "$second/web/dist" -type f | wc -l) files"
