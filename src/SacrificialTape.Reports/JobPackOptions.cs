using System.Globalization;
using SacrificialTape.Costing;
using SacrificialTape.Documents;
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

    /// <summary>What people remarked on the job and its lines; it stands in the pack word for word.</summary>
    public ValueList<JobNote> Notes { get; init; } = [];

    /// <summary>Names of strips; a strip without one is shown by its measures alone.</summary>
    public ValueList<NamedStock> Stocks { get; init; } = [];

    /// <summary>By which document thickness readings are counted in the inspection plan; left out: none.</summary>
    public SamplingScheme? ThicknessSampling { get; init; }

    /// <summary>Whether every step of the workings of each line is part of the pack.</summary>
    public bool WithWorkings { get; init; }

    /// <summary>Whether lays that can be drawn are drawn.</summary>
    public bool WithPictures { get; init; } = true;

    /// <summary>Notes, names of strips and waivers of a job that stands in a file. Waivers need a <see cref="Day"/> beside them.</summary>
    /// <param name="document">The job.</param>
    public static JobPackOptions Of(JobDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        return new() { Notes = document.Notes, Stocks = document.Stocks, Waivers = document.RulesDocument?.Waivers ?? [] };
    }

    /// <summary>
    /// Notes, names of strips, waivers, day and cost of an estimate that stands in a file, for the pack of its
    /// <see cref="EstimateDocument.Estimate"/>, which is worked out once for both.
    /// </summary>
    /// <param name="document">The estimate.</param>
    /// <exception cref="ArgumentException">A stock or kind of work of a document that was read has no price.</exception>
    public static JobPackOptions Of(EstimateDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        return Of(document.Job) with { Waivers = document.Waivers, Day = document.Day, Cost = document.Cost() };
    }
}
