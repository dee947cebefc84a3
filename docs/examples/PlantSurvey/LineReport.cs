using SacrificialTape.Jobs;

namespace PlantSurvey;

/// <summary>What concerns one line alone: its crew steps, its workings.</summary>
internal static class LineReport
{
    internal static int WriteCrew(JobEstimate estimate, string tag, TextWriter output, TextWriter errors)
    {
        if (Find(estimate, tag, errors) is not { } line)
        {
            return 2;
        }

        output.WriteLine($"{tag}: {line.Line.Lay.Surface.Description}; {line.Line.Lay.Description}; strip {line.Line.Lay.Stock}");
        int number = 1;
        foreach (CrewStep step in line.CrewSteps)
        {
            output.WriteLine($"{number++}. {step.Activity}: {step.Text}");
        }

        return 0;
    }

    internal static int WriteWorkings(JobEstimate estimate, string tag, TextWriter output, TextWriter errors)
    {
        if (Find(estimate, tag, errors) is not { } line)
        {
            return 2;
        }

        output.WriteLine(line.Line.Lay.Surface.ShowWorkings());
        output.WriteLine(line.Line.Lay.ShowWorkings());
        output.WriteLine(line.Life.ShowWorkings());
        if (line.Contact is { } contact)
        {
            output.WriteLine(contact.ShowWorkings());
        }

        return 0;
    }

    private static LineEstimate? Find(JobEstimate estimate, string tag, TextWriter errors)
    {
        LineEstimate? line = estimate.Lines.FirstOrDefault(one => one.Line.Tag == tag);
        if (line is null)
        {
            errors.WriteLine($"There is no line '{tag}' in the survey.");
        }

        return line;
    }
}
