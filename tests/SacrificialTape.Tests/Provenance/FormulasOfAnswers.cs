using SacrificialTape.Tests.HouseRules;
using SacrificialTape.Tests.ServiceLife;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Provenance;

/// <summary>
/// A formula that no workings show, but that a member names as its own, comes to what the member answers: worked out by an
/// expression library from numbers stated here.
/// </summary>
public sealed class FormulasOfAnswers
{
    private const double Faraday = 96_485.332; // C/mol, CODATA
    private const double ZincMolar = 65.38; // g/mol, IUPAC

    private static readonly SpreadCase Spread = new(1.5, 0.3, 100, 0.1, 0.8, 0.1, 0.813, 0.03, 2, 0.9, 7);

    private static readonly Dictionary<string, (double[] Inputs, Func<double> Answer)> Cases = new(StringComparer.Ordinal)
    {
        ["bend.long-radius"] = ([6], static () => Bend.LongRadius(PipeSize.FromNps("6"), Angle.FromDegrees(90)).BendRadius.Millimeters),
        ["bend.short-radius"] = ([6], static () => Bend.ShortRadius(PipeSize.FromNps("6"), Angle.FromDegrees(90)).BendRadius.Millimeters),
        ["clear.covered-area"] = ([Math.PI * 1.2, 0.12 * 0.22 * 3], static () => Spotted().CoveredM2),
        ["clear.spot-share"] = ([0.12 * 0.22 * 3, Math.PI * 1.2], static () => Spotted().CutOutShare),
        ["contact.windows-needed"] = ([5, 40, 0.0009], static () => new BareContact(Area.FromSquareMeters(40), new ContactWindows(1, Area.FromSquareCentimeters(9)))
            .WindowsNeeded(BareRatio.FromSquareCentimetersPerSquareMeter(5))),
        ["design.layers"] = ([47, Design().OneLayer(Spread.Foil).Duration.Years365], static () => Design().LeastLayers(Spread.Foil)!.Value),
        ["dose.sulfur-deposition"] = ([17], static () => PollutionClasses.SulfurDioxideDeposition(MassConcentration.FromMicrogramsPerCubicMeter(17)).MilligramsPerSquareMeterDay),
        ["foil.smallest-bending-radius"] = ([0.1, 0.03], static () => FoilBending.SmallestRadius(new Foil(Mm(0.1)), EdgeStrain.FromFraction(0.03)).Millimeters),
        ["galvanic.anode-number"] = ([0.7, 0.03], static () => SoilAnode.Number(ElectricCurrent.FromAmperes(0.7), ElectricCurrent.FromAmperes(0.03))),
        ["galvanic.current-of-recession"] = ([3, Faraday, 7000, ZincMolar], static () => FaradayLaw.CurrentOf(Um(3), Metal.Zinc, Density.FromKilogramsPerCubicMeter(7000)).AmperesPerSquareMeter),
        ["galvanic.mass-loss"] = ([0.02, ZincMolar, Faraday], static () => FaradayLaw.MassLoss(ElectricCurrentDensity.FromAmperesPerSquareMeter(0.02), Metal.Zinc).GramsPerSquareMeterYear),
        ["galvanic.recession"] = ([0.02, ZincMolar, Faraday, 7000], static () => FaradayLaw.Recession(
            ElectricCurrentDensity.FromAmperesPerSquareMeter(0.02), Metal.Zinc, Density.FromKilogramsPerCubicMeter(7000)).MicrometersPerYear),

        // -0.85 V against copper sulfate is -0.776 V against calomel.
        ["galvanic.other-reference"] = ([-0.9, 0.074], static () => ElectrodePotential.FromVolts(-0.9, ReferenceElectrode.CopperSulfate).Against(ReferenceElectrode.Calomel).Volts),
        ["hot-dip.thickness"] = ([610, 7200], static () => HotDipCoating.FromMass(AreaDensity.FromGramsPerSquareMeter(610), "made up", Density.FromKilogramsPerCubicMeter(7200)).Thickness.Micrometers),
        ["life.log-normal-spread"] = ([0.3, 0.813], static () => new LifeDistribution(
            new Foil(Mm(0.1)),
            2,
            new LifeUncertainty(
                SpreadCase.Of(1.5, 0.3),
                LossGrowth.PowerLaw(UncertainExponent.Exactly(TimeExponent.FromValue(0.813), Basis.OwnExperience("made up")), AfterTwentyYears.Power),
                UncertainUtilisation.Exactly(Utilisation.FromFraction(0.8)),
                ToleranceShape.Uniform)).LogNormal!.Value.Spread.Value),
        ["loss.linear"] = ([3, 7], static () => LinearLoss.Law.Loss(Um(3), Years(7)).Micrometers),
        ["loss.power"] = ([3, 7, 0.813], static () => PowerLawLoss.ZincMean.Loss(Um(3), Years(7)).Micrometers),
        ["loss.tangent"] = ([3, 0.813, 20, 31], static () => PowerLawLoss.ZincMean.Loss(Um(3), Years(31)).Micrometers),

        // 4 um/a for two years, then 1 um/a: 9 um after three.
        ["loss.stretched"] = ([9, 3, 4], static () => Pieces().Loss(Um(3), Years(3)).Micrometers),
        ["rate.first-year"] = ([12, Math.Pow(10, 0.813)], static () => FirstYearLoss.Under(PowerLawLoss.ZincMean, Length.FromMicrometers(12), Years(10)).MicrometersPerYear),
        ["rate.linear"] = ([3], static () => LinearLoss.Law.RateAt(Um(3), Years(7)).MicrometersPerYear),
        ["rate.power"] = ([3, 0.813, 7], static () => PowerLawLoss.ZincMean.RateAt(Um(3), Years(7)).MicrometersPerYear),
        ["rate.tangent"] = ([3, 0.813, 20], static () => PowerLawLoss.ZincMean.RateAt(Um(3), Years(31)).MicrometersPerYear),
        ["rate.stretched"] = ([1, 3, 4], static () => Pieces().RateAt(Um(3), Years(3)).MicrometersPerYear),
        ["reach.linear-current"] = ([0.05, 2.5], static () => new LinearElectrode("steel", Calomel(-0.6), PolarisationResistance.FromOhmSquareMeters(2.5))
            .CurrentAt(Film(), Calomel(-0.55)).AmperesPerSquareMeter),
        ["reach.rest-resistance"] = ([0.02, 0.06, 0.3, 0.12], static () => Tafel().ResistanceAtRest(Film()).OhmSquareMeters),
        ["reach.tafel-current"] = ([0.02, 0.05, 0.06, 0.3, 0.12], static () => Tafel().CurrentAt(Film(), Calomel(-0.55)).AmperesPerSquareMeter),
        ["remaining.perforation-limit"] = ([0.8, 90], static () => PerforationLimit.Of(new Foil(Length.FromMicrometers(90)), Utilisation.FromFraction(0.8)).Micrometers),

        // Half a sphere of 2 m: 1/R2 is 1 on each square metre of it.
        ["revolved.widest-for-pucker"] = ([0.0002, 1], static () => GoreLay.WidestStrip(HemisphericalHead.FromOutside(Mm(2000), Length.Zero), EdgeStrain.FromFraction(0.0002))!.Value.Millimeters),
        ["roll.layer-thickness"] = ([150, 76.2, 30_000], static () => WoundRoll.LayerThicknessFrom(Mm(150), Mm(76.2), Mm(30_000)).Millimeters),
        ["strain.widest-for-pucker"] = ([84.15, 229, 0.01], static () => Widest(pucker: 0.01, stretch: 0.2)),
        ["strain.widest-for-stretch"] = ([84.15, 229, 0.01], static () => Widest(pucker: 0.2, stretch: 0.01)),
        ["tee.long-side"] = ([156, 219.1, 114.3], static () => Branched().BranchLongSide.Millimeters),
        ["tee.short-side"] = ([156, 219.1], static () => Branched().BranchShortSide.Millimeters),
        ["weld-strip.reach"] = ([50, 9], static () => WeldStrips.Reach(Stock(50), Mm(9)).Millimeters),
        ["weld.fillet-face"] = ([7], static () => new FilletWelds(Mm(1000), Mm(7), 1).Face.Millimeters),
    };

    public static TheoryData<string> Ids { get; } = new(Cases.Keys);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_formula_comes_to_what_the_member_answers_that_names_it(string id)
    {
        Formula formula = Library.Formulas.Single(one => one.Formula.Id == id).Formula;
        (double[] inputs, Func<double> answer) = Cases[id];
        Assert.Equal(formula.Inputs.Count, inputs.Length);
        var step = new WorkingStep(
            formula, inputs.Select((number, i) => new Measure(number, formula.Inputs[i].Unit)), new Measure(answer(), formula.Result.Unit));
        double expected = Recomputation.Of(step);
        Assert.True(Recomputation.Agrees(step, expected), $"{expected:R} from {step}");
    }

    [Fact]
    public void No_formula_is_left_out() => Assert.Equal(ShownWorkings.NamedOnly, Cases.Keys.Order(StringComparer.Ordinal));

    private static LifeDesign Design() => new(Spread.Uncertainty, Lifetime.Of(Years(47)), Spread.Sure);

    // A name plate of 100 by 200 mm with 10 mm round it, three times.
    private static SurveyLine Spotted() => new(
        "P-1",
        new RingLay(Pipe(1000, 1200), Stock(), Mm(10), Choices()),
        ZincExposure.FromCategory(CorrosivityCategory.C3),
        Lifetime.Of(Years(10)),
        spots: [StayClear.Spot(StayClearKind.NamePlate, Mm(100), Mm(200), 3, Mm(10))]);

    private static PiecewiseLoss Pieces() => new("own", [new RatePeriod(Um(4), Years(2))], Um(1), Basis.OwnExperience("made up"));

    private static TafelElectrode Tafel() => new(
        "steel",
        Calomel(-0.6),
        ElectricCurrentDensity.FromAmperesPerSquareMeter(0.02),
        ElectricPotential.FromVolts(0.06),
        ElectricPotential.FromVolts(0.12),
        OxygenSupply.Limited(ElectricCurrentDensity.FromAmperesPerSquareMeter(0.3)));

    private static ThinFilm Film() => new(Length.FromMicrometers(100), ElectricConductivity.FromSiemensPerMeter(0.5));

    private static ElectrodePotential Calomel(double volts) => ElectrodePotential.FromVolts(volts, ReferenceElectrode.Calomel);

    private static Tee Branched() => new(Mm(219.1), Mm(114.3), Mm(178), Mm(156));

    private static double Widest(double pucker, double stretch) => BendRingLay.WidestStrip(
        new Bend(Mm(168.3), Mm(229), Angle.FromDegrees(90)), EdgeStrain.FromFraction(pucker), EdgeStrain.FromFraction(stretch)).Millimeters;

    private static CorrosionRate Um(double value) => CorrosionRate.FromMicrometersPerYear(value);

    private static Duration Years(double value) => Duration.FromYears365(value);
}
