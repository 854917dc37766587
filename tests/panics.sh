# Names the places in an image from which a panic is called. Sourced, after web/setup.sh.

need_objdump() {
  tools_of_rust() { ls "$(rustc --print sysroot)"/lib/rustlib/*/bin/llvm-objdump 2>/dev/null; }
  objdump=$(tools_of_rust || command -v llvm-objdump) && return
  command -v rustup >/dev/null && rustup component add llvm-tools >/dev/null && objdump=$(tools_of_rust) ||
    stop "llvm-objdump is needed to read an image: rustup component add llvm-tools"
}

# `panics_in IMAGE`: a function a line, and below it the source lines that it was inlined from. The
# image needs line tables.
panics_in() {
  "$objdump" -d -C --no-show-raw-insn "$1" |
    awk '/^[0-9a-f]+ </ { inside = $0; sub(/^[0-9a-f]+ /, "", inside) }
      /\tbl?(\.w)?\t.*<core::[a-z_:]*(panic|fail)/ && inside !~ /<core::[a-z_:]*(panic|fail)/ {
        sub(":", "", $1); print $1, inside }' |
    while read -r address inside; do
      say "- in $inside"
      addr2line -i -f -C -e "$1" "$address" | paste - - | grep -v "	/rustc/" | sed 's/^/    /' || :
    done
}
