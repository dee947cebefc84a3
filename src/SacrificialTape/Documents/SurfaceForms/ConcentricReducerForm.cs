using SacrificialTape.Surfaces;

namespace SacrificialTape.Documents;

/// <summary>How a concentric reducer is read and written.</summary>
internal static class ConcentricReducerForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<ConcentricReducer>(
        "concentric reducer",
        static reader => ReducerForm.Read(
            reader,
            static (large, small) => new ConcentricReducer(large, small),
            static (largeEnd, smallEnd, length) => new ConcentricReducer(largeEnd, smallEnd, length)),
        static (writer, reducer) => ReducerForm.Write(writer, reducer.LengthBasis is not null, reducer.LargeEnd, reducer.SmallEnd, reducer.Length));
}
