namespace SacrificialTape.Contact;

/// <summary>
/// Solves G v = i for a net of conductances: symmetric and positive definite, since every part of the net reaches the
/// steel. Nodes are renumbered so that neighbours stand near each other, and only what lies between the first neighbour and
/// the diagonal is kept.
/// </summary>
internal static class SkylineKernel
{
    /// <summary>Voltages of all nodes, and how far the worst equation is missed, relative to the sum of the currents.</summary>
    /// <param name="toSteel">Conductance of each node to the steel, S.</param>
    /// <param name="links">Conductances between nodes, S.</param>
    /// <param name="currents">Current into each node, A.</param>
    /// <param name="voltages">Where the voltages go, V.</param>
    /// <returns>Largest missed current over the sum of the currents.</returns>
    internal static double Solve(double[] toSteel, List<NetLink> links, double[] currents, double[] voltages)
    {
        int count = toSteel.Length;
        int[][] neighbours = Neighbours(count, links);
        int[] place = Renumbered(count, neighbours);
        var rows = new double[count][];
        var first = new int[count];
        for (int i = 0; i < count; i++)
        {
            int lowest = place[i];
            foreach (int other in neighbours[i])
            {
                lowest = Math.Min(lowest, place[other]);
            }

            first[place[i]] = lowest;
        }

        for (int row = 0; row < count; row++)
        {
            rows[row] = new double[row - first[row] + 1];
        }

        for (int i = 0; i < count; i++)
        {
            rows[place[i]][^1] += toSteel[i];
        }

        foreach (NetLink link in links)
        {
            (int low, int high) = place[link.One] < place[link.Other] ? (place[link.One], place[link.Other]) : (place[link.Other], place[link.One]);
            rows[high][low - first[high]] -= link.Siemens;
            rows[high][^1] += link.Siemens;
            rows[low][^1] += link.Siemens;
        }

        Factor(rows, first);
        var values = new double[count];
        for (int i = 0; i < count; i++)
        {
            values[place[i]] = currents[i];
        }

        Substitute(rows, first, values);
        for (int i = 0; i < count; i++)
        {
            voltages[i] = values[place[i]];
        }

        return Missed(toSteel, links, currents, voltages);
    }

    // L of L L', row by row.
    private static void Factor(double[][] rows, int[] first)
    {
        for (int row = 0; row < rows.Length; row++)
        {
            double[] own = rows[row];
            for (int column = first[row]; column < row; column++)
            {
                double[] other = rows[column];
                int from = Math.Max(first[row], first[column]);
                double sum = own[column - first[row]];
                ReadOnlySpan<double> a = own.AsSpan(from - first[row], column - from);
                ReadOnlySpan<double> b = other.AsSpan(from - first[column], column - from);
                for (int k = 0; k < a.Length; k++)
                {
                    sum -= a[k] * b[k];
                }

                own[column - first[row]] = sum / other[^1];
            }

            double pivot = own[^1];
            for (int k = 0; k < own.Length - 1; k++)
            {
                pivot -= own[k] * own[k];
            }

            own[^1] = pivot > 0 ? Math.Sqrt(pivot) : throw new InvalidOperationException("A part of the net does not reach the steel.");
        }
    }

    private static void Substitute(double[][] rows, int[] first, double[] values)
    {
        for (int row = 0; row < rows.Length; row++)
        {
            double[] own = rows[row];
            double sum = values[row];
            for (int k = 0; k < own.Length - 1; k++)
            {
                sum -= own[k] * values[first[row] + k];
            }

            values[row] = sum / own[^1];
        }

        for (int row = rows.Length - 1; row >= 0; row--)
        {
            double[] own = rows[row];
            values[row] /= own[^1];
            for (int k = 0; k < own.Length - 1; k++)
            {
                values[first[row] + k] -= own[k] * values[row];
            }
        }
    }

    /// <summary>Largest missed current over the sum of the currents.</summary>
    internal static double Missed(double[] toSteel, List<NetLink> links, double[] currents, double[] voltages)
    {
        double[] left = [.. currents];
        for (int i = 0; i < left.Length; i++)
        {
            left[i] -= toSteel[i] * voltages[i];
        }

        foreach (NetLink link in links)
        {
            double flow = link.Siemens * (voltages[link.One] - voltages[link.Other]);
            left[link.One] -= flow;
            left[link.Other] += flow;
        }

        double all = currents.Sum(Math.Abs);
        return all == 0 ? 0 : left.Max(Math.Abs) / all;
    }

    /// <summary>The other ends of the links of each node, each once.</summary>
    internal static int[][] Neighbours(int count, List<NetLink> links)
    {
        var lists = new List<int>[count];
        for (int i = 0; i < count; i++)
        {
            lists[i] = [];
        }

        foreach (NetLink link in links)
        {
            lists[link.One].Add(link.Other);
            lists[link.Other].Add(link.One);
        }

        return [.. lists.Select(static list => list.Distinct().ToArray())];
    }

    /// <summary>
    /// The new place of each node: level by level from a node at the rim, those with few neighbours first; then back to front
    /// (Cuthill and McKee).
    /// </summary>
    internal static int[] Renumbered(int count, int[][] neighbours)
    {
        var place = new int[count];
        var seen = new bool[count];
        var order = new List<int>(count);
        foreach (int start in Enumerable.Range(0, count).OrderBy(i => neighbours[i].Length))
        {
            if (seen[start])
            {
                continue;
            }

            int rim = Farthest(start, neighbours, count);
            seen[rim] = true;
            int next = order.Count;
            order.Add(rim);
            while (next < order.Count)
            {
                foreach (int other in neighbours[order[next++]].OrderBy(i => neighbours[i].Length))
                {
                    if (!seen[other])
                    {
                        seen[other] = true;
                        order.Add(other);
                    }
                }
            }
        }

        for (int i = 0; i < count; i++)
        {
            place[order[i]] = count - 1 - i;
        }

        return place;
    }

    private static int Farthest(int start, int[][] neighbours, int count)
    {
        var seen = new HashSet<int> { start };
        var queue = new Queue<int>([start]);
        int last = start;
        while (queue.Count > 0 && seen.Count <= count)
        {
            last = queue.Dequeue();
            foreach (int other in neighbours[last])
            {
                if (seen.Add(other))
                {
                    queue.Enqueue(other);
                }
            }
        }

        return last;
    }
}
