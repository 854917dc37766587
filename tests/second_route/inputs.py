"""Influences of a measurement, for two engines: GTC carries them through a model as uncertain
numbers (JCGM 100), Monte Carlo draws them (JCGM 101). A model asks for an influence by source and
key; the same key is the same influence, however many readings it is in."""

import math

import GTC
import numpy as np

ROOT3 = math.sqrt(3)


class Uncertain:
    """Influences as uncertain numbers."""

    sin, cos, sqrt, atan2 = staticmethod(GTC.sin), staticmethod(GTC.cos), staticmethod(GTC.sqrt), staticmethod(GTC.atan2)

    def __init__(self):
        self.known = {}
        self.sources = {}
        self.rectangles = []

    def normal(self, source, key, u):
        """An influence about zero with standard uncertainty `u`."""
        if u == 0:
            return 0.0
        if key not in self.known:
            self.known[key] = GTC.ureal(0, u)
            self.sources.setdefault(source, []).append(self.known[key])
        return self.known[key]

    def rectangle(self, source, key):
        """An influence between −1 and 1, each value as likely."""
        if key not in self.known:
            self.rectangles.append(key)
        return self.normal(source, key, 1 / ROOT3)

    def parts(self, y):
        """Standard uncertainty of `y` by source."""
        by = lambda xs: math.sqrt(sum(GTC.component(y, x) ** 2 for x in xs))
        return {source: by(xs) for source, xs in self.sources.items()}

    def largest_rectangle(self, y):
        """Half-width of the largest rectangle in `y`."""
        return max((abs(GTC.component(y, self.known[k])) * ROOT3 for k in self.rectangles), default=0.0)


class Drawn:
    """Influences as arrays of draws."""

    sin, cos, sqrt, atan2 = staticmethod(np.sin), staticmethod(np.cos), staticmethod(np.sqrt), staticmethod(np.arctan2)

    def __init__(self, rng, draws):
        self.rng, self.draws, self.known = rng, draws, {}

    def normal(self, source, key, u):
        if u == 0:
            return 0.0
        if key not in self.known:
            self.known[key] = self.rng.normal(0, u, self.draws)
        return self.known[key]

    def rectangle(self, source, key):
        if key not in self.known:
            self.known[key] = self.rng.uniform(-1, 1, self.draws)
        return self.known[key]
