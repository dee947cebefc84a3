namespace SacrificialTape.PublishedValues;

/// <summary>One outside check: what should come out, by whose word, and what the library gives.</summary>
internal sealed record PublishedCase
{
    /// <summary>Unique, lower case; the test is named by it.</summary>
    internal required string Id { get; init; }

    /// <summary>What is checked, in a few words.</summary>
    internal required string What { get; init; }

    internal required Evidence Evidence { get; init; }

    internal required double Expected { get; init; }

    /// <summary>Absolute: half a unit of the last digit printed, or the error of the construction.</summary>
    internal required double Tolerance { get; init; }

    internal required string Unit { get; init; }

    /// <summary>Asks the library.</summary>
    internal required Func<double> Compute { get; init; }

    /// <summary>How a number that stands for something else (a category, a refusal) reads on the page.</summary>
    internal Func<double, string>? Show { get; init; }

    /// <summary>
    /// Set where source and library are known to disagree: why. Such a case passes only while they do, so that the
    /// remark cannot outlive the disagreement.
    /// </summary>
    internal string? KnownDisagreement { get; init; }

    internal bool Agrees(double got)
    {
        // The decimals of both sides are binary fractions: a difference of exactly half a digit may come out one bit more.
        double binary = 1e-14 * Math.Max(1, Math.Abs(this.Expected));
        return Math.Abs(got - this.Expected) <= this.Tolerance + binary;
    }
}
