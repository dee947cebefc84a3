using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/take-off.md quotes.</summary>
public static class TakeOffPage
{
    public static void Ledger()
    {
        #region ledger
        var pipe = new StraightPipe(Length.FromMillimeters(168.3), Length.FromMeters(24));
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        var stock = new StripStock(tape, Length.FromMillimeters(100), Length.FromMeters(33));
        var lay = new SpiralLay(pipe, stock, SpiralSetting.FromTrueLap(Length.FromMillimeters(20)));
        var choices = TakeOffChoices.FromRules(RuleSet.Default, Contingency.FromFraction(0.05));
        StockTakeOff order = StripTakeOff.Of(lay.Strips, choices).Stocks[0];
        StripLedger ledger = order.Ledger;
        Console.WriteLine($"cover       {ledger.Cover.Meters,10:0.000000} m");
        Console.WriteLine($"lap         {ledger.Lap.Meters,10:0.000000} m");
        Console.WriteLine($"trim        {ledger.Trim.Meters,10:0.000000} m");
        Console.WriteLine($"splice      {ledger.Splice.Meters,10:0.000000} m");
        Console.WriteLine($"contingency {ledger.Contingency.Meters,10:0.000000} m");
        Console.WriteLine($"offcut      {ledger.Offcut.Meters,10:0.000000} m");
        Console.WriteLine($"bought      {ledger.Bought.Meters,10:0.000000} m");
        Console.WriteLine($"{order.Rolls} rolls, at least {order.LeastRolls}, proved minimal: {order.ProvedMinimal}, {order.Splices} splices");
        #endregion
    }

    public static void SpareByPart()
    {
        #region spare-by-part
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        var stock = new StripStock(tape, Length.FromMillimeters(100), Length.FromMeters(33));
        var pipe = new StraightPipe(Length.FromMillimeters(168.3), Length.FromMeters(24));
        var lay = new SpiralLay(pipe, stock, SpiralSetting.FromTrueLap(Length.FromMillimeters(20)));
        var spare = new Spare(
            spoilage: Contingency.FromFraction(0.03), trialWraps: Length.FromMeters(4), repairStock: Contingency.FromFraction(0.02));
        StripLedger ledger = StripTakeOff.Of(lay.Strips, TakeOffChoices.FromRules(RuleSet.Default, spare)).Stocks[0].Ledger;
        Console.WriteLine($"spoilage     {ledger.SpareFor(SparePart.Spoilage).Meters,10:0.000000} m");
        Console.WriteLine($"trial wraps  {ledger.SpareFor(SparePart.TrialWraps).Meters,10:0.000000} m");
        Console.WriteLine($"repair stock {ledger.SpareFor(SparePart.RepairStock).Meters,10:0.000000} m");
        Console.WriteLine($"contingency  {ledger.Contingency.Meters,10:0.000000} m");
        #endregion
    }

    public static void NotProved()
    {
        #region not-proved
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        var stock = new StripStock(tape, Length.FromMillimeters(50), Length.FromMeters(10));
        Strip[] rings = [Rings(4, count: 5), Rings(3, count: 3)];
        var choices = TakeOffChoices.FromRules(RuleSet.Default, Contingency.FromFraction(0));
        StockTakeOff order = StripTakeOff.Of(rings, choices).Stocks[0];
        Console.WriteLine($"{order.Rolls} rolls, at least {order.LeastRolls}, proved minimal: {order.ProvedMinimal}");

        Strip Rings(double meters, int count)
        {
            Length piece = Length.FromMeters(meters);
            return new(stock, piece, count, StripPurpose.Ring, maySplice: false, cover: piece, trim: Length.Zero);
        }
        #endregion
    }

    public static void PartUsedRoll()
    {
        #region part-used-roll
        Length layer = WoundRoll.LayerThicknessFrom(
            Length.FromMillimeters(160), Length.FromMillimeters(76), knownLength: Length.FromMeters(50));
        var roll = new WoundRoll(Length.FromMillimeters(120), Length.FromMillimeters(76), layer);
        Console.WriteLine($"layer {layer.Millimeters:0.000} mm, {roll.StripLength.Meters:0.0} m left");
        #endregion
    }
}
