"""Lives from climate as one would write them first: whole arrays, a temporary for each step."""
import numpy as np

from climate import EXPONENT, run


def work(columns, life):
    t, rh, sulfur, chloride, zinc = columns
    warmth = np.where(t <= 10, 0.038 * (t - 10), -0.071 * (t - 10))
    rate = (0.0129 * sulfur**0.44 * np.exp(0.046 * rh + warmth)
            + 0.0175 * chloride**0.57 * np.exp(0.008 * rh + 0.085 * t))
    ratio = zinc / rate
    knee = 20**EXPONENT
    life[:] = np.where(ratio <= knee, ratio ** (1 / EXPONENT), 20 + (ratio - knee) / (EXPONENT * knee / 20))


if __name__ == "__main__":
    run("numpy-plain", work)
