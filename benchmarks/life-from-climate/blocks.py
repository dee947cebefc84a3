"""The same tuned: blocks that stay in the cache, no temporaries, a power as exp of log, and powers for early lives alone."""
import numpy as np

from climate import EXPONENT, run

BLOCK = 8192
KNEE = 20**EXPONENT
SLOPE = EXPONENT * KNEE / 20
FIRST, SECOND = np.log(0.0129), np.log(0.0175)
a = np.empty(BLOCK)
b = np.empty(BLOCK)
c = np.empty(BLOCK)


def work(columns, life):
    for start in range(0, len(life), BLOCK):
        t, rh, sulfur, chloride, zinc = (column[start:start + BLOCK] for column in columns)
        n = len(t)
        x, y, z, out = a[:n], b[:n], c[:n], life[start:start + n]
        np.subtract(t, 10, out=x)
        np.multiply(x, -0.071, out=y)
        np.multiply(x, 0.038, out=x)
        np.minimum(x, y, out=x)
        np.multiply(rh, 0.046, out=y)
        np.add(x, y, out=x)
        np.log(sulfur, out=y)
        np.multiply(y, 0.44, out=y)
        np.add(x, y, out=x)
        np.add(x, FIRST, out=x)
        np.exp(x, out=x)
        np.multiply(rh, 0.008, out=y)
        np.multiply(t, 0.085, out=z)
        np.add(y, z, out=y)
        np.log(chloride, out=z)
        np.multiply(z, 0.57, out=z)
        np.add(y, z, out=y)
        np.add(y, SECOND, out=y)
        np.exp(y, out=y)
        np.add(x, y, out=x)
        np.divide(zinc, x, out=x)
        early = np.flatnonzero(x <= KNEE)
        np.subtract(x, KNEE, out=out)
        np.divide(out, SLOPE, out=out)
        np.add(out, 20, out=out)
        out[early] = x[early] ** (1 / EXPONENT)


run("numpy-blocks", work)
