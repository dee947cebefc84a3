using SacrificialTape.Provenance;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A section by its designation, with what its dimensions rest on.</summary>
public sealed record SectionSize
{
    private readonly SectionTable.Row row;

    internal SectionSize(SectionTable.Row row) => this.row = row;

    /// <summary>Designation, for instance <c>IPE 200</c>.</summary>
    public string Designation => this.row.Designation;

    /// <summary>On what the dimensions rest.</summary>
    public Basis Basis => this.row.Basis;

    /// <summary>A piece of this section. Its perimeter and area are worked out from the dimensions.</summary>
    /// <param name="length">Along the section, 1 mm to 1000 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its range.</exception>
    public Section OfLength(Length length) => this.row.Make(this.row.Basis, length);

    /// <summary>The designation.</summary>
    public override string ToString() => this.Designation;
}
