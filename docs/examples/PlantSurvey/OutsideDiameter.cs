using System.Globalization;
using UnitsNet;

namespace PlantSurvey;

/// <summary>A size written as an outside diameter, for pipe that is not of a nominal size: 'OD 60.3'.</summary>
internal static class OutsideDiameter
{
    internal const string Mark = "OD ";

    internal static Length Parse(string text, string column) =>
        double.TryParse(text.AsSpan(Mark.Length), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double mm)
            ? Length.FromMillimeters(mm)
            : throw new CellException(column, $"'{text}' is not an outside diameter in mm such as 'OD 60.3', with a decimal point.");
}
