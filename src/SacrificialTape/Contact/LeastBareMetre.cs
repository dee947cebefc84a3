using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>The one square metre of a surface that has the least bare steel, wherever it lies.</summary>
/// <remarks>
/// <para>The square metre is 1 m by 1 m, its sides along and around. Where the surface is less than 1 m round, it is the whole
/// girth and as much along as makes a square metre; where it is shorter than 1 m, its whole length; a surface of no more
/// than 1 m2 is taken whole, over its own area. The square may cross the named line, but not an end.</para>
/// <para>Over rectangles on pipe, shell and panel the least is exact. Of a disc that the square cuts, only rectangles within
/// it count: then <see cref="Ratio"/> is a lower bound, and the square found truly has <see cref="RatioThere"/>. On a bend
/// it is a lower bound too: areas are taken by the least factor within each window, in 48 ranges around, and a square metre
/// there is 1 m around, or the whole girth.</para>
/// </remarks>
public sealed record LeastBareMetre : IHasWorkings
{
    private const double MetreMm = 1000;
    private const double MetreMm2 = 1e6;
    private const int RangesOnBend = 48;

    private readonly StoredNumber bareM2;
    private readonly StoredNumber coveredM2;
    private readonly StoredNumber thereM2;
    private readonly StoredNumber xMm;
    private readonly StoredNumber yMm;
    private readonly StoredNumber extentXMm;
    private readonly StoredNumber extentYMm;

    /// <summary>Finds the square metre.</summary>
    /// <param name="layout">The windows.</param>
    public LeastBareMetre(WindowLayout layout)
    {
        ArgumentNullException.ThrowIfNull(layout);
        this.Layout = layout;
        UnrolledSurface surface = layout.Surface;
        double area = surface.AreaMm2;
        SlidingMetre found = area <= MetreMm2
            ? new(layout.Windows.Sum(static window => window.AreaMm2), 0, 0, surface.LengthMm, surface.GirthMm)
            : surface.IsBend ? OnBend(layout) : OnFlat(layout);
        this.bareM2 = new StoredNumber(found.BareMm2 / MetreMm2);
        this.coveredM2 = new StoredNumber(Math.Min(1, area / MetreMm2));
        this.thereM2 = new StoredNumber(area <= MetreMm2 || surface.IsBend ? found.BareMm2 / MetreMm2 : Truly(layout, found) / MetreMm2);
        this.xMm = new StoredNumber(found.X);
        this.yMm = new StoredNumber(BareSpot.Turned(found.Y, surface.GirthMm));
        this.extentXMm = new StoredNumber(found.ExtentX);
        this.extentYMm = new StoredNumber(found.ExtentY);
    }

    /// <summary>The windows.</summary>
    public WindowLayout Layout { get; }

    /// <summary>Bare steel per area covered in the worst square metre.</summary>
    [BasisOf(typeof(ContactFormulas), nameof(ContactFormulas.RatioInMetre))]
    public BareRatio Ratio => BareRatio.FromSquareCentimetersPerSquareMeter(this.Solve(default(NoSteps)));

    /// <summary>What the square found truly has: more than <see cref="Ratio"/> only where that is a lower bound because of discs.</summary>
    [BasisOf(typeof(ContactFormulas), nameof(ContactFormulas.RatioInMetre))]
    public BareRatio RatioThere => BareRatio.FromSquareCentimetersPerSquareMeter(
        SlidingMetreKernel.RatioCm2PerM2(this.thereM2.Bare, this.coveredM2.Bare, default(NoSteps)));

    /// <summary>Whether <see cref="Ratio"/> is exact, or a lower bound.</summary>
    public bool IsExact => !this.Layout.Surface.IsBend && this.Layout.Windows.All(static window => !window.IsRound);

    /// <summary>Where the square begins along.</summary>
    public Length FromAlong => Length.FromMillimeters(this.xMm.Bare);

    /// <summary>Where the square begins around.</summary>
    public Length FromAround => Length.FromMillimeters(this.yMm.Bare);

    /// <summary>Its extent along.</summary>
    public Length ExtentAlong => Length.FromMillimeters(this.extentXMm.Bare);

    /// <summary>Its extent around.</summary>
    public Length ExtentAround => Length.FromMillimeters(this.extentYMm.Bare);

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Bare steel in the worst square metre");
    }

    /// <summary>Ratio and place in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{(this.IsExact ? string.Empty : "at least ")}{this.Solve(default(NoSteps)):G6} cm2/m2 on {this.extentXMm.Bare:0.#} x {this.extentYMm.Bare:0.#} mm from {this.xMm.Bare:0.#} mm along, {this.yMm.Bare:0.#} mm around");

    private static SlidingMetre OnFlat(WindowLayout layout)
    {
        UnrolledSurface surface = layout.Surface;
        double extentY = Math.Min(MetreMm, surface.GirthMm);
        double extentX = MetreMm2 / extentY;
        if (extentX > surface.LengthMm)
        {
            extentX = surface.LengthMm;
            extentY = MetreMm2 / extentX;
        }

        return SlidingMetreKernel.Least(SlidingMetreKernel.Parts(layout.Spots.AsSpan()), surface, extentX, extentY, 0, LastY(surface, extentY));
    }

    // How far along a square metre reaches depends on where around it lies. In each range around, the shortest reach is
    // taken for all of it: less than a square metre somewhere, so never too much bare steel.
    private static SlidingMetre OnBend(WindowLayout layout)
    {
        UnrolledSurface surface = layout.Surface;
        BarePart[] parts = SlidingMetreKernel.Parts(layout.Spots.AsSpan());
        double girth = surface.GirthMm;
        double whole = MetreMm2 / surface.CoveredFactorMm(0, girth, default(NoSteps));
        double narrow = MetreMm2 / surface.CoveredFactorMm((girth / 2) - (MetreMm / 2), (girth / 2) + (MetreMm / 2), default(NoSteps));
        if (girth <= MetreMm || narrow > surface.LengthMm)
        {
            return SlidingMetreKernel.Least(parts, surface, whole, girth, 0, 0);
        }

        var best = new SlidingMetre(double.MaxValue, 0, 0, 0, 0);
        double range = girth / RangesOnBend;
        for (int i = 0; i < RangesOnBend; i++)
        {
            double from = i * range;
            double most = MostCovered(surface, from, from + range);
            SlidingMetre found = SlidingMetreKernel.Least(parts, surface, MetreMm2 / most, MetreMm, from, from + range);
            best = found.BareMm2 < best.BareMm2 ? found : best;
        }

        return best;
    }

    // The square covers most where its middle lies nearest to the outside.
    private static double MostCovered(UnrolledSurface surface, double fromY, double toY)
    {
        double outside = -MetreMm / 2;
        double turn = surface.GirthMm;
        double nearest = outside + (Math.Ceiling((fromY - outside) / turn) * turn);
        return nearest <= toY
            ? surface.CoveredFactorMm(outside, outside + MetreMm, default(NoSteps))
            : Math.Max(
                surface.CoveredFactorMm(fromY, fromY + MetreMm, default(NoSteps)),
                surface.CoveredFactorMm(toY, toY + MetreMm, default(NoSteps)));
    }

    private static double LastY(UnrolledSurface surface, double extentY) => surface.IsClosed
        ? extentY < surface.GirthMm ? surface.GirthMm : 0
        : Math.Max(0, surface.GirthMm - extentY);

    private static double Truly(WindowLayout layout, in SlidingMetre found)
    {
        double girth = layout.Surface.GirthMm;
        double sum = 0;
        Span<(double X, double Y)> corners = stackalloc (double X, double Y)[4];
        foreach (BareSpot spot in layout.Spots)
        {
            for (int turn = layout.Surface.IsClosed ? -2 : 0; turn <= (layout.Surface.IsClosed ? 2 : 0); turn++)
            {
                double lowX = Math.Max(spot.LowX, found.X);
                double highX = Math.Min(spot.HighX, found.X + found.ExtentX);
                double lowY = Math.Max(spot.LowY + (turn * girth), found.Y);
                double highY = Math.Min(spot.HighY + (turn * girth), found.Y + found.ExtentY);
                if (highX <= lowX || highY <= lowY)
                {
                    continue;
                }

                (corners[0], corners[1], corners[2], corners[3]) = ((lowX, lowY), (highX, lowY), (highX, highY), (lowX, highY));
                sum += spot.IsRound
                    ? ClipKernel.AreaInEllipse(corners, spot.X, spot.Y + (turn * girth), spot.HalfX, spot.HalfY)
                    : (highX - lowX) * (highY - lowY);
            }
        }

        return sum;
    }

    private double Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => SlidingMetreKernel.RatioCm2PerM2(this.bareM2.Bare, this.coveredM2.Bare, steps);
}
