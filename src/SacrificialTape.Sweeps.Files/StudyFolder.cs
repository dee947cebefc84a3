using System.Globalization;
using System.Runtime.ExceptionServices;
using System.Security.Cryptography;
using SacrificialTape.Quantities;
using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Files.Folders;
using SacrificialTape.Sweeps.Files.Rows;

namespace SacrificialTape.Sweeps.Files;

/// <summary>A study worked out slice by slice into a folder: what is there and whole is not done again, whenever and however a run ended.</summary>
/// <remarks>
/// A slice counts when its manifest is there, sealed, of this study, and its file hashes to what the manifest says. Files get their
/// names only when they are whole and on the disk, the manifest last. Summaries are joined in the order of slices. So a study that
/// was killed and taken up again ends with the same bits as one that was not.
/// </remarks>
public sealed class StudyFolder
{
    private readonly FileStore store;
    private readonly AnswerSummary[] kept;
    private readonly int[] columns;
    private readonly StudyIdentity identity;

    /// <summary>Takes a folder for a study, or takes a study up again.</summary>
    /// <param name="path">The folder; made if there is none.</param>
    /// <param name="table">The study.</param>
    /// <param name="summaries">What is to be kept of answers; these stay as they are, a run gives filled ones.</param>
    /// <param name="rowFormat">What kind of file the rows of a slice go to; null to keep summaries alone.</param>
    /// <exception cref="ArgumentException">A summary names no answer of the study, or is for the rows of another design or of other inputs.</exception>
    /// <exception cref="InvalidOperationException">The folder is of another study; the message says where they differ.</exception>
    /// <exception cref="IOException">The folder cannot be written to.</exception>
    public StudyFolder(string path, StudyTable table, IEnumerable<AnswerSummary> summaries, FileFormat? rowFormat = FileFormat.Parquet)
        : this(FileStore.Disk, path, table, summaries, rowFormat)
    {
    }

    internal StudyFolder(FileStore store, string path, StudyTable table, IEnumerable<AnswerSummary> summaries, FileFormat? rowFormat)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(summaries);
        this.store = store;
        this.Path = path;
        this.Table = table;
        this.RowFormat = rowFormat;
        this.kept = [.. summaries];
        table.Study.Check(this.kept);
        this.columns = [.. this.kept.Select(one => this.ColumnOf(one.Answer))];
        this.identity = table.Identity.With(
        [
            new("slices", table.Slices.ToString(CultureInfo.InvariantCulture)),
            new("rows kept as", rowFormat is { } format ? RowsWriter.Ending(format) : "summaries alone"),
            .. this.kept.Select(static (one, i) => new KeyValuePair<string, string>(
                FormattableString.Invariant($"summary {i}"), $"{one.Summary.GetType().Name} of '{one.Answer}', set up as {SetUp(one.Summary)}")),
        ]);
        Directory.CreateDirectory(path);
        string manifest = this.PathOf(FolderManifest.Name);
        if (FolderManifest.Read(manifest) is not { } there)
        {
            store.WriteWhole(manifest, stream => FolderManifest.Write(stream, this.identity));
        }
        else if (!there.Equals(this.identity.Parts))
        {
            throw new InvalidOperationException(
                $"The folder '{path}' is of another study. {FolderManifest.Differences(there, this.identity.Parts)}. Name another folder.");
        }
    }

    /// <summary>The folder.</summary>
    public string Path { get; }

    /// <summary>The study.</summary>
    public StudyTable Table { get; }

    /// <summary>What kind of file the rows of a slice go to; null where summaries alone are kept.</summary>
    public FileFormat? RowFormat { get; }

    /// <summary>The file of a slice's rows, whether it is there or not.</summary>
    /// <param name="slice">Which slice, from 0.</param>
    /// <exception cref="InvalidOperationException">Summaries alone are kept.</exception>
    public string FileOf(int slice) => this.PathOf(FormattableString.Invariant($"slice-{slice:00000}.{RowsWriter.Ending(this.Kind)}"));

    /// <summary>Works out the slices that are not there whole, and joins the summaries of all.</summary>
    /// <param name="threads">How many slices at a time at most; each has its rows in memory.</param>
    /// <param name="progress">Is told after each slice, also of those that were there.</param>
    /// <param name="cancellation">Ends the run early; what is whole stays for the next.</param>
    /// <returns>For each summary asked for a filled one.</returns>
    /// <exception cref="IOException">A file could not be written whole, or another process works in the folder.</exception>
    /// <exception cref="InvalidOperationException">A slice in the folder is of another study.</exception>
    /// <exception cref="OperationCanceledException">The run was ended early.</exception>
    public ValueList<AnswerSummary> Run(int threads = 1, IProgress<StudyProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        using FileStream alone = this.Lock();
        foreach (string part in Directory.EnumerateFiles(this.Path, "slice-*" + FileStore.Unfinished))
        {
            File.Delete(part);
        }

        long rows = 0;
        int slices = 0;
        var told = new Lock();
        try
        {
            Parallel.For(
                0,
                this.Table.Slices,
                new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancellation },
                () => (double[][]?)null,
                (slice, _, buffers) =>
                {
                    if (this.Whole(slice) is null)
                    {
                        buffers ??= this.Table.Buffers();
                        this.Make(slice, buffers, cancellation);
                    }

                    lock (told)
                    {
                        rows += this.Table.Slice(slice).Rows;
                        progress?.Report(new StudyProgress(rows, this.Table.Study.Rows, ++slices, this.Table.Slices));
                    }

                    return buffers;
                },
                static _ => { });
        }
        catch (AggregateException several)
        {
            Exception first = several.InnerExceptions.FirstOrDefault(static one => one is not OperationCanceledException) ?? several.InnerExceptions[0];
            ExceptionDispatchInfo.Throw(first);
        }

        return this.Joined();
    }

    /// <summary>Puts the rows of all slices into one file, the same bytes as <see cref="StudyFile.Write(string, StudyTable, FileFormat, int, IProgress{StudyProgress}, CancellationToken)"/> makes.</summary>
    /// <param name="path">The file; one that is there is replaced, and only when the new one is whole.</param>
    /// <param name="cancellation">Ends the work early; no file is left.</param>
    /// <exception cref="InvalidOperationException">Summaries alone are kept, or a slice is missing or damaged.</exception>
    /// <exception cref="IOException">The file could not be written whole; nothing is left of it.</exception>
    public void Merge(string path, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        FileFormat format = this.Kind;
        double[][] buffers = this.Table.Buffers();
        this.store.WriteWhole(path, stream =>
        {
            using RowsWriter writer = RowsWriter.Open(format, stream, this.Table.Columns, this.Table.Metadata(0));
            for (int slice = 0; slice < this.Table.Slices; slice++)
            {
                cancellation.ThrowIfCancellationRequested();
                _ = this.Whole(slice) ?? throw new InvalidOperationException(
                    FormattableString.Invariant($"Slice {slice} of '{this.Path}' is missing or damaged: run the study again, which does only what is missing."));
                int done = 0;
                foreach ((double[][] group, int rows) in StudyFile.Open(this.FileOf(slice)).Groups())
                {
                    for (int i = 0; i < group.Length; i++)
                    {
                        group[i].AsSpan(0, rows).CopyTo(buffers[i].AsSpan(done));
                    }

                    done += rows;
                }

                writer.Write(buffers, done);
            }

            writer.Complete();
        });
    }

    private FileFormat Kind => this.RowFormat ?? throw new InvalidOperationException("This study keeps summaries alone: there are no rows.");

    private static string SetUp(Summary summary) => Convert.ToHexStringLower(SHA256.HashData(summary.Fresh().Save()))[..16];

    private int ColumnOf(string answer)
    {
        int inputs = this.Table.Study.Inputs.Count;
        for (int i = inputs; i < this.Table.Columns.Count; i++)
        {
            if (this.Table.Columns[i].Name == answer)
            {
                return i;
            }
        }

        throw new ArgumentException($"No answer is named '{answer}'; there are {string.Join(", ", this.Table.Study.Answers.Select(static one => $"'{one}'"))}.", nameof(answer));
    }

    private string PathOf(string name) => System.IO.Path.Combine(this.Path, name);

    private string ManifestOf(int slice) => this.PathOf(FormattableString.Invariant($"slice-{slice:00000}.json"));

    // The system lets go of it when the process ends, however that happens.
    private FileStream Lock()
    {
        string path = this.PathOf("study.lock");
        try
        {
            return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException e)
        {
            throw new IOException($"The folder '{this.Path}' cannot be taken for this run, perhaps because another one works in it: {e.Message}", e);
        }
    }

    // The manifest of a slice that is there whole.
    private SliceManifest? Whole(int slice)
    {
        if (SliceManifest.Read(this.ManifestOf(slice)) is not { } manifest)
        {
            return null;
        }

        if (manifest.Identity != this.identity.Fingerprint)
        {
            throw new InvalidOperationException($"'{this.ManifestOf(slice)}' is of another study than the folder. Take it out, or name another folder.");
        }

        if (manifest.Slice != slice || new SweepSlice(manifest.FirstRow, manifest.Rows) != this.Table.Slice(slice) || manifest.Summaries.Count != this.kept.Length)
        {
            return null;
        }

        if (this.RowFormat is null)
        {
            return manifest;
        }

        var file = new FileInfo(this.FileOf(slice));
        if (!file.Exists || file.Length != manifest.Bytes)
        {
            return null;
        }

        using FileStream stream = file.OpenRead();
        return Convert.ToHexStringLower(SHA256.HashData(stream)) == manifest.Hash ? manifest : null;
    }

    private void Make(int slice, double[][] buffers, CancellationToken cancellation)
    {
        SweepSlice part = this.Table.Slice(slice);
        this.Table.Work(part, buffers, threads: 1, cancellation);
        long bytes = 0;
        string hash = string.Empty;
        if (this.RowFormat is { } format)
        {
            this.store.WriteWhole(this.FileOf(slice), stream =>
            {
                using var hashing = new HashingStream(stream);
                using RowsWriter writer = RowsWriter.Open(format, hashing, this.Table.Columns, this.Table.Metadata(part.FirstRow));
                writer.Write(buffers, (int)part.Rows);
                writer.Complete();
                bytes = hashing.Length;
                hash = hashing.Hash();
            });
        }

        byte[][] saved = new byte[this.kept.Length][];
        for (int i = 0; i < saved.Length; i++)
        {
            Summary own = this.kept[i].Summary.Fresh();
            own.Add(part.FirstRow, buffers[this.columns[i]].AsSpan(0, (int)part.Rows));
            saved[i] = own.Save();
        }

        var manifest = new SliceManifest(this.identity.Fingerprint, slice, part.FirstRow, part.Rows, bytes, hash, saved);
        this.store.WriteWhole(this.ManifestOf(slice), manifest.Write);
    }

    private ValueList<AnswerSummary> Joined()
    {
        AnswerSummary[] joined = [.. this.kept.Select(static one => new AnswerSummary(one.Answer, one.Summary.Fresh()))];
        for (int slice = 0; slice < this.Table.Slices; slice++)
        {
            SliceManifest manifest = SliceManifest.Read(this.ManifestOf(slice))
                ?? throw new IOException($"'{this.ManifestOf(slice)}' was whole and is not any more.");
            for (int i = 0; i < joined.Length; i++)
            {
                joined[i].Summary.JoinSaved(manifest.Summaries[i]);
            }
        }

        return [.. joined];
    }
}
