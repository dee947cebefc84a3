using SacrificialTape.Surfaces;

namespace PlantSurvey;

/// <summary>A shape that a sheet can hold: the cells it needs, those it may have, and how the surface is made of them.</summary>
internal sealed record ShapeKind(string Name, Func<ShapeCells, Surface> Make)
{
    // Which cell is to blame when the library refuses an argument. Arguments of one name mean one thing throughout.
    private static readonly Dictionary<string, string[]> CellsOf = new()
    {
        ["outsideDiameter"] = ["outside_mm", "size"],
        ["insideDiameter"] = ["inside_mm"],
        ["insideDepth"] = ["depth_mm"],
        ["outsideDepth"] = ["depth_mm"],
        ["overallLength"] = ["length_mm"],
        ["thickness"] = ["wall_mm", "thickness_mm"],
        ["straightFlange"] = ["straight_mm"],
        ["outsideCrownRadius"] = ["crown_mm"],
        ["outsideKnuckleRadius"] = ["knuckle_mm"],
        ["insideCrownRadius"] = ["crown_mm"],
        ["insideKnuckleRadius"] = ["knuckle_mm"],
        ["smallEnd"] = ["small"],
        ["branchDiameter"] = ["small"],
        ["branch"] = ["small"],
        ["length"] = ["length_mm", "length_m"],
        ["runCentreToEnd"] = ["length_mm"],
        ["branchCentreToEnd"] = ["branch_mm"],
        ["bendRadius"] = ["radius_mm"],
        ["angle"] = ["angle_deg"],
        ["joints"] = ["joints"],
        ["openings"] = ["openings"],
        ["width"] = ["width_mm"],
        ["height"] = ["height_mm"],
        ["diameter"] = ["outside_mm"],
        ["pitch"] = ["pitch_mm"],
        ["crownWidth"] = ["crown_mm"],
        ["valleyWidth"] = ["valley_mm"],
        ["depth"] = ["depth_mm"],
        ["corrugations"] = ["corrugations"],
        ["flatWidth"] = ["flat_mm"],
        ["webThickness"] = ["web_mm"],
        ["stemThickness"] = ["web_mm"],
        ["flangeThickness"] = ["flange_mm"],
        ["rootRadius"] = ["root_mm"],
        ["longLeg"] = ["height_mm"],
        ["shortLeg"] = ["width_mm"],
        ["toeRadius"] = ["toe_mm"],
        ["outsideHeight"] = ["height_mm"],
        ["outsideWidth"] = ["width_mm"],
        ["wallThickness"] = ["wall_mm"],
        ["outsideCornerRadius"] = ["corner_mm"],
        ["designation"] = ["size"],
        ["edgeLength"] = ["length_m"],
        ["frontReach"] = ["front_mm"],
        ["backReach"] = ["back_mm"],
        ["outsideCorners"] = ["corners"],
        ["insideCorners"] = ["inside_corners"],
        ["clearWidth"] = ["width_mm"],
        ["clearHeight"] = ["height_mm"],
        ["clearDiameter"] = ["outside_mm"],
        ["pipeOutsideDiameter"] = ["outside_mm"],
        ["strapWidth"] = ["width_mm"],
        ["strapThickness"] = ["thickness_mm"],
        ["wrap"] = ["wrap_deg"],
        ["straightEnds"] = ["ends_mm"],
        ["footOutsideDiameter"] = ["outside_mm"],
        ["topOutsideDiameter"] = ["top_mm"],
        ["measured"] = ["area_m2"],
        ["value"] = ["allowance_percent"],
        ["note"] = ["note"],
        ["size"] = ["size"],
    };

    /// <summary>Cells that must hold a number.</summary>
    internal string[] Numbers { get; init; } = [];

    /// <summary>Cells that may hold a number.</summary>
    internal string[] OptionalNumbers { get; init; } = [];

    /// <summary>Cells that must hold a text.</summary>
    internal string[] Texts { get; init; } = [];

    /// <summary>Cells that may hold a text.</summary>
    internal string[] OptionalTexts { get; init; } = [];

    /// <summary>How it can be covered, by the word in the cell 'lay'.</summary>
    internal required IReadOnlyDictionary<string, LayBy> Lays { get; init; }

    /// <summary>Every cell that the shape may fill.</summary>
    internal IEnumerable<string> Cells => [.. this.Texts, .. this.Numbers, .. this.OptionalTexts, .. this.OptionalNumbers];

    /// <summary>Reads the cells and makes the surface; every fault is noted, also a cell that this shape has no use for.</summary>
    internal Surface? Read(CsvRow row, IEnumerable<string> cellsOfSheet)
    {
        foreach (string idle in cellsOfSheet.Except(this.Cells))
        {
            row.MustBeEmpty(idle, $"A line of shape '{this.Name}' has none; leave the cell empty.");
        }

        var numbers = this.Numbers.ToDictionary(static column => column, row.Number);
        foreach (string column in this.OptionalNumbers)
        {
            if (row.OptionalNumber(column) is { } number)
            {
                numbers[column] = number;
            }
        }

        var texts = this.Texts.ToDictionary(static column => column, row.Text);
        foreach (string column in this.OptionalTexts)
        {
            if (row.TextOr(column, string.Empty) is { Length: > 0 } text)
            {
                texts[column] = text;
            }
        }

        return row.Faulty ? null : row.Try(this.Cells.First(), () => this.Make(new ShapeCells(numbers, texts)), this.Blame());
    }

    private (string Argument, string Column)[] Blame() =>
    [
        .. from pair in CellsOf
           from column in pair.Value
           where this.Cells.Contains(column)
           select (pair.Key, column),
        .. this.Cells.Select(static column => (column, column)),
    ];
}
