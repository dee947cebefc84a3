using SacrificialTape.Surfaces;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/consumption-chart.md quotes.</summary>
public static class ConsumptionChartPage
{
    public static void Chart()
    {
        #region chart
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        StripStock Stock(double widthMm) => new(tape, Length.FromMillimeters(widthMm), Length.FromMeters(50));
        ConsumptionChart chart = ConsumptionChart.Of(
            [PipeSize.FromNps("1"), PipeSize.FromNps("2"), PipeSize.FromNps("4"), PipeSize.FromNps("12")],
            [Stock(50), Stock(100), Stock(150)],
            SpiralSetting.FromTrueLap(Length.FromMillimeters(20)));
        Console.Write(chart.ToCsv());
        foreach (ChartRow row in chart.Rows)
        {
            Console.WriteLine(row);
        }
        #endregion
    }
}
