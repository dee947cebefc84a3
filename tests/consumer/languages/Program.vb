Imports System
Imports System.Linq
Imports SacrificialTape.Exposure
Imports SacrificialTape.Jobs
Imports SacrificialTape.Quantities
Imports SacrificialTape.Rules
Imports SacrificialTape.ServiceLife
Imports SacrificialTape.Surfaces
Imports SacrificialTape.TakeOff
Imports SacrificialTape.Tapes
Imports SacrificialTape.Wrapping
Imports UnitsNet

' The job of Program.cs as a Visual Basic caller writes it.
Module Program
    Function Main() As Integer
        Dim tape As New Tape(New Foil(Length.FromMillimeters(0.1)), New Adhesive(Length.FromMillimeters(0.025)))
        Dim stock As New StripStock(tape, width:=Length.FromMillimeters(100), rollLength:=Length.FromMeters(50))
        Dim pipe As New StraightPipe(Length.FromMillimeters(60.3), Length.FromMeters(12))
        Dim lay As New SpiralLay(pipe, stock, SpiralSetting.FromLapAlongPipe(Length.FromMillimeters(20)))
        Dim line As New SurveyLine("A-1", lay, ZincExposure.FromCategory(CorrosivityCategory.C4), Lifetime.Of(Duration.FromYears365(15)))
        Dim work As New Job("consumer", {line}, TakeOffChoices.FromRules(RuleSet.Default, Contingency.FromFraction(0.05)))
        Dim estimate = work.Estimate()

        ' By hand: 80 % of 100 um at 4.2 um a year.
        Dim years = estimate.Lines(0).Life.Earliest.Duration.Days / 365
        Dim stops = estimate.Findings.Where(Function(finding) finding.Severity = Severity.Stop).Count()
        Dim right = Math.Abs(years - 80 / 4.2) < 0.000000001 AndAlso estimate.TakeOff.Stocks(0).Rolls = 1 AndAlso stops = 0

        ' A wrong argument names itself.
        Dim refused = False
        Try
            Dim wrong As New StraightPipe(Length.FromMillimeters(-1), Length.FromMeters(12))
        Catch fault As ArgumentOutOfRangeException
            refused = fault.ParamName = "outsideDiameter"
        End Try

        Console.WriteLine($"VB: {estimate}; {If(right AndAlso refused, "right", "WRONG")}")
        Return If(right AndAlso refused, 0, 1)
    End Function
End Module
