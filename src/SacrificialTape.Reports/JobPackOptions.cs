using System.Globalization;
using SacrificialTape.Costing;
using SacrificialTape.Inspection;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Reports;

/// <summary>What a job pack holds beside the estimate, and how it shows numbers.</summary>
public sealed record JobPackOptions
{
    /// <summary>How numbers are written; by default the invariant culture.</summary>
    public CultureInfo Culture { get; init; } = CultureInfo.InvariantCulture;

    /// <summary>In which units numbers are shown.</summary>
    public ReportUnits Units { get; init; }

    /// <summary>The day on which the pack is made: it stands in the pack, and waivers are judged on it. Left out: no day, and no waiver counts.</summary>
    public DateOnly? Day { get; init; }

    /// <summary>What the job costs; left out: no section on cost.</summary>
    public CostEstimate? Cost { get; init; }

    /// <summary>Decimal digits of amounts of money; left out: those of the currency, which must then be a known one (<see cref="MinorUnits"/>).</summary>
    public int? MinorDigits { get; init; }

    /// <summary>Waivers that the team has given.</summary>
    public ValueList<Waiver> Waivers { get; init; } = [];

    /// <summary>By which document thickness readings are counted in the inspection plan; left out: none.</summary>
    public SamplingScheme? ThicknessSampling { get; init; }

    /// <summary>Whether every step of the workings of each line is part of the pack.</summary>
    public bool WithWorkings { get; init; }

    /// <summary>Whether lays that can be drawn are drawn.</summary>
    public bool WithPictures { get; init; } = true;
}
