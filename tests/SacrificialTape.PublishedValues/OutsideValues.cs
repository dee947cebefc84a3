using System.Globalization;
using Xunit;

namespace SacrificialTape.PublishedValues;

/// <summary>Every check, one test each.</summary>
public class OutsideValues
{
    public static TheoryData<string> Ids { get; } = new(AllChecks.Cases.Select(static check => check.Id));

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_library_gives_the_value_of_the_source(string id)
    {
        PublishedCase check = AllChecks.ById[id];
        double got = check.Compute();

        string said = string.Create(CultureInfo.InvariantCulture, $"{check.What}: expected {check.Expected:R} {check.Unit}, got {got:R}, tolerance {check.Tolerance:R}");
        if (check.KnownDisagreement is null)
        {
            Assert.True(check.Agrees(got), said);
        }
        else
        {
            Assert.False(check.Agrees(got), said + "; the known disagreement is gone, take the remark off");
        }
    }
}
