using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>A hand that loses the whole allowance on every lap: the same lay, set that much longer, without wander.</summary>
[Properties(Arbitrary = [typeof(Cases)], MaxTest = 300)]
public sealed class HandWander
{
    [Property]
    public void Losing_on_every_lap_leaves_the_layers_promised(SpiralCase given, byte share)
    {
        double lost = given.TrueLapMm * share / 255;
        if (lost <= 0 || given.WidthMm - given.TrueLapMm + lost >= Math.PI * given.DiameterMm)
        {
            return;
        }

        StraightPipe pipe = Pipe(given.DiameterMm, given.HeightMm);
        int promised = new SpiralLay(pipe, Stock(given.WidthMm), SpiralSetting.FromTrueLap(Mm(given.TrueLapMm)), null, Choices(lost)).LayersEverywhere;
        int left = new SpiralLay(pipe, Stock(given.WidthMm), SpiralSetting.FromTrueLap(Mm(given.TrueLapMm - lost)), null, Choices()).LayersEverywhere;
        Assert.Equal(left, promised);
    }

    [Fact]
    public void Half_a_lap_and_two_millimetres_is_one_layer_when_two_millimetres_are_lost_each_time()
    {
        Assert.Equal(1, Layers(26, 2));
        Assert.Equal(2, Layers(27, 2));
        Assert.Equal(2, Layers(26, 0));
    }

    private static int Layers(double lap, double wander) =>
        new SpiralLay(Pipe(114.3, 6000), Stock(50), SpiralSetting.FromTrueLap(Mm(lap)), null, Choices(wander)).LayersEverywhere;
}
