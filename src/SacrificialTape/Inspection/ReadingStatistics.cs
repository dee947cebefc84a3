using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>Number, mean, scatter and lowest of thicknesses.</summary>
/// <remarks>2 to 10 000 thicknesses, each more than zero. A single one has no scatter: see <see cref="SingleReading"/>.</remarks>
public sealed record ReadingStatistics : IHasWorkings
{
    private readonly StoredNumber meanUm;
    private readonly StoredNumber deviationUm;

    /// <summary>Describes thicknesses.</summary>
    /// <param name="thicknesses">2 to 10 000 thicknesses, each more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are too few or too many, or one is zero or less.</exception>
    public ReadingStatistics(IEnumerable<Length> thicknesses)
    {
        ValueList<Length> allThicknesses = thicknesses.Listed();
        AcceptedRange.Between(2, ToleranceFactor.MostReadings, "readings")
            .Noting("one reading has no scatter; its rate alone: SingleReading").Check(allThicknesses.Count, nameof(thicknesses));
        double[] sorted = [.. allThicknesses.Select(Checked).Order()];
        this.Thicknesses = new ValueList<Length>(sorted.Select(static um => Length.FromMicrometers(um)));
        this.meanUm = new StoredNumber(ReadingKernel.MeanUm(sorted, default(NoSteps)));
        this.deviationUm = new StoredNumber(ReadingKernel.DeviationUm(sorted, this.MeanUm, default(NoSteps)));
    }

    /// <summary>The thicknesses, lowest first.</summary>
    public ValueList<Length> Thicknesses { get; }

    /// <summary>How many there are.</summary>
    public int Count => this.Thicknesses.Count;

    /// <summary>Their mean.</summary>
    public Length Mean => Length.FromMicrometers(this.MeanUm);

    /// <summary>Their standard deviation, as that of a sample.</summary>
    public Length StandardDeviation => Length.FromMicrometers(this.DeviationUm);

    /// <summary>The lowest.</summary>
    public Length Lowest => this.Thicknesses[0];

    internal double MeanUm => this.meanUm.Bare;

    internal double DeviationUm => this.deviationUm.Bare;

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        double[] um = this.AllUm();
        double mean = ReadingKernel.MeanUm(um, steps);
        _ = ReadingKernel.DeviationUm(um, mean, steps);
        return steps.Under("Mean and scatter of readings");
    }

    /// <summary>Number, mean and scatter in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.Count} readings, mean {this.MeanUm:0.00} um, standard deviation {this.DeviationUm:0.00} um, lowest {this.Um(0):0.00} um");

    internal double Um(int at) => UnitConversions.Micrometers(this.Thicknesses[at]);

    internal double[] AllUm() => [.. this.Thicknesses.Select(UnitConversions.Micrometers)];

    private static double Checked(Length thickness) => AcceptedRange.Above(0, "um")
        .Noting("a hole is no reading: count it as damage").Check(UnitConversions.Micrometers(thickness), "thicknesses");
}
