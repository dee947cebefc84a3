using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>
/// The cases of <see cref="RuleSetDocument.Reference"/>: answers that were published, or worked out apart from the library.
/// </summary>
internal static class ReferenceCases
{
    private const string Apart = "worked out apart from the library";

    private static readonly SourceReference HeadTests = new(
        "fluids-tests-heads", "Test suite of the open library fluids (MIT licence)", "tests of tank geometry",
        "Outside area of half a spheroid 2 m wide and 0.999 m deep: 6.278996936093318 m2", SourceReading.FirstHand);

    internal static IEnumerable<VerificationCase> All() =>
    [
        Case("spiral-angle-no-lap", "spiral.angle", "9.1578495 deg", "0.0000001 deg", Basis.From(References.TapingACylinder, "sin A = w/(pi d), " + Apart),
            ("outside diameter", "100 mm"), ("strip width", "50 mm"), ("true lap", "0 mm")),
        Case("spiral-advance-half-lap", "spiral.advance", "25.220584 mm", "0.000001 mm", Basis.FirstPrinciples("pi D tan(arcsin(e/(pi D))), " + Apart),
            ("outside diameter", "60.3 mm"), ("strip width", "50 mm"), ("true lap", "25 mm")),
        Case("spiral-half-lap-two-layers", "spiral.layers-on-average", "2", "0.000000001", Basis.FirstPrinciples("strip width over true advance"),
            ("outside diameter", "60.3 mm"), ("strip width", "100 mm"), ("true lap", "50 mm")),
        Case("spiral-lap-along-pipe", "spiral.true-lap-from-lap-along-pipe", "18.030791 mm", "0.000001 mm", Basis.FirstPrinciples("w/cos(theta) - pi D tan(theta) = lap, solved by halving, " + Apart),
            ("outside diameter", "60.3 mm"), ("strip width", "100 mm"), ("lap along pipe", "20 mm")),
        Case("pipe-area", "pipe.area", "0.35908404 m2", "0.00000001 m2", Basis.FirstPrinciples("pi D L, " + Apart),
            ("outside diameter", "114.3 mm"), ("length", "1 m")),
        Case("bend-area-pappus", "bend.area", "0.19019073 m2", "0.00000001 m2", Basis.FirstPrinciples("theorem of Pappus, pi D R phi, " + Apart),
            ("outside diameter", "168.3 mm"), ("bend radius", "229 mm"), ("angle", "90 deg")),
        Case("reducer-area", "reducer.area", "0.06329218 m2", "0.00000001 m2", Basis.FirstPrinciples("frustum of a cone, " + Apart),
            ("large end", "168.3 mm"), ("small end", "114.3 mm"), ("length", "140 mm")),
        Case("torispherical-head-area", "head.torispherical.area", "3.959948 m2", "0.000001 m2", Basis.FirstPrinciples("two arcs turned round the axis in 400,000 thin cones, " + Apart),
            ("outside diameter", "2 m"), ("outside crown radius", "2 m"), ("outside knuckle radius", "200 mm"), ("straight flange", "0 mm")),
        Case("half-spheroid-area", "head.ellipsoidal.area", "6.278996936 m2", "0.000000001 m2", Basis.From(HeadTests),
            ("outside diameter", "2 m"), ("outside depth", "999 mm"), ("straight flange", "0 mm")),
        Case("roll-length", "roll.length", "107.517867 m", "0.000001 m", Basis.From(References.MaterialOnARoll, Apart),
            ("outside diameter", "200 mm"), ("core diameter", "76 mm"), ("layer thickness", "0.25 mm")),
        Case("dose-response-zinc", "dose-response.zinc", "6.651843 um/a", "0.000001 um/a", Basis.From(References.DoseResponseZinc, Apart),
            ("temperature", "20 degC"), ("relative humidity", "85 %"), ("sulfur dioxide", "50 mg/(m2.d)"), ("chloride", "300 mg/(m2.d)")),
        Case("dose-response-steel", "dose-response.steel", "13.061550 um/a", "0.000001 um/a", Basis.From(References.DoseResponseSteel, Apart),
            ("temperature", "5 degC"), ("relative humidity", "70 %"), ("sulfur dioxide", "5 mg/(m2.d)"), ("chloride", "10 mg/(m2.d)")),
        Case("power-law-tangent", "loss.power-law", "16.064867 um", "0.000001 um", Basis.From(References.PowerLawExponents, "on the tangent at 20 years, " + Apart),
            ("first-year rate", "1 um/a"), ("exponent", "0.813"), ("time", "30 a")),
        Case("hot-dip-85-in-c4-earliest", "life.linear", "20 a", "0.5 a", Basis.From(References.LifeToFirstMaintenance),
            ("zinc", "85 um"), ("first-year rate", "4.2 um/a")),
        Case("hot-dip-85-in-c4-latest", "life.linear", "40 a", "0.5 a", Basis.From(References.LifeToFirstMaintenance),
            ("zinc", "85 um"), ("first-year rate", "2.1 um/a")),
        Case("power-law-life", "life.power-law", "46.680316 a", "0.000001 a", Basis.From(References.PowerLawExponents, "on the tangent at 20 years, " + Apart),
            ("zinc", "100 um"), ("first-year rate", "4.2 um/a"), ("exponent", "0.813")),
        Case("zinc-at-one-microampere", "faraday.zinc-recession", "14.96 um/a", "0.01 um/a", Basis.From(References.FaradayConstants, "i M/(n F rho), " + Apart),
            ("current density", "10 mA/m2")),
        Case("anode-mass", "anode.mass", "842.308 kg", "0.001 kg", Basis.FirstPrinciples("current times time over capacity and utilisation, " + Apart),
            ("mean current", "2 A"), ("life", "30 a"), ("practical capacity", "780 A.h/kg"), ("utilisation", "0.8")),
        Case("flush-anode", "flush-anode.resistance", "0.189 ohm", "0.000001 ohm", Basis.From(References.FlushAnodeResistance, "0.315 rho/sqrt(A), " + Apart),
            ("exposed area", "0.25 m2"), ("resistivity", "0.3 ohm.m")),
        Case("coating-breakdown-capped", "coating-breakdown.mean", "0.7975", "0.0000001", Basis.From(References.OffshoreStructures, "1 - (1 - a)^2/(2 b t), " + Apart),
            ("initial", "0.1"), ("yearly", "0.1"), ("life", "20 a")),
    ];

    private static VerificationCase Case(
        string id, string calculation, string expected, string tolerance, Basis basis, params (string Name, string Value)[] inputs) =>
        new(id, calculation, inputs.Select(static input => new CaseValue(input.Name, Read(input.Value))), Read(expected), Read(tolerance), basis);

    private static Measure Read(string text) => Measure.Parse(text, CultureInfo.InvariantCulture);
}
