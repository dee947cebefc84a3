using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Flanges, flat heads and measured areas.</summary>
[Properties(Arbitrary = [typeof(PanelCases)], MaxTest = 100)]
public sealed class FlangeAndHeadLays
{
    private const FlangeParts Every = FlangeParts.Rim | FlangeParts.Back | FlangeParts.Front;

    [Property]
    public void Both_faces_of_a_flange_lie_under_strips(PanelCase given)
    {
        Flange flange = Flange(given, Every);
        var lay = new FlangeLay(flange, Stock(given.StripMm), Mm(given.LapMm), Choices());
        Assert.Equal(1, lay.LayersEverywhere);
        foreach ((IEnumerable<StripPlace> places, Length middle) in new[] { (lay.BackPlaces(), flange.HubDiameter), (lay.FrontPlaces(), flange.RaisedFaceDiameter) })
        {
            var spots = new FaceSpots(true, given.WidthMm, given.WidthMm);
            spots.Hole(true, 0, 0, middle.Millimeters, middle.Millimeters);
            Assert.Equal(1, spots.Least([.. places], given.StripMm, 0, new Random(given.Seed)));
        }
    }

    [Property]
    public void The_rim_of_a_flange_lies_under_rings_and_its_ledger_closes(PanelCase given)
    {
        foreach (FlangeParts parts in new[] { FlangeParts.Rim, FlangeParts.Back, FlangeParts.Front, Every })
        {
            Flange flange = Flange(given, parts);
            var lay = new FlangeLay(flange, Stock(given.StripMm), Mm(given.LapMm), Choices());
            PanelLays.Ledger(lay, flange.Area.SquareMeters);
            Assert.Equal(parts.HasFlag(FlangeParts.Rim), lay.RimRings > 0);
            Assert.Equal(parts.HasFlag(FlangeParts.Back), lay.BackStrips > 0);
            Assert.Equal(parts.HasFlag(FlangeParts.Front), lay.FrontStrips > 0);
            if (lay.RimRings > 1)
            {
                Near.Equal(flange.RimThickness.Millimeters, (lay.RimRings * given.StripMm) - ((lay.RimRings - 1) * lay.RimLap.Millimeters), 1e-11);
            }
            else if (lay.RimRings == 1)
            {
                Assert.True(flange.RimThickness.Millimeters <= given.StripMm * (1 + 1e-9));
            }
        }
    }

    [Fact]
    public void A_face_of_a_flange_is_a_ring_with_holes()
    {
        var flange = new Flange(Mm(229), Mm(22.3), Mm(114.3), Mm(157), 8, Mm(19), FlangeParts.Back);
        var face = new PanelLay(
            new AnnularPanel(Mm(229), Mm(114.3), [PanelOpening.Circular(Mm(19), 8)]), Stock(25), PanelDirection.AlongWidth, Mm(5), Choices());
        var lay = new FlangeLay(flange, Stock(25), Mm(5), Choices());
        Assert.Equal(face.Strips, lay.Strips);
        Assert.Equal(face.SideBySide, lay.BackStrips);
        Assert.Equal(face.Lap.Millimeters, lay.BackLap.Millimeters);
    }

    [Fact]
    public void A_joint_must_stay_workable()
    {
        var lay = new FlangeLay(new Flange(Mm(229), Mm(22.3), Mm(114.3), Mm(157), 8, Mm(19), Every), Stock(50), Mm(10));
        Finding[] said = [.. lay.Judge(RuleSet.Default, "F-1")];
        Assert.Equal([RuleIds.EdgeJoint, RuleIds.FlangedJoint], said.Select(static finding => finding.Rule.Id));
        Assert.Contains("bolts, nuts", said[1].Message, StringComparison.Ordinal);
        Assert.Contains("gasket seat, bolts and nuts", lay.Instruction, StringComparison.Ordinal);
        Errors.Refused(() => new FlangeLay(lay.Flange, Stock(50), Mm(50)), "leastLap", "50 mm", "less than the strip is wide");
    }

    [Property]
    public void A_flat_head_is_a_disc_and_rings(PanelCase given)
    {
        var head = FlatHead.FromOutside(Mm(given.WidthMm), Mm(given.Seed % 3 == 0 ? 0 : 5 + (given.Seed % 300)));
        var lay = new FlatHeadLay(head, Stock(given.StripMm), Mm(given.LapMm), Choices());
        PanelLays.Ledger(lay, head.Area.SquareMeters);
        PanelLay disc = (given with { Form = 1, Openings = 0 }).Lay();
        Assert.Equal(disc.Strips, lay.Strips.Where(static strip => strip.Purpose != StripPurpose.Ring));
        Assert.Equal(1, new FaceSpots(true, given.WidthMm, given.WidthMm).Least([.. lay.FacePlaces()], given.StripMm, 0, new Random(given.Seed)));
        if (head.StraightFlange.Millimeters >= 1)
        {
            var rings = new RingLay(Pipe(given.WidthMm, head.StraightFlange.Millimeters), Stock(given.StripMm), Mm(given.LapMm), Choices());
            Assert.Equal(rings.Strips.Single(), lay.Strips.Single(static strip => strip.Purpose == StripPurpose.Ring));
            Assert.Equal(rings.Rings, lay.RimRings);
            Assert.Contains(lay.Judge(RuleSet.Default, "H-1"), static finding => finding.Rule.Id == RuleIds.EdgeJoint);
        }
        else
        {
            Assert.Equal(0, lay.RimRings);
        }

        Assert.Equal(1, lay.LayersEverywhere);
    }

    [Property]
    public void Tape_by_measured_area_covers_the_area_with_its_allowance_and_laps_by_its_share(PanelCase given)
    {
        var area = new MeasuredArea(Area.FromSquareMeters(given.WidthMm / 10), AreaAllowance.FromFraction(0.15), "paced out, roof steel guessed");
        var lay = new MeasuredAreaLay(area, Stock(given.StripMm), Mm(given.LapMm), Choices(0, 10, 3));
        PanelLays.Ledger(lay, 3 * area.Area.SquareMeters);
        Near.Equal(given.LapMm / given.StripMm, lay.LapShare.Ratio, 1e-12);
        Near.Equal(3 * 1.15 * given.WidthMm / 10, lay.StripLength.Meters * (given.StripMm - given.LapMm) / 1000, 1e-6);
        Near.Equal(3 / (1 - lay.LapShare.Ratio), lay.LayersOnAverage.Ratio, 1e-6);
        Assert.Equal(3, lay.LayersEverywhere);
    }

    [Fact]
    public void A_measured_area_says_that_nothing_is_proved()
    {
        var area = new MeasuredArea(Area.FromSquareMeters(40), AreaAllowance.FromFraction(0.15), "paced out, roof steel guessed");
        var lay = new MeasuredAreaLay(area, Stock(100), Mm(20));
        Assert.Contains("judgement, no cover proved", lay.Description, StringComparison.Ordinal);
        Assert.Equal(BasisKind.Judgement, lay.Basis.Kind);
        Finding said = Assert.Single(lay.Judge(RuleSet.Default, "M-1"));
        Assert.Equal((RuleIds.TapeByMeasuredArea, BasisKind.Judgement), (said.Rule.Id, said.Rule.Basis.Kind));

        // A lap that the hand may lose leaves no layer.
        Assert.Equal(0, new MeasuredAreaLay(area, Stock(100), Mm(1), Choices(2)).LayersEverywhere);
        Errors.Refused(() => new MeasuredAreaLay(area, Stock(50), Mm(50)), "lap", "50 mm", "less than the strip is wide");
    }

    [Fact]
    public void An_area_that_takes_more_than_the_longest_strip_is_cut_in_like_pieces()
    {
        var area = new MeasuredArea(Area.FromSquareMeters(1e6), AreaAllowance.FromFraction(0), "a whole works");
        var lay = new MeasuredAreaLay(area, Stock(100), Mm(20), Choices(0, 10, 2));
        Strip strip = lay.Strips.Single();
        Assert.Equal(26, strip.Count);
        Near.Equal(2 * 1e6 / 0.08, lay.StripLength.Meters, 1e-9);
    }

    private static Flange Flange(PanelCase given, FlangeParts parts)
    {
        double hub = given.HoleMm;
        double face = Math.Min(given.WidthMm * 0.97, hub * 1.2);
        double hole = given.Seed % 2 == 0 ? 0 : Math.Min(given.WidthMm - Math.Max(hub, face), given.WidthMm) / 8;
        return new(Mm(given.WidthMm), Mm(1 + (given.Seed % 400)), Mm(hub), Mm(face), given.Seed % 2 == 0 ? 0 : 8, Mm(hole), parts);
    }
}
