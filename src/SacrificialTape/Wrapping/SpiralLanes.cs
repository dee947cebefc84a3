using System.Runtime.CompilerServices;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>Spirals solved, one in each lane: see <see cref="SpiralSolution"/>. Not a number where there is none.</summary>
internal readonly struct SpiralLanes<TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal SpiralLanes(TLanes circumferenceMm, TLanes widthMm, TLanes advanceMm, TLanes trueAdvanceMm, TLanes holds)
    {
        this.CircumferenceMm = circumferenceMm;
        this.WidthMm = widthMm;
        this.AdvanceMm = TLanes.Where(holds, advanceMm, double.NaN);
        this.TrueAdvanceMm = TLanes.Where(holds, trueAdvanceMm, double.NaN);
    }

    /// <summary>C, round the pipe.</summary>
    internal TLanes CircumferenceMm { get; }

    /// <summary>w, of the strip.</summary>
    internal TLanes WidthMm { get; }

    /// <summary>p, along the axis per turn.</summary>
    internal TLanes AdvanceMm { get; }

    /// <summary>e, across the strip per turn.</summary>
    internal TLanes TrueAdvanceMm { get; }

    /// <summary>sin(theta) = e / C.</summary>
    internal TLanes Sine => this.TrueAdvanceMm / this.CircumferenceMm;

    /// <summary>tan(theta) = p / C.</summary>
    internal TLanes Tangent => this.AdvanceMm / this.CircumferenceMm;

    internal TLanes AngleDegrees => TLanes.Atan(this.Tangent) * (180 / Math.PI);

    internal TLanes TrueLapMm => this.WidthMm - this.TrueAdvanceMm;

    internal TLanes LayersOnAverage => this.WidthMm / this.TrueAdvanceMm;
}
