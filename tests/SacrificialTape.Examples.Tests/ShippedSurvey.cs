using System.Text.Json;
using Xunit;

namespace SacrificialTape.Examples.Tests;

/// <summary>The survey that ships with the example, worked out.</summary>
internal static class ShippedSurvey
{
    internal static JsonDocument Data() => JsonDocument.Parse(Run("--json"));

    internal static string Run(params string[] options)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        int code = PlantSurvey.SurveyProgram.Run(options, output, errors);
        Assert.Equal(string.Empty, errors.ToString());
        Assert.Equal(0, code);
        return output.ToString();
    }
}
