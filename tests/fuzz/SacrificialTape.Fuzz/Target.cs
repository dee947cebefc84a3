using SacrificialTape.Documents;

namespace SacrificialTape.Fuzz;

/// <summary>What must hold for any bytes: they are refused with faults that have places, or read, written and read again as the same.</summary>
internal static class Target
{
    // Small, so that a file that asks for much work is refused and not taken for a hang.
    private static readonly DocumentLimits Limits = new(1 << 20, 16, 100, 100_000);

    internal static void Read(byte[] bytes)
    {
        Hold(bytes, static bytes => RuleSetDocument.ReadUtf8(bytes), static read =>
        {
            RuleSetDocument again = RuleSetDocument.Read(read.Write());
            Hold(again.Equals(read), "read, written and read again is another document");
            Hold(again.Rules.Fingerprint == read.Rules.Fingerprint, "read, written and read again has another fingerprint");
            _ = read.Verify().ToString();
        });
        Hold(bytes, static bytes => JobDocument.ReadUtf8(bytes, limits: Limits), static read =>
        {
            string text = read.Write();
            JobDocument again = JobDocument.Read(text, limits: Limits);
            Hold(again.Equals(read), "read, written and read again is another job");
            Hold(again.Write() == text, "a job is written in another way after it was read");
        });
        Hold(bytes, static bytes => InspectionDocument.ReadUtf8(bytes, Limits), static read =>
            Hold(InspectionDocument.Read(read.Write(), Limits).Equals(read), "read, written and read again is another inspection"));
        Hold(bytes, static bytes => AsBuiltDocument.ReadUtf8(bytes, limits: Limits), static read =>
            Hold(AsBuiltDocument.Read(read.Write(), limits: Limits).Equals(read), "read, written and read again is another record"));
        Hold(bytes, static bytes => EstimateDocument.ReadUtf8(bytes, limits: Limits), static read =>
            Hold(EstimateDocument.Read(read.Write(), limits: Limits).Equals(read), "read, written and read again is another estimate"));
    }

    private static void Hold<T>(byte[] bytes, Func<byte[], T> read, Action<T> holds)
    {
        T document;
        try
        {
            document = read(bytes);
        }
        catch (DocumentException e)
        {
            Hold(e.Faults.Count > 0, "refused without a fault");
            Hold(e.Faults.All(static fault => fault.Line >= 1 && fault.Column >= 1 && fault.Path.StartsWith('$')), "a fault without a place");
            return;
        }

        holds(document);
    }

    private static void Hold(bool holds, string otherwise)
    {
        if (!holds)
        {
            throw new InvalidOperationException(otherwise);
        }
    }
}
