using SacrificialTape.Exposure;
using SacrificialTape.Quantities;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using UnitsNet;

namespace PlantSurvey.TankInspections;

/// <summary>What an inspection is judged by: one row of inspections.csv.</summary>
internal sealed record InspectionTerms(
    string Name,
    DateOnly Laid,
    StripStock Stock,
    Area Covered,
    int Layers,
    ZincExposure Predicted,
    Utilisation Usable,
    bool LeaveOutliers,
    Probability Significance,
    Probability Confidence,
    Probability Coverage,
    Area? Zone,
    TakeOffChoices TakeOff,
    RepairTerms Repair);
