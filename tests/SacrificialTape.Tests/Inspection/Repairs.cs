using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Inspection;

/// <summary>Repair lists, and patching against rewrapping.</summary>
[Properties(Arbitrary = [typeof(InspectionCases)], MaxTest = 60)]
public sealed class Repairs
{
    [Property]
    public void Pieces_close_and_hold_the_patch(CutOutCase given)
    {
        PatchRepair repair = Assert.Single(List([new Damage("one", given.CutOut, PatchPlace.Flat)], OverlapHandling.Flag, given.MarginMm).Repairs);
        Strip pieces = repair.Strip;
        double tape = pieces.Count * 100 * pieces.Length.Millimeters;
        double patch = Math.PI / 4 * repair.Patch.Length.Millimeters * repair.Patch.Width.Millimeters;
        double width = pieces.Count * 100;
        Near.Equal(tape, width * (pieces.Cover + pieces.Lap + pieces.Trim).Millimeters, 1e-9);
        Near.Equal(given.CutOut.Area.SquareMillimeters, width * pieces.Cover.Millimeters, 0, absolute: width * 0.001);
        Near.Equal(patch, width * (pieces.Cover + pieces.Lap).Millimeters, 0, absolute: width * 0.002);
        Assert.Equal(StripPurpose.Patch, pieces.Purpose);
        Assert.False(pieces.MaySplice);

        // Strips of 100 mm with 10 mm of lap are wide enough for what lies across them.
        double across = Near.Same(pieces.Length.Millimeters, repair.Patch.Length.Millimeters, 1e-9) ? repair.Patch.Width.Millimeters : repair.Patch.Length.Millimeters;
        Assert.True((90 * pieces.Count) + 10 >= Math.Min(across, Math.Min(repair.Patch.Width.Millimeters, repair.Patch.Length.Millimeters)) - 1e-6);
        var takeOff = StripTakeOff.Of(List([new Damage("one", given.CutOut, PatchPlace.Flat)], OverlapHandling.Flag, given.MarginMm).Strips, Make.TakeOff());
        Assert.True(takeOff.Stocks[0].Rolls >= 1);
    }

    [Property]
    public void Patches_far_apart_stay_and_near_ones_are_told_or_joined(CutOutCase given)
    {
        double reach = OvalPatch.Smallest(given.CutOut, Mm(given.MarginMm), Mm(1)).Length.Millimeters;
        Damage One(string name, double along) => new Damage(name, given.CutOut, PatchPlace.Flat).At(Mm(along), Mm(0));
        Assert.Empty(Overlaps(List([One("a", 0), One("b", reach * 1.000001)], OverlapHandling.Flag, given.MarginMm, 1)));
        Finding told = Assert.Single(Overlaps(List([One("a", 0), One("b", reach * 0.99)], OverlapHandling.Flag, given.MarginMm, 1)));
        Assert.Equal("a and b", told.Subject);
        RepairList joined = List([One("a", 0), One("b", reach * 0.99)], OverlapHandling.Merge, given.MarginMm, 1);
        PatchRepair both = Assert.Single(joined.Repairs);
        Assert.Equal("a + b", both.Damage.Name);
        Near.Equal((reach * 0.99) + given.LengthMm, both.Damage.CutOut.Length.Millimeters, 1e-9);
        Assert.Empty(Overlaps(joined));
    }

    [Fact]
    public void Turned_and_chained_spots_are_joined_until_none_overlap()
    {
        Damage At(string name, double along, double across, double turn) =>
            new Damage(name, CutOut.Rectangle(Mm(100), Mm(10)), PatchPlace.Flat).At(Mm(along), Mm(across), Angle.FromDegrees(turn));
        Assert.Empty(Overlaps(List([At("a", 0, 0, 0), At("b", 0, 60, 0)], OverlapHandling.Flag, 5)));
        Assert.Single(Overlaps(List([At("a", 0, 0, 0), At("b", 0, 60, 90)], OverlapHandling.Flag, 5)));
        RepairList chain = List([At("a", 0, 0, 0), At("c", 200, 0, 0), At("b", 100, 0, 0)], OverlapHandling.Merge, 5);
        Near.Equal(300, Assert.Single(chain.Repairs).Damage.CutOut.Length.Millimeters, 1e-9);
        Damage Bare(string name) => new(name, CutOut.Circle(Mm(10)), PatchPlace.Flat);
        Assert.Equal(2, List([Bare("a"), Bare("b")], OverlapHandling.Merge, 5).Repairs.Count);
    }

    [Fact]
    public void On_a_bend_and_over_an_edge_the_strip_rules_hold()
    {
        var bend = new Bend(Mm(60.3), Mm(76), Angle.FromDegrees(90));
        PatchRepair onBend = Assert.Single(List([new Damage("bend", CutOut.Rectangle(Mm(80), Mm(40)), PatchPlace.OnBend(bend))], OverlapHandling.Flag, 10).Repairs);
        double narrow = onBend.Patch.Width.Millimeters;
        Near.Equal(1 - Math.Cos(narrow / 2 / Math.Sqrt(30.15 * (76 + 30.15))), onBend.Pucker!.Value.Fraction, 1e-9);
        Near.Equal(Math.Cosh(narrow / 2 / Math.Sqrt(30.15 * (76 - 30.15))) - 1, onBend.Stretch!.Value.Fraction, 1e-9);
        string[] rules = [.. onBend.Judge(RuleSet.Default).Select(static one => one.Rule.Id)];
        Assert.Contains(RuleIds.MaximumPucker, rules);
        Assert.Contains(RuleIds.MaximumStretch, rules);

        PatchRepair onEdge = Assert.Single(List([new Damage("edge", CutOut.Circle(Mm(20)), PatchPlace.OverEdge(Mm(0.3)))], OverlapHandling.Flag, 10).Repairs);
        Assert.Equal([RuleIds.MinimumFoldRadius], onEdge.Judge(RuleSet.Default).Select(static one => one.Rule.Id));
        PatchRepair onTube = Assert.Single(List([new Damage("tube", CutOut.Circle(Mm(5)), PatchPlace.OnPipe(Mm(8)))], OverlapHandling.Flag, 10).Repairs);
        Assert.Equal([RuleIds.MinimumWrapDiameter], onTube.Judge(RuleSet.Default).Select(static one => one.Rule.Id));
        PatchRepair wide = Assert.Single(List([new Damage("wide", CutOut.Circle(Mm(200)), PatchPlace.Flat)], OverlapHandling.Flag, 10).Repairs);
        Assert.Equal([RuleIds.PatchWiderThanStrip], wide.Judge(RuleSet.Default).Select(static one => one.Rule.Id));
        Assert.Equal(3, wide.Strip.Count);
    }

    [Fact]
    public void Cost_life_and_share_decide()
    {
        RepairList repairs = List([new Damage("a", CutOut.Circle(Mm(80)), PatchPlace.Flat), new Damage("b", CutOut.Circle(Mm(80)), PatchPlace.Flat)], OverlapHandling.Flag, 10);
        static Money Euro(decimal amount) => new(amount, "EUR");
        Money patching = new RepairPrices(Euro(100), Euro(20), Euro(50)).Of(repairs);
        Near.Equal(140 + (50 * repairs.PatchedArea.SquareMeters), (double)patching.Amount, 1e-12);
        RepairComparison Compare(double? left, decimal rewrapping = 3000, double area = 10) => new(
            Area.FromSquareMeters(area), repairs, patching, left is { } years ? InspectionMake.Years(years) : null, Euro(rewrapping), Lifetime.Of(InspectionMake.Years(30)), DiscountRate.FromFractionPerYear(0.03));
        RepairComparison sound = Compare(8);
        Assert.Equal(RepairVerdict.Patch, sound.Decide(RuleSet.Default).Verdict);
        double factor = 0.03 / (1 - Math.Pow(1.03, -8));
        Near.Equal(factor * (double)patching.Amount, (double)sound.PatchingPerYear!.Value.Amount, 1e-9);
        Assert.Equal(RepairVerdict.Rewrap, Compare(0.5).Decide(RuleSet.Default).Verdict);
        Assert.Equal(RepairVerdict.Rewrap, Compare(0).Decide(RuleSet.Default).Verdict);
        Assert.Equal(RepairVerdict.Undecided, Compare(null).Decide(RuleSet.Default).Verdict);
        Assert.Equal(RepairVerdict.Rewrap, Compare(null, area: 0.1).Decide(RuleSet.Default).Verdict);
        Assert.Equal(RepairVerdict.Undecided, Compare(8, area: 0.1).Decide(RuleSet.Default).Verdict);
        Assert.Equal(RuleIds.PatchedShare, Assert.Single(Compare(8, area: 0.1).Judge(RuleSet.Default, "here")).Rule.Id);
        Assert.Throws<ArgumentException>(() => new RepairComparison(
            Area.FromSquareMeters(10), repairs, patching, null, new Money(1, "USD"), Lifetime.Of(InspectionMake.Years(30)), DiscountRate.FromFractionPerYear(0.03)));
        Errors.Refused(() => Compare(8, area: 0.001), "covered", "area of the patches");
        Errors.Refused(() => new RepairPrices(Euro(-1), Euro(1), Euro(1)), "once");
    }

    [Fact]
    public void Bad_lists_are_refused()
    {
        Errors.Refused(static () => List([], OverlapHandling.Flag, 5), "damages");
        Errors.Refused(static () => PatchPlace.OnPipe(Mm(0)), "outsideDiameter");
        Errors.Refused(static () => PatchPlace.OverEdge(Mm(0)), "radius");
        var bend = new Bend(Mm(60.3), Mm(76), Angle.FromDegrees(90));
        Errors.Refused(() => List([new Damage("bend", CutOut.Circle(Mm(100)), PatchPlace.OnBend(bend))], OverlapHandling.Flag, 5), "damage", "rewrap instead");
        Assert.Throws<ArgumentException>(static () => new Damage(" ", CutOut.Circle(Mm(10)), PatchPlace.Flat));
    }

    private static IEnumerable<Finding> Overlaps(RepairList list) => list.Judge(RuleSet.Default).Where(static one => one.Rule.Id == RuleIds.PatchesOverlap);

    private static RepairList List(ValueList<Damage> damages, OverlapHandling overlaps, double marginMm, double stepMm = 5) =>
        new(damages, Stock(100, 100), Mm(marginMm), Mm(stepMm), Mm(10), overlaps);
}
