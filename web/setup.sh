# shellcheck shell=sh
# Sets up what is missing for building the page, once. Sourced by build.sh, serve.sh and the tests.
# Says first what it will do and how long that takes; stops with a message that says what to do.

: "${root:?is set by the script that sources this}"
tools="${XDG_CACHE_HOME:-$HOME/.cache}/plumbmark"
wasm_pack_version=0.15.1
targets="wasm32-unknown-unknown"

say() { printf '%s\n' "$*"; }
stop() { printf '\nStopped: %s\n' "$*" >&2; exit 1; }

# As root, or by a sudo that asks for nothing.
may_install() { command -v apt-get >/dev/null && { [ "$(id -u)" = 0 ] || sudo -n true 2>/dev/null; }; }
apt_install() {
  say "Installing by apt: $* (1 to 3 minutes)"
  as_root=; [ "$(id -u)" = 0 ] || as_root=sudo
  { $as_root apt-get update -qq && DEBIAN_FRONTEND=noninteractive $as_root apt-get install -y -qq --no-install-recommends "$@"; } >/dev/null ||
    stop "apt could not install $*. Install it yourself and run this again."
}

need_rust() {
  [ -d "$HOME/.cargo/bin" ] && PATH="$HOME/.cargo/bin:$PATH"
  if ! command -v cargo >/dev/null && may_install && apt-cache show rustup >/dev/null 2>&1; then
    apt_install rustup
    rustup default stable || stop "rustup could not fetch the stable toolchain."
  fi
  command -v cargo >/dev/null || stop "Rust is missing. Install it with rustup (rustup.rs), then run this again."
  command -v cc >/dev/null || { may_install && apt_install build-essential; } ||
    stop "a C linker is missing. Install gcc (Debian: build-essential), then run this again."
  wanted=$(sed -n 's/^rust-version = "\(.*\)"/\1/p' "$root/Cargo.toml")
  have=$(rustc --version | cut -d' ' -f2)
  [ "$(printf '%s\n%s\n' "$wanted" "$have" | sort -V | head -n 1)" = "$wanted" ] ||
    stop "Rust $have is too old; $wanted or newer is needed: rustup update stable"
  sysroot=$(rustc --print sysroot)
  for target in $targets; do
    [ -d "$sysroot/lib/rustlib/$target" ] && continue
    command -v rustup >/dev/null || stop "the Rust target $target is missing and there is no rustup to add it."
    say "Adding the Rust target $target (seconds)"
    rustup target add "$target" >/dev/null || stop "rustup could not add $target."
  done
}

need_node() {
  if ! command -v node >/dev/null || ! command -v npm >/dev/null; then
    may_install || stop "Node and npm are missing. Install Node 18 or newer, then run this again."
    apt_install nodejs npm
  fi
  [ "$(node -p 'process.versions.node.split(".")[0]')" -ge 18 ] ||
    stop "Node $(node --version) is too old; 18 or newer is needed."
}

# npm packages of a folder, again only when its lock file has changed.
need_packages() {
  sum=$(cksum <"$1/package-lock.json")
  [ "$(cat "$1/node_modules/.lock-seen" 2>/dev/null)" = "$sum" ] && return
  say "Installing npm packages for ${1#"$root"/} (up to 1 minute)"
  (cd "$1" && npm ci --silent) || stop "npm could not install the packages of $1."
  printf '%s' "$sum" >"$1/node_modules/.lock-seen"
}

need_cargo_tool() { # program crate version [--locked]
  "$tools/cargo/bin/$1" --version 2>/dev/null | grep -qF " $3" && return
  say "Building $2 $3 from source (5 to 15 minutes, once; kept in $tools)"
  cargo install --quiet --debug --force --root "$tools/cargo" --version "$3" ${4:-} "$2" ||
    stop "cargo could not build $2 $3."
}

setup_build() {
  bindgen_version=$(sed -n '/^name = "wasm-bindgen"$/{n;s/version = "\(.*\)"/\1/p;}' "$root/Cargo.lock")
  [ -n "$bindgen_version" ] || stop "Cargo.lock names no wasm-bindgen."
  need_rust
  need_node
  need_packages "$root/web"
  need_cargo_tool wasm-bindgen wasm-bindgen-cli "$bindgen_version"
  need_cargo_tool wasm-pack wasm-pack "$wasm_pack_version"
  # npm's wasm-opt first: some distributions' older ones break wasm-bindgen's output silently.
  PATH="$root/web/node_modules/.bin:$tools/cargo/bin:$PATH"
  export PATH
}
