using PlantSurvey.SiteRecords;
using PlantSurvey.TankInspections;
using SacrificialTape.Costing;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Tapes;

namespace PlantSurvey;

/// <summary>A survey as read: the job, the work in it, the prices where the folder has them, what it was chosen from, and the records of the site.</summary>
internal sealed record Survey(
    Job Job, ValueList<LabourWork> Work, CostPrices? Prices, SurveyChoices Choices, IReadOnlyCollection<StripStock> Stock,
    IReadOnlyDictionary<string, LineNotes> Notes, SiteRecord Site, IReadOnlyList<TankInspection> Inspections);
