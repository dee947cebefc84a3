namespace SacrificialTape.Rules;

/// <content>Rates indoors and in soil.</content>
public static partial class RuleIds
{
    /// <summary>A rate of an indoor category.</summary>
    public const string IndoorRate = "exposure.indoor";

    /// <summary>A category taken from an example of a room.</summary>
    public const string IndoorExample = "exposure.indoor-example";

    /// <summary>Constants of loss in soil that are an order of size only.</summary>
    public const string SoilConstants = "exposure.soil-constants";

    /// <summary>Kinds of soil that go worse.</summary>
    public const string SoilKind = "exposure.soil-kind";
}
