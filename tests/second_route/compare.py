"""Keeps the worst deviation of every quantity, and fails where one is beyond what is allowed."""

import sys

SHOWN = 5
# Share of sound turns that may be refused.
REFUSED = 0.0


class Report:
    def __init__(self):
        self.worst, self.counts, self.skipped, self.failures = {}, {}, {}, []
        self.refusals = 0

    def seen(self, kind):
        self.counts[kind] = self.counts.get(kind, 0) + 1

    def skip(self, kind, why):
        self.skipped[(kind, why)] = self.skipped.get((kind, why), 0) + 1

    def fail(self, kind, name, text, case):
        self.failures.append(f"{kind}, {name}: {text}\n    case: {case}")

    def note(self, kind, name, size, allowed):
        """Keeps the deviation that comes nearest to what is allowed, and the largest one."""
        most, nearest, n = self.worst.get((kind, name), (0.0, 0.0, 0))
        self.worst[(kind, name)] = (max(most, size), max(nearest, size / allowed if allowed else size), n + 1)

    def close(self, kind, name, deviation, allowed, case):
        self.note(kind, name, abs(deviation), allowed)
        if not abs(deviation) <= allowed:
            self.fail(kind, name, f"core is off by {deviation:.3e}, allowed {allowed:.1e}", case)

    def between(self, kind, name, value, low, high, case):
        self.note(kind, name, abs(value), high)
        if not low <= value <= high:
            self.fail(kind, name, f"core has {value:.5f}, allowed {low} to {high}", case)

    def same(self, kind, name, want, got, case):
        self.note(kind, name, 0.0, 0.0)
        if want != got:
            self.fail(kind, name, f"core says {got}, should be {want}", case)

    def refused(self, case):
        """A refusal that the equations do not ask for: it may be rare, and only "tipped", since
        core compares unit vectors and a large zero changes their lengths."""
        self.refusals += 1
        if case["core_refusal"] != "tipped":
            self.fail(case["kind"], "refusal", f"core says {case['core_refusal']}", case)

    def end(self, seconds):
        for (kind, name), (most, nearest, n) in sorted(self.worst.items()):
            print(f"{kind:32} {name:34} {n:6} compared, largest {most:.2e}, {100 * nearest:4.0f} % of what is allowed")
        for (kind, why), n in sorted(self.skipped.items()):
            print(f"{kind:32} {n} left out: {why}")
        total = sum(self.counts.values())
        turns = self.counts.get("turned", 0) + self.counts.get("table", 0)
        print(f"{self.refusals} of {turns} turns refused as tipped")
        if self.refusals > REFUSED * turns:
            self.failures.append(f"{self.refusals} of {turns} turns refused")
        print(f"{total} cases, {seconds:.0f} s: {self.counts}")
        if not total:
            sys.exit("second route: no cases")
        for text in self.failures[:SHOWN]:
            print("FAIL", text, file=sys.stderr)
        if self.failures:
            sys.exit(f"second route: {len(self.failures)} results of core are not what the equations give")
        print("second route: core agrees")
