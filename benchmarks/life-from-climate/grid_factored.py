"""Every climate with every tape, factorised: rates once for each climate, then a climate at a time in the cache."""
import numpy as np

from climate import EXPONENT, run_grid

KNEE = 20**EXPONENT
SLOPE = EXPONENT * KNEE / 20


def work(columns, zinc, life):
    t, rh, sulfur, chloride = columns
    warmth = np.minimum(0.038 * (t - 10), -0.071 * (t - 10))
    rate = (0.0129 * sulfur**0.44 * np.exp(0.046 * rh + warmth)
            + 0.0175 * chloride**0.57 * np.exp(0.008 * rh + 0.085 * t))
    x = np.empty_like(zinc)
    for i in range(len(rate)):
        out = life[i]
        np.divide(zinc, rate[i], out=x)
        np.subtract(x, KNEE, out=out)
        np.divide(out, SLOPE, out=out)
        np.add(out, 20, out=out)
        early = np.flatnonzero(x <= KNEE)
        if len(early):
            out[early] = x[early] ** (1 / EXPONENT)


run_grid("numpy-grid-factored", work)
