using System.Diagnostics;
using System.Globalization;
using SacrificialTape.Quantities;
using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Files.Tests;

/// <summary>A study in slices on disk: killed, cancelled, damaged or short of room, it ends with the same bits or says why not.</summary>
public sealed class Folders
{
    private static CancellationToken Cancelled => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(FileFormat.Parquet)]
    [InlineData(FileFormat.Arrow)]
    [InlineData(FileFormat.Csv)]
    public void Merged_slices_are_the_file_of_the_whole_study_byte_for_byte(FileFormat format)
    {
        using var folder = new Folder();
        var study = new StudyFolder(folder["slices"], Samples.Table(), Samples.Kept(), format);
        ValueList<AnswerSummary> kept = study.Run(threads: 2, cancellation: Cancelled);
        study.Merge(folder["merged"], Cancelled);
        StudyFile.Write(folder["whole"], Samples.Table(), format, cancellation: Cancelled);
        Assert.Equal(File.ReadAllBytes(folder["whole"]), File.ReadAllBytes(folder["merged"]));
        Assert.Equal(InMemory(Samples.Table().Study), Saved(kept));
    }

    [Fact]
    public void Every_slice_is_a_file_of_its_own_that_DuckDB_reads()
    {
        using var folder = new Folder();
        var study = new StudyFolder(folder.Path, Samples.Table(), Samples.Kept());
        study.Run(cancellation: Cancelled);
        double[][] read = Duck.Columns($"'{folder["slice-*.parquet"]}'", 7);
        Assert.Equal(Samples.Bits(Samples.Columns(Samples.Study())[6]), Samples.Bits(read[6]));
        Assert.Equal(
            Samples.Study().Slice(2, 6).FirstRow.ToString(CultureInfo.InvariantCulture),
            StudyFile.Open(study.FileOf(2)).Metadata["sacrificialtape.first_row"]);
    }

    // SIGKILL, which nothing in the process can see coming.
    [Fact]
    public async Task A_process_killed_in_the_middle_and_run_again_ends_with_the_same_bits()
    {
        using var folder = new Folder();
        string slices = folder["slices"];
        using (Process child = Child.Start(slices))
        {
            var waited = Stopwatch.StartNew();
            while (Manifests(slices).Length < 3 && !child.HasExited && waited.Elapsed < TimeSpan.FromMinutes(2))
            {
                await Task.Delay(20, Cancelled);
            }

            Assert.False(child.HasExited, "The child ended by itself.");
            child.Kill();
            await child.WaitForExitAsync(Cancelled);
        }

        string[] before = Manifests(slices);
        Assert.InRange(before.Length, 3, Child.Slow().Slices - 1);
        var times = before.ToDictionary(static file => file, File.GetLastWriteTimeUtc);

        var again = new StudyFolder(slices, Child.Slow(), Samples.Kept());
        ValueList<AnswerSummary> kept = again.Run(threads: 2, cancellation: Cancelled);
        again.Merge(folder["merged"], Cancelled);

        // What was whole was not done again.
        Assert.All(times, static known => Assert.Equal(known.Value, File.GetLastWriteTimeUtc(known.Key)));
        var unbroken = new StudyFolder(folder["unbroken"], Samples.Table(rows: 40_000), Samples.Kept());
        Assert.Equal(Saved(unbroken.Run(threads: 2, cancellation: Cancelled)), Saved(kept));
        unbroken.Merge(folder["other"], Cancelled);
        Assert.Equal(File.ReadAllBytes(folder["other"]), File.ReadAllBytes(folder["merged"]));
        Assert.Equal(InMemory(Samples.Study(rows: 40_000)), Saved(kept));
    }

    [Fact]
    public void Missing_and_damaged_slices_alone_are_done_again()
    {
        using var folder = new Folder();
        var study = new StudyFolder(folder.Path, Samples.Table(), Samples.Kept());
        byte[][] saved = Saved(study.Run(cancellation: Cancelled));
        var whole = Directory.EnumerateFiles(folder.Path).ToDictionary(static file => Path.GetFileName(file), File.ReadAllBytes);

        File.Delete(folder["slice-00000.json"]);
        Change(folder["slice-00001.parquet"], static bytes => bytes[^100] ^= 1);
        File.WriteAllBytes(folder["slice-00002.parquet"], whole["slice-00002.parquet"][..^1]);
        Change(folder["slice-00003.json"], static bytes => bytes[Array.IndexOf(bytes, (byte)'1', 200)] = (byte)'2');
        File.WriteAllText(folder["slice-00004.parquet.part"], "half a slice");
        var told = new List<StudyProgress>();
        Age(folder);

        Assert.Equal(saved, Saved(new StudyFolder(folder.Path, Samples.Table(), Samples.Kept()).Run(progress: new Told(told), cancellation: Cancelled)));
        Assert.Equal(whole.Keys.Order(StringComparer.Ordinal), folder.Names);
        Assert.All(whole, file => Assert.Equal(file.Value, File.ReadAllBytes(folder[file.Key])));
        Assert.Equal(
            ["slice-00000", "slice-00001", "slice-00002", "slice-00003"],
            Manifests(folder.Path).Where(static file => File.GetLastWriteTimeUtc(file).Year != 2001)
                .Select(static file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal));
        Assert.Equal(Enumerable.Range(1, 6), told.Select(static one => one.SlicesDone));
        Assert.Equal(new StudyProgress(5003, 5003, 6, 6), told[^1]);
        Assert.Equal("5003 of 5003 rows, 6 of 6 slices", told[^1].ToString());
    }

    [Fact]
    public void A_merge_of_what_is_not_whole_is_refused()
    {
        using var folder = new Folder();
        var study = new StudyFolder(folder["slices"], Samples.Table(), Samples.Kept());
        study.Run(cancellation: Cancelled);
        Change(study.FileOf(4), static bytes => bytes[50] ^= 1);
        Assert.Contains("Slice 4", Assert.Throws<InvalidOperationException>(() => study.Merge(folder["merged"], Cancelled)).Message, StringComparison.Ordinal);
        Assert.Equal([], folder.Names);
        var summaries = new StudyFolder(folder["alone"], Samples.Table(), Samples.Kept(), rowFormat: null);
        Assert.Equal(Saved(study.Run(cancellation: Cancelled)), Saved(summaries.Run(cancellation: Cancelled)));
        Assert.Throws<InvalidOperationException>(() => summaries.Merge(folder["merged"], Cancelled));
        Assert.DoesNotContain(Directory.EnumerateFiles(summaries.Path), static file => file.EndsWith(".parquet", StringComparison.Ordinal));
    }

    [Fact]
    public void A_folder_refuses_a_summary_for_the_rows_of_another_design()
    {
        using var folder = new Folder();
        StudyTable table = Samples.Table();
        var inputs = new SweepInputs(table.Study.Inputs.All);
        Assert.Contains($"'{table.Study.Design}'", Assert.Throws<ArgumentException>("design", () => new StudyFolder(
            folder["study"], table, [new("rate", new SobolIndices(new PickFreezeDesign(new RandomDesign(1, 8)), inputs))])).Message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder["study"]));
    }

    [Fact]
    public void A_folder_of_another_study_is_refused_with_what_differs()
    {
        using var folder = new Folder();
        new StudyFolder(folder.Path, Samples.Table(), Samples.Kept()).Run(cancellation: Cancelled);
        string[] before = folder.Names;
        Assert.Contains("seed 7, here Latin hypercube of 5003 rows, seed 8", Refused(Samples.Table(seed: 8)), StringComparison.Ordinal);
        Assert.Contains("model: there 'sample 1', here 'sample 2'", Refused(Samples.Table(model: "sample 2")), StringComparison.Ordinal);
        Assert.Contains("rows: there 5003, here 5004", Refused(Samples.Table(rows: 5004)), StringComparison.Ordinal);
        Assert.Contains("slices: there 6, here 11", Refused(Samples.Table(sliceRows: 500)), StringComparison.Ordinal);

        // The last digit of a bound, which no text for readers shows.
        Assert.Contains("input 'temperature': there 'degC' uniform 5 33, here 'degC' uniform 5 33.00000000000001", Refused(Samples.Table(hottest: Math.BitIncrement(33.0))), StringComparison.Ordinal);
        Assert.Contains("rows kept as: there parquet, here csv", Refused(Samples.Table(), FileFormat.Csv), StringComparison.Ordinal);
        Assert.Contains("summary 3: there Exceedance of 'life, mean'", Refused(Samples.Table(), FileFormat.Parquet, Samples.Kept()[..3]), StringComparison.Ordinal);

        // Another model that kept its name.
        var liar = new Study(Samples.Study().Inputs, Samples.Study().Design, ["rate", "life, mean"], static (rows, answers) => rows["zinc"].CopyTo(answers["rate"]));
        Assert.Contains("some rows worked out on this machine", Refused(new StudyTable(liar, "sample 1", Samples.Units, 1000)), StringComparison.Ordinal);
        Assert.Equal(before, folder.Names);

        string Refused(StudyTable table, FileFormat? format = FileFormat.Parquet, AnswerSummary[]? kept = null)
        {
            string said = Assert.Throws<InvalidOperationException>(() => new StudyFolder(folder.Path, table, kept ?? Samples.Kept(), format)).Message;
            Assert.Contains("is of another study", said, StringComparison.Ordinal);
            return said;
        }
    }

    [Fact]
    public void A_slice_of_another_study_in_the_folder_is_refused()
    {
        using var folder = new Folder();
        new StudyFolder(folder["one"], Samples.Table(), Samples.Kept()).Run(cancellation: Cancelled);
        var other = new StudyFolder(folder["other"], Samples.Table(seed: 8), Samples.Kept());
        File.Copy(Path.Combine(folder["one"], "slice-00002.json"), Path.Combine(folder["other"], "slice-00002.json"));
        Assert.Contains("slice-00002.json' is of another study", Assert.Throws<InvalidOperationException>(() => other.Run(cancellation: Cancelled)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_runs_in_one_folder_are_refused()
    {
        using var folder = new Folder();
        using var held = new FileStream(folder["study.lock"], FileMode.Create, FileAccess.ReadWrite, FileShare.None);
        var study = new StudyFolder(folder.Path, Samples.Table(), Samples.Kept());
        Assert.Contains("another one works in it", Assert.Throws<IOException>(() => study.Run(cancellation: Cancelled)).Message, StringComparison.Ordinal);
    }

    // The disk gets full in the rows of a slice, in its manifest, in the merged file: at the first byte, in the middle, near the end.
    [Theory]
    [InlineData("slice-00003.parquet", 0)]
    [InlineData("slice-00003.parquet", 10_000)]
    [InlineData("slice-00003.json", 300)]
    [InlineData("study.json", 100)]
    [InlineData("merged", 100_000)]
    [InlineData("slice-00003.arrow", 30_000)]
    [InlineData("slice-00003.csv", 30_000)]
    public void A_full_disk_is_told_and_leaves_no_file_that_looks_whole(string name, long room)
    {
        FileFormat format = name.EndsWith("arrow", StringComparison.Ordinal) ? FileFormat.Arrow
            : name.EndsWith("csv", StringComparison.Ordinal) ? FileFormat.Csv : FileFormat.Parquet;
        FullDisk(new FailingStore(name, room), name, format, FailingStore.Words);
    }

    // The kernel's own full disk.
    [Theory]
    [InlineData("slice-00003.parquet")]
    [InlineData("slice-00003.json")]
    [InlineData("merged")]
    public void The_device_that_is_always_full_is_told_and_leaves_no_file_that_looks_whole(string name)
    {
        Assert.SkipUnless(File.Exists("/dev/full"), "There is no /dev/full here.");
        FullDisk(
            new FailingStore(name, 0, static () => new FileStream("/dev/full", FileMode.Open, FileAccess.Write, FileShare.ReadWrite, 1 << 16)),
            name,
            FileFormat.Parquet,
            "No space left on device");
    }

    [Fact]
    public void A_file_that_was_there_stays_when_the_new_one_fails()
    {
        using var folder = new Folder();
        File.WriteAllText(folder["study.parquet"], "the old one");
        IOException full = Assert.Throws<IOException>(() => StudyFile.Write(
            new FailingStore("study.parquet", 50_000), folder["study.parquet"], Samples.Table(), FileFormat.Parquet, 1, null, Cancelled));
        Assert.Contains("study.parquet' could not be written whole", full.Message, StringComparison.Ordinal);
        Assert.Equal("the old one", File.ReadAllText(folder["study.parquet"]));
        Assert.Equal(["study.parquet"], folder.Names);
    }

    [Fact]
    public void A_run_that_is_ended_early_goes_on_later()
    {
        using var folder = new Folder();
        using var ended = new CancellationTokenSource();
        var study = new StudyFolder(folder.Path, Samples.Table(), Samples.Kept());
        var told = new List<StudyProgress>();
        Assert.ThrowsAny<OperationCanceledException>(() => study.Run(
            progress: new Told(told, one => { if (one.SlicesDone == 2) { ended.Cancel(); } }), cancellation: ended.Token));
        Assert.Equal(2, Manifests(folder.Path).Length);
        Assert.DoesNotContain(folder.Names, static name => name.EndsWith(".part", StringComparison.Ordinal));
        Assert.Equal(InMemory(Samples.Study()), Saved(study.Run(cancellation: Cancelled)));

        using var atOnce = new CancellationTokenSource();
        atOnce.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => StudyFile.Write(folder["x"], Samples.Table(), cancellation: atOnce.Token));
        Assert.DoesNotContain(folder.Names, static name => name.StartsWith('x'));
    }

    [Fact]
    public void A_model_that_fails_says_so()
    {
        using var folder = new Folder();
        Study sound = Samples.Study();

        // The rows that the fingerprint looks at come one at a time.
        var failing = new Study(sound.Inputs, sound.Design, sound.Answers, static (rows, _) =>
        {
            if (rows.Rows > 1)
            {
                throw new InvalidOperationException("the model's own words");
            }
        });
        var study = new StudyFolder(folder.Path, new StudyTable(failing, "failing", Samples.Units, 1000), Samples.Kept());
        Assert.Equal("the model's own words", Assert.Throws<InvalidOperationException>(() => study.Run(threads: 2, cancellation: Cancelled)).Message);
        Assert.Empty(Manifests(folder.Path));
    }

    private static void FullDisk(FailingStore store, string name, FileFormat format, string words)
    {
        using var folder = new Folder();
        IOException full = Assert.Throws<IOException>(() =>
        {
            var study = new StudyFolder(store, folder["slices"], Samples.Table(), Samples.Kept(), format);
            study.Run(cancellation: Cancelled);
            study.Merge(folder["merged"], Cancelled);
        });
        Assert.Contains($"{name}' could not be written whole, and nothing of it is kept", full.Message, StringComparison.Ordinal);
        Assert.Contains(words, full.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(Directory.EnumerateFiles(folder.Path, "*", SearchOption.AllDirectories), file => file.Contains(name, StringComparison.Ordinal));

        // With room again it goes on, and nothing shows what happened.
        var again = new StudyFolder(folder["slices"], Samples.Table(), Samples.Kept(), format);
        Assert.Equal(InMemory(Samples.Study()), Saved(again.Run(cancellation: Cancelled)));
        again.Merge(folder["merged"], Cancelled);
        StudyFile.Write(folder["whole"], Samples.Table(), format, cancellation: Cancelled);
        Assert.Equal(File.ReadAllBytes(folder["whole"]), File.ReadAllBytes(folder["merged"]));
    }

    private static byte[][] InMemory(Study study)
    {
        AnswerSummary[] kept = Samples.Kept();
        study.Run(kept, threads: 2, cancellation: Cancelled);
        return Saved([.. kept]);
    }

    private static byte[][] Saved(ValueList<AnswerSummary> kept) => [.. kept.Select(static one => one.Summary.Save())];

    private static string[] Manifests(string folder) => Directory.Exists(folder) ? Directory.GetFiles(folder, "slice-*.json") : [];

    private static void Change(string file, Action<byte[]> change)
    {
        byte[] bytes = File.ReadAllBytes(file);
        change(bytes);
        File.WriteAllBytes(file, bytes);
    }

    // Times of long ago, so that a file written anew stands out on any clock.
    private static void Age(Folder folder) => Array.ForEach(
        folder.Names, name => File.SetLastWriteTimeUtc(folder[name], new DateTime(2001, 6, 1, 0, 0, 0, DateTimeKind.Utc)));

    private sealed class Told(List<StudyProgress> told, Action<StudyProgress>? also = null) : IProgress<StudyProgress>
    {
        public void Report(StudyProgress value)
        {
            told.Add(value);
            also?.Invoke(value);
        }
    }
}
