using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>Welds round a pipe.</summary>
/// <remarks>Outside diameter: 1 mm to 100 m. Count: at least 1.</remarks>
public sealed record GirthWelds : WeldSeam
{
    private readonly StoredNumber diameterMm;

    /// <summary>Describes girth welds.</summary>
    /// <param name="outsideDiameter">Of the pipe, 1 mm to 100 m.</param>
    /// <param name="count">How many, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public GirthWelds(Length outsideDiameter, int count)
        : base(count) =>
        this.diameterMm = new StoredNumber(StraightPipe.CheckDiameter(outsideDiameter, nameof(outsideDiameter)));

    /// <summary>Outside diameter of the pipe.</summary>
    public Length OutsideDiameter => Length.FromMillimeters(this.diameterMm.Bare);

    /// <inheritdoc/>
    [BasisOf(typeof(PipeFormulas), nameof(PipeFormulas.Circumference))]
    public override Length SeamLength =>
        Length.FromMillimeters(this.LengthMm(default(NoSteps)));

    /// <inheritdoc/>
    public override bool Closed => true;

    /// <inheritdoc/>
    public override string Place => "round the pipe";

    /// <summary>The seams that join heads to a shell or a pipe: round the outside diameter of the head.</summary>
    /// <param name="head">One of like heads.</param>
    /// <param name="count">How many; two for a vessel with a head at each end.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count is less than 1.</exception>
    public static GirthWelds OfHead(Head head, int count)
    {
        ArgumentNullException.ThrowIfNull(head);
        return new(head.OutsideDiameter, count);
    }

    /// <summary>The seams between the courses of a shell: one fewer than there are courses.</summary>
    /// <param name="shell">The shell.</param>
    /// <param name="courses">Courses of plate on one another, at least 2.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than two courses.</exception>
    public static GirthWelds BetweenCourses(Shell shell, int courses)
    {
        ArgumentNullException.ThrowIfNull(shell);
        AcceptedRange.Between(2, PlateWelds.MostCourses, "courses").Check(courses);
        return new(shell.OutsideDiameter, courses - 1);
    }

    internal override double LengthMm<TSteps>(TSteps steps) => PipeKernel.CircumferenceMm(this.diameterMm.Bare, steps);
}
