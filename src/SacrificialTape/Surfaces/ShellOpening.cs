using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A number of like openings in a shell, whose area is not covered.</summary>
/// <remarks>
/// A round opening is the hole of a pipe that stands square on the shell, axis to axis: its area on the curved shell is a
/// little more than that of its circle. A rectangular one is measured on the steel, along the shell and round it. Sizes:
/// 1 mm to 100 m. Count: at least 1.
/// </remarks>
public sealed record ShellOpening
{
    private readonly StoredNumber alongMm;
    private readonly StoredNumber aroundMm;

    private ShellOpening(bool isRound, double alongMm, double aroundMm, int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        this.IsRound = isRound;
        this.alongMm = new StoredNumber(alongMm);
        this.aroundMm = new StoredNumber(aroundMm);
        this.Count = count;
    }

    /// <summary>Whether it is the hole of a pipe.</summary>
    public bool IsRound { get; }

    /// <summary>Extent along the shell; the diameter of a round one.</summary>
    public Length ExtentAlong => Length.FromMillimeters(this.AlongMm);

    /// <summary>Extent round the shell, on the steel; the diameter of a round one.</summary>
    public Length ExtentAround => Length.FromMillimeters(this.AroundMm);

    /// <summary>How many of them.</summary>
    public int Count { get; }

    internal double AlongMm => this.alongMm.Bare;

    internal double AroundMm => this.aroundMm.Bare;

    /// <summary>Openings of pipes that stand square on the shell.</summary>
    /// <param name="diameter">Outside diameter of the pipe, or of its reinforcing pad if the pad is left bare.</param>
    /// <param name="count">How many, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static ShellOpening Round(Length diameter, int count = 1)
    {
        double mm = FittingRanges.DiameterMm(diameter, nameof(diameter));
        return new(true, mm, mm, count);
    }

    /// <summary>Rectangular openings, measured on the steel.</summary>
    /// <param name="along">Along the shell's axis.</param>
    /// <param name="around">Round the shell.</param>
    /// <param name="count">How many, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static ShellOpening Rectangular(Length along, Length around, int count = 1) => new(
        false, FittingRanges.DiameterMm(along, nameof(along)), FittingRanges.DiameterMm(around, nameof(around)), count);

    /// <summary>Area of all of them on a shell, noting how it was worked out.</summary>
    internal double SquareMeters<TSteps>(double shellMm, TSteps steps)
        where TSteps : struct, IStepRecorder => this.IsRound
        ? ShellKernel.RoundSquareMeters(shellMm, this.AlongMm, this.Count, steps)
        : ShellKernel.RectangularSquareMeters(this.AlongMm, this.AroundMm, this.Count, steps);

    /// <summary>Count and size in a few words.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{this.Count} {(this.IsRound ? "round opening(s)" : "opening(s)")} {this.AlongMm:0.##}{(this.IsRound ? string.Empty : string.Create(CultureInfo.InvariantCulture, $" x {this.AroundMm:0.##}"))} mm");
}
