using SacrificialTape.Documents;

namespace SacrificialTape.Fuzz;

/// <summary>What must hold for any bytes: they are refused with faults that have places, or read, written and read again as the same.</summary>
internal static class Target
{
    internal static void Read(byte[] bytes)
    {
        RuleSetDocument read;
        try
        {
            read = RuleSetDocument.ReadUtf8(bytes);
        }
        catch (DocumentException e)
        {
            Hold(e.Faults.Count > 0, "refused without a fault");
            Hold(e.Faults.All(static fault => fault.Line >= 1 && fault.Column >= 1 && fault.Path.StartsWith('$')), "a fault without a place");
            return;
        }

        RuleSetDocument again = RuleSetDocument.Read(read.Write());
        Hold(again.Equals(read), "read, written and read again is another document");
        Hold(again.Rules.Fingerprint == read.Rules.Fingerprint, "read, written and read again has another fingerprint");
        _ = read.Verify().ToString();
    }

    private static void Hold(bool holds, string otherwise)
    {
        if (!holds)
        {
            throw new InvalidOperationException(otherwise);
        }
    }
}
