using SacrificialTape.Jobs;

namespace PlantSurvey;

/// <summary>The whole program, apart from the process: arguments in, text out, an exit code.</summary>
public static class SurveyProgram
{
    private const string Usage =
        """
        Works out a survey of pipes to be covered with zinc tape.

          PlantSurvey [FOLDER] [--json | --crew LINE | --workings LINE]

          FOLDER           holds lines.csv, stock.csv and choices.csv; left out: the invented site that ships with the example
          --json           the estimate as data
          --crew LINE      the crew's steps for one line
          --workings LINE  every step from the numbers of one line to its answers

        Exit code 0: worked out. 1: the survey has faults, nothing was worked out. 2: wrong arguments.
        """;

    public static int Run(IReadOnlyList<string> arguments, TextWriter output, TextWriter errors)
    {
        if (!SurveyArguments.TryRead(arguments, out SurveyArguments read))
        {
            errors.WriteLine(Usage);
            return 2;
        }

        var faults = new List<SurveyFault>();
        Job? job = SurveyReader.Read(read.Folder, faults);
        if (job is null || faults.Count > 0)
        {
            foreach (SurveyFault fault in faults)
            {
                errors.WriteLine(fault);
            }

            errors.WriteLine($"{faults.Count} fault(s). Nothing was worked out.");
            return 1;
        }

        JobEstimate estimate = job.Estimate();
        return read.Wanted switch
        {
            Wanted.Data => JsonReport.Write(estimate, output),
            Wanted.Crew => LineReport.WriteCrew(estimate, read.Line, output, errors),
            Wanted.Workings => LineReport.WriteWorkings(estimate, read.Line, output, errors),
            _ => TableReport.Write(estimate, output),
        };
    }
}
