using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A number of like weld seams; each gets a strip of its own before the main lay.</summary>
public abstract record WeldSeam
{
    private protected WeldSeam(int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        this.Count = count;
    }

    /// <summary>How many, at least 1.</summary>
    public int Count { get; }

    /// <summary>Length of one seam.</summary>
    public abstract Length SeamLength { get; }

    /// <summary>Whether the seam closes on itself, so that its strip laps on its own end.</summary>
    public abstract bool Closed { get; }

    /// <summary>Where one seam runs, as a crew is told: for instance "round the pipe".</summary>
    public abstract string Place { get; }

    /// <summary>Length of one seam in mm, noting how it was worked out.</summary>
    internal abstract double LengthMm<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder;

    /// <summary>Count and length in a few words.</summary>
    public sealed override string ToString() => $"{this.Count} weld(s) of {MeasureText.Write(UnitConversions.Millimeters(this.SeamLength) / 1000, TradeUnit.Meter, 6)}";
}
