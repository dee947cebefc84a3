using SacrificialTape.Quantities;

namespace SacrificialTape.Inspection;

/// <summary>One point at which the crew waits for a look.</summary>
public sealed record HoldPoint
{
    internal HoldPoint(HoldPointKind kind, string place, string look, string accept, ValueList<string> ruleIds, int readings = 0)
    {
        this.Kind = kind;
        this.Place = place;
        this.WhatToLookAt = look;
        this.AcceptWhen = accept;
        this.RuleIds = ruleIds;
        this.Readings = readings;
    }

    /// <summary>What it is.</summary>
    public HoldPointKind Kind { get; }

    /// <summary>The line, or the lines that a trial patch stands for.</summary>
    public string Place { get; }

    /// <summary>What to do and look at.</summary>
    public string WhatToLookAt { get; }

    /// <summary>When to go on.</summary>
    public string AcceptWhen { get; }

    /// <summary>The rules that it is held against.</summary>
    public ValueList<string> RuleIds { get; }

    /// <summary>How many readings it takes; 0 where none are counted.</summary>
    public int Readings { get; }

    /// <summary>Kind and place.</summary>
    public override string ToString() => $"{this.Kind}, {this.Place}";
}
