using System.Globalization;

namespace SweepCluster;

/// <summary>What was asked for on the command line.</summary>
internal sealed record ClusterArguments(long Rows, int SliceRows, int Silos, ulong Seed, bool Kill, bool Check)
{
    internal const string Usage = "SweepCluster [--rows 1000000] [--slice-rows 65536] [--silos 1] [--seed 1] [--kill] [--check]";

    internal static ClusterArguments? Read(IReadOnlyList<string> arguments)
    {
        var read = new ClusterArguments(1_000_000, 65_536, 1, 1, false, false);
        for (int i = 0; i < arguments.Count; i++)
        {
            if (arguments[i] is "--kill" or "--check")
            {
                read = arguments[i] == "--kill" ? read with { Kill = true } : read with { Check = true };
                continue;
            }

            if (i + 1 == arguments.Count || !long.TryParse(arguments[i + 1], NumberStyles.None, CultureInfo.InvariantCulture, out long number))
            {
                return null;
            }

            ClusterArguments? next = arguments[i++] switch
            {
                "--rows" when number is >= 1000 and <= 1_000_000_000 => read with { Rows = number },
                "--slice-rows" when number is >= 100 and <= 4_194_304 => read with { SliceRows = (int)number },
                "--silos" when number is >= 1 and <= 32 => read with { Silos = (int)number },
                "--seed" => read with { Seed = (ulong)number },
                _ => null,
            };
            if (next is null)
            {
                return null;
            }

            read = next;
        }

        // There must be somebody to kill and somebody to go on.
        return read.Kill && read.Silos < 2 ? null : read;
    }
}
