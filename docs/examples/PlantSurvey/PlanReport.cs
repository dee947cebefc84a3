using SacrificialTape.Inspection;
using SacrificialTape.Jobs;

namespace PlantSurvey;

/// <summary>The inspection plan of the job: hold points in the order of the work, and how many thickness readings.</summary>
internal static class PlanReport
{
    internal static int Write(JobEstimate estimate, TextWriter output)
    {
        output.WriteLine(estimate.PlanInspection(SamplingScheme.Iso19840).ToText());
        return 0;
    }
}
