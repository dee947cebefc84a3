using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>The long seams of a shell made of courses of plates: each is as long as its course, staggered from course to course.</summary>
/// <remarks>
/// Courses: 1 to 1000, of equal height. Plates round: 1 to 1000; a course has as many seams as plates. Seams of one course
/// do not run on into the next, so that each gets a strip of its own. The seams between courses are girth welds.
/// </remarks>
public sealed record PlateWelds : WeldSeam
{
    internal const int MostCourses = 1000;

    private readonly StoredNumber lengthMm;

    /// <summary>Describes the long seams of a shell.</summary>
    /// <param name="shell">The shell.</param>
    /// <param name="courses">Courses of plate along it.</param>
    /// <param name="platesRound">Plates in one course.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public PlateWelds(Shell shell, int courses, int platesRound)
        : base(SeamsOf(shell, courses, platesRound))
    {
        this.Courses = courses;
        this.PlatesRound = platesRound;
        this.lengthMm = new StoredNumber(UnitConversions.Millimeters(shell.Length));
    }

    /// <summary>Courses of plate along the shell.</summary>
    public int Courses { get; }

    /// <summary>Plates in one course.</summary>
    public int PlatesRound { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(WeldFormulas), nameof(WeldFormulas.Course))]
    public override Length SeamLength => Length.FromMillimeters(this.LengthMm(default(NoSteps)));

    /// <inheritdoc/>
    public override bool Closed => false;

    /// <inheritdoc/>
    public override string Place => "along the shell, course by course";

    internal double ShellMm => this.lengthMm.Bare;

    internal override double LengthMm<TSteps>(TSteps steps) => WeldKernel.CourseMm(this.lengthMm.Bare, this.Courses, steps);

    private static int SeamsOf(Shell shell, int courses, int platesRound)
    {
        ArgumentNullException.ThrowIfNull(shell);
        AcceptedRange.Between(1, MostCourses, "courses").Check(courses);
        AcceptedRange.Between(1, MostCourses, "plates").Check(platesRound);
        return courses * platesRound;
    }
}
