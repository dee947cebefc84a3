using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>One input of a batch: a number for each row, or one number for all rows.</summary>
/// <remarks>A view that copies nothing. <c>default</c> is a column of no rows.</remarks>
public readonly ref struct Column
{
    private readonly ReadOnlySpan<double> rows;
    private readonly double single;

    private Column(ReadOnlySpan<double> rows, double single, bool isSingle)
    {
        this.rows = rows;
        this.single = single;
        this.IsSingle = isSingle;
    }

    /// <summary>Whether one number stands for all rows.</summary>
    public bool IsSingle { get; }

    /// <summary>How many rows it has; 1 where one number stands for all.</summary>
    public int Length => this.IsSingle ? 1 : this.rows.Length;

    /// <summary>The number of a row.</summary>
    /// <param name="row">The row, from 0.</param>
    /// <exception cref="IndexOutOfRangeException">There is no such row.</exception>
    public double this[int row] => this.IsSingle ? this.single : this.rows[row];

    /// <summary>One number for all rows.</summary>
    /// <param name="value">The number.</param>
    public static implicit operator Column(double value) => new([], value, isSingle: true);

    /// <summary>A number for each row.</summary>
    /// <param name="rows">The numbers; not copied.</param>
    public static implicit operator Column(ReadOnlySpan<double> rows) => new(rows, 0, isSingle: false);

    /// <summary>A number for each row.</summary>
    /// <param name="rows">The numbers; not copied.</param>
    public static implicit operator Column(Span<double> rows) => new(rows, 0, isSingle: false);

    /// <summary>A number for each row.</summary>
    /// <param name="rows">The numbers; not copied.</param>
    public static implicit operator Column(double[] rows) => new(rows, 0, isSingle: false);

    /// <summary>One number for all rows.</summary>
    /// <param name="value">The number.</param>
    public static Column FromDouble(double value) => value;

    /// <summary>A number for each row.</summary>
    /// <param name="rows">The numbers; not copied.</param>
    public static Column FromRows(ReadOnlySpan<double> rows) => rows;

    /// <summary>Refuses a column that is not as long as the destination, or that the destination would write over.</summary>
    internal void Check(ReadOnlySpan<double> destination, string parameter)
    {
        if (this.IsSingle)
        {
            return;
        }

        if (this.rows.Length != destination.Length)
        {
            throw new ArgumentException(
                $"{this.rows.Length} rows, but the destination has {destination.Length}: give as many, or one number for all rows.",
                parameter);
        }

        if (this.rows.Overlaps(destination))
        {
            throw new ArgumentException("Shares memory with the destination: give a destination of its own.", parameter);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal TLanes At<TLanes, TAccess>(nuint row)
        where TLanes : struct, ILanes<TLanes>
        where TAccess : struct, IRowAccess =>
        this.IsSingle ? this.single : TAccess.Load<TLanes>(ref MemoryMarshal.GetReference(this.rows), row);
}
