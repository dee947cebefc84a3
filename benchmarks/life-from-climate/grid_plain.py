"""Every climate with every tape, unfactorised: a row for each pair, whole arrays."""
import numpy as np

from climate import run_grid
from plain import work as lives


def work(columns, zinc, life):
    climates, tapes = life.shape
    rows = [np.repeat(column, tapes) for column in columns] + [np.tile(zinc, climates)]
    lives(rows, life.reshape(-1))


run_grid("numpy-grid-plain", work)
