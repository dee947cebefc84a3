using SacrificialTape.Documents;
using SacrificialTape.Tests.HouseRules;

namespace SacrificialTape.Tests.Provenance;

/// <summary>Which public results show their workings; every other one is named here with the reason why not.</summary>
public sealed class WorkingsOfEveryResult
{
    private const string Given = "what a user or a survey states, or a row of a published table: nothing is worked out, or a change of unit at most";
    private const string PartOfOther = "a part of a result that shows it among its steps";
    private const string Named = "its calculations are methods or single numbers whose formula is named on the member, or a search over formulas so named";
    private const string Judged = "a judgement by rules: its findings carry number, limit and basis";
    private const string Ordered = "lists, order and places taken from results that show their own workings";
    private const string Law = "a loss law shows the time to a loss by ShowTimeToLoss, since it needs rate and loss";

    private static readonly Dictionary<string, string[]> Without = new(StringComparer.Ordinal)
    {
        [Given] =
        [
            nameof(AcceptanceSpot), nameof(AccessItem), nameof(Adhesive), nameof(AnnualAtmosphere), nameof(BasePlate), nameof(BreakdownConstants),
            nameof(ChoiceOptions), nameof(Consumable), nameof(ContactReading), nameof(ContactSpot), nameof(ContactWindow), nameof(ContactWindows),
            nameof(CostItem), nameof(CostOption), nameof(CostPrices), nameof(CostTiming), nameof(CouponUncertainty), nameof(CurrentDemand),
            nameof(CutOut), nameof(CutPiece), nameof(Damage), nameof(DemandAtPracticalCapacity), nameof(DiscountRate), nameof(DuplexFactor),
            nameof(DustRating), nameof(Electrolyte), nameof(FacingFilm), nameof(FilmSegment), nameof(FirstYearRate), nameof(Foil),
            nameof(HoldPointReading), nameof(HotDipCoating), nameof(Job), nameof(LabourKind), nameof(LabourNorm), nameof(LabourRate),
            nameof(LabourWork), nameof(LayChoices), nameof(LayMaker), nameof(LifeUncertainty), nameof(Lifetime), nameof(LineHazards),
            nameof(LineNeeds), nameof(LogNormalLife), nameof(LogSpread), nameof(LossGrowth), nameof(LossPoint), nameof(MarineDemand), nameof(Money),
            nameof(OwnCorrosionAndDemand), nameof(OxygenSupply), nameof(PaintFilm), nameof(PanelOpening), nameof(PatchPlace), nameof(PipeSize),
            nameof(PracticalCapacity), nameof(ProtectionCriterion), nameof(Psychrometer), nameof(RatePeriod), nameof(RateRange),
            nameof(ReadingPreparation), nameof(RepairPrices), nameof(RollPrice), nameof(SaturationConstants), nameof(SectionSize),
            nameof(ShellOpening), nameof(SiteHour), nameof(SiteLog), nameof(Spare), nameof(SpiralEnds), nameof(SpiralSetting), nameof(SteelCondition),
            nameof(StripStock), nameof(SurfaceProfile), nameof(SurfaceReading), nameof(SurveyLine), nameof(TakeOffChoices), nameof(Tape),
            nameof(TapeBatch), nameof(TapeBatchStorage), nameof(TapeEnd), nameof(ThicknessPoint), nameof(TimeExponent), nameof(TrialPatch),
            nameof(UncertainUtilisation), nameof(WasteDisposal), nameof(WindowShape), nameof(ZincExposure),
        ],
        [PartOfOther] =
        [
            nameof(CostLedgerLine), nameof(CostLine), nameof(DuplexRange), nameof(FilletWelds), nameof(FilmPoint), nameof(FlaggedReading),
            nameof(GirthWelds), nameof(GoreStation), nameof(LawLife), nameof(LongitudinalWelds), nameof(MeridianStage), nameof(MitreWelds),
            nameof(PlateWelds), nameof(SaddleWelds), nameof(SectionStrip), nameof(Strip), nameof(StripLedger), nameof(ZincLeftPoint),
        ],
        [Named] =
        [
            nameof(CostLedger), nameof(ElectrodePotential), nameof(Fold), nameof(HotDipComparison), nameof(InertSurface), nameof(LifeDesign),
            nameof(LifePlan), nameof(LinearElectrode), nameof(LogNormalRate), nameof(TafelElectrode), nameof(ThinFilm),
        ],
        [Judged] =
        [
            nameof(AcceptanceByReadings), nameof(AcceptanceBySpots), nameof(AsBuiltLine), nameof(AsBuiltRecord), nameof(AsBuiltSignature),
            nameof(HoldPoint), nameof(InspectionPlan), nameof(InspectionPlanLine), nameof(OutsideHour), nameof(RejectedLay), nameof(RepairDecision),
            nameof(SurfaceReadiness), nameof(WorkWindow), nameof(WorkWindows),
        ],
        [Ordered] =
        [
            nameof(AcceptedLay), nameof(ChartRow), nameof(ConsumptionChart), nameof(CrewStep), nameof(CutPattern), nameof(PipeSpan),
            nameof(PlacedStrip), nameof(RankedOption), nameof(TapeChoice), nameof(TriedLay), nameof(WindowMark),
        ],
        [Law] =
        [
            nameof(LinearLoss), nameof(MeasuredLoss), nameof(PiecewiseLoss), nameof(PowerLawLoss),
        ],
    };

    internal static IReadOnlyList<Type> With { get; } = [.. Library.PublicTypes.Where(static type => type is { IsAbstract: false, IsInterface: false } && type.IsAssignableTo(typeof(IHasWorkings)))];

    /// <summary>Those whose steps are the steps of their parts, one after the other.</summary>
    internal static IReadOnlyList<Type> Joined { get; } = [typeof(EstimateDocument), typeof(JobEstimate), typeof(LineEstimate), typeof(StripTakeOff)];

    [Fact]
    public void Every_result_shows_its_workings_or_stands_here_with_the_reason()
    {
        string[] rooms = ["Tapes", "Surfaces", "Wrapping", "TakeOff", "Exposure", "Galvanic", "ServiceLife", "Costing", "Contact", "SiteConditions", "Inspection", "Jobs"];
        string[] without =
        [
            .. Library.PublicTypes
                .Where(static type => type is { IsEnum: false, IsInterface: false, IsAbstract: false } && !type.IsAssignableTo(typeof(IHasWorkings)))
                .Where(type => rooms.Contains(type.Namespace!.Split('.')[^1]))
                .Select(static type => type.Name)
                .Order(StringComparer.Ordinal),
        ];
        Assert.True(With.Count > 100, $"Only {With.Count} types with workings were found.");
        Assert.Equal(Without.Values.SelectMany(static names => names).Order(StringComparer.Ordinal), without);
    }

    [Fact]
    public void A_job_shows_the_steps_of_its_parts()
    {
        JobEstimate estimate = SampleJob.Make().Estimate();
        LineEstimate line = estimate.Lines[0];
        IHasWorkings[] parts = [line.Line.Lay.Surface, line.Line.Welds!, line.Line.Lay, .. line.Line.Spots, line.Contact!, line.Life];
        Assert.Equal(parts.SelectMany(static part => part.ShowWorkings().Steps), line.ShowWorkings().Steps);
        Assert.Equal(estimate.TakeOff.Stocks.SelectMany(static stock => stock.ShowWorkings().Steps), estimate.TakeOff.ShowWorkings().Steps);
        Assert.Equal(
            [.. estimate.Lines.SelectMany(static one => one.ShowWorkings().Steps), .. estimate.TakeOff.ShowWorkings().Steps], estimate.ShowWorkings().Steps);
        Assert.Equal("A-1", line.ShowWorkings().Title);
    }
}
