using System.Globalization;

namespace SacrificialTape.Sweeps.Files.Tests;

/// <summary>What is written, read by readers that share no code with the writers.</summary>
public sealed class Written
{
    private static readonly StudyTable Table = Samples.Table();
    private static readonly double[][] Expected = Samples.Columns(Table.Study);

    [Fact]
    public void The_sample_has_all_kinds_of_numbers() => Assert.All<Predicate<double>>(
        [double.IsNaN, double.IsPositiveInfinity, static value => value == 0, static value => value is > 10 and < 100],
        kind => Assert.Contains(Expected[^1], kind));

    [Fact]
    public void DuckDB_reads_every_bit_of_Parquet_and_its_metadata()
    {
        using var folder = new Folder();
        string file = folder["study.parquet"];
        StudyFile.Write(file, Table, threads: 2, cancellation: TestContext.Current.CancellationToken);
        Holds(Duck.Columns($"'{file}'", Expected.Length));
        Assert.Equal(
            Table.Columns.Select(static column => column.Name),
            Duck.Ask($"DESCRIBE SELECT * FROM '{file}'").Select(static row => row[0]));
        Assert.Equal(
            [6L, 6L * 7, 5003L],
            new[] { "count(DISTINCT row_group_id)", "count(*)", "sum(CASE WHEN column_id = 0 THEN row_group_num_rows ELSE 0 END)" }
                .Select(what => Convert.ToInt64(Duck.Ask($"SELECT ({what})::BIGINT FROM parquet_metadata('{file}')")[0][0], CultureInfo.InvariantCulture)));
        var said = Duck.Ask($"SELECT decode(key), decode(value) FROM parquet_kv_metadata('{file}')").ToDictionary(static row => (string)row[0]!, static row => (string)row[1]!);
        Assert.Equal(
            ("sample 1", "7", "5003", "Latin hypercube of 5003 rows, seed 7", StudyTable.LibraryVersion, Table.Fingerprint, "mg/(m2.d)"),
            (said["sacrificialtape.model"], said["sacrificialtape.seed"], said["sacrificialtape.rows"], said["sacrificialtape.design"],
                said["sacrificialtape.version"], said["sacrificialtape.fingerprint"], said["sacrificialtape.unit.chloride \"Cl\""]));
        Assert.Equal(
            Table.Columns.Select(static column => column.Unit),
            Duck.Ask($"SELECT decode(map_extract_value(key_value_metadata, encode('unit'))) FROM parquet_metadata('{file}') WHERE row_group_id = 5 ORDER BY column_id").Select(static row => row[0]));
    }

    [Fact]
    public void DuckDB_reads_every_bit_of_CSV_and_its_headings()
    {
        using var folder = new Folder();
        string file = folder["study.csv"];
        StudyFile.Write(file, Table, FileFormat.Csv, cancellation: TestContext.Current.CancellationToken);
        Holds(Duck.Columns($"read_csv('{file}', header = true, sample_size = -1)", Expected.Length));
        Assert.Equal(
            ["temperature [degC]", "humidity [%]", "chloride \"Cl\" [mg/(m2.d)]", "zinc [um]", "class [1] []", "rate [um/a]", "life, mean [a]"],
            Duck.Ask($"DESCRIBE SELECT * FROM read_csv('{file}', header = true)").Select(static row => row[0]));
    }

    [Fact]
    public void An_Arrow_file_holds_every_bit_at_the_places_of_the_published_layout()
    {
        using var folder = new Folder();
        string file = folder["study.arrow"];
        StudyFile.Write(file, Table, FileFormat.Arrow, cancellation: TestContext.Current.CancellationToken);
        var read = new ArrowByHand(file);
        Holds([.. read.Columns.Select(static column => column.ToArray())]);
        Assert.Equal(Table.Columns.Select(static column => column.Name), read.Names);
        Assert.Equal(Table.Columns.Select(static column => column.Unit), read.Units);
        Assert.Equal((6, "7", Table.Fingerprint), (read.Batches, read.Metadata["sacrificialtape.seed"], read.Metadata["sacrificialtape.fingerprint"]));
    }

    [Theory]
    [InlineData(FileFormat.Parquet)]
    [InlineData(FileFormat.Arrow)]
    [InlineData(FileFormat.Csv)]
    public void Columns_come_back(FileFormat format)
    {
        using var folder = new Folder();
        string file = folder["study"];
        StudyFile.Write(file, Table, format, cancellation: TestContext.Current.CancellationToken);
        var read = StudyFile.Open(file);
        Assert.Equal(format, read.Format);
        Assert.Equal(Table.Columns, read.Columns);
        Holds([.. Table.Columns.Select(column => read.Column(column.Name))]);
        Assert.Equal(Expected[1].Order(), read.Measured("humidity", "%").Measured);
        Assert.Null(read.FirstOtherRow(Table, TestContext.Current.CancellationToken));
        Assert.Equal(0, read.FirstOtherRow(Samples.Table(seed: 8), TestContext.Current.CancellationToken));
        Assert.Equal(format == FileFormat.Csv ? null : "7", read.Metadata.GetValueOrDefault("sacrificialtape.seed"));
        Assert.Contains("'temperature'", Assert.Throws<ArgumentException>("name", () => read.Column("rates")).Message, StringComparison.Ordinal);
        Assert.Contains("has the unit '%', not 'degC'", Assert.Throws<ArgumentException>("unit", () => read.Measured("humidity", "degC")).Message, StringComparison.Ordinal);
        Assert.Contains("column 'rate', row ", Assert.Throws<FormatException>(() => read.Measured("rate", "um/a")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(FileFormat.Parquet)]
    [InlineData(FileFormat.Arrow)]
    [InlineData(FileFormat.Csv)]
    public void Threads_change_no_byte_and_two_runs_are_the_same(FileFormat format)
    {
        using var folder = new Folder();
        StudyFile.Write(folder["one"], Table, format, threads: 1, cancellation: TestContext.Current.CancellationToken);
        StudyFile.Write(folder["two"], Table, format, threads: 3, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(File.ReadAllBytes(folder["one"]), File.ReadAllBytes(folder["two"]));
    }

    // Somebody else's files: DuckDB writes gaps and other types, which our readers must take as what they are.
    [Fact]
    public void Columns_of_a_file_that_DuckDB_wrote_are_read()
    {
        using var folder = new Folder();
        string file = folder["other.parquet"];
        Duck.Ask($"COPY (SELECT i::DOUBLE / 7 AS seventh, CASE WHEN i % 5 = 0 THEN NULL ELSE i::DOUBLE END AS gaps, i AS whole, 'x' AS words FROM range(1000) t(i)) TO '{file}' (FORMAT parquet)");
        var read = StudyFile.Open(file);
        Assert.Equal(["seventh", "gaps"], read.Columns.Select(static column => column.Name));
        Assert.Equal(Enumerable.Range(0, 1000).Select(static i => i / 7.0), read.Column("seventh"));
        Assert.Equal(200, read.Column("gaps").Count(double.IsNaN));
        Assert.Equal(1000, read.Measured("seventh", string.Empty).Measured.Count);
        Assert.Contains("row 0", Assert.Throws<FormatException>(() => read.Measured("gaps", string.Empty)).Message, StringComparison.Ordinal);
        Assert.Contains("only doubles", Assert.Throws<ArgumentException>("name", () => read.Column("whole")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a [mm],b\n1,2\n3,4,5\n", "Line 3 has more cells than the 2 headings")]
    [InlineData("a [mm],b\n1,2\n3\n", "Line 3 has 1 cells, and there are 2 headings")]
    [InlineData("a [mm],b\n1,2\n3,zwei\n", "Line 3, column 2 'b': 'zwei' is not a number")]
    [InlineData("a;b\n1;2\n", "Line 2, column 1 'a;b': '1;2' is not a number")]
    [InlineData("\"a,b\n", "no whole line of headings")]
    public void A_wrong_cell_is_refused_with_its_place(string text, string said)
    {
        using var folder = new Folder();
        File.WriteAllText(folder["x.csv"], text);
        FormatException refused = Assert.Throws<FormatException>(() =>
        {
            var read = StudyFile.Open(folder["x.csv"]);
            read.Column(read.Columns[0].Name);
        });
        Assert.Contains(said, refused.Message, StringComparison.Ordinal);
        Assert.Contains("x.csv", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(FileFormat.Parquet)]
    [InlineData(FileFormat.Arrow)]
    public void Half_a_file_is_refused(FileFormat format)
    {
        using var folder = new Folder();
        StudyFile.Write(folder["whole"], Table, format, cancellation: TestContext.Current.CancellationToken);
        byte[] bytes = File.ReadAllBytes(folder["whole"]);
        File.WriteAllBytes(folder["half"], bytes[..(bytes.Length / 2)]);
        Assert.Contains("half", Assert.Throws<FormatException>(() => StudyFile.Open(folder["half"]).Column("rate")).Message, StringComparison.Ordinal);
        Assert.Throws<FileNotFoundException>(() => StudyFile.Open(folder["none"]));
    }

    [Fact]
    public void What_does_not_make_a_table_is_refused()
    {
        Study study = Samples.Study();
        Assert.Contains("'life, mean'", Assert.Throws<ArgumentException>("answerUnits", () => new StudyTable(study, "m", new Dictionary<string, string> { ["rate"] = "um/a" })).Message, StringComparison.Ordinal);
        Assert.Contains("No answer is named 'ratio'", Assert.Throws<ArgumentException>(
            "answerUnits", () => new StudyTable(study, "m", new Dictionary<string, string>(Samples.Units) { ["ratio"] = string.Empty })).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("model", () => new StudyTable(study, " ", Samples.Units));
        Assert.Throws<ArgumentOutOfRangeException>("sliceRows", () => new StudyTable(study, "m", Samples.Units, 0));
        var twice = new Study(study.Inputs, study.Design, ["zinc"], static (_, _) => { });
        Assert.Contains("an input and an answer", Assert.Throws<ArgumentException>(
            "study", () => new StudyTable(twice, "m", new Dictionary<string, string> { ["zinc"] = "um" })).Message, StringComparison.Ordinal);
    }

    private static void Holds(double[][] read)
    {
        Assert.Equal(Expected.Length, read.Length);
        for (int i = 0; i < read.Length; i++)
        {
            Assert.Equal(Samples.Bits(Expected[i]), Samples.Bits(read[i]));
        }
    }
}
