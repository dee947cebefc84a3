using SacrificialTape.Surfaces;

namespace SacrificialTape.Documents;

/// <summary>How an eccentric reducer is read and written.</summary>
internal static class EccentricReducerForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<EccentricReducer>(
        "eccentric reducer",
        static reader => ReducerForm.Read(
            reader,
            static (large, small) => new EccentricReducer(large, small),
            static (largeEnd, smallEnd, length) => new EccentricReducer(largeEnd, smallEnd, length)),
        static (writer, reducer) => ReducerForm.Write(writer, reducer.LengthBasis is not null, reducer.LargeEnd, reducer.SmallEnd, reducer.Length));
}
