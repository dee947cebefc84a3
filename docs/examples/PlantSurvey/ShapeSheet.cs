using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace PlantSurvey;

/// <summary>A sheet of the survey: a file for shapes of one family, with the columns that they need.</summary>
internal abstract class ShapeSheet
{
    /// <summary>All sheets, in the order in which their lines are worked out.</summary>
    internal static IReadOnlyList<ShapeSheet> All { get; } = [new PipeSheet(), new FittingSheet(), new VesselSheet(), new PanelSheet(), new SectionSheet(), new DetailSheet()];

    /// <summary>The name of the file.</summary>
    internal abstract string File { get; }

    /// <summary>What work on such a surface is called in norms.csv.</summary>
    internal abstract string WorkOn(Surface surface);

    /// <summary>Columns that must be there, besides those of every sheet.</summary>
    internal abstract IReadOnlyList<string> Columns { get; }

    /// <summary>Columns that may be left out.</summary>
    internal virtual IReadOnlyList<string> Optional => [];

    /// <summary>Reads shape and lay; null where the row has faults.</summary>
    /// <param name="row">The row.</param>
    /// <param name="strip">The strip; null where its cell is faulty, so that the other faults are still found.</param>
    /// <param name="options">End lap, wander, passes and method; null likewise.</param>
    /// <param name="bands">Bands all round that stay clear; only straight pipe can have them.</param>
    internal abstract ILay? Lay(CsvRow row, StripStock? strip, LayChoices? options, ValueList<StayClear> bands);

    /// <summary>Words that mean themselves, for a cell that holds one of a few.</summary>
    private protected static Dictionary<string, string> Same(params string[] words) => words.ToDictionary(static word => word);

    /// <summary>Reads the welds, where the sheet has columns for them.</summary>
    internal virtual WeldWork? Welds(CsvRow row, ILay? lay, IReadOnlyDictionary<string, StripStock> stock, Length endLap) => null;
}
