using SacrificialTape.Surfaces;

namespace PlantSurvey;

/// <summary>Reducers, tees, caps, mitred bends and flanges: fittings.csv.</summary>
internal sealed class FittingSheet : FamilySheet
{
    internal FittingSheet()
        : base(
            new ShapeKind("reducer", Reducer) { Texts = ["size", "small"], OptionalNumbers = ["length_mm"], Lays = LayWords.Round },
            new ShapeKind("eccentric", Eccentric) { Texts = ["size", "small"], OptionalNumbers = ["length_mm"], Lays = LayWords.Eccentric },
            new ShapeKind("tee", MakeTee) { Texts = ["size"], OptionalTexts = ["small"], OptionalNumbers = ["length_mm", "branch_mm"], Lays = LayWords.Tee },
            new ShapeKind("cap", MakeCap) { Texts = ["size"], OptionalNumbers = ["length_mm"], Lays = LayWords.Round },
            new ShapeKind("mitred", static cells => new MitredBend(
                cells.Diameter("size"), cells.Mm("radius_mm"), cells.Degrees("angle_deg"), cells.Whole("joints")))
            {
                Texts = ["size"],
                Numbers = ["radius_mm", "angle_deg", "joints"],
                Lays = LayWords.Mitred,
            },
            new ShapeKind("flange", MakeFlange) { Texts = ["size"], Lays = LayWords.Flange })
    {
    }

    internal override string WorkOn(Surface surface) => "fitting";

    internal override string File => "fittings.csv";

    // A length in the sheet stands before that of the standard, which is there for nominal sizes only.
    private static ConcentricReducer Reducer(ShapeCells cells) =>
        !cells.Has("length_mm") && cells.Nominal("size") is { } large && cells.Nominal("small") is { } small
            ? new(large, small)
            : new(cells.Diameter("size"), cells.Diameter("small"), cells.Mm("length_mm"));

    private static EccentricReducer Eccentric(ShapeCells cells) =>
        !cells.Has("length_mm") && cells.Nominal("size") is { } large && cells.Nominal("small") is { } small
            ? new(large, small)
            : new(cells.Diameter("size"), cells.Diameter("small"), cells.Mm("length_mm"));

    private static Tee MakeTee(ShapeCells cells)
    {
        string branch = cells.Has("small") ? "small" : "size";
        return !cells.Has("length_mm") && !cells.Has("branch_mm") && cells.Nominal("size") is { } run && cells.Nominal(branch) is { } stub
            ? new(run, stub)
            : new(cells.Diameter("size"), cells.Diameter(branch), cells.Mm("length_mm"), cells.Mm("branch_mm"));
    }

    private static Cap MakeCap(ShapeCells cells) => !cells.Has("length_mm") && cells.Nominal("size") is { } size
        ? Cap.FromSize(size)
        : Cap.FromOutside(cells.Diameter("size"), cells.Mm("length_mm"));

    // Rim and back: the face stays clear for the gasket.
    private static Flange MakeFlange(ShapeCells cells) => cells.Nominal("size") is { } size
        ? new(FlangeSize.Class150(size), size.OutsideDiameter, FlangeParts.Rim | FlangeParts.Back)
        : throw new CellException("size", "A flange goes by its nominal size, such as 'NPS 4'.");
}
