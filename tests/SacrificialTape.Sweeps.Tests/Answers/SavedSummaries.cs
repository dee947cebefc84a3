using System.Collections;
using System.Reflection;
using FsCheck;
using FsCheck.Xunit;
using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Tests.Answers;

/// <summary>What is saved and joined again is the same in every field, whatever kind of summary.</summary>
public sealed class SavedSummaries
{
    private static readonly SweepInputs Two = new([new("x", string.Empty, new UniformValues(0, 1)), new("y", "mm", new UniformValues(0, 1))]);

    // Rows come in points of four or paths of three: twelve serve both.
    private static readonly Summary[] Kinds =
    [
        new Moments(),
        new Histogram(-10, 10, 7),
        new Histogram(1, 10, 5, RangeSpacing.Logarithmic),
        new Exceedance(-1, 0, 5),
        new SobolIndices(new PickFreezeDesign(new RandomDesign(3, 400)), Two),
        new MorrisScreening(new MorrisDesign(3, 400), Two),
    ];

    [Fact]
    public void Every_kind_of_summary_is_among_these() => Assert.Empty(
        typeof(Summary).Assembly.GetTypes().Where(static type => type.IsSubclassOf(typeof(Summary)) && !type.IsAbstract)
            .Except(Kinds.Select(static kind => kind.GetType())).Select(static type => type.Name));

    [Property(MaxTest = 30)]
    public void Saved_and_joined_to_nothing_it_is_the_same_in_every_field(NormalFloat[] given)
    {
        foreach (Summary kind in Kinds)
        {
            Summary taken = Taken(kind, given);
            byte[] saved = taken.Save();
            Summary restored = kind.Fresh();
            restored.JoinSaved(saved);
            Assert.Equal(saved, restored.Save());
            Assert.Equal(Fields(taken), Fields(restored));
        }
    }

    [Property(MaxTest = 100)]
    public void Saved_parts_joined_in_order_are_the_whole(NormalFloat[] given)
    {
        foreach (Summary kind in Kinds)
        {
            double[] rows = Rows(given);
            Summary whole = kind.Fresh();
            whole.Add(0, rows);
            Summary joined = kind.Fresh();
            for (int first = 0; first < rows.Length; first += 12)
            {
                Summary part = kind.Fresh();
                part.Add(first, rows.AsSpan(first, 12));
                joined.JoinSaved(part.Save());
            }

            Assert.Equal(whole.Save(), joined.Save());
        }
    }

    [Fact]
    public void What_was_set_up_otherwise_is_damaged_or_goes_on_is_refused()
    {
        foreach (Summary kind in Kinds)
        {
            byte[] saved = Taken(kind, []).Save();
            foreach (Summary other in Kinds.Where(other => other != kind))
            {
                Assert.Contains("set up like this one", Refused(other, saved), StringComparison.Ordinal);
            }

            Assert.Contains("end too early", Refused(kind, saved[..^1]), StringComparison.Ordinal);
            Assert.Contains("more bytes", Refused(kind, [.. saved, 0]), StringComparison.Ordinal);
        }

        Assert.Contains("set up", Refused(new Histogram(-10, 10, 8), new Histogram(-10, 10, 7).Save()), StringComparison.Ordinal);
        Assert.Contains("set up", Refused(new Exceedance(1, 3), new Exceedance(1, 2).Save()), StringComparison.Ordinal);
        byte[] indices = Kinds[^2].Save();
        Assert.Contains("set up", Refused(new SobolIndices(new PickFreezeDesign(new RandomDesign(4, 400)), Two), indices), StringComparison.Ordinal);
        Assert.Contains("set up", Refused(new SobolIndices(new PickFreezeDesign(new LatinHypercubeDesign(3, 400)), Two), indices), StringComparison.Ordinal);
        var wider = new SweepInputs([Two.All[0], new("y", "mm", new UniformValues(0, Math.BitIncrement(1)))]);
        Assert.Contains("set up", Refused(new SobolIndices(new PickFreezeDesign(new RandomDesign(3, 400)), wider), indices), StringComparison.Ordinal);
        Assert.Contains("set up", Refused(new MorrisScreening(new MorrisDesign(4, 400), Two), Kinds[^1].Save()), StringComparison.Ordinal);
    }

    private static string Refused(Summary into, byte[] saved) => Assert.Throws<ArgumentException>(nameof(saved), () => into.Fresh().JoinSaved(saved)).Message;

    private static Summary Taken(Summary kind, NormalFloat[] given)
    {
        Summary fresh = kind.Fresh();
        fresh.Add(0, Rows(given));
        return fresh;
    }

    private static double[] Rows(NormalFloat[] given)
    {
        double[] awkward = [1, 2.5, -3, 4, double.NaN, 6, 7, double.PositiveInfinity, -0.0, 1e300, 1e-300, 5, .. given.Select(static one => one.Get)];
        int whole = (awkward.Length + 11) / 12 * 12;
        return [.. awkward, .. Enumerable.Repeat(0.1, whole - awkward.Length)];
    }

    // All that an object holds, fields of fields too, doubles by their bits: a field added later is seen here.
    private static string[] Fields(object root)
    {
        var lines = new List<string>();
        Walk(root, root.GetType().Name, 0);
        return [.. lines];

        void Walk(object? value, string path, int depth)
        {
            if (value is null or string || value.GetType().IsPrimitive || value.GetType().IsEnum)
            {
                lines.Add($"{path} = {(value is double number ? BitConverter.DoubleToInt64Bits(number) : value)}");
            }
            else if (value is Array items)
            {
                int i = 0;
                foreach (object? item in (IEnumerable)items)
                {
                    Walk(item, $"{path}[{i++}]", depth + 1);
                }
            }
            else if (depth < 6)
            {
                for (Type? type = value.GetType(); type is not null; type = type.BaseType)
                {
                    foreach (FieldInfo field in type.GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
                    {
                        Walk(field.GetValue(value), $"{path}.{field.Name}", depth + 1);
                    }
                }
            }
        }
    }
}
