"""Medians and ratios over all launches, from lines of name and number on standard input."""
import sys
from statistics import median

found = {}
for line in sys.stdin:
    name, number = line.split()
    found.setdefault(name, []).append(float(number))


def times(title, above, below, aim):
    ratios = sorted(x / y for x, y in zip(found[above], found[below]))
    print(f"{title:<52} {median(ratios):7.2f}   ({ratios[0]:.2f} to {ratios[-1]:.2f}; aim {aim})")


print(f"{len(found['columns'])} launches, medians of processor time in ns a row")
for name in ("columns", "scalar", "numpy-plain", "numpy-blocks", "functions"):
    print(f"  {name:<14} {median(found[name]):8.2f}   ({min(found[name]):.2f} to {max(found[name]):.2f})")
times("scalar double kernel over columns", "scalar", "columns", "2.5 or more")
times("plain numpy over columns", "numpy-plain", "columns", "1.8 or more")
times("tuned numpy over columns", "numpy-blocks", "columns", "1.2, at least 1")
times("one thread over two, wall time", "one-thread", "two-threads", "1.7 or more")
times("processor time of two threads over one", "two-threads-processor", "columns", "1")
times("columns over two logarithms and two exponentials", "columns", "functions", "near 1")
share = median(found["within-share"])
print(f"functions a row: 2 logarithms and 2 exponentials for the rate; 1 more of each in the vectors that hold a life within "
      f"20 years, {100 * share:.1f} % of rows")
print("1000 climates by 1000 tapes, ns a row")
for name in ("grid-factored", "grid-row-by-row", "numpy-grid-plain", "numpy-grid-factored"):
    print(f"  {name:<20} {median(found[name]):8.2f}   ({min(found[name]):.2f} to {max(found[name]):.2f})")
times("unfactorised numpy over the factored grid", "numpy-grid-plain", "grid-factored", "10 or more")
times("factorised numpy over the factored grid", "numpy-grid-factored", "grid-factored", "none")
times("row by row over the factored grid", "grid-row-by-row", "grid-factored", "none")
print(f"largest relative difference of a life: scalar {max(found['scalar-difference']):.1e}, "
      f"plain numpy {max(found['numpy-plain-difference']):.1e}, tuned numpy {max(found['numpy-blocks-difference']):.1e}")
