using SacrificialTape.Costing;
using SacrificialTape.Provenance;

namespace SacrificialTape.PublishedValues;

/// <summary>Decimal digits of currencies, recalled.</summary>
internal static class MinorUnitChecks
{
    internal static CheckGroup Group => new(
        "ISO 4217: minor units",
        "Recalled on both sides, so agreement proves little. Whoever pays in a currency knows its digits; state them where in doubt.",
        [
            .. from row in new[] { ("JPY", 0), ("KRW", 0), ("ISK", 0), ("EUR", 2), ("USD", 2), ("GBP", 2), ("HUF", 2), ("KWD", 3), ("BHD", 3), ("TND", 3) }
               select new PublishedCase
               {
                   Id = "minor-unit/" + row.Item1.ToLowerInvariant(),
                   What = "decimal digits of " + row.Item1,
                   Evidence = Evidence.From(References.CurrencyMinorUnits),
                   Expected = row.Item2,
                   Tolerance = 0,
                   Unit = "1",
                   Compute = () => MinorUnits.DigitsOf(row.Item1),
               },
        ]);
}
