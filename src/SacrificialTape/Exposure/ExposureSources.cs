using SacrificialTape.Provenance;

namespace SacrificialTape.Exposure;

/// <summary>On what the numbers of this room rest.</summary>
internal static class ExposureSources
{
    internal static Basis Categories { get; } = Basis.From(References.CorrosivityCategories);

    internal static Basis Extreme { get; } = Basis.From(References.CorrosivityCategoryExtreme);

    internal static Basis ExtremeSteel { get; } = Basis.From(References.ExtremeCategoryOfSteel);

    internal static Basis SulfurDioxide2012 { get; } = Basis.From(References.SulfurDioxideClasses2012);

    internal static Basis SulfurDioxide2012Upper { get; } = Basis.From(References.SulfurDioxideConversion);

    internal static Basis Classes1992 { get; } = Basis.From(References.PollutionClasses1992);

    internal static Basis WetnessUpper { get; } = Basis.From(References.WetnessHours);

    internal static Basis Classes2012 { get; } = Basis.From(References.ChlorideClasses2012);

    internal static Basis Water { get; } = Basis.From(References.ZincInWater, "hot-dip zinc, immersed");

    internal static Basis TemperateSea { get; } = Basis.From(References.ZincInTemperateSea, "other sources say 15 to 25 um/a for sea water");

    internal static Basis Indoor { get; } = Basis.From(References.IndoorCategories, "of mass; thickness at 7.14 g/cm3 for zinc and 7.86 for steel");

    internal static Basis IndoorPlaces { get; } = Basis.From(References.IndoorExamples, "a category by an example, not by a measurement");

    internal static Basis SoilPowerConstants { get; } = Basis.From(References.SoilConstants, "an order of size only");

    internal static Basis ReinforcedSoil { get; } =
        Basis.From(References.ZincInReinforcedSoil, "design loss of hot-dip zinc in selected fill, at 7.14 g/cm3");

    internal static Basis ReinforcedSoilSteel { get; } =
        Basis.From(References.ReinforcedSoilMetric, "steel once its zinc is gone");
}
