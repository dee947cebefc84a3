using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>
/// What is kept of an answer while its rows stream by. Two summaries of parts join to the summary of the whole, bit for bit and
/// in any order.
/// </summary>
/// <remarks>Not for use from several threads at once: give each its own and join them.</remarks>
public abstract class Summary
{
    private protected Summary()
    {
    }

    /// <summary>Takes consecutive rows.</summary>
    /// <param name="firstRow">The first row, counted in the whole sweep from 0.</param>
    /// <param name="answers">The answers of the rows.</param>
    public abstract void Add(long firstRow, ReadOnlySpan<double> answers);

    /// <summary>Joins another summary of other rows of the same sweep to this one.</summary>
    /// <param name="other">The other one; it stays as it is.</param>
    /// <exception cref="ArgumentException">It is of another kind, or was set up otherwise.</exception>
    public abstract void Join(Summary other);

    /// <summary>A summary set up like this one that has taken nothing.</summary>
    public abstract Summary Fresh();

    /// <summary>All that is kept, as bytes for a file or another machine. Two summaries of the same rows have the same bytes.</summary>
    public byte[] Save()
    {
        using var bytes = new MemoryStream();
        using var writer = new BinaryWriter(bytes);
        this.WriteHead(writer);
        this.WriteState(writer);
        writer.Flush();
        return bytes.ToArray();
    }

    /// <summary>Joins what a summary set up like this one has saved.</summary>
    /// <param name="saved">The bytes of <see cref="Save"/>.</param>
    /// <exception cref="ArgumentException">They are of another kind, of one set up otherwise, or damaged.</exception>
    public void JoinSaved(ReadOnlySpan<byte> saved)
    {
        byte[] head = this.Head();
        if (!saved.StartsWith(head))
        {
            throw new ArgumentException($"Not the bytes of a {this.GetType().Name} set up like this one.", nameof(saved));
        }

        Summary other = this.Fresh();
        using var bytes = new MemoryStream(saved[head.Length..].ToArray());
        using var reader = new BinaryReader(bytes);
        try
        {
            other.ReadState(reader);
        }
        catch (Exception e) when (e is EndOfStreamException or FormatException)
        {
            throw new ArgumentException("The bytes end too early or are damaged.", nameof(saved), e);
        }

        if (bytes.Position != bytes.Length)
        {
            throw new ArgumentException("There are more bytes than a summary has.", nameof(saved));
        }

        this.Join(other);
    }

    /// <summary>Kind and set-up as bytes: what must be equal for two to join.</summary>
    private byte[] Head()
    {
        using var bytes = new MemoryStream();
        using var writer = new BinaryWriter(bytes);
        this.WriteHead(writer);
        writer.Flush();
        return bytes.ToArray();
    }

    private protected abstract void WriteSetup(BinaryWriter writer);

    private protected abstract void WriteState(BinaryWriter writer);

    private protected abstract void ReadState(BinaryReader reader);

    /// <summary>Refuses rows of a design, or over inputs, that it is not for.</summary>
    internal virtual void CheckRows(Design design, SweepInputs inputs)
    {
    }

    private protected void CheckRows(Design own, SweepInputs ownInputs, Design design, SweepInputs inputs)
    {
        if (!own.IsSame(design))
        {
            throw new ArgumentException(
                $"A {this.GetType().Name} over the rows of '{own}' can make nothing of rows of '{design}'. Give the study the design of the summary.", nameof(design));
        }

        if (!ownInputs.IsSame(inputs))
        {
            throw new ArgumentException(
                $"A {this.GetType().Name} over the inputs '{ownInputs}' can make nothing of rows over '{inputs}'. Give both the same inputs.", nameof(inputs));
        }
    }

    /// <summary>Rows that belong together come together, and none comes that the design does not have.</summary>
    private protected static void CheckPlace(string groups, int stride, Design design, long designRows, long firstRow, int answers)
    {
        if (firstRow % stride != 0 || answers % stride != 0)
        {
            throw new ArgumentException($"Rows of {groups} of {stride}: begin and end with whole ones.", nameof(answers));
        }

        if (firstRow < 0 || firstRow > designRows - answers)
        {
            throw new ArgumentException($"The design '{design}' has {designRows} rows over these inputs.", nameof(answers));
        }
    }

    private protected static void WriteInputs(BinaryWriter writer, SweepInputs inputs)
    {
        writer.Write(inputs.Count);
        foreach (SweepInput input in inputs.All)
        {
            writer.Write(input.Name);
            writer.Write(input.Unit);
            writer.Write(input.Values.Kind);
            double[] numbers = input.Values.Numbers;
            writer.Write(numbers.Length);
            Array.ForEach(numbers, writer.Write);
        }
    }

    private void WriteHead(BinaryWriter writer)
    {
        writer.Write(this.GetType().Name);
        this.WriteSetup(writer);
    }

    private protected static T Same<T>(Summary other)
        where T : Summary
    {
        ArgumentNullException.ThrowIfNull(other);
        return other as T ?? throw new ArgumentException($"A {other.GetType().Name} cannot join a {typeof(T).Name}.", nameof(other));
    }
}
