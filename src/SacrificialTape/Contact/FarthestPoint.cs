using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>The point of the covered surface that lies farthest from every window, measured along the surface to the window's edge.</summary>
/// <remarks>
/// To a tenth of a millimetre or a ten-thousandth of the distance, whichever is more. On pipe, shell and panel the distance
/// is that of the steel; on a bend it is that of a way which turns evenly, never shorter than the shortest: an upper bound.
/// Openings of a panel are not taken out, so a point within one may be the farthest: the safe side.
/// </remarks>
public sealed record FarthestPoint : IHasWorkings
{
    private readonly StoredNumber atMostMm;
    private readonly StoredNumber xMm;
    private readonly StoredNumber yMm;
    private readonly Farthest found;

    /// <summary>Finds the point.</summary>
    /// <param name="layout">The windows, at least one.</param>
    /// <exception cref="ArgumentException">There is no window.</exception>
    public FarthestPoint(WindowLayout layout)
    {
        ArgumentNullException.ThrowIfNull(layout);
        if (layout.Windows.Count == 0)
        {
            throw new ArgumentException("There is no window to be far from.", nameof(layout));
        }

        this.Layout = layout;
        double rough = Math.Sqrt(layout.Surface.AreaMm2 / layout.Windows.Count);
        this.found = FarthestKernel.Search(layout.Spots.AsSpan(), layout.Surface, Math.Max(0.1, rough * 1e-4));
        this.atMostMm = new StoredNumber(this.found.AtMostMm);
        this.xMm = new StoredNumber(this.found.X);
        this.yMm = new StoredNumber(this.found.Y);
    }

    /// <summary>The windows.</summary>
    public WindowLayout Layout { get; }

    /// <summary>No covered point lies farther from the nearest window.</summary>
    [BasisOf(typeof(ContactFormulas), nameof(ContactFormulas.Distance))]
    public Length AtMost => Length.FromMillimeters(this.atMostMm.Bare);

    /// <summary>How far the point found lies from it.</summary>
    [BasisOf(typeof(ContactFormulas), nameof(ContactFormulas.Distance))]
    public Length Found => Length.FromMillimeters(FarthestKernel.DistanceMm(this.found.AlongMm, this.found.Factor, this.found.AroundMm, default(NoSteps)));

    /// <summary>Where the point lies along.</summary>
    public Length Along => Length.FromMillimeters(this.xMm.Bare);

    /// <summary>Where the point lies around.</summary>
    public Length Around => Length.FromMillimeters(this.yMm.Bare);

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = FarthestKernel.DistanceMm(this.found.AlongMm, this.found.Factor, this.found.AroundMm, steps);
        return steps.Under("Distance to the nearest window");
    }

    /// <summary>Distance and place in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"at most {this.atMostMm.Bare:0.0} mm from a window, about {this.xMm.Bare:0} mm along, {this.yMm.Bare:0} mm around");
}
