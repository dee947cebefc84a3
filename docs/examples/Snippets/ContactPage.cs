using SacrificialTape.Contact;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/contact.md quotes.</summary>
public static class ContactPage
{
    public static void Windows()
    {
        #region windows
        var contact = new BareContact(
            Area.FromSquareMeters(12),
            new ContactWindows(25, Area.FromSquareCentimeters(40)));
        Console.WriteLine($"{contact.Ratio}; needed: {contact.WindowsNeeded(BareRatio.FromSquareCentimetersPerSquareMeter(100))}");
        foreach (Finding finding in contact.Judge(RuleSet.Default, "tank T-3"))
        {
            Console.WriteLine(finding);
        }
        #endregion
    }
}
