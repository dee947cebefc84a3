using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using SacrificialTape.Contact;
using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>Voltage lost between zinc and steel at one window, row by row: see <see cref="VoltageBudget"/>.</summary>
/// <remarks>
/// A row is NaN where a value is NaN or outside the range that the typed form asks for. Columns must be as long as the
/// destination and apart from it. Nothing is allocated.
/// </remarks>
public static class ContactVoltageRows
{
    /// <summary>Voltage lost in all, V. From the scalar form a row differs by at most 4 units in the last place.</summary>
    /// <param name="foilUm">Zinc left in the foil, um; more than 0, at most 10 000.</param>
    /// <param name="foilOhmM">Resistivity of the foil, ohm.m; more than 0, at most 1.</param>
    /// <param name="demandAmperesPerM2">Current for each covered area, A/m2; at least 0.</param>
    /// <param name="servedM2">Covered area that the window serves, m2; at least the contact, at most 1 km2.</param>
    /// <param name="adhesiveOhmCm2">Resistance of the adhesive times area, ohm.cm2; more than 0.</param>
    /// <param name="contactCm2">Area of the window that the strip touches, cm2; more than 0.</param>
    /// <param name="lengthMm">How far to the window along the strip, mm; more than 0, at most 1e9.</param>
    /// <param name="widthMm">Width of the strip, mm; more than 0, at most 10 000.</param>
    /// <param name="lostV">Where the voltages go, V.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    public static void Lost(
        Column foilUm,
        Column foilOhmM,
        Column demandAmperesPerM2,
        Column servedM2,
        Column adhesiveOhmCm2,
        Column contactCm2,
        Column lengthMm,
        Column widthMm,
        Span<double> lostV)
    {
        foilUm.Check(lostV, nameof(foilUm));
        foilOhmM.Check(lostV, nameof(foilOhmM));
        demandAmperesPerM2.Check(lostV, nameof(demandAmperesPerM2));
        servedM2.Check(lostV, nameof(servedM2));
        adhesiveOhmCm2.Check(lostV, nameof(adhesiveOhmCm2));
        contactCm2.Check(lostV, nameof(contactCm2));
        lengthMm.Check(lostV, nameof(lengthMm));
        widthMm.Check(lostV, nameof(widthMm));
        RowLoop.Run(
            new Voltages(foilUm, foilOhmM, demandAmperesPerM2, servedM2, adhesiveOhmCm2, contactCm2, lengthMm, widthMm, lostV),
            lostV.Length);
    }

    private readonly ref struct Voltages(
        Column foil, Column ohm, Column demand, Column served, Column adhesive, Column contact, Column length, Column width, Span<double> lost)
        : IRowFormula<Voltages>
    {
        private readonly Column foil = foil;
        private readonly Column ohm = ohm;
        private readonly Column demand = demand;
        private readonly Column served = served;
        private readonly Column adhesive = adhesive;
        private readonly Column contact = contact;
        private readonly Column length = length;
        private readonly Column width = width;
        private readonly Span<double> lost = lost;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static void Work<TLanes, TAccess>(scoped in Voltages batch, nuint row)
            where TLanes : struct, ILanes<TLanes>
            where TAccess : struct, IRowAccess
        {
            TLanes volts = VoltageKernel.TotalV(
                batch.foil.At<TLanes, TAccess>(row),
                batch.ohm.At<TLanes, TAccess>(row),
                batch.demand.At<TLanes, TAccess>(row),
                batch.served.At<TLanes, TAccess>(row),
                batch.adhesive.At<TLanes, TAccess>(row),
                batch.contact.At<TLanes, TAccess>(row),
                batch.length.At<TLanes, TAccess>(row),
                batch.width.At<TLanes, TAccess>(row));
            TAccess.Store(volts, ref MemoryMarshal.GetReference(batch.lost), row);
        }
    }
}
