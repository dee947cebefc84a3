using SacrificialTape.Sweeps;
using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Batch;
using SacrificialTape.Sweeps.Files;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Snippets;

/// <summary>What docs/sweep-files.md quotes; each writes into a folder of its own that goes afterwards.</summary>
public static class SweepFilesPage
{
    public static void Written() => InFolder(static place =>
    {
        Study study = Some();
        #region written
        var table = new StudyTable(study, model: "linear life, version 1", new Dictionary<string, string> { ["life"] = "a" });
        string file = Path.Combine(place, "lives.parquet");
        StudyFile.Write(file, table, FileFormat.Parquet, threads: 2);

        var read = StudyFile.Open(file);
        Console.WriteLine(string.Join(", ", read.Columns));
        Console.WriteLine($"{read.Metadata["sacrificialtape.design"]}, by {read.Metadata["sacrificialtape.model"]}");
        Console.WriteLine($"{read.Column("life").Length} rows, {(read.FirstOtherRow(table) is null ? "all as worked out" : "changed")}");
        #endregion
    });

    public static void Measured() => InFolder(static place =>
    {
        string file = Path.Combine(place, "gauge.csv");
        #region measured
        File.WriteAllText(file, "zinc [um],rate [um/a]\n81.5,2.4\n79.0,3.1\n80.2,2.2\n78.8,2.9\n");
        EmpiricalValues rates = StudyFile.Open(file).Measured("rate", unit: "um/a");
        Console.WriteLine(rates);
        #endregion
    });

    public static void Slices() => InFolder(static place =>
    {
        Study study = Some();
        #region slices
        var table = new StudyTable(study, "linear life, version 1", new Dictionary<string, string> { ["life"] = "a" }, sliceRows: 2000);
        AnswerSummary[] wanted = [new("life", new Moments())];
        string folder = Path.Combine(place, "slices");
        new StudyFolder(folder, table, wanted).Run();

        // As a crash might leave it: one slice is gone, one is half a file.
        File.Delete(Path.Combine(folder, "slice-00001.json"));
        File.WriteAllText(Path.Combine(folder, "slice-00003.parquet"), "half");
        var kept = new StudyFolder(folder, table, wanted).Run(threads: 2);
        var whole = new Moments();
        study.Run([new("life", whole)]);
        Console.WriteLine(kept[0].Summary.Save().SequenceEqual(whole.Save()));
        #endregion
    });

    public static void Another() => InFolder(static place =>
    {
        Study study = Some();
        var table = new StudyTable(study, "linear life, version 1", new Dictionary<string, string> { ["life"] = "a" });
        string folder = Path.Combine(place, "slices");
        new StudyFolder(folder, table, []).Run();
        try
        {
            #region another
            var other = new StudyTable(study, "linear life, version 2", new Dictionary<string, string> { ["life"] = "a" });
            new StudyFolder(folder, other, []).Run();
            #endregion
        }
        catch (InvalidOperationException e)
        {
            Console.WriteLine(e.Message.Replace(folder, "slices", StringComparison.Ordinal));
        }
    });

    private static Study Some() => new(
        new SweepInputs(
        [
            new("zinc", "um", new UniformValues(72, 88)),
            new("rate", "um/a", new TriangularValues(2.1, 2.8, 4.2)),
        ]),
        new LatinHypercubeDesign(seed: 7, rows: 10_000),
        ["life"],
        static (rows, answers) => LifeRows.Linear(rows["zinc"], rows["rate"], answers["life"]));

    private static void InFolder(Action<string> work)
    {
        string place = Directory.CreateTempSubdirectory().FullName;
        try
        {
            work(place);
        }
        finally
        {
            Directory.Delete(place, recursive: true);
        }
    }
}
