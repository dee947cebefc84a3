using SacrificialTape.Documents;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Documents;

/// <summary>Invented records of jobs as built, with a reading of every hold point, batches known and unknown, and signatures.</summary>
internal static class AnyRecord
{
    internal static AsBuiltDocument Make(int seed)
    {
        var random = new Random(seed);
        RuleSet rules = random.Next(2) == 0 ? RuleSet.Default : TeamSet.Small;
        InspectionPlanLine[] planned =
        [
            new("T-1", Area.FromSquareMeters(12 + random.NextDouble()), paintStays: true, hasWelds: true, layers: 2),
            new("T-2 \"roof\"", Area.FromSquareMeters(200 * random.NextDouble() + 10)),
            new("never laid", Area.FromSquareMeters(11)),
        ];
        var plan = new InspectionPlan(planned, rules, random.Next(2) == 0 ? null : One<SamplingScheme>(random));
        AsBuiltLine[] lines =
        [
            new("T-1", "A. Person", When(random), [Batch(random), TapeBatch.Unknown], Readings(random, "T-1", rules)),
            new("T-2 \"roof\"", "B. Person", When(random), [Batch(random)], Readings(random, "T-2 \"roof\"", rules)),
        ];
        var record = new AsBuiltRecord(plan, lines);
        for (int signed = random.Next(4); signed > 0 && record.OpenFindings.Count > 0; signed--)
        {
            record = record.Sign(record.OpenFindings[random.Next(record.OpenFindings.Count)], "C. Person", When(random), "seen on site");
        }

        return new AsBuiltDocument("Invented tank", record, random.Next(3) == 0, rulesDocument: TeamSet.Stated(random, rules));
    }

    internal static AsBuiltDocument Read(string text) => AsBuiltDocument.Read(text, [TeamSet.Small]);

    private static HoldPointReading[] Readings(Random random, string line, RuleSet rules) =>
    [
        HoldPointReading.OfTrialPatch(Patch(random), "D", When(random)),
        HoldPointReading.OfCleaning(Surface(random), "D", When(random)),
        HoldPointReading.OfContact(BareRatio.FromSquareCentimetersPerSquareMeter(300 * random.NextDouble()), "D", When(random)),
        HoldPointReading.OfWelds(random.Next(2) == 0, "D", When(random)),
        HoldPointReading.OfLaps(Mm(30 * random.NextDouble()), random.Next(2) == 0 ? null : Mm(60 * random.NextDouble()), "D", When(random)),
        HoldPointReading.OfRollDown(random.Next(2) == 0, "D", When(random)),
        HoldPointReading.OfCreases(random.Next(3), "D", When(random)),
        HoldPointReading.OfBubbles(random.Next(3), "D", When(random)),
        HoldPointReading.OfEnds(random.Next(2) == 0, "D", When(random)),
        HoldPointReading.OfThickness(
            new AcceptanceByReadings(
                Enumerable.Range(0, 1 + random.Next(9)).Select(_ => Length.FromMicrometers(80 + (60 * random.NextDouble()))),
                Length.FromMicrometers(125),
                One<AcceptanceRule>(random),
                rules,
                line,
                random.Next(2) == 0 ? null : new SamplingCount(One<SamplingScheme>(random), Area.FromSquareMeters(10 + random.NextDouble())),
                random.Next(2) == 0 ? null : Length.FromMicrometers(180 + random.NextDouble())),
            "D",
            When(random)),
    ];

    private static TrialPatch Patch(Random random) => new(
        ForcePerLength.FromNewtonsPerMillimeter(0.1 + random.NextDouble()),
        ContactResistivity.FromOhmSquareCentimeters(random.NextDouble()),
        random.Next(2) == 0 ? null : ForcePerLength.FromNewtonsPerMillimeter(random.NextDouble()),
        random.Next(2) == 0 ? null : ContactResistivity.FromOhmSquareCentimeters(random.NextDouble()),
        Perhaps<TrialPatchFailure>(random));

    private static SurfaceReading Surface(Random random) => new(
        random.Next(3) == 0 ? null : new MoistAir(Temperature.FromDegreesCelsius(20 * random.NextDouble()), RelativeHumidity.FromPercent(20 + (70 * random.NextDouble())), SaturationConstants.All[random.Next(5)]),
        random.Next(3) == 0 ? null : Temperature.FromDegreesCelsius(20 * random.NextDouble()),
        random.Next(3) == 0 ? null : Temperature.FromDegreesCelsius(60 * random.NextDouble()),
        Perhaps<SurfaceWetness>(random),
        random.Next(3) == 0 ? null : Duration.FromHours(9 * random.NextDouble()),
        random.Next(3) == 0 ? null : Duration.FromHours(9 * random.NextDouble()),
        Perhaps<CleaningGrade>(random),
        Perhaps<FlashRust>(random),
        random.Next(3) == 0 ? null : new DustRating(random.Next(6), random.Next(6)),
        random.Next(3) switch { 0 => null, 1 => [], _ => [SurfaceResidue.Wax, SurfaceResidue.Oil] },
        random.Next(3) == 0 ? null : AreaDensity.FromMilligramsPerSquareMeter(90 * random.NextDouble()),
        random.Next(3) == 0 ? null : new SurfaceProfile(Length.FromMicrometers(20 + (90 * random.NextDouble())), One<ProfileComparator>(random)),
        Perhaps<PaintSoundness>(random));

    private static TapeBatch Batch(Random random) => new(
        "B-" + random.Next(100),
        random.Next(3) == 0 ? null : new DateOnly(2030, 1 + random.Next(12), 3),
        random.Next(3) == 0 ? null : new DateOnly(2031, 1 + random.Next(12), 3),
        random.Next(3) == 0 ? null : new TapeBatchStorage(Temperature.FromDegreesCelsius(5), Temperature.FromDegreesCelsius(30 + random.NextDouble())),
        random.Next(3) == 0 ? null : new TapeBatchStorage(Temperature.FromDegreesCelsius(10 * random.NextDouble()), Temperature.FromDegreesCelsius(20 + (20 * random.NextDouble()))));

    private static DateTimeOffset When(Random random) =>
        new DateTimeOffset(2031, 5, 4, 6, 30, 0, TimeSpan.FromMinutes(30 * random.Next(-20, 20))).AddTicks(random.Next(3) == 0 ? 0 : random.NextInt64(1, TimeSpan.TicksPerDay));

    private static T One<T>(Random random)
        where T : struct, Enum => Enum.GetValues<T>()[random.Next(Enum.GetValues<T>().Length)];

    private static T? Perhaps<T>(Random random)
        where T : struct, Enum => random.Next(4) == 0 ? null : One<T>(random);
}
