using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>Which strips touch bare steel, themselves or through laps that conduct, in whatever order they are laid.</summary>
/// <remarks>
/// A lap joins when it conducts and shares at least the least area. A set of joined strips touches a window when one of its
/// strips lies over it by at least the least area with no strip of another set beneath: who lies below within a set does not
/// matter, and who lies below of two sets is not asked. Over a facing film no lap joins, and each strip stands alone.
/// </remarks>
public sealed record JoinedStrips : IHasWorkings
{
    private readonly StoredNumber leastMm2;
    private readonly StoredNumber touchedMm2;
    private readonly int unjoined;

    /// <summary>Finds out which strips touch.</summary>
    /// <param name="strips">The strips at their places.</param>
    /// <param name="layout">The windows.</param>
    /// <param name="lapsConduct">Whether laps conduct: not over a facing film.</param>
    /// <param name="leastContact">The least area that counts as touching, of a window and of a lap.</param>
    /// <exception cref="ArgumentOutOfRangeException">The least area is not above 0 or over 1 m2.</exception>
    public JoinedStrips(IEnumerable<PlacedStrip> strips, WindowLayout layout, bool lapsConduct, Area leastContact)
        : this(strips.Listed(), layout ?? throw new ArgumentNullException(nameof(layout)), lapsConduct, UnitConversions.SquareMeters(leastContact) * 1e6)
    {
    }

    private JoinedStrips(ValueList<PlacedStrip> strips, WindowLayout layout, bool lapsConduct, double leastMm2)
    {
        var pieces = new StripPieces(strips, layout.Surface);
        this.Strips = strips;
        this.Layout = layout;
        this.LapsConduct = lapsConduct;
        this.leastMm2 = new StoredNumber(AcceptedRange.AboveUpTo(0, 1e6, "mm2").Check(leastMm2, "leastContact"));
        StripSets sets = pieces.Join(lapsConduct, leastMm2);
        double[] touched = Touched(pieces, sets, layout, leastMm2);
        var alone = new List<PlacedStrip>();
        var roots = new HashSet<int>();
        double least = double.MaxValue;
        for (int i = 0; i < strips.Count; i++)
        {
            int root = sets.RootOf(i);
            roots.Add(root);
            least = Math.Min(least, touched[root]);
            if (touched[root] == 0)
            {
                alone.Add(strips[i]);
            }
        }

        this.Sets = roots.Count;
        this.unjoined = alone.Count;
        this.Untouched = new ValueList<PlacedStrip>(alone);
        this.touchedMm2 = new StoredNumber(strips.Count == 0 ? 0 : least);
    }

    /// <summary>The strips.</summary>
    public ValueList<PlacedStrip> Strips { get; }

    /// <summary>The windows.</summary>
    public WindowLayout Layout { get; }

    /// <summary>Whether laps conduct.</summary>
    public bool LapsConduct { get; }

    /// <summary>The least area that counts as touching.</summary>
    public Area LeastContact => Area.FromSquareCentimeters(this.leastMm2.Bare / 100);

    /// <summary>Sets of strips that hang together.</summary>
    public int Sets { get; }

    /// <summary>The strips that touch no window, neither themselves nor through others.</summary>
    public ValueList<PlacedStrip> Untouched { get; }

    /// <summary>Area by which the worst-off set touches windows: the sum over those that it touches by the least area or more.</summary>
    [BasisOf(typeof(ContactFormulas), nameof(ContactFormulas.Untouched))]
    public Area LeastTouched => Area.FromSquareCentimeters(this.touchedMm2.Bare / 100);

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = JoinKernel.Untouched(this.Strips.Count, this.Strips.Count - this.unjoined, steps);
        return steps.Under("Strips joined to bare steel");
    }

    /// <summary>Strips, sets and those untouched in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.Strips.Count} strip(s) in {this.Sets} set(s), {this.unjoined} without bare steel");

    private static double[] Touched(StripPieces pieces, StripSets sets, WindowLayout layout, double leastMm2)
    {
        var touched = new double[pieces.Strips];
        var near = new List<int>();
        var best = new Dictionary<int, double>();
        double widest = 0;
        foreach (ref readonly StripPiece piece in pieces.All)
        {
            widest = Math.Max(widest, piece.Along);
        }

        foreach (BareSpot spot in layout.Spots)
        {
            SteelContactKernel.Near(pieces, spot, widest, near);
            best.Clear();
            foreach (int index in near)
            {
                // The pieces of a strip share no steel, so that what they touch adds up.
                int strip = pieces.All[index].Strip;
                best[strip] = best.GetValueOrDefault(strip) + SteelContactKernel.TouchedMm2(pieces, sets, index, spot, near);
            }

            foreach (IGrouping<int, double> set in best.GroupBy(one => sets.RootOf(one.Key), static one => one.Value))
            {
                double area = set.Max();
                if (WithAllowance.AtLeast(area, leastMm2))
                {
                    touched[set.Key] += area;
                }
            }
        }

        return touched;
    }
}
