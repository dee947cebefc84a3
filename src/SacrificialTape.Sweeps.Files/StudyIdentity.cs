using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using SacrificialTape.Quantities;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Files;

/// <summary>What makes a study the study it is, part by part, so that a difference can be named.</summary>
internal sealed class StudyIdentity
{
    private const int ProbedUnits = 64;

    private StudyIdentity(ValueList<KeyValuePair<string, string>> parts)
    {
        this.Parts = parts;
        this.Fingerprint = Hash(string.Join('\n', parts.Select(static part => $"{part.Key}={part.Value}")));
    }

    /// <summary>Name and text of each part; no text has a line break.</summary>
    internal ValueList<KeyValuePair<string, string>> Parts { get; }

    internal string Fingerprint { get; }

    internal static StudyIdentity Of(StudyTable table)
    {
        Study study = table.Study;
        var parts = new List<KeyValuePair<string, string>>
        {
            new("model", Quoted(table.Model)),
            new("library version", StudyTable.LibraryVersion),
            new("design", study.Design.ToString()!),
            new("rows", study.Rows.ToString(CultureInfo.InvariantCulture)),
        };
        parts.AddRange(study.Inputs.All.Select(static input =>
            new KeyValuePair<string, string>($"input {Quoted(input.Name)}", $"{Quoted(input.Unit)} {Exact(input.Values)}")));
        parts.AddRange(study.Inputs.Correlations.Select(static pair => new KeyValuePair<string, string>(
            $"correlation of {Quoted(pair.One)} and {Quoted(pair.Other)}", Exact(pair.Coefficient))));
        parts.AddRange(table.Columns.Skip(study.Inputs.Count).Select(static answer =>
            new KeyValuePair<string, string>($"answer {Quoted(answer.Name)}", Quoted(answer.Unit))));
        parts.Add(new("some rows worked out on this machine", Probed(study)));
        return new StudyIdentity([.. parts]);
    }

    /// <summary>The same study with more that must agree.</summary>
    internal StudyIdentity With(IEnumerable<KeyValuePair<string, string>> more) => new([.. this.Parts, .. more]);

    internal static string Hash(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    // Every digit: what ToString rounds would make two studies one.
    private static string Exact(InputValues values) => values switch
    {
        FixedValue one => $"fixed {Exact(one.Value)}",
        ListedValues list => $"listed {Many(list.Values)}",
        RangedValues range => $"ranged {Exact(range.Low)} {Exact(range.High)} {range.Levels} {range.Spacing}",
        UniformValues uniform => $"uniform {Exact(uniform.Low)} {Exact(uniform.High)}",
        TriangularValues corner => $"triangular {Exact(corner.Low)} {Exact(corner.Likeliest)} {Exact(corner.High)}",
        NormalValues normal => $"normal {Exact(normal.Mean)} {Exact(normal.Deviation)}",
        LogNormalValues normal => $"log-normal {Exact(normal.Median)} {Exact(normal.LogDeviation)}",
        TruncatedValues part => $"truncated {Exact(part.Low)} {Exact(part.High)} of {Exact(part.Whole)}",
        EmpiricalValues measured => $"measured {Many(measured.Measured)}",
        _ => throw new NotSupportedException($"Values of the kind {values.GetType().Name} have no fingerprint yet."),
    };

    private static string Exact(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static string Many(ValueList<double> values)
    {
        string all = string.Join(' ', values.Select(Exact));
        return values.Count <= 32 ? all : FormattableString.Invariant($"{values.Count} values with SHA-256 {Hash(all)}");
    }

    // A name must not be able to look like two parts.
    private static string Quoted(string text) => $"'{System.Text.Json.JsonEncodedText.Encode(text)}'";

    // Rows from all over the study: another model under the same name, or a machine with other last digits, shows here.
    private static string Probed(Study study)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        long units = study.Rows / study.RowsTogether;
        long asked = Math.Min(units, ProbedUnits);
        Span<byte> bytes = stackalloc byte[sizeof(double)];
        for (long i = 0; i < asked; i++)
        {
            long unit = (long)((Int128)units * i / asked);
            StudyRows rows = study.Work(unit * study.RowsTogether, study.RowsTogether);
            for (int column = 0; column < study.Inputs.Count + study.Answers.Count; column++)
            {
                ReadOnlySpan<double> values = column < study.Inputs.Count ? rows.Inputs[column] : rows.Answers[column - study.Inputs.Count];
                foreach (double value in values)
                {
                    // One pattern for all that is not a number: which one an operation leaves is the processor's affair.
                    System.Buffers.Binary.BinaryPrimitives.WriteDoubleLittleEndian(bytes, double.IsNaN(value) ? double.NaN : value);
                    hash.AppendData(bytes);
                }
            }
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }
}
