using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/lays-panels-and-shells.md quotes.</summary>
public static class LaysPanelsAndShellsPage
{
    private static readonly StripStock Stock = new(
        new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25))),
        Length.FromMillimeters(100),
        Length.FromMeters(50));

    public static void Disc()
    {
        #region disc
        PanelOpening manhole = PanelOpening.Circular(Length.FromMillimeters(500)).At(Length.FromMillimeters(200), Length.Zero);
        var end = new CircularPanel(Length.FromMillimeters(1500), [manhole]);
        var lay = new PanelLay(end, Stock, PanelDirection.AlongWidth, Length.FromMillimeters(10));
        Console.WriteLine(lay.Description);
        foreach (Strip piece in lay.Strips)
        {
            Console.WriteLine($"{piece.Count} x {piece.Length.Millimeters:0.0} mm: cover {piece.Cover.Millimeters:0.0}, lap {piece.Lap.Millimeters:0.0}, trim {piece.Trim.Millimeters:0.0}");
        }

        Console.WriteLine($"{lay.StripLength.Meters:0.000} m, {lay.LayersOnAverage.Ratio:0.000} layers on average, {lay.LayersEverywhere} everywhere");
        #endregion
    }

    public static void BothWays()
    {
        #region both-ways
        PanelOpening door = PanelOpening.Rectangular(Length.FromMillimeters(600), Length.FromMillimeters(900)).At(Length.Zero, Length.Zero);
        var wall = new RectangularPanel(Length.FromMillimeters(2400), Length.FromMillimeters(1500), [door]);
        PanelLayComparison both = PanelLay.BothWays(wall, Stock, Length.FromMillimeters(10));
        Console.WriteLine(both.AlongWidth);
        Console.WriteLine(both.AlongHeight);
        Console.WriteLine(both.Why);
        #endregion
    }

    public static void Corrugated()
    {
        #region corrugated
        var sheet = new CorrugatedPanel(
            Length.FromMillimeters(200), Length.FromMillimeters(60), Length.FromMillimeters(60), Length.FromMillimeters(30), 10, Length.FromMeters(3));
        foreach (CorrugatedDirection direction in Enum.GetValues<CorrugatedDirection>())
        {
            var lay = new CorrugatedLay(sheet, Stock, direction, Length.FromMillimeters(10));
            Console.WriteLine($"{lay.Description}: {lay.Strips[0].TotalLength.Meters:0.000} m");
            foreach (Finding finding in lay.Judge(RuleSet.Default, "wall"))
            {
                Console.WriteLine($"{finding.Severity}: {finding.Rule.Title}: {finding.Measured}, at most {finding.Limit}");
            }
        }

        #endregion
    }

    public static void Tank()
    {
        #region tank
        var tank = new Shell(
            Length.FromMeters(18), Length.FromMeters(9), ShellAxis.Upright, [ShellOpening.Round(Length.FromMillimeters(610), 2)]);
        var lay = new ShellLay(tank, Stock, ShellDirection.Round, Length.FromMillimeters(10), Length.FromMillimeters(20));
        Strip course = lay.Strips[0];
        Console.WriteLine(lay.Description);
        Console.WriteLine($"each {course.Length.Meters:0.000} m, spliced: {course.MaySplice}; trim {course.Trim.Millimeters:0.0} mm of it");
        #endregion
    }

    public static void Joint()
    {
        #region joint
        var flange = new Flange(FlangeSize.Class150(PipeSize.FromNps("4")), Length.FromMillimeters(114.3), FlangeParts.Rim | FlangeParts.Back);
        var lay = new FlangeLay(flange, Stock, Length.FromMillimeters(10));
        Console.WriteLine(lay.Description);
        foreach (Finding finding in lay.Judge(RuleSet.Default, "joint"))
        {
            Console.WriteLine($"{finding.Severity}: {finding.Rule.Title}. {finding.Rule.Remedy}");
        }

        #endregion
    }

    public static void LastResort()
    {
        #region last-resort
        var area = new MeasuredArea(Area.FromSquareMeters(40), AreaAllowance.FromFraction(0.15), "pipe rack, paced out, far side guessed");
        var lay = new MeasuredAreaLay(area, Stock, Length.FromMillimeters(20));
        Console.WriteLine(lay.Description);
        Console.WriteLine($"{lay.StripLength.Meters:0.0} m; rests on {lay.Basis}");
        #endregion
    }
}
