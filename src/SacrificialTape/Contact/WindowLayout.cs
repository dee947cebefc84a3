using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>The windows of one surface, each at its place.</summary>
/// <remarks>
/// A window lies wholly on the surface and clear of the openings of a panel. No two overlap; touching is allowed, to a
/// billionth of the size. Windows that overlap are refused, not counted once: two windows at one place are a slip of the
/// pen more often than a plan.
/// </remarks>
public sealed record WindowLayout : IHasWorkings
{
    /// <summary>Lays windows out.</summary>
    /// <param name="surface">The surface.</param>
    /// <param name="windows">The windows, none or more; numbered from 1 in this order.</param>
    /// <exception cref="ArgumentException">A window does not lie on the surface, lies in an opening, or overlaps another.</exception>
    public WindowLayout(UnrolledSurface surface, IEnumerable<ContactWindow> windows)
    {
        ValueList<ContactWindow> allWindows = windows.Listed();
        ArgumentNullException.ThrowIfNull(surface);
        this.Surface = surface;
        this.Windows = allWindows;
        var spots = new BareSpot[allWindows.Count];
        for (int i = 0; i < spots.Length; i++)
        {
            spots[i] = BareSpot.Of(allWindows[i], surface);
            this.CheckPlace(allWindows, i, spots[i]);
        }

        this.CheckApart(allWindows, spots);
        this.Spots = ValueList<BareSpot>.Owning(spots);
    }

    /// <summary>The surface.</summary>
    public UnrolledSurface Surface { get; }

    /// <summary>The windows.</summary>
    public ValueList<ContactWindow> Windows { get; }

    /// <summary>Bare area of all windows.</summary>
    public Area BareArea => Area.FromSquareMeters(this.Windows.Sum(static window => window.AreaMm2) / 1e6);

    internal ValueList<BareSpot> Spots { get; }

    /// <summary>Bare area of each size of window; on a bend, how lengths along it change at each window.</summary>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        foreach ((bool round, double along, double around) in this.Windows.Select(static window => (window.IsRound, window.LengthMm, window.WidthMm)).Distinct())
        {
            _ = round ? WindowKernel.DiscCm2(along, steps) : WindowKernel.RectangleCm2(along, around, steps);
        }

        foreach (BareSpot spot in this.Spots)
        {
            _ = this.Surface.Factor(spot.Y, steps);
        }

        return steps.Under($"{this.Windows.Count} window(s) on {this.Surface.Surface.Description}");
    }

    /// <summary>Count and surface in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Windows.Count} window(s) on {this.Surface}");

    private static string Named(int index, ContactWindow window) => string.Create(CultureInfo.InvariantCulture, $"Window {index + 1} ({window})");

    private void CheckPlace(ValueList<ContactWindow> windows, int index, in BareSpot spot)
    {
        ContactWindow window = windows[index];
        double length = this.Surface.LengthMm;
        double girth = this.Surface.GirthMm;
        if (!WithAllowance.AtLeast(spot.LowX + length, length) || !WithAllowance.AtMost(spot.HighX, length))
        {
            throw new ArgumentException(string.Create(
                CultureInfo.InvariantCulture,
                $"{Named(index, window)} reaches from {spot.LowX:0.###} to {spot.HighX:0.###} mm along, outside the surface, which is 0 to {length:0.###} mm long: {this.Surface}."), nameof(windows));
        }

        bool within = this.Surface.IsClosed
            ? WithAllowance.AtMost(2 * spot.HalfY, girth)
            : WithAllowance.AtLeast(spot.LowY + girth, girth) && WithAllowance.AtMost(spot.HighY, girth);
        if (!within)
        {
            throw new ArgumentException(string.Create(
                CultureInfo.InvariantCulture,
                $"{Named(index, window)} is {2 * spot.HalfY:0.###} mm wide around from {spot.LowY:0.###} to {spot.HighY:0.###} mm, outside the surface, which is {girth:0.###} mm {(this.Surface.IsClosed ? "round" : "high")}: {this.Surface}."), nameof(windows));
        }

        if (this.Surface.Surface is Panel panel
            && panel.Openings.FirstOrDefault(opening => opening.IsPlaced && this.Overlaps(BareSpot.Of(opening, this.Surface), window)) is { } hit)
        {
            throw new ArgumentException($"{Named(index, window)} lies in the opening {hit}.", nameof(windows));
        }
    }

    private bool Overlaps(in BareSpot opening, ContactWindow window) =>
        BareSpot.Of(window, this.Surface).Overlaps(opening, this.Surface.GirthMm, this.Surface.IsClosed);

    // Sorted along, so that each is held only against those that begin before it ends.
    private void CheckApart(ValueList<ContactWindow> windows, BareSpot[] spots)
    {
        int[] order = [.. Enumerable.Range(0, spots.Length).OrderBy(i => spots[i].LowX)];
        for (int i = 0; i < order.Length; i++)
        {
            for (int j = i + 1; j < order.Length && spots[order[j]].LowX < spots[order[i]].HighX; j++)
            {
                if (spots[order[i]].Overlaps(spots[order[j]], this.Surface.GirthMm, this.Surface.IsClosed))
                {
                    (int first, int second) = (Math.Min(order[i], order[j]), Math.Max(order[i], order[j]));
                    throw new ArgumentException(
                        $"{Named(first, windows[first])} and {Named(second, windows[second])} overlap: give each a place of its own, or state one window.", nameof(windows));
                }
            }
        }
    }
}
