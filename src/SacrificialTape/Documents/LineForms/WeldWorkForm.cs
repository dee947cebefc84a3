using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How the weld seams of a line and their strip are read and written.</summary>
internal static class WeldWorkForm
{
    internal static WeldWork? Read(FormReader reader)
    {
        ValueList<WeldSeam> seams = reader.List("seams", LibraryWeldForms.Table.Read);
        StripStock stock = reader.Stock("stock");
        Length endLap = reader.Length("endLap");
        return reader.Make(() => new WeldWork(seams, stock, endLap));
    }

    internal static void Write(FormWriter writer, WeldWork welds)
    {
        writer.List("seams", welds.Seams, LibraryWeldForms.Table.Write);
        writer.Stock("stock", welds.Stock);
        writer.Length("endLap", welds.EndLap);
    }
}
