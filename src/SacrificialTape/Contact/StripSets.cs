namespace SacrificialTape.Contact;

/// <summary>Which strips hang together: each set is a tree, its root its name.</summary>
internal sealed class StripSets
{
    private readonly int[] parents;

    internal StripSets(int count)
    {
        this.parents = new int[count];
        for (int i = 0; i < count; i++)
        {
            this.parents[i] = i;
        }
    }

    internal int RootOf(int strip)
    {
        while (this.parents[strip] != strip)
        {
            this.parents[strip] = this.parents[this.parents[strip]];
            strip = this.parents[strip];
        }

        return strip;
    }

    /// <summary>Joins two sets; the lower root stays, so that the order of joining does not matter to the names.</summary>
    internal void Join(int one, int other)
    {
        int a = this.RootOf(one);
        int b = this.RootOf(other);
        this.parents[Math.Max(a, b)] = Math.Min(a, b);
    }
}
