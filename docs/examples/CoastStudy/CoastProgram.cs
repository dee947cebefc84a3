using System.Diagnostics;
using System.Security.Cryptography;
using SacrificialTape.Quantities;
using SacrificialTape.Sweeps;
using SacrificialTape.Sweeps.Files;

namespace CoastStudy;

/// <summary>Runs both studies in folders of slices, then writes figures and pictures.</summary>
public static class CoastProgram
{
    public static int Run(IReadOnlyList<string> arguments, TextWriter output, TextWriter errors)
    {
        if (CoastArguments.Read(arguments) is not { } asked)
        {
            errors.WriteLine(CoastArguments.Usage);
            errors.WriteLine("Rows from 1000 to 1000000000; years more than 0 and less than 150.");
            return 2;
        }

        try
        {
            var watch = Stopwatch.StartNew();
            ValueList<AnswerSummary> spread = Study("spread", CoastSite.Spread(asked.Rows, asked.Seed), CoastSite.SpreadKept(asked.Years));
            ValueList<AnswerSummary> shares = Study("sensitivity", CoastSite.Sensitivity(asked.Rows, asked.Seed), CoastSite.SensitivityKept(asked.Rows, asked.Seed));
            var result = new CoastResult(asked, spread, shares);
            File.WriteAllText(Path.Combine(asked.Folder, "summary.json"), result.ToJson());
            CoastPictures.Draw(result, asked.Folder);
            output.WriteLine(CoastSite.Said);
            output.Write(result.ToText());
            output.WriteLine($"Summaries, SHA-256: {Hash([.. spread, .. shares])}");
            errors.WriteLine(FormattableString.Invariant($"{watch.Elapsed.TotalSeconds:0.0} s; summary.json and pictures in {asked.Folder}"));
            return 0;
        }
        catch (Exception e) when (e is IOException or InvalidOperationException or UnauthorizedAccessException)
        {
            errors.WriteLine(e.Message);
            return 1;
        }

        ValueList<AnswerSummary> Study(string name, StudyTable table, AnswerSummary[] kept)
        {
            // Summaries alone: the rows would be a gigabyte that nobody reads. A run that was killed goes on where it was.
            var folder = new StudyFolder(Path.Combine(asked.Folder, name), table, kept, rowFormat: null);
            return folder.Run(asked.Threads, new Spoken(name, errors));
        }
    }

    /// <summary>One number for all that was kept, to compare runs by.</summary>
    public static string Hash(IEnumerable<AnswerSummary> kept)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (AnswerSummary one in kept)
        {
            hash.AppendData(one.Summary.Save());
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    // A line for each tenth.
    private sealed class Spoken(string name, TextWriter to) : IProgress<StudyProgress>
    {
        private int tenth;

        public void Report(StudyProgress value)
        {
            int now = (int)(10 * value.RowsDone / value.Rows);
            if (now > this.tenth)
            {
                this.tenth = now;
                to.WriteLine($"{name}: {value}");
            }
        }
    }
}
