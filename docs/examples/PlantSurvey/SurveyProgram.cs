using PlantSurvey.SiteRecords;
using PlantSurvey.TankInspections;
using SacrificialTape.Costing;
using SacrificialTape.Jobs;

namespace PlantSurvey;

/// <summary>The whole program, apart from the process: arguments in, text out, an exit code.</summary>
public static class SurveyProgram
{
    private const string Usage =
        """
        Works out a survey of steel to be covered with zinc tape.

          PlantSurvey [FOLDER] [--json | --pack | --cuts | --life | --site | --plan | --inspection | --crew LINE | --workings LINE | --choose LINE]

          FOLDER           holds stock.csv, choices.csv and sheets of lines (lines.csv for pipe, fittings.csv, vessels.csv,
                           panels.csv, sections.csv, details.csv; those that there are), and prices.csv with norms.csv if
                           it is to be priced, exposures.csv for places known by more than a category, records of the
                           site and of tape that is up; left out: the invented site that ships with the example
          --json           the estimate as data
          --pack           the job pack as one page of HTML
          --cuts           the cut list: which pieces come from which roll
          --life           how sure the lives are: percentiles, chances, when to look, hot-dip zinc beside it
          --site           when laying may go on by site-log.csv, and which surfaces of readiness.csv are ready
          --plan           the inspection plan: hold points line by line, and how many readings
          --inspection     tape that is up: readings to remaining life, repairs, patch or rewrap (inspections.csv)
          --crew LINE      the crew's steps for one line
          --choose LINE    the cheapest tape and lay that lasts and meets every rule, and why the others do not
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
        Survey? survey = SurveyReader.Read(read.Folder, faults);
        JobEstimate? estimate = survey?.Job.Estimate();
        CostEstimate? cost = CostReport.Of(survey, estimate, faults);
        if (estimate is null || faults.Count > 0)
        {
            foreach (SurveyFault fault in faults)
            {
                errors.WriteLine(fault);
            }

            errors.WriteLine($"{faults.Count} fault(s). Nothing was worked out.");
            return 1;
        }

        return read.Wanted switch
        {
            Wanted.Data => JsonReport.Write(survey!, estimate, cost, output),
            Wanted.Crew => LineReport.WriteCrew(estimate, read.Line, output, errors),
            Wanted.Workings => LineReport.WriteWorkings(estimate, read.Line, output, errors),
            Wanted.Choice => ChoiceReport.Write(survey!, read.Line, output, errors),
            Wanted.Life => LifeReport.Write(survey!, estimate, output),
            Wanted.Site => SiteReport.Write(survey!, output, errors),
            Wanted.Plan => PlanReport.Write(estimate, output),
            Wanted.Inspection => InspectionReport.Write(survey!, output, errors),
            Wanted.Pack => PackReport.Write(survey!, estimate, cost, output),
            Wanted.CutList => CutListReport.Write(estimate, output),
            _ => TableReport.Write(survey!, estimate, cost, output),
        };
    }
}
