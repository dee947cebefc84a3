using SacrificialTape.Quantities;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Rolls of whole pieces and of spliced strip, against instances with a known best plan and against hand counts.</summary>
internal static class CuttingStockChecks
{
    internal static CheckGroup Group => new(
        "Cutting from rolls",
        "Instances whose best plan is known. The library takes the best of several rules and states a number of rolls that no plan can beat: that number may never exceed the known best, and the plan may never beat it. Where the plan takes more rolls than the best, the difference stands below as it is. The plainest of the rules, longest piece first onto the first roll that holds it, is compared with the same rule played piece by piece on a list. Splices are counted by hand.",
        [.. Cases()]);

    private static readonly (int Length, int Count)[] PaperMill =
    [
        (1380, 22), (1520, 25), (1560, 12), (1710, 14), (1820, 18), (1880, 18), (1930, 20), (2000, 10), (2050, 12),
        (2100, 14), (2140, 16), (2150, 18), (2200, 20),
    ];

    private static readonly (int Length, int Count)[] OrderBook = [(20, 48), (45, 35), (50, 24), (55, 10), (75, 8)];

    private static readonly (int Length, int Count)[] Triplets =
    [
        .. new[]
        {
            495, 474, 473, 472, 466, 450, 445, 444, 439, 430, 419, 414, 410, 395, 372, 370, 366, 366, 366, 363, 361, 357,
            355, 351, 350, 350, 347, 320, 315, 307, 303, 299, 298, 298, 292, 288, 287, 283, 275, 275, 274, 273, 273, 272,
            272, 271, 269, 269, 268, 263, 262, 261, 259, 258, 255, 254, 252, 252, 252, 251,
        }.Select(static length => (length, 1)),
    ];

    private static IEnumerable<PublishedCase> Cases() =>
    [
        .. Instance("paper-mill", "paper mill, 219 pieces from 5600", 5600, PaperMill, 73, "The rules are no search of all plans. They take one roll more here, and the plan states a gap of 1.", Evidence.From(Sources.PaperMill, "best plan")),
        .. Instance("triplets", "60 pieces from 1000", 1000, Triplets, 20, "The rules are no search of all plans. They take one roll more here, and the plan states a gap of 1.", Evidence.From(Sources.TripletsT60, "best plan")),
        .. Instance("order-book", "small order book, 125 pieces from 110", 110, OrderBook, 47, null, Evidence.From(Sources.OrderBook, "best plan")),
        .. Spliced(24.9, 3, 2, 5.08, "10, then 14.91 to go; 10, then 4.92; 30 - 24.9 - 2 x 0.01"),
        .. Spliced(10, 1, 0, 0, "one roll to its end"),
        .. Spliced(20.5, 3, 2, 9.48, "10; stop at 9.52, so that the last piece is 1 m and no scrap; 30 - 20.5 - 2 x 0.01"),
    ];

    private static IEnumerable<PublishedCase> Instance(
        string id, string what, int roll, (int Length, int Count)[] pieces, int best, string? aboveBest, Evidence evidence)
    {
        CutPlan Plan() => CutPlan.Of(Asked(pieces), Length.FromMillimeters(roll), Length.FromMillimeters(1));
        PublishedCase Check(string part, string says, Evidence by, double expected, double tolerance, Func<double> compute) => new()
        {
            Id = $"rolls/{id}/{part}",
            What = $"{what}: {says}",
            Evidence = by,
            Expected = expected,
            Tolerance = tolerance,
            Unit = "rolls",
            Compute = compute,
        };
        yield return Check("bound-exceeds-best", $"rolls by which the bound exceeds the best plan of {best}", evidence, 0, 0, () => Math.Max(0, Plan().LeastRolls - best));
        yield return Check("plan", "rolls of the library's plan beside the best", evidence, best, 0, () => Plan().Rolls) with { KnownDisagreement = aboveBest };
        yield return Check("falsely-proved", $"rolls above {best} that the plan has and is yet called proved minimal", evidence, 0, 0, () => Plan().ProvedMinimal ? Plan().Rolls - best : 0);
        int total = pieces.Sum(static piece => piece.Length * piece.Count);
        yield return Check(
            "bound",
            "rolls that no plan beats",
            Evidence.FirstPrinciples(FormattableString.Invariant($"{total} over {roll} filled to the last, or pieces over half a roll, if more"), evidence.Source),
            Math.Max((total / roll) + (total % roll == 0 ? 0 : 1), pieces.Where(piece => 2 * piece.Length > roll).Sum(static piece => piece.Count)),
            0,
            () => Plan().LeastRolls);
        yield return Check(
            "plain-rule",
            $"rolls by the plainest rule, best plan {best}",
            Evidence.FirstPrinciples("the rule played piece by piece", evidence.Source),
            PieceByPiece(roll, pieces),
            0,
            () => FirstFit.Pack(new PieceSizes(roll, pieces.Select(static piece => ((long)piece.Length, (long)piece.Count)))).Sum(static group => group.Rolls));
    }

    private static IEnumerable<CutPiece> Asked((int Length, int Count)[] pieces) =>
        pieces.Select(static piece => new CutPiece(Length.FromMillimeters(piece.Length), piece.Count));

    private static IEnumerable<PublishedCase> Spliced(double meters, int rolls, int splices, double offcut, string count)
    {
        StockTakeOff TakeOff() => Cut(10, [(meters, 1)], true, 0.01, 1);
        PublishedCase Check(string part, double expected, double tolerance, string unit, Func<double> compute) => new()
        {
            Id = FormattableString.Invariant($"rolls/spliced-{meters}/{part}"),
            What = FormattableString.Invariant($"{meters} m from rolls of 10 m, splice 10 mm, no piece under 1 m: {part}"),
            Evidence = Evidence.FirstPrinciples(count),
            Expected = expected,
            Tolerance = tolerance,
            Unit = unit,
            Compute = compute,
        };
        yield return Check("rolls", rolls, 0, "rolls", () => TakeOff().Rolls);
        yield return Check("splices", splices, 0, "splices", () => TakeOff().Splices);
        yield return Check("offcut", offcut, 1e-9, "m", () => TakeOff().Ledger.Offcut.Meters);
    }

    private static int PieceByPiece(int roll, (int Length, int Count)[] pieces)
    {
        var left = new List<int>();
        foreach ((int length, int count) in pieces.OrderByDescending(static piece => piece.Length))
        {
            for (int i = 0; i < count; i++)
            {
                int first = left.FindIndex(rest => rest >= length);
                if (first < 0)
                {
                    left.Add(roll);
                    first = left.Count - 1;
                }

                left[first] -= length;
            }
        }

        return left.Count;
    }

    private static StockTakeOff Cut(
        double rollMeters, IEnumerable<(double Meters, int Count)> pieces, bool maySplice, double spliceLapMeters, double shortestMeters)
    {
        var stock = new StripStock(
            new Tape(new Foil(Length.FromMillimeters(0.1)), new Adhesive(Length.FromMillimeters(0.025))),
            Length.FromMillimeters(100),
            Length.FromMeters(rollMeters));
        return StripTakeOff.Of(
            pieces.Select(piece => new Strip(
                stock, Length.FromMeters(piece.Meters), piece.Count, StripPurpose.Other, maySplice, Length.FromMeters(piece.Meters), Length.Zero)),
            new TakeOffChoices(Length.FromMeters(spliceLapMeters), Length.FromMeters(shortestMeters), Contingency.FromFraction(0))).Stocks[0];
    }
}
