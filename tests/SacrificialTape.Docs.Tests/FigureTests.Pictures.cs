using SacrificialTape.Exposure;
using SacrificialTape.Quantities;
using SacrificialTape.Reports;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;
using Xunit;

namespace SacrificialTape.Docs.Tests;

/// <content>Pictures that the library itself draws.</content>
public partial class FigureTests
{
    [Fact]
    public void A_spiral_laid_flat() => Hold("picture-spiral.svg", Picture.OfLay(new SpiralLay(
        new StraightPipe(Length.FromMillimeters(168.3), Length.FromMeters(12)), Stock(100), SpiralSetting.FromTrueLap(Length.FromMillimeters(15)))).Svg + "\n");

    [Fact]
    public void Gores_of_a_head() => Hold("picture-gores.svg", Picture.OfGores(new GoreLay(
        EllipsoidalHead.FromOutside(Length.FromMillimeters(1200), Length.FromMillimeters(300), Length.FromMillimeters(40)), Stock(150), Length.FromMillimeters(15))).Svg + "\n");

    [Fact]
    public void Rings_on_a_bend() => Hold("picture-bend.svg", Picture.OfBend(new BendRingLay(
        new Bend(Length.FromMillimeters(168.3), Length.FromMillimeters(229), Angle.FromDegrees(90)), Stock(40), Length.FromMillimeters(12))).Svg + "\n");

    [Fact]
    public void Zinc_used_up() => Hold("picture-life.svg", Picture.OfLife(
        new LifeEstimate(Stock(100).Tape.Foil, 1, ZincExposure.FromCategory(CorrosivityCategory.C4), Utilisation.FromFraction(0.8)),
        Lifetime.Of(Duration.FromYears365(15))).Svg + "\n");

    private static StripStock Stock(double widthMm) => new(
        new Tape(new Foil(Length.FromMicrometers(100), Length.FromMicrometers(5)), new Adhesive(Length.FromMicrometers(25))), Length.FromMillimeters(widthMm), Length.FromMeters(50));
}
