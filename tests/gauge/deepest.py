"""The deepest stack that an image for a Cortex-M can need, from its machine code alone.

    llvm-objdump -d -C --no-show-raw-insn IMAGE | python3 deepest.py IMAGE FUNCTION CALLS

Each function needs what it pushes and takes off the stack pointer, wherever in it that stands; a
jump into another function counts as a call. Where a call goes through a register, CALLS says to
where: two patterns a line, of the caller and of what it calls; a caller that it does not know is an
error. Prints bytes, then the chain of calls.
"""

import re
import struct
import sys

FUNCTION = re.compile(r"^([0-9a-f]+) <(.*)>:$")
INSTRUCTION = re.compile(r"^\s*([0-9a-f]+):\s+(\S+)\s*(.*)$")
TARGET = re.compile(r"^(?:\S+, )?0x([0-9a-f]+) <")
RANGE = re.compile(r"^([a-z]+)(\d+)-[a-z]+(\d+)$")


class Image:
    """Loadable bytes of a little-endian ELF of 32 bits."""

    def __init__(self, path):
        self.data = open(path, "rb").read()
        at, size, count = struct.unpack_from("<I10xHH", self.data, 28)
        headers = [struct.unpack_from("<8I", self.data, at + i * size) for i in range(count)]
        self.loaded = [(h[2], h[1], h[4]) for h in headers if h[0] == 1]

    def words(self):
        for address, offset, size in self.loaded:
            for at in range(0, size - 3, 4):
                yield address + at, struct.unpack_from("<I", self.data, offset + at)[0]


def registers(text):
    """Bytes of a register list."""
    total = 0
    for word in text[text.index("{") + 1 : text.index("}")].split(", "):
        ranged = RANGE.match(word)
        count = int(ranged[3]) - int(ranged[2]) + 1 if ranged else 1
        total += count * (8 if word.startswith("d") else 4)
    return total


def number(text):
    return int(text.rsplit("#", 1)[1].split()[0], 0)


def taken(name, rest, constants):
    """Bytes that an instruction takes off the stack pointer."""
    if name.startswith(("push", "vpush")):
        return registers(rest)
    if name.startswith("stmdb") and rest.startswith("sp!"):
        return registers(rest)
    if name.startswith("str") and rest.endswith("]!") and "[sp, #-" in rest:
        return -number(rest.rstrip("]!"))
    if name.startswith("sub") and rest.startswith("sp") and "#" in rest:
        return number(rest)
    if name.startswith(("sub", "add")) and rest.startswith("sp") and re.search(r"\br\d+\b", rest):
        by = constants.get(re.findall(r"\br\d+\b", rest)[-1])
        if by is None:
            raise SystemExit(f"a stack of unknown size: {name} {rest}")
        by = by - (1 << 32) if by >= 1 << 31 else by
        return max(0, by if name.startswith("sub") else -by)
    return 0


def constant(name, rest, words, constants):
    """Follows constants loaded into registers."""
    to = rest.split(",")[0]
    before = constants.pop(to, None) if not name.startswith(("str", "cmp", "tst", "b")) else None
    if name.startswith("ldr") and "[pc" in rest and "0x" in rest:
        at = int(re.search(r"0x([0-9a-f]+)", rest.split("]")[1])[1], 16)
        constants[to] = words.get(at)
    elif name.startswith(("movw", "mov.w", "movs", "mov")) and "#" in rest:
        constants[to] = number(rest) & 0xFFFFFFFF
    elif name.startswith("movt") and "#" in rest and before is not None:
        constants[to] = before & 0xFFFF | number(rest) << 16


def functions(lines, words):
    """Frame, calls and whether one goes through a register, by the function's address."""
    found, here, constants = {}, None, {}
    for line in lines:
        begins = FUNCTION.match(line)
        if begins:
            here = int(begins[1], 16)
            found[here] = {"name": begins[2], "frame": 0, "calls": set(), "open": False}
            constants = {}
            continue
        is_instruction = INSTRUCTION.match(line)
        if not is_instruction or here is None:
            continue
        _, name, rest = is_instruction.groups()
        function = found[here]
        function["frame"] += taken(name, rest, constants)
        constant(name, rest, words, constants)
        target = TARGET.match(rest)
        if name.startswith("b") and target:
            function["calls"].add(int(target[1], 16))
        elif name.startswith(("blx", "bx")) and not rest.startswith("lr"):
            to = constants.get(rest.split()[0])
            if to is None:
                function["open"] = True
            else:
                function["calls"].add(to - 1)
    return found


def main(path, start, calls):
    found = functions(sys.stdin.read().splitlines(), dict(Image(path).words()))
    known = [line.split() for line in open(calls) if line.strip() and not line.startswith("#")]
    deepest = {}

    def called(function):
        calls = {call for call in function["calls"] if call in found}
        if not function["open"]:
            return calls
        to = [callee for caller, callee in known if re.search(caller, function["name"])]
        if not to:
            raise SystemExit(f"calls through a register: {function['name']}")
        return calls | {at for at, f in found.items() if any(re.search(c, f["name"]) for c in to)}

    def depth(at, above):
        if at in above:
            raise SystemExit(f"calls itself: {found[at]['name']}")
        if at not in deepest:
            below = [depth(call, above | {at}) for call in called(found[at]) - {at}]
            most, chain = max(below, default=(0, []))
            deepest[at] = (found[at]["frame"] + most, [at] + chain)
        return deepest[at]

    begin = next(at for at, function in found.items() if re.search(start, function["name"]))
    total, chain = depth(begin, frozenset())
    print(total)
    for at in chain:
        print(f"{found[at]['frame']:6} {found[at]['name']}")


main(*sys.argv[1:])
