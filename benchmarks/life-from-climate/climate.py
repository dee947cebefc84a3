"""What both numpy scripts share: the inputs, as the C# entry makes them, and the check of the answers."""
import sys
import time

import numpy as np

EXPONENT = 0.813


def spread(rows, which, low, high):
    return low + (high - low) * (np.arange(1 + which * 17, rows + 1 + which * 17) * 0.6180339887498949 % 1)


def inputs(rows):
    return (spread(rows, 1, -10, 25), spread(rows, 2, 40, 90), spread(rows, 3, 1, 120), spread(rows, 4, 1, 700),
            spread(rows, 5, 20, 200))


def run_grid(name, work):
    """Times work(climate columns, zinc, life): life of every climate with every tape, and holds it against the C# entry."""
    climates, tapes, rounds, file = int(sys.argv[1]), int(sys.argv[2]), int(sys.argv[3]), sys.argv[4]
    columns, zinc = inputs(climates)[:4], inputs(tapes)[4]
    life = np.empty((climates, tapes))
    work(columns, zinc, life)
    times = []
    for _ in range(rounds):
        start = time.process_time()
        work(columns, zinc, life)
        times.append((time.process_time() - start) / life.size * 1e9)
    check(name, life.ravel(), file)
    print(name, sorted(times)[rounds // 2])


def check(name, life, file):
    expected = np.fromfile(file)
    worst = np.max(np.abs(life - expected) / expected)
    if not worst < 1e-12:
        sys.exit(f"{name}: lives differ by {worst:.3g}, so this is not the same calculation")
    print(name + "-difference", worst)


def run(name, work):
    """Times work(columns, life) and holds its lives against those of the C# entry."""
    rows, rounds, file = int(sys.argv[1]), int(sys.argv[2]), sys.argv[3]
    columns = inputs(rows)
    life = np.empty(rows)
    work(columns, life)
    times = []
    for _ in range(rounds):
        start = time.process_time()
        work(columns, life)
        times.append((time.process_time() - start) / rows * 1e9)
    check(name, life, file)
    print(name, sorted(times)[rounds // 2])
