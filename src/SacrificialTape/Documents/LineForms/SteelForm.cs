using SacrificialTape.Contact;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How what the survey found of the steel is read and written. What is left out was not found.</summary>
internal static class SteelForm
{
    internal static SteelCondition? Read(FormReader reader)
    {
        SubstrateMetal metal = reader.OptionalWord("metal", JobWords.Metals, SubstrateMetal.CarbonSteel);
        ContactWindows? windows = reader.OptionalObject("windowsInPaint", ReadWindows);
        double? service = reader.OptionalNumber("serviceTemperature", TradeUnit.DegreeCelsius);
        bool wet = reader.Flag("wetInService");
        LineOrientation orientation = reader.OptionalWord("orientation", JobWords.Orientations, LineOrientation.Horizontal);
        LineHazards? hazards = reader.OptionalObject("hazards", ReadHazards);
        return reader.Make(() => new SteelCondition(
            metal, windows, service is { } degrees ? Temperature.FromDegreesCelsius(degrees) : null, wet, orientation, hazards));
    }

    internal static void Write(FormWriter writer, SteelCondition steel)
    {
        writer.OptionalWord("metal", steel.Metal, JobWords.Metals, SubstrateMetal.CarbonSteel);
        if (steel.WindowsInPaint is { } windows)
        {
            writer.Object("windowsInPaint", windows, WriteWindows);
        }

        if (steel.ServiceTemperature is { } service)
        {
            writer.Number("serviceTemperature", UnitConversions.DegreesCelsius(service), TradeUnit.DegreeCelsius);
        }

        writer.Flag("wetInService", steel.WetInService);
        writer.OptionalWord("orientation", steel.Orientation, JobWords.Orientations, LineOrientation.Horizontal);
        if (steel.Hazards.Any)
        {
            writer.Object("hazards", steel.Hazards, WriteHazards);
        }
    }

    private static ContactWindows? ReadWindows(FormReader reader)
    {
        int count = reader.Count("count");
        Area windowArea = reader.Area("windowArea");
        return reader.Make(() => new ContactWindows(count, windowArea));
    }

    private static void WriteWindows(FormWriter writer, ContactWindows windows)
    {
        writer.Count("count", windows.Count);
        writer.Area("windowArea", windows.WindowArea);
    }

    private static LineHazards? ReadHazards(FormReader reader)
    {
        ValueList<string> words = reader.Texts("present");
        var present = new List<SiteHazard>(words.Count);
        for (int i = 0; i < words.Count; i++)
        {
            if (JobWords.Hazards.Any(pair => pair.Word == words[i]))
            {
                present.Add(JobWords.Hazards.First(pair => pair.Word == words[i]).Value);
            }
            else
            {
                reader.Context.Faults.Add(
                    reader.Node.Members["present"].Items[i],
                    $"No hazard '{DocumentTree.Short(words[i])}' is known.{NearestName.Hint(words[i], [.. JobWords.Hazards.Select(static pair => pair.Word)])}");
            }
        }

        double? acidity = reader.OptionalNumber("acidity", TradeUnit.One);
        double? strength = reader.OptionalNumber("tensileStrength", TradeUnit.Megapascal);
        double? hardness = reader.OptionalNumber("hardness", TradeUnit.VickersHardness);
        return reader.Make(() => new LineHazards(
            new ValueList<SiteHazard>(present),
            acidity is { } ph ? FormReader.At("acidity", () => Acidity.FromPh(ph)) : null,
            strength is { } mpa ? Pressure.FromMegapascals(mpa) : null,
            hardness is { } hv ? FormReader.At("hardness", () => VickersHardness.FromHv(hv)) : null));
    }

    private static void WriteHazards(FormWriter writer, LineHazards hazards)
    {
        writer.Texts("present", [.. hazards.Present.Select(static one => Words.Of(JobWords.Hazards, one))]);
        if (hazards.Acidity is { } acidity)
        {
            writer.Number("acidity", acidity.Ph);
        }

        if (hazards.Strength is { } strength)
        {
            writer.Measure("tensileStrength", strength);
        }

        if (hazards.Hardness is { } hardness)
        {
            writer.Number("hardness", hardness.Hv, TradeUnit.VickersHardness);
        }
    }
}
