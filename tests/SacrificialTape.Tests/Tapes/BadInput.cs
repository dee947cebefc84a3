using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Tapes;

public sealed class BadInput
{
    [Fact]
    public void A_foil_in_the_wrong_unit_or_of_another_metal() => Assert.Multiple(
        static () => Errors.Refused(static () => new Foil(Mm(80)), "thickness", "80 mm", "at least 0.005 and at most 2 mm"),
        static () => Errors.Refused(static () => new Foil(Mm(0)), "thickness", "0 mm"),
        static () => Errors.Refused(static () => new Foil(Mm(0.1), Mm(0.1)), "tolerance", "0.1 mm", "at least 0 and less than 0.1 mm"),
        static () => Errors.Refused(static () => new Foil(Mm(0.1), null, Density.FromKilogramsPerCubicMeter(7.14)), "density", "7.14 kg/m3", "at least 6000 and at most 8000 kg/m3"));

    [Fact]
    public void A_strip_or_roll_without_size() => Assert.Multiple(
        static () => Errors.Refused(static () => Stock(0), "width", "0 mm", "at least 1 and at most 2000 mm"),
        static () => Errors.Refused(static () => Stock(100, 0), "rollLength", "0 m", "more than 0 and at most 10000 m"),
        static () => Errors.Refused(static () => Stock().ZincMass(Mm(-1)), "stripLength", "-1 mm", "at least 0 mm"),
        static () => Errors.Refused(static () => new Adhesive(Mm(30)), "thickness", "30 mm", "more than 0 and at most 1 mm"),
        static () => Errors.Refused(static () => new FacingFilm(Mm(0)), "thickness", "0 mm"));

    [Fact]
    public void A_roll_smaller_than_its_core() => Assert.Multiple(
        static () => Errors.Refused(static () => new WoundRoll(Mm(70), Mm(76), Mm(0.2)), "outsideDiameter", "70 mm", "more than 76 and at most 5000 mm"),
        static () => Errors.Refused(static () => WoundRoll.LayerThicknessFrom(Mm(150), Mm(76), Mm(0)), "knownLength", "0 mm", "more than 0 mm"));
}
