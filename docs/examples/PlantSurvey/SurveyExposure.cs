using SacrificialTape.Exposure;
using SacrificialTape.Provenance;

namespace PlantSurvey;

/// <summary>A place of the survey: its name, how it is known, and the spread of a rate that comes without one.</summary>
internal sealed record SurveyExposure(string Name, string Kind, ZincExposure Zinc, LogSpread? Spread)
{
    internal static Basis StatedSpread { get; } = Basis.OwnExperience("spread of the rate as the survey states it, one standard deviation of ln r");

    /// <summary>Stands for a row with faults, so that lines that name it are not blamed as well.</summary>
    internal static SurveyExposure Faulty { get; } = new("faulty", "category", ZincExposure.FromCategory(CorrosivityCategory.C3), null);
}
