using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/surfaces-fittings.md quotes.</summary>
public static class SurfacesFittingsPage
{
    public static void Heads()
    {
        #region heads
        Length diameter = Length.FromMeters(2);
        Length plate = Length.FromMillimeters(10);
        Length flange = Length.FromMillimeters(40);
        Head[] heads =
        [
            EllipsoidalHead.TwoToOneFromOutside(diameter, flange),
            EllipsoidalHead.TwoToOneFromInside(diameter, plate, flange),
            TorisphericalHead.Kloepper(diameter, plate, flange),
            TorisphericalHead.Korbbogen(diameter, plate, flange),
            HemisphericalHead.FromOutside(diameter, flange),
        ];
        foreach (Head head in heads)
        {
            Console.WriteLine($"{head.Description}: dish {head.DishArea.SquareMeters:0.0000} m2, with flange {head.Area.SquareMeters:0.0000} m2");
        }
        #endregion
    }

    public static void HeadWorkings()
    {
        #region head-workings
        TorisphericalHead head = TorisphericalHead.FromInside(
            insideDiameter: Length.FromMillimeters(1980),
            insideCrownRadius: Length.FromMillimeters(2000),
            insideKnuckleRadius: Length.FromMillimeters(200),
            thickness: Length.FromMillimeters(10),
            straightFlange: Length.FromMillimeters(40));
        Console.WriteLine(head.ShowWorkings());
        #endregion
    }

    public static void Tank()
    {
        #region tank
        var shell = new Shell(
            Length.FromMeters(3),
            Length.FromMeters(8),
            ShellAxis.Upright,
            [
                ShellOpening.Round(Length.FromMillimeters(610)),
                ShellOpening.Rectangular(along: Length.FromMillimeters(1200), around: Length.FromMillimeters(800)),
            ]);
        Console.WriteLine(shell.Description);
        Console.WriteLine($"{shell.GrossArea.SquareMeters:0.000} m2, less openings {shell.Area.SquareMeters:0.000} m2");
        #endregion
    }

    public static void FlangeOfFour()
    {
        #region flange-of-four
        PipeSize pipe = PipeSize.FromNps("4");
        FlangeSize size = FlangeSize.Class150(pipe);
        var flange = new Flange(size, pipe.OutsideDiameter, FlangeParts.Rim | FlangeParts.Back);
        Console.WriteLine(flange.Description);
        Console.WriteLine($"rim {flange.RimArea.SquareCentimeters:0} cm2, back {flange.BackArea.SquareCentimeters:0} cm2");
        Console.WriteLine($"dimensions: {size.Basis}");
        Console.WriteLine($"raised face: {size.RaisedFaceBasis}");
        #endregion
    }

    public static void Refused()
    {
        #region refused
        try
        {
            _ = TorisphericalHead.FromOutside(
                outsideDiameter: Length.FromMillimeters(1000),
                outsideCrownRadius: Length.FromMillimeters(1000),
                outsideKnuckleRadius: Length.FromMillimeters(600),
                straightFlange: Length.Zero);
        }
        catch (ArgumentOutOfRangeException fault)
        {
            Console.WriteLine(fault.Message);
        }
        #endregion
    }
}
