using System.Globalization;
using SacrificialTape.Documents;
using SacrificialTape.Jobs;
using SacrificialTape.Rules;

namespace HostTool;

/// <summary>The whole program, apart from the process: arguments in, text out, an exit code.</summary>
public static class HostProgram
{
    private const string Usage =
        """
        Estimates an invented street of octagonal lighting columns, with this tool's own shapes, laws, rules and costs.

          HostTool [--culture NAME] [--pin FINGERPRINT]   the estimate; numbers as in that culture; refused by another rule set
          HostTool --workings TAG                         every step of one column
          HostTool --verify                               the cases of the rule set, asked of the library and of this tool
        """;

    public static int Run(IReadOnlyList<string> arguments, TextWriter output, TextWriter errors) =>
        Run(arguments, Path.Combine(AppContext.BaseDirectory, "site", "rules.json"), output, errors);

    /// <summary>The same by another rule set file.</summary>
    public static int Run(IReadOnlyList<string> arguments, string rulesFile, TextWriter output, TextWriter errors)
    {
        try
        {
            return ReadRules(rulesFile, errors) is { } team ? Run(arguments, team, output, errors) : 1;
        }
        catch (ArgumentException e)
        {
            // The library names parameter, value and accepted range; this tool has nothing to add.
            errors.WriteLine(e.Message);
            return 1;
        }
    }

    private static int Run(IReadOnlyList<string> arguments, RuleSetDocument team, TextWriter output, TextWriter errors)
    {
        switch (arguments)
        {
            case []:
                return Estimate(team, null, CultureInfo.InvariantCulture, output, errors);
            case ["--culture", string name]:
                return Estimate(team, null, CultureInfo.GetCultureInfo(name, predefinedOnly: true), output, errors);
            case ["--pin", string text] when Fingerprint.TryParse(text, null, out Fingerprint pinned):
                return Estimate(team, pinned, CultureInfo.InvariantCulture, output, errors);
            case ["--verify"]:
                return Verify(team, output);
            case ["--workings", string tag]:
                return Workings(team, tag, output, errors);
            default:
                errors.WriteLine(Usage);
                return 2;
        }
    }

    #region read
    private static RuleSetDocument? ReadRules(string file, TextWriter errors)
    {
        try
        {
            return RuleSetDocument.ReadUtf8(File.ReadAllBytes(file));
        }
        catch (DocumentException e)
        {
            foreach (DocumentFault fault in e.Faults)
            {
                errors.WriteLine(fault);
            }

            return null;
        }
    }
    #endregion

    #region pin
    private static int Estimate(RuleSetDocument team, Fingerprint? pinned, CultureInfo culture, TextWriter output, TextWriter errors)
    {
        JobEstimate estimate = LightingJob.Of(team.Rules).Estimate();
        if (pinned is { } wanted && estimate.RuleSetFingerprint != wanted)
        {
            errors.WriteLine($"The rules are not those agreed on: {estimate.RuleSetFingerprint} instead of {wanted}.");
            return 1;
        }

        EstimateReport.Write(team, estimate, culture, output);
        return 0;
    }
    #endregion

    #region verify
    private static int Verify(RuleSetDocument team, TextWriter output)
    {
        Verification verification = team.Verify(ColumnCalculations.All);
        output.WriteLine(verification);
        return verification.Passed ? 0 : 1;
    }
    #endregion

    #region workings
    private static int Workings(RuleSetDocument team, string tag, TextWriter output, TextWriter errors)
    {
        if (LightingJob.Of(team.Rules).Estimate().Lines.FirstOrDefault(line => line.Line.Tag == tag) is not { } found)
        {
            errors.WriteLine($"There is no column '{tag}'.");
            return 2;
        }

        output.WriteLine(found.Line.Lay.ShowWorkings());
        output.WriteLine(found.Life.ShowWorkings());
        return 0;
    }
    #endregion
}
