using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/spiral-lay.md quotes.</summary>
public static class SpiralLayPage
{
    public static void ThreeStatements()
    {
        #region three-statements
        Length diameter = Length.FromMillimeters(60.3);
        Length width = Length.FromMillimeters(100);
        Length twenty = Length.FromMillimeters(20);
        SpiralSetting[] stated =
        [
            SpiralSetting.FromTrueLap(twenty),
            SpiralSetting.FromLapAlongPipe(twenty),
            SpiralSetting.FromLapBetweenMarks(twenty),
        ];
        foreach (SpiralSetting setting in stated)
        {
            var spiral = new SpiralGeometry(diameter, width, setting);
            Console.WriteLine(
                $"{setting.Convention,-15} p {spiral.Advance.Millimeters:0.0} mm, theta {spiral.Angle.Degrees:0.0} deg, "
                + $"true lap {spiral.TrueLap.Millimeters:0.0} mm, w/e {spiral.LayersOnAverage.Ratio:0.000}");
        }
        #endregion
    }

    public static void WorkedNumber()
    {
        #region worked-number
        var spiral = new SpiralGeometry(
            Length.FromMillimeters(60.3),
            Length.FromMillimeters(100),
            SpiralSetting.FromLapAlongPipe(Length.FromMillimeters(20)));
        Console.WriteLine(spiral.ShowWorkings());
        #endregion
    }

    public static void HalfLap()
    {
        #region half-lap
        var pipe = new StraightPipe(Length.FromMillimeters(114.3), Length.FromMeters(6));
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        var stock = new StripStock(tape, Length.FromMillimeters(50), Length.FromMeters(33));
        foreach (double lap in new[] { 25.0, 26.0, 27.0 })
        {
            var lay = new SpiralLay(pipe, stock, SpiralSetting.FromTrueLap(Length.FromMillimeters(lap)));
            Console.WriteLine(
                $"lap {lap:0} mm: {lay.LayersEverywhere} everywhere, {lay.LayersOnAverage.Ratio:0.00} on average");
        }
        #endregion
    }

    public static void LevelTurns()
    {
        #region level-turns
        var pipe = new StraightPipe(Length.FromMillimeters(114.3), Length.FromMeters(6));
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        var stock = new StripStock(tape, Length.FromMillimeters(50), Length.FromMeters(33));
        var setting = SpiralSetting.FromTrueLap(Length.FromMillimeters(27));
        foreach (SpiralEnds ends in new[] { SpiralEnds.TrimmedFlush, SpiralEnds.LevelTurns(1), SpiralEnds.LevelTurns(2) })
        {
            var lay = new SpiralLay(pipe, stock, setting, ends);
            Console.WriteLine($"{ends.LevelTurnsAtEachEnd} level turn(s) at each end: {lay.LayersEverywhere} layer(s) everywhere");
        }
        #endregion
    }

    public static void RingsAndStrips()
    {
        #region rings-and-strips
        var pipe = new StraightPipe(Length.FromMillimeters(114.3), Length.FromMeters(1));
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        var stock = new StripStock(tape, Length.FromMillimeters(100), Length.FromMeters(33));
        Length leastLap = Length.FromMillimeters(10);
        var rings = new RingLay(pipe, stock, leastLap);
        var strips = new AlongPipeLay(pipe, stock, leastLap);
        Console.WriteLine($"{rings.Rings} rings of {rings.Strips[0].Length.Millimeters:0.0} mm, lap {rings.Lap.Millimeters:0.0} mm");
        Console.WriteLine($"{strips.StripsRound} strips of {strips.Strips[0].Length.Millimeters:0.0} mm, lap {strips.Lap.Millimeters:0.0} mm");
        #endregion
    }

    public static void Refused()
    {
        #region refused
        try
        {
            _ = new SpiralGeometry(
                Length.FromMillimeters(21.3),
                Length.FromMillimeters(100),
                SpiralSetting.FromTrueLap(Length.FromMillimeters(20)));
        }
        catch (ArgumentOutOfRangeException fault)
        {
            Console.WriteLine(fault.Message);
        }
        #endregion
    }

    public static void OppositeHand()
    {
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        #region opposite-hand
        var pipe = new StraightPipe(PipeSize.FromNps("6"), Length.FromMeters(12));
        var wide = new StripStock(tape, Length.FromMillimeters(100), Length.FromMeters(50));
        var narrow = new StripStock(tape, Length.FromMillimeters(50), Length.FromMeters(50));
        var first = new SpiralLay(pipe, wide, SpiralSetting.FromTrueLap(Length.FromMillimeters(20)));
        var second = new SpiralLay(pipe, narrow, SpiralSetting.FromTrueLap(Length.FromMillimeters(10)));
        var pair = new SpiralPairLay(first, second, SpiralHand.Right);
        Console.WriteLine($"{pair.LayersEverywhere} layers everywhere, {pair.LayersOnAverage.Ratio:0.00} on average; second spiral {pair.SecondHand}-hand");
        #endregion
    }
}
