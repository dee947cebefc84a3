namespace SacrificialTape.Costing;

/// <summary>By what a labour norm counts the work.</summary>
public enum LabourMeasure
{
    /// <summary>By area of steel covered, in m2.</summary>
    Area = 0,

    /// <summary>By length of strip laid, in m.</summary>
    StripLength,

    /// <summary>By pieces laid.</summary>
    Pieces,
}
