namespace SacrificialTape.Jobs;

/// <summary>Something round a line that can harm people, zinc or steel. Each raises one finding.</summary>
public enum SiteHazard
{
    /// <summary>Fresh water with bicarbonate or nitrate, warm or hot: it favours zinc turning cathodic to steel.</summary>
    ReversingWater = 0,

    /// <summary>Copper, brass or bronze that touches the taped steel, within reach of the same water.</summary>
    CopperCouple,

    /// <summary>Stainless steel that touches the taped steel, within reach of the same water.</summary>
    StainlessContact,

    /// <summary>An earthing grid of copper joined to the steel.</summary>
    CopperEarthing,

    /// <summary>Cathodic protection on the steel or on what is joined to it.</summary>
    CathodicProtection,

    /// <summary>Stray current: DC railways, welding, protection systems of neighbours.</summary>
    StrayCurrent,

    /// <summary>Under thermal insulation.</summary>
    UnderInsulation,

    /// <summary>The surface is often below the dew point and sweats.</summary>
    SweatingLine,

    /// <summary>A sheltered side that rain does not wash.</summary>
    ShelteredUnderside,

    /// <summary>Clamps or supports that hold water against the tape.</summary>
    ClampCrevice,

    /// <summary>In soil.</summary>
    Buried,

    /// <summary>Under water, all the time or by turns.</summary>
    Immersed,

    /// <summary>Concrete, mortar or another alkaline body against the tape, a foundation for instance.</summary>
    AlkalineContact,

    /// <summary>Welding, cutting or heating of the steel is planned for later.</summary>
    HotWorkPlanned,
}
