using SacrificialTape.Costing;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;

namespace PlantSurvey;

/// <summary>A survey as read: the job, the work in it, and the prices where the folder has them.</summary>
internal sealed record Survey(Job Job, ValueList<LabourWork> Work, CostPrices? Prices);
