namespace SacrificialTape.Reports;

/// <summary>In which units a report shows numbers. What is stored stays as it is.</summary>
public enum ReportUnits
{
    /// <summary>Metres, millimetres, micrometres, kilograms.</summary>
    Metric = 0,

    /// <summary>Feet, inches, mils (thousandths of an inch), pounds.</summary>
    UsCustomary,
}
