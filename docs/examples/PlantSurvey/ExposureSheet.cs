using SacrificialTape.Exposure;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;
using UnitsNet;

namespace PlantSurvey;

/// <summary>Places that a survey names by more than a category: exposures.csv, if the folder has it.</summary>
internal static class ExposureSheet
{
    internal const string File = "exposures.csv";

    private static readonly string[] Columns = ["name", "kind"];

    private static readonly string[] Values =
    [
        "category", "degC", "rh_percent", "so2_mg_m2_d", "cl_mg_m2_d", "lost_g", "area_cm2", "hours", "lost_g_u", "area_cm2_u",
        "lost_um", "years", "place",
    ];

    private static readonly Dictionary<string, CorrosivityCategory> Categories =
        Enum.GetValues<CorrosivityCategory>().ToDictionary(static category => category.ToString());

    private static readonly Dictionary<string, WaterKind> Waters = new()
    {
        ["sea"] = WaterKind.Sea,
        ["temperate sea"] = WaterKind.TemperateSea,
        ["hard fresh"] = WaterKind.HardFresh,
        ["soft fresh"] = WaterKind.SoftFresh,
        ["distilled"] = WaterKind.Distilled,
    };

    private static readonly Dictionary<string, SoilModel> Soils = new()
    {
        ["reinforced fill"] = SoilModel.ReinforcedFill,
        ["power law"] = SoilModel.PowerLaw,
    };

    private static readonly Dictionary<string, IndoorPlace> Rooms = new()
    {
        ["heated and clean"] = IndoorPlace.HeatedAndClean,
        ["unheated"] = IndoorPlace.UnheatedWithCondensation,
        ["humid production"] = IndoorPlace.HumidProduction,
        ["pool or chemical plant"] = IndoorPlace.PoolOrChemicalPlant,
        ["always condensing"] = IndoorPlace.AlwaysCondensingAndPolluted,
    };

    // Rooms by a standard's examples, or by a category of their own.
    private static readonly Dictionary<string, FirstYearRate> Indoors = Rooms
        .Select(static room => (room.Key, FirstYearRate.Indoors(Metal.Zinc, room.Value)))
        .Concat(Enum.GetValues<IndoorCategory>().Select(static category => (category.ToString(), FirstYearRate.Indoors(Metal.Zinc, category))))
        .ToDictionary(static room => room.Item1, static room => room.Item2);

    // What each kind must have; the other cells of its row stay empty, but those in Optional.
    private static readonly Dictionary<string, string[]> Needs = new()
    {
        ["category"] = ["category"],
        ["climate"] = ["degC", "rh_percent", "so2_mg_m2_d", "cl_mg_m2_d"],
        ["coupon"] = ["lost_g", "area_cm2", "hours"],
        ["thickness"] = ["lost_um", "years"],
        ["water"] = ["place"],
        ["soil"] = ["place"],
        ["indoor"] = ["place"],
    };

    private static readonly string[] CouponUncertainty = ["lost_g_u", "area_cm2_u"];

    internal static IReadOnlyDictionary<string, SurveyExposure> Read(string folder, List<SurveyFault> faults)
    {
        var read = new Dictionary<string, SurveyExposure>(StringComparer.Ordinal);
        if (!System.IO.File.Exists(Path.Combine(folder, File))
            || CsvTable.Read(folder, File, Columns, [.. Values, "s"], faults) is not { } table)
        {
            return read;
        }

        foreach (CsvRow row in table.Rows)
        {
            string name = row.Text("name");
            if (LineReader.Exposures.ContainsKey(name))
            {
                row.Fault("name", $"'{name}' is a word of the exposure column already; take another name.");
            }

            SurveyExposure? exposure = Exposure(row, name);
            if (!read.TryAdd(name, exposure ?? SurveyExposure.Faulty))
            {
                row.Fault("name", $"'{name}' stands twice.");
            }
        }

        return read;
    }

    private static SurveyExposure? Exposure(CsvRow row, string name)
    {
        string[]? needs = row.Choice("kind", Needs);
        if (needs is null)
        {
            return null;
        }

        string kind = row.Text("kind");
        bool weighed = kind == "coupon";
        foreach (string column in Values.Except(needs).Where(column => !weighed || !CouponUncertainty.Contains(column)))
        {
            row.MustBeEmpty(column, $"An exposure of kind '{kind}' has none; leave the cell empty.");
        }

        FirstYearRate? rate = Rate(row, kind, name);
        double? spread = row.OptionalNumber("s");
        LogSpread? s = null;
        if (spread is { } stated)
        {
            if (rate is { LogNormal: not null })
            {
                row.Fault("s", "The spread comes with the function of the climate; leave the cell empty.");
            }
            else if (rate is not null && rate.Range.Lowest < rate.Range.Highest)
            {
                row.Fault("s", "The rate is a range, whose bounds are read as quantiles; leave the cell empty.");
            }

            s = Spread(row, stated);
        }

        return rate is null || row.Faulty ? null : new SurveyExposure(name, kind, ZincExposure.From(rate), s);
    }

    // The library says which s it takes; any rate will do to ask.
    private static LogSpread? Spread(CsvRow row, double stated)
    {
        UncertainRate? probe = row.Try("s", () => UncertainRate.Of(
            new LogNormalRate(CorrosionRate.FromMicrometersPerYear(1), LogSpread.FromValue(stated)), SurveyExposure.StatedSpread));
        return probe?.LogNormal.Spread;
    }

    private static FirstYearRate? Rate(CsvRow row, string kind, string name)
    {
        string note = $"{File}, '{name}', as the survey states";
        switch (kind)
        {
            case "category":
                CorrosivityCategory category = row.Choice("category", Categories);
                return row.Faulty ? null : FirstYearRate.FromCategory(Metal.Zinc, category);
            case "climate":
                return Climate(row);
            case "coupon":
                return Coupon(row, note);
            case "thickness":
                double um = row.Number("lost_um");
                double years = row.Number("years");
                return row.Faulty ? null : row.Try(
                    "lost_um",
                    () => FirstYearRate.FromThicknessLoss(Metal.Zinc, Length.FromMicrometers(um), Duration.FromYears365(years), note),
                    ("time", "years"));
            case "water":
                WaterKind water = row.Choice("place", Waters);
                return row.Faulty ? null : FirstYearRate.OfZincIn(water);
            case "soil":
                SoilModel soil = row.Choice("place", Soils);
                return row.Faulty ? null : soil == SoilModel.ReinforcedFill
                    ? FirstYearRate.InReinforcedSoil(Metal.Zinc)
                    : FirstYearRate.InSoilByPowerLaw(Metal.Zinc);
            default:
                return row.Choice("place", Indoors);
        }
    }

    private static FirstYearRate? Climate(CsvRow row)
    {
        double degrees = row.Number("degC");
        double humidity = row.Number("rh_percent");
        double sulfur = row.Number("so2_mg_m2_d");
        double chloride = row.Number("cl_mg_m2_d");
        if (row.Faulty)
        {
            return null;
        }

        DepositionRate so2 = Deposition(row, "so2_mg_m2_d", sulfur);
        DepositionRate salt = Deposition(row, "cl_mg_m2_d", chloride);
        AnnualAtmosphere? air = row.Faulty ? null : row.Try(
            "degC",
            () => new AnnualAtmosphere(Temperature.FromDegreesCelsius(degrees), RelativeHumidity.FromPercent(humidity), so2, salt),
            ("humidity", "rh_percent"));

        // Beyond its data the function goes on, and the findings of each line say so.
        return air is null ? null : row.Try("degC", () => FirstYearRate.From(new DoseResponse(Metal.Zinc, air, BeyondFit.AcceptWithFinding)));
    }

    private static DepositionRate Deposition(CsvRow row, string column, double milligrams)
    {
        try
        {
            return DepositionRate.FromMilligramsPerSquareMeterDay(milligrams);
        }
        catch (ArgumentException refused)
        {
            row.Fault(column, CsvRow.FirstLine(refused));
            return default;
        }
    }

    private static FirstYearRate? Coupon(CsvRow row, string note)
    {
        double grams = row.Number("lost_g");
        double area = row.Number("area_cm2");
        double hours = row.Number("hours");
        double? gramsOff = row.OptionalNumber("lost_g_u");
        double? areaOff = row.OptionalNumber("area_cm2_u");
        if (gramsOff is null != areaOff is null)
        {
            row.Fault(gramsOff is null ? "lost_g_u" : "area_cm2_u", "State both uncertainties, or neither.");
        }

        if (row.Faulty)
        {
            return null;
        }

        CouponUncertainty? off = gramsOff is { } g && areaOff is { } a
            ? row.Try("lost_g_u", () => new CouponUncertainty(Mass.FromGrams(g), Area.FromSquareCentimeters(a)), ("area", "area_cm2_u"))
            : null;
        CouponLoss? coupon = row.Faulty ? null : row.Try(
            "lost_g",
            () => new CouponLoss(Mass.FromGrams(grams), Area.FromSquareCentimeters(area), Duration.FromHours(hours), Zinc.Density, off),
            ("area", "area_cm2"),
            ("time", "hours"));
        return coupon is null ? null : row.Try("lost_g", () => FirstYearRate.From(Metal.Zinc, coupon, note));
    }
}
