using SacrificialTape.Documents;

namespace SacrificialTape.Tests.Documents;

/// <summary>Slips put into a document that was right.</summary>
internal static class Slip
{
    /// <summary>The document with the first place of a text changed.</summary>
    internal static string In(string whole, string right, string wrong)
    {
        int at = whole.IndexOf(right, StringComparison.Ordinal);
        Assert.True(at >= 0, right + " does not stand in the file.");
        return string.Concat(whole.AsSpan(0, at), wrong, whole.AsSpan(at + right.Length));
    }

    /// <summary>Reading it is refused with one fault at a place that says something.</summary>
    internal static void IsTold(Action read, string path, string said)
    {
        DocumentException refused = Assert.Throws<DocumentException>(read);
        Assert.Single(refused.Faults, fault => fault.Path == path && fault.Message.Contains(said, StringComparison.Ordinal));
    }

    /// <summary>A document cut off, or with a piece gone: refused with places, or read as one that comes back.</summary>
    internal static void AnywhereIsToldOrAnother<T>(string whole, int seed, Func<string, T> read, Func<T, string> write)
    {
        var random = new Random(seed);
        int at = random.Next(whole.Length - 1);
        string changed = random.Next(2) == 0 ? whole[..at] : whole.Remove(at, 1 + random.Next(Math.Min(40, whole.Length - at - 1)));
        try
        {
            T document = read(changed);
            Assert.Equal(document, read(write(document)));
        }
        catch (DocumentException refused)
        {
            Assert.NotEmpty(refused.Faults);
            Assert.All(refused.Faults, static fault => Assert.True(fault.Line >= 1 && fault.Column >= 1 && fault.Path.StartsWith('$')));
        }
    }
}
