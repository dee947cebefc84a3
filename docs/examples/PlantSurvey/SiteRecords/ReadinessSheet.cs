using SacrificialTape.Quantities;
using SacrificialTape.SiteConditions;
using UnitsNet;

namespace PlantSurvey.SiteRecords;

/// <summary>What was measured and seen on the surface of a line before taping: readiness.csv, if the folder has it.</summary>
internal static class ReadinessSheet
{
    internal const string File = "readiness.csv";

    private static readonly string[] Columns = ["line", "air_degC", "rh_percent", "surface_degC", "wetness", "dry_h", "dwell_h", "cleaning", "dust", "residues", "paint"];

    private static readonly string[] Salts = ["water_ml", "patch_mm2", "before_uS_cm", "after_uS_cm"];

    private static readonly Dictionary<string, SurfaceWetness?> Wetnesses = Words<SurfaceWetness>(("dry", SurfaceWetness.Dry), ("damp", SurfaceWetness.Damp), ("wet", SurfaceWetness.Wet));

    private static readonly Dictionary<string, CleaningGrade?> Grades = Words(Enum.GetValues<CleaningGrade>().Select(static grade => (CleaningGrades.NameOf(grade), grade)).ToArray());

    private static readonly Dictionary<string, FlashRust?> Rusts = Words(("none", FlashRust.None), ("light", FlashRust.Light), ("medium", FlashRust.Medium), ("heavy", FlashRust.Heavy));

    private static readonly Dictionary<string, PaintSoundness?> Paints = Words(
        ("bare", PaintSoundness.Bare), ("roughened", PaintSoundness.SoundAndRoughened), ("smooth", PaintSoundness.SoundButSmooth), ("loose", PaintSoundness.Loose));

    private static readonly Dictionary<string, ProfileComparator> Blasted = new() { ["grit"] = ProfileComparator.Grit, ["shot"] = ProfileComparator.Shot };

    private static readonly Dictionary<string, SurfaceResidue> Residues = new()
    {
        ["oil"] = SurfaceResidue.Oil,
        ["wax"] = SurfaceResidue.Wax,
        ["silicone"] = SurfaceResidue.Silicone,
        ["bitumen"] = SurfaceResidue.Bitumen,
    };

    /// <summary>The readings, line by line.</summary>
    /// <param name="folder">Where the sheet is.</param>
    /// <param name="tags">The lines of the survey, those with faults too.</param>
    /// <param name="service">The highest service temperature of each line, where it is known.</param>
    /// <param name="faults">Takes the faults.</param>
    internal static IReadOnlyList<LineReading> Read(
        string folder, IReadOnlySet<string> tags, IReadOnlyDictionary<string, Temperature?> service, List<SurveyFault> faults)
    {
        if (!System.IO.File.Exists(Path.Combine(folder, File)) || CsvTable.Read(folder, File, Columns, [.. Salts, "flash_rust", "profile_um", "blasted_with"], faults) is not { } table)
        {
            return [];
        }

        var read = new List<LineReading>();
        foreach (CsvRow row in table.Rows)
        {
            string line = row.Text("line");
            if (line.Length > 0 && !tags.Contains(line))
            {
                row.Fault("line", $"The survey has no line '{line}'.");
            }

            if (Reading(row, service.GetValueOrDefault(line)) is { } reading)
            {
                read.Add(new(line, reading));
            }
        }

        return read;
    }

    private static SurfaceReading? Reading(CsvRow row, Temperature? service)
    {
        MoistAir? air = AirCells.Read(row);
        Temperature? surface = row.OptionalNumber("surface_degC") is { } degrees ? Temperature.FromDegreesCelsius(degrees) : null;
        SurfaceWetness? wetness = row.Choice("wetness", Wetnesses, string.Empty);
        Duration? dry = row.OptionalNumber("dry_h") is { } before ? Duration.FromHours(before) : null;
        Duration? dwell = row.OptionalNumber("dwell_h") is { } after ? Duration.FromHours(after) : null;
        CleaningGrade? grade = row.Choice("cleaning", Grades, string.Empty);
        FlashRust? rust = row.Choice("flash_rust", Rusts, string.Empty);
        DustRating? dust = Dust(row);
        ValueList<SurfaceResidue>? residues = ResiduesOf(row);
        AreaDensity? salts = SaltsOf(row)?.Salts;
        SurfaceProfile? profile = Profile(row);
        PaintSoundness? paint = row.Choice("paint", Paints, string.Empty);
        return row.Faulty ? null : row.Try(
            "line",
            () => new SurfaceReading(air, surface, service, wetness, dry, dwell, grade, rust, dust, residues, salts, profile, paint),
            ("surfaceTemperature", "surface_degC"),
            ("dryFor", "dry_h"),
            ("dwellBeforeWet", "dwell_h"));
    }

    // Quantity and size class, as the picture standard rates them: 1/2.
    private static DustRating? Dust(CsvRow row)
    {
        string text = row.TextOr("dust", string.Empty);
        if (text.Length == 0)
        {
            return null;
        }

        if (text.Length == 3 && text[1] == '/' && char.IsAsciiDigit(text[0]) && char.IsAsciiDigit(text[2]))
        {
            return row.Try("dust", () => new DustRating(text[0] - '0', text[2] - '0'));
        }

        row.Fault("dust", $"'{text}' is not a quantity and a size class such as 1/2.");
        return null;
    }

    private static SurfaceProfile? Profile(CsvRow row)
    {
        if (row.OptionalNumber("profile_um") is not { } height)
        {
            row.MustBeEmpty("blasted_with", "There is no profile; leave the cell empty.");
            return null;
        }

        ProfileComparator comparator = row.Choice("blasted_with", Blasted);
        return row.Faulty ? null : row.Try("profile_um", () => new SurfaceProfile(Length.FromMicrometers(height), comparator));
    }

    private static ValueList<SurfaceResidue>? ResiduesOf(CsvRow row)
    {
        string text = row.TextOr("residues", string.Empty);
        if (text.Length == 0)
        {
            return null;
        }

        if (text == "none")
        {
            return [];
        }

        string[] names = text.Split(';', StringSplitOptions.TrimEntries);
        foreach (string unknown in names.Where(static name => !Residues.ContainsKey(name)))
        {
            row.Fault("residues", $"'{unknown}' is not one of none, {string.Join(", ", Residues.Keys)}.");
        }

        return row.Faulty ? null : new ValueList<SurfaceResidue>(names.Select(static name => Residues[name]));
    }

    private static SaltReading? SaltsOf(CsvRow row)
    {
        double?[] cells = [.. Salts.Select(row.OptionalNumber)];
        if (row.Faulty || cells.All(static cell => cell is null))
        {
            return null;
        }

        foreach (string column in Salts.Where((_, at) => cells[at] is null))
        {
            row.Fault(column, "The cell is empty; salts need water, patch and the conductivity before and after.");
        }

        return row.Faulty ? null : row.Try(
            "after_uS_cm",
            () => new SaltReading(
                Volume.FromMilliliters(cells[0]!.Value),
                Area.FromSquareMillimeters(cells[1]!.Value),
                ElectricConductivity.FromMicrosiemensPerCentimeter(cells[2]!.Value),
                ElectricConductivity.FromMicrosiemensPerCentimeter(cells[3]!.Value)),
            ("water", "water_ml"),
            ("patch", "patch_mm2"),
            ("before", "before_uS_cm"));
    }

    // An empty cell was not looked at.
    private static Dictionary<string, T?> Words<T>(params (string Word, T Value)[] words)
        where T : struct
    {
        var choices = words.ToDictionary(static one => one.Word, static one => (T?)one.Value);
        choices.Add(string.Empty, null);
        return choices;
    }
}
