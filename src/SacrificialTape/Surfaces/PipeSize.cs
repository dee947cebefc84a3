using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A nominal pipe size under a stated standard, and the outside diameter that it stands for.</summary>
/// <remarks>
/// <para>Sizes: NPS 1/2 to 48, DN 15 to 1200. At DN 20, 25, 32, 65, 125 and 300 the standards disagree by up to 3.1 mm:
/// there a DN without its standard is refused as ambiguous.</para>
/// <para>ASME diameters were read in an open size list; the ISO ones are recalled, check before use.</para>
/// </remarks>
public sealed record PipeSize
{
    private readonly StoredNumber diameterMm;

    private PipeSize(PipeSizeTable.Row row, PipeStandard standard, double diameterMm)
    {
        this.Nps = row.Nps;
        this.Dn = row.Dn;
        this.Standard = standard;
        this.diameterMm = new StoredNumber(diameterMm);
    }

    /// <summary>Nominal pipe size in the inch series, for instance <c>2 1/2</c>.</summary>
    public string Nps { get; }

    /// <summary>Nominal diameter DN, a name and not a dimension.</summary>
    public int Dn { get; }

    /// <summary>The standard that the outside diameter comes from.</summary>
    public PipeStandard Standard { get; }

    /// <summary>Outside diameter.</summary>
    public Length OutsideDiameter => Length.FromMillimeters(this.diameterMm.Bare);

    /// <summary>The NPS as a number of inches, which is a name and not the outside diameter.</summary>
    internal double NominalInches => this.Nps.Split(' ').Sum(static part => part.Split('/') is [var over, var under]
        ? double.Parse(over, CultureInfo.InvariantCulture) / double.Parse(under, CultureInfo.InvariantCulture)
        : double.Parse(part, CultureInfo.InvariantCulture));

    /// <summary>On what the outside diameter rests.</summary>
    public Basis Basis => Basis.From(
        this.Standard == PipeStandard.AsmeB3610M ? References.PipeSizesAsme : References.PipeSizesIso);

    /// <summary>A size by its NPS.</summary>
    /// <param name="nps">For instance <c>2 1/2</c>, <c>2-1/2</c> or <c>12</c>.</param>
    /// <param name="standard">The standard; NPS is the inch series, so ASME unless stated.</param>
    /// <exception cref="ArgumentException">The standard has no such size.</exception>
    public static PipeSize FromNps(string nps, PipeStandard standard = PipeStandard.AsmeB3610M)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(nps);
        string name = string.Join(' ', nps.Replace('-', ' ').Split(' ', StringSplitOptions.RemoveEmptyEntries));
        foreach (PipeSizeTable.Row row in PipeSizeTable.Rows)
        {
            if (row.Nps == name)
            {
                return Under(row, standard, nameof(nps));
            }
        }

        throw new ArgumentException($"NPS '{nps}' is not one of {Names(row => row.Nps)}.", nameof(nps));
    }

    /// <summary>A size by its DN under a standard.</summary>
    /// <param name="dn">For instance 65.</param>
    /// <param name="standard">The standard.</param>
    /// <exception cref="ArgumentException">The standard has no such size.</exception>
    public static PipeSize FromDn(int dn, PipeStandard standard) => Under(Row(dn), standard, nameof(dn));

    /// <summary>A size by its DN alone, where the standards agree.</summary>
    /// <param name="dn">For instance 100.</param>
    /// <exception cref="ArgumentException">No standard has such a size, or the standards give it different diameters.</exception>
    public static PipeSize FromDn(int dn)
    {
        PipeSizeTable.Row row = Row(dn);
        return row.IsoMm is { } iso && iso != row.AsmeMm
            ? throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"DN {dn} alone is ambiguous: {row.AsmeMm} mm under ASME B36.10M, {iso} mm under ISO 4200 series 1. State the standard."),
                nameof(dn))
            : new PipeSize(row, PipeStandard.AsmeB3610M, row.AsmeMm);
    }

    /// <summary>Reads a size from text: <c>NPS 2 1/2</c>, <c>DN 100</c>, <c>DN 65 ISO</c>, <c>DN 65 ASME</c>.</summary>
    /// <param name="text">The text; case does not count.</param>
    /// <exception cref="ArgumentException">The text is none of these, names an unknown size, or is ambiguous.</exception>
    public static PipeSize Parse(string text)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(text);
        string trimmed = text.Trim();
        PipeStandard? standard = null;
        if (CutEnd(ref trimmed, "ASME"))
        {
            standard = PipeStandard.AsmeB3610M;
        }
        else if (CutEnd(ref trimmed, "ISO"))
        {
            standard = PipeStandard.Iso4200Series1;
        }

        if (trimmed.StartsWith("NPS", StringComparison.OrdinalIgnoreCase))
        {
            return FromNps(trimmed[3..], standard ?? PipeStandard.AsmeB3610M);
        }

        return trimmed.StartsWith("DN", StringComparison.OrdinalIgnoreCase)
            && int.TryParse(trimmed.AsSpan(2).Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int dn)
            ? standard is { } stated ? FromDn(dn, stated) : FromDn(dn)
            : throw new ArgumentException(
                $"'{text}' is not a pipe size. Expected for instance 'NPS 2 1/2', 'DN 100', 'DN 65 ISO' or 'DN 65 ASME'.",
                nameof(text));
    }

    /// <summary>Size, standard and outside diameter.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"NPS {this.Nps} (DN {this.Dn}), {StandardName(this.Standard)}, {this.diameterMm.Bare} mm");

    private static PipeSize Under(PipeSizeTable.Row row, PipeStandard standard, string parameter)
    {
        double? diameter = standard switch
        {
            PipeStandard.AsmeB3610M => row.AsmeMm,
            PipeStandard.Iso4200Series1 => row.IsoMm,
            _ => throw new ArgumentOutOfRangeException(nameof(standard), standard, "Not a standard known here."),
        };
        return diameter is { } mm
            ? new PipeSize(row, standard, mm)
            : throw new ArgumentException($"{StandardName(standard)} does not list NPS {row.Nps} (DN {row.Dn}).", parameter);
    }

    private static PipeSizeTable.Row Row(int dn)
    {
        foreach (PipeSizeTable.Row row in PipeSizeTable.Rows)
        {
            if (row.Dn == dn)
            {
                return row;
            }
        }

        throw new ArgumentException(
            $"DN {dn} is not one of {Names(row => row.Dn.ToString(CultureInfo.InvariantCulture))}.", nameof(dn));
    }

    private static string Names(Func<PipeSizeTable.Row, string> name) =>
        string.Join(", ", PipeSizeTable.Rows.ToArray().Select(name));

    private static string StandardName(PipeStandard standard) =>
        standard == PipeStandard.AsmeB3610M ? "ASME B36.10M" : "ISO 4200 series 1";

    [SuppressMessage("Performance", "CA1845", Justification = "Read once per line of a survey.")]
    private static bool CutEnd(ref string text, string word)
    {
        if (!text.EndsWith(word, StringComparison.OrdinalIgnoreCase))
        {
            return false;
        }

        text = text[..^word.Length].TrimEnd();
        return true;
    }
}
