using SacrificialTape.Costing;
using SacrificialTape.Inspection;
using SacrificialTape.Jobs;
using SacrificialTape.Reports;

namespace PlantSurvey;

/// <summary>The job pack: everything for site and office on one page.</summary>
internal static class PackReport
{
    internal static int Write(Survey survey, JobEstimate estimate, CostEstimate? cost, TextWriter output)
    {
        var options = new JobPackOptions { Cost = cost, ThicknessSampling = SamplingScheme.Iso19840, Day = survey.Choices.Life.Laid };
        output.Write(new JobPack(estimate, options).ToHtml());
        return 0;
    }
}
