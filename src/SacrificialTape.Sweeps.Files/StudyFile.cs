using System.Globalization;
using System.Runtime.InteropServices;
using SacrificialTape.Quantities;
using SacrificialTape.Sweeps.Files.Rows;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Files;

/// <summary>
/// A Parquet, Arrow IPC or CSV file with columns of numbers: written from a study, or read, whether a study wrote it or somebody else.
/// </summary>
/// <remarks>
/// Slice by slice: of what is written one slice is in memory at a time, of what is read one row group, and the columns that are asked
/// for. A gap in a column is read as NaN. Between calls no file is open.
/// </remarks>
public sealed class StudyFile
{
    private readonly string path;

    private StudyFile(string path, FileFormat format, RowsReader rows)
    {
        this.path = path;
        this.Format = format;
        this.Columns = [.. rows.Columns];
        this.Metadata = rows.Metadata.ToDictionary(StringComparer.Ordinal);
        this.Others = rows.Others;
    }

    /// <summary>What kind of file it is, told by its first bytes.</summary>
    public FileFormat Format { get; }

    /// <summary>The columns that hold doubles.</summary>
    public ValueList<FileColumn> Columns { get; }

    /// <summary>What the file says about itself, empty in CSV; what a study said begins with "sacrificialtape.".</summary>
    public IReadOnlyDictionary<string, string> Metadata { get; }

    private IReadOnlyDictionary<string, string> Others { get; }

    /// <summary>Opens a file.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="IOException">There is no such file, or it cannot be read.</exception>
    /// <exception cref="FormatException">It is no such file, or not a whole one.</exception>
    public static StudyFile Open(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        return Reading(path, () =>
        {
            using FileStream stream = File.OpenRead(path);
            using RowsReader rows = RowsReader.Open(stream, out FileFormat format);
            return new StudyFile(path, format, rows);
        });
    }

    /// <summary>A whole column.</summary>
    /// <param name="name">Its name, without unit.</param>
    /// <exception cref="ArgumentException">No column of doubles has that name.</exception>
    /// <exception cref="FormatException">The file is damaged, or a cell holds no number; the message says where.</exception>
    public double[] Column(string name)
    {
        int column = this.IndexOf(name);
        return Reading(this.path, () =>
        {
            var numbers = new List<double>();
            foreach ((double[][] columns, int rows) in this.Groups())
            {
                numbers.AddRange(columns[column].AsSpan(0, rows));
            }

            return numbers.ToArray();
        });
    }

    /// <summary>A column as measurements, from which a study then draws.</summary>
    /// <param name="name">Its name, without unit.</param>
    /// <param name="unit">The unit that you expect; empty where the file says none.</param>
    /// <exception cref="ArgumentException">No column of doubles has that name, its unit is another, or it has fewer than two numbers.</exception>
    /// <exception cref="FormatException">A row is a gap or not finite, or the file is damaged; the message says where.</exception>
    public EmpiricalValues Measured(string name, string unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        FileColumn column = this.Columns[this.IndexOf(name)];
        if (column.Unit != unit)
        {
            throw new ArgumentException($"Column '{name}' of '{this.path}' has the unit '{column.Unit}', not '{unit}'.", nameof(unit));
        }

        double[] numbers = this.Column(name);
        int gap = Array.FindIndex(numbers, static number => !double.IsFinite(number));
        return gap < 0 ? new EmpiricalValues(numbers) : throw new FormatException(string.Create(
            CultureInfo.InvariantCulture, $"'{this.path}', column '{name}', row {gap}, from 0: a gap or not a finite number, which is no measurement."));
    }

    /// <summary>Works a study out anew and compares the file with it, bit for bit.</summary>
    /// <param name="table">The study.</param>
    /// <param name="cancellation">Ends the comparison early.</param>
    /// <returns>The first row that differs, is missing, or is one too many; null where all agree.</returns>
    /// <exception cref="ArgumentException">The columns or their units are others.</exception>
    /// <exception cref="FormatException">The file is damaged.</exception>
    public long? FirstOtherRow(StudyTable table, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(table);
        if (!this.Columns.Equals(table.Columns))
        {
            throw new ArgumentException(
                $"The file has the columns {string.Join(", ", this.Columns)}; the study {string.Join(", ", table.Columns)}.", nameof(table));
        }

        return Reading<long?>(this.path, () => this.Compare(table, cancellation));
    }


    /// <summary>Works a study out and writes all its rows.</summary>
    /// <param name="path">The file; one that is there is replaced, and only when the new one is whole.</param>
    /// <param name="table">The study.</param>
    /// <param name="format">What kind of file.</param>
    /// <param name="threads">How many threads at most; they change no byte.</param>
    /// <param name="progress">Is told after each slice.</param>
    /// <param name="cancellation">Ends the work early; no file is left.</param>
    /// <exception cref="IOException">The file could not be written whole; nothing is left of it.</exception>
    /// <exception cref="OperationCanceledException">The work was ended early.</exception>
    public static void Write(
        string path,
        StudyTable table,
        FileFormat format = FileFormat.Parquet,
        int threads = 1,
        IProgress<StudyProgress>? progress = null,
        CancellationToken cancellation = default) => Write(FileStore.Disk, path, table, format, threads, progress, cancellation);

    internal static void Write(
        FileStore store,
        string path,
        StudyTable table,
        FileFormat format,
        int threads,
        IProgress<StudyProgress>? progress,
        CancellationToken cancellation)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        ArgumentNullException.ThrowIfNull(table);
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        double[][] columns = table.Buffers();
        store.WriteWhole(path, stream =>
        {
            long done = 0;
            using RowsWriter writer = RowsWriter.Open(format, stream, table.Columns, table.Metadata(0));
            for (int slice = 0; slice < table.Slices; slice++)
            {
                SweepSlice part = table.Slice(slice);
                table.Work(part, columns, threads, cancellation);
                writer.Write(columns, (int)part.Rows);
                done += part.Rows;
                progress?.Report(new StudyProgress(done, table.Study.Rows, slice + 1, table.Slices));
            }

            writer.Complete();
        });
    }

    internal IEnumerable<(double[][] Columns, int Rows)> Groups()
    {
        using FileStream stream = File.OpenRead(this.path);
        using RowsReader reader = RowsReader.Open(stream, out _);
        foreach ((double[][] Columns, int Rows) group in reader.Groups())
        {
            yield return group;
        }
    }

    // What a library throws at bytes that are no such file is as many kinds as there are libraries.
    private static T Reading<T>(string path, Func<T> read)
    {
        try
        {
            return read();
        }
        catch (Exception e) when (e is not (IOException or UnauthorizedAccessException or OperationCanceledException or OutOfMemoryException)
            || e is InvalidDataException or EndOfStreamException)
        {
            throw new FormatException($"'{path}' could not be read: {e.Message}", e);
        }
    }

    private int IndexOf(string name)
    {
        for (int i = 0; i < this.Columns.Count; i++)
        {
            if (this.Columns[i].Name == name)
            {
                return i;
            }
        }

        throw new ArgumentException(
            this.Others.TryGetValue(name, out string? kind)
                ? $"Column '{name}' of '{this.path}' holds {kind}; only doubles are read."
                : $"'{this.path}' has no column '{name}'; there are {string.Join(", ", this.Columns.Select(static one => $"'{one.Name}'"))}.",
            nameof(name));
    }

    private long? Compare(StudyTable table, CancellationToken cancellation)
    {
        long row = 0;
        double[][] expected = [];
        foreach ((double[][] columns, int rows) in this.Groups())
        {
            int known = (int)Math.Min(rows, table.Study.Rows - row);
            if (expected.Length == 0 || expected[0].Length < known)
            {
                expected = [.. columns.Select(_ => new double[known])];
            }

            table.Work(new SweepSlice(row, known), expected, threads: 1, cancellation);
            int same = known;
            for (int i = 0; i < columns.Length; i++)
            {
                // As bits: a NaN is equal to itself, a zero not to its negative.
                int alike = MemoryMarshal.AsBytes(columns[i].AsSpan(0, same)).CommonPrefixLength(MemoryMarshal.AsBytes(expected[i].AsSpan(0, same)));
                same = Math.Min(same, alike / sizeof(double));
            }

            row += same;
            if (same < rows)
            {
                return row;
            }
        }

        return row < table.Study.Rows ? row : null;
    }
}
