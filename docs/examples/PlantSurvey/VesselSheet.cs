using SacrificialTape.Surfaces;

namespace PlantSurvey;

/// <summary>Shells and heads of vessels and tanks: vessels.csv.</summary>
internal sealed class VesselSheet : FamilySheet
{
    internal VesselSheet()
        : base(
            new ShapeKind("shell", static cells => new Shell(
                cells.Mm("outside_mm"), cells.Metres("length_m"), Axis(cells), OpeningList.OfShell(cells)))
            {
                Numbers = ["outside_mm", "length_m"],
                Texts = ["axis"],
                OptionalTexts = ["openings"],
                Lays = LayWords.Shell,
            },
            new ShapeKind("hemispherical", static cells => cells.ByInside()
                ? HemisphericalHead.FromInside(cells.Mm("inside_mm"), cells.Mm("wall_mm"), cells.MmOrNone("straight_mm"))
                : HemisphericalHead.FromOutside(cells.Mm("outside_mm"), cells.MmOrNone("straight_mm")))
            {
                OptionalNumbers = ["outside_mm", "inside_mm", "wall_mm", "straight_mm"],
                Lays = LayWords.Round,
            },
            new ShapeKind("ellipsoidal", Ellipsoidal)
            {
                OptionalNumbers = ["outside_mm", "inside_mm", "wall_mm", "depth_mm", "straight_mm"],
                Lays = LayWords.Round,
            },
            new ShapeKind("torispherical", static cells => cells.ByInside()
                ? TorisphericalHead.FromInside(
                    cells.Mm("inside_mm"), cells.Mm("crown_mm"), cells.Mm("knuckle_mm"), cells.Mm("wall_mm"), cells.MmOrNone("straight_mm"))
                : TorisphericalHead.FromOutside(
                    cells.Mm("outside_mm"), cells.Mm("crown_mm"), cells.Mm("knuckle_mm"), cells.MmOrNone("straight_mm")))
            {
                Numbers = ["crown_mm", "knuckle_mm"],
                OptionalNumbers = ["outside_mm", "inside_mm", "wall_mm", "straight_mm"],
                Lays = LayWords.Round,
            },
            new ShapeKind("kloepper", static cells => TorisphericalHead.Kloepper(
                cells.Mm("outside_mm"), cells.Mm("wall_mm"), cells.MmOrNone("straight_mm")))
            {
                Numbers = ["outside_mm", "wall_mm"],
                OptionalNumbers = ["straight_mm"],
                Lays = LayWords.Round,
            },
            new ShapeKind("korbbogen", static cells => TorisphericalHead.Korbbogen(
                cells.Mm("outside_mm"), cells.Mm("wall_mm"), cells.MmOrNone("straight_mm")))
            {
                Numbers = ["outside_mm", "wall_mm"],
                OptionalNumbers = ["straight_mm"],
                Lays = LayWords.Round,
            },
            new ShapeKind("conical", static cells => ConicalHead.FromOutside(
                cells.Mm("outside_mm"), cells.Mm("depth_mm"), cells.MmOrNone("straight_mm")))
            {
                Numbers = ["outside_mm", "depth_mm"],
                OptionalNumbers = ["straight_mm"],
                Lays = LayWords.Round,
            },
            new ShapeKind("flat", static cells => FlatHead.FromOutside(cells.Mm("outside_mm"), cells.MmOrNone("straight_mm")))
            {
                Numbers = ["outside_mm"],
                OptionalNumbers = ["straight_mm"],
                Lays = LayWords.FlatHead,
            })
    {
    }

    internal override string WorkOn(Surface surface) => "vessel";

    internal override string File => "vessels.csv";

    private static ShellAxis Axis(ShapeCells cells) => cells.Text("axis") switch
    {
        "upright" => ShellAxis.Upright,
        "lying" => ShellAxis.Lying,
        { } other => throw new CellException("axis", $"'{other}' is not one of upright, lying."),
    };

    // Without a depth it is the 2:1 form.
    private static EllipsoidalHead Ellipsoidal(ShapeCells cells) => (cells.ByInside(), cells.Has("depth_mm")) switch
    {
        (true, true) => EllipsoidalHead.FromInside(cells.Mm("inside_mm"), cells.Mm("depth_mm"), cells.Mm("wall_mm"), cells.MmOrNone("straight_mm")),
        (true, false) => EllipsoidalHead.TwoToOneFromInside(cells.Mm("inside_mm"), cells.Mm("wall_mm"), cells.MmOrNone("straight_mm")),
        (false, true) => EllipsoidalHead.FromOutside(cells.Mm("outside_mm"), cells.Mm("depth_mm"), cells.MmOrNone("straight_mm")),
        (false, false) => EllipsoidalHead.TwoToOneFromOutside(cells.Mm("outside_mm"), cells.MmOrNone("straight_mm")),
    };
}
