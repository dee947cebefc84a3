namespace SacrificialTape.Tests.TakeOff;

/// <summary>
/// The stated cutting rule carried out roll by roll and piece by piece, as a crew would, with every cut written down; no
/// groups and no sums.
/// </summary>
internal sealed class CuttingByHand
{
    private readonly long roll;
    private readonly long lap;
    private readonly long shortest;
    private readonly List<List<long>> rolls = [];

    internal CuttingByHand(CutCase given)
    {
        this.roll = (long)Math.Round(given.RollM * 1e6);
        this.lap = (long)Math.Round(given.SpliceMm * 1e3);
        this.shortest = (long)Math.Round(given.ShortestMm * 1e3);
        var single = given.Pieces.SelectMany(static piece => Enumerable.Repeat(piece, piece.Count)).ToList();
        foreach (PieceCase piece in single.Where(piece => piece.Whole && piece.LengthUm <= this.roll).OrderByDescending(static piece => piece.LengthUm))
        {
            List<long>? on = this.rolls.Find(cuts => this.Left(cuts) >= piece.LengthUm);
            if (on is null)
            {
                on = [];
                this.rolls.Add(on);
            }

            on.Add(piece.LengthUm);
        }

        // Remnants worth splicing, longest first, then new rolls.
        var remnants = new Queue<List<long>>(this.rolls.Where(cuts => this.Left(cuts) >= this.shortest).OrderByDescending(this.Left));
        List<long>? current = null;
        foreach (PieceCase piece in single.Where(piece => !piece.Whole || piece.LengthUm > this.roll))
        {
            var parts = new List<long>();
            long need = piece.LengthUm;
            while (current is null || this.Left(current) < need)
            {
                if (current is not null && Math.Min(this.Left(current), need + this.lap - this.shortest) is var take && take >= this.shortest)
                {
                    current.Add(take);
                    parts.Add(take);
                    need += this.lap - take;
                }

                if (!remnants.TryDequeue(out current))
                {
                    current = [];
                    this.rolls.Add(current);
                }
            }

            current.Add(need);
            parts.Add(need);
            this.Splices += parts.Count - 1;
            this.Strips.Add((piece.LengthUm, parts));
        }
    }

    /// <summary>Each spliced strip with the parts that it was put together from.</summary>
    internal List<(long LengthUm, List<long> PartsUm)> Strips { get; } = [];

    /// <summary>The cuts of each roll in the order they were made.</summary>
    internal IEnumerable<string> CutLists => this.rolls.Select(Cutting.List);

    internal int Splices { get; }

    internal int Rolls => this.rolls.Count;

    /// <summary>Every cut fits its roll; every strip comes to its length; no part is a scrap.</summary>
    internal void Check()
    {
        Assert.All(this.rolls, cuts => Assert.True(this.Left(cuts) >= 0));
        Assert.All(this.Strips, strip =>
        {
            Assert.Equal(strip.LengthUm + ((strip.PartsUm.Count - 1) * this.lap), strip.PartsUm.Sum());
            Assert.True(strip.PartsUm.Count == 1 || strip.PartsUm.All(part => part >= this.shortest), "A scrap was spliced in.");
        });
    }

    private long Left(List<long> cuts) => this.roll - cuts.Sum();
}
