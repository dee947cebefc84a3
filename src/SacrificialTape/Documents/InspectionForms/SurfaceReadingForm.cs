using SacrificialTape.Quantities;
using SacrificialTape.SiteConditions;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How the reading of a surface is read and written. What was not looked at is left out; residues that were looked for and not found are an empty list.</summary>
internal static class SurfaceReadingForm
{
    internal static SurfaceReading? Read(FormReader reader)
    {
        MoistAir? air = reader.OptionalObject("air", ReadAir);
        Temperature? surface = Celsius(reader.OptionalNumber("surfaceTemperature", TradeUnit.DegreeCelsius));
        Temperature? service = Celsius(reader.OptionalNumber("serviceTemperature", TradeUnit.DegreeCelsius));
        SurfaceWetness? wetness = reader.Members.OptionalWord("wetness", InspectionWords.Wetness);
        double? dry = reader.OptionalNumber("dryFor", TradeUnit.Hour);
        double? dwell = reader.OptionalNumber("dwellBeforeWet", TradeUnit.Hour);
        CleaningGrade? cleaning = reader.Members.OptionalWord("cleaning", InspectionWords.Cleaning);
        FlashRust? flashRust = reader.Members.OptionalWord("flashRust", InspectionWords.FlashRusts);
        DustRating? dust = reader.OptionalObject("dust", ReadDust);
        ValueList<SurfaceResidue>? residues = reader.Has("residues") ? Residues(reader) : null;
        double? salts = reader.OptionalNumber("salts", TradeUnit.MilligramPerSquareMeter);
        SurfaceProfile? profile = reader.OptionalObject("profile", ReadProfile);
        PaintSoundness? paint = reader.Members.OptionalWord("paint", InspectionWords.Paint);
        return reader.Make(() => new SurfaceReading(
            air, surface, service, wetness, Hours(dry), Hours(dwell), cleaning, flashRust, dust, residues,
            salts is { } found ? AreaDensity.FromMilligramsPerSquareMeter(found) : null, profile, paint));
    }

    internal static void Write(FormWriter writer, SurfaceReading reading)
    {
        Object("air", reading.Air, WriteAir);
        Number("surfaceTemperature", reading.SurfaceCelsius, TradeUnit.DegreeCelsius);
        Number("serviceTemperature", reading.ServiceCelsius, TradeUnit.DegreeCelsius);
        Word("wetness", reading.Wetness, InspectionWords.Wetness);
        Number("dryFor", reading.DryHours, TradeUnit.Hour);
        Number("dwellBeforeWet", reading.DwellHours, TradeUnit.Hour);
        Word("cleaning", reading.Cleaning, InspectionWords.Cleaning);
        Word("flashRust", reading.FlashRust, InspectionWords.FlashRusts);
        Object("dust", reading.Dust, WriteDust);
        if (reading.Residues is { } residues)
        {
            writer.Raw(json =>
            {
                json.OpenList("residues");
                foreach (SurfaceResidue residue in residues)
                {
                    json.Item(Words.Of(InspectionWords.Residues, residue));
                }

                json.CloseList();
            });
        }

        Number("salts", reading.SaltsMgM2, TradeUnit.MilligramPerSquareMeter);
        Object("profile", reading.Profile, WriteProfile);
        Word("paint", reading.Paint, InspectionWords.Paint);

        void Number(string name, StoredNumber value, TradeUnit unit)
        {
            if (value.IsSet)
            {
                writer.Number(name, value.Bare, unit);
            }
        }

        void Word<T>(string name, T? value, IReadOnlyList<(string Word, T Value)> words)
            where T : struct, Enum
        {
            if (value is { } seen)
            {
                writer.Word(name, seen, words);
            }
        }

        void Object<T>(string name, T? value, Action<FormWriter, T> write)
            where T : class
        {
            if (value is not null)
            {
                writer.Object(name, value, write);
            }
        }
    }

    private static MoistAir? ReadAir(FormReader reader)
    {
        double temperature = reader.Number("temperature", TradeUnit.DegreeCelsius);
        double humidity = reader.Number("humidity", TradeUnit.Percent);
        string name = reader.Word("constants", [.. SaturationConstants.All.Select(static set => set.Name)]);
        return reader.Make(() => new MoistAir(
            Temperature.FromDegreesCelsius(temperature),
            RelativeHumidity.FromPercent(humidity),
            SaturationConstants.All.First(set => set.Name == name)));
    }

    private static void WriteAir(FormWriter writer, MoistAir air)
    {
        writer.Number("temperature", air.Celsius, TradeUnit.DegreeCelsius);
        writer.Number("humidity", air.Percent, TradeUnit.Percent);
        writer.Text("constants", air.Constants.Name);
    }

    private static DustRating? ReadDust(FormReader reader)
    {
        int quantity = reader.Count("quantity");
        int sizeClass = reader.Count("sizeClass");
        return reader.Make(() => new DustRating(quantity, sizeClass));
    }

    private static void WriteDust(FormWriter writer, DustRating dust)
    {
        writer.Count("quantity", dust.Quantity);
        writer.Count("sizeClass", dust.SizeClass);
    }

    private static SurfaceProfile? ReadProfile(FormReader reader)
    {
        double height = reader.Number("height", TradeUnit.Micrometer);
        ProfileComparator comparator = reader.Word("comparator", InspectionWords.Comparators);
        return reader.Make(() => new SurfaceProfile(Length.FromMicrometers(height), comparator));
    }

    private static void WriteProfile(FormWriter writer, SurfaceProfile profile)
    {
        writer.Number("height", profile.Micrometers, TradeUnit.Micrometer);
        writer.Word("comparator", profile.Comparator, InspectionWords.Comparators);
    }

    private static ValueList<SurfaceResidue> Residues(FormReader reader)
    {
        var found = new List<SurfaceResidue>();
        foreach (DocumentNode item in reader.Members.Items("residues"))
        {
            (string Word, SurfaceResidue Value) known = InspectionWords.Residues.FirstOrDefault(pair => pair.Word == item.Text);
            if (known.Word is null)
            {
                reader.Context.Faults.Add(item, $"'{DocumentTree.Short(item.Text)}' is not known. Expected {string.Join(", ", InspectionWords.Residues.Select(static pair => $"'{pair.Word}'"))}.");
            }

            found.Add(known.Value);
        }

        return new ValueList<SurfaceResidue>(found);
    }

    private static Temperature? Celsius(double? given) => given is { } value ? Temperature.FromDegreesCelsius(value) : null;

    private static Duration? Hours(double? given) => given is { } value ? Duration.FromHours(value) : null;
}
