using System.Globalization;

namespace CoastStudy;

/// <summary>What was asked for on the command line.</summary>
internal sealed record CoastArguments(long Rows, int Threads, double Years, ulong Seed, string Folder)
{
    internal const string Usage = "CoastStudy [--rows 10000000] [--threads 2] [--years 25] [--seed 1] [--out coast-study]";

    internal static CoastArguments? Read(IReadOnlyList<string> arguments)
    {
        var read = new CoastArguments(10_000_000, 2, 25, 1, "coast-study");
        for (int i = 0; i < arguments.Count; i += 2)
        {
            string value = i + 1 < arguments.Count ? arguments[i + 1] : string.Empty;
            bool whole = long.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out long number);
            CoastArguments? next = arguments[i] switch
            {
                "--rows" when whole && number is >= 1000 and <= 1_000_000_000 => read with { Rows = number },
                "--threads" when whole && number is >= 1 and <= 1024 => read with { Threads = (int)number },
                "--years" when double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out double years)
                    && years is > 0 and < CoastSite.LastYear => read with { Years = years },
                "--seed" when whole => read with { Seed = (ulong)number },
                "--out" when value.Length > 0 => read with { Folder = value },
                _ => null,
            };
            if (next is null)
            {
                return null;
            }

            read = next;
        }

        return read;
    }
}
