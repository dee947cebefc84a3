using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Provenance;

/// <content>What stays clear, and bent foil.</content>
public sealed partial class ShownWorkings
{
    [Property]
    public void Of_what_stays_clear(SpanCase given)
    {
        StayClear band = StayClear.Band(StayClearKind.FlangedJoint, Mm(given.WidthMm), 2, Mm(given.LapMm));
        StayClear rectangle = StayClear.Spot(StayClearKind.NamePlate, Mm(given.WidthMm), Mm(given.SpanMm), 3, Mm(given.LapMm));
        StayClear round = StayClear.RoundSpot(StayClearKind.WeepHole, Mm(given.WidthMm), 3, Mm(given.LapMm));
        Ends(Checked(band), band.BandLength!.Value.Millimeters);
        Ends(Checked(rectangle), rectangle.SpotArea!.Value.SquareMeters);
        Ends(Checked(round), round.SpotArea!.Value.SquareMeters);
        double clear = 2 * (given.WidthMm + (2 * given.LapMm));
        InterruptedPipe[] pipes =
        [
            new(Pipe(168.3, clear + given.SpanMm), [band]),
            new(Pipe(168.3, clear + 7 + given.SpanMm), [band, StayClear.Band(StayClearKind.EarthBond, Mm(5), 1, Mm(1))]),
            new(Pipe(168.3, clear + given.SpanMm), [StayClear.Band(StayClearKind.IsolatingJoint, Mm(given.WidthMm), 1, Mm(given.LapMm)).At(Mm(clear / 4))]),
        ];
        Assert.All(pipes, pipe =>
        {
            Ends(Checked(pipe), pipe.Area.SquareMeters);
            var lay = InterruptedLay.Of(pipe, span => new RingLay(span, Stock(given.WidthMm), Mm(given.LapMm), Choices(1.5, 15)));
            Near.Equal(lay.Strips[^1].Length.Millimeters, Checked(lay)["L"], 0, absolute: 0.000501);
        });
    }

    [Property]
    public void Of_bent_foil(SpanCase given)
    {
        var bent = new FoilBending(new Foil(Mm(0.1)), Mm(given.LapMm));
        Ends(Checked(bent), bent.Strain.Fraction);
    }
}
