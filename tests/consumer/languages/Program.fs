module Consumer

open System
open SacrificialTape.Exposure
open SacrificialTape.Jobs
open SacrificialTape.Quantities
open SacrificialTape.Rules
open SacrificialTape.ServiceLife
open SacrificialTape.Surfaces
open SacrificialTape.TakeOff
open SacrificialTape.Tapes
open SacrificialTape.Wrapping
open UnitsNet

// The job of Program.cs as an F# caller writes it: named arguments, pattern matching, pipes.
let mm (value: float) = Length.FromMillimeters value
let m (value: float) = Length.FromMeters value

let tape = Tape(foil = Foil(thickness = mm 0.1), adhesive = Adhesive(thickness = mm 0.025))
let stock = StripStock(tape, width = mm 100.0, rollLength = m 50.0)
let pipe = StraightPipe(outsideDiameter = mm 60.3, length = m 12.0)
let lay = SpiralLay(pipe, stock, SpiralSetting.FromLapAlongPipe(mm 20.0))

let line =
    SurveyLine("A-1", lay, ZincExposure.FromCategory CorrosivityCategory.C4, Lifetime.Of(Duration.FromYears365 15.0))

let job =
    Job("consumer", [| line |], TakeOffChoices.FromRules(RuleSet.Default, Contingency.FromFraction 0.05))

let estimate = job.Estimate()

let stops =
    estimate.Findings
    |> Seq.filter (fun finding ->
        match finding.Severity with
        | Severity.Stop -> true
        | _ -> false)
    |> Seq.length

// By hand: 80 % of 100 um at 4.2 um a year.
let life = estimate.Lines.[0].Life.Earliest.Duration.Days / 365.0
let right = abs (life - 80.0 / 4.2) < 1e-9 && estimate.TakeOff.Stocks.[0].Rolls = 1L && stops = 0

// A wrong argument names itself.
let refused =
    try
        StraightPipe(mm -1.0, m 12.0) |> ignore
        false
    with :? ArgumentOutOfRangeException as error ->
        error.ParamName = "outsideDiameter"

printfn "F#: %O; %s" estimate (if right && refused then "right" else "WRONG")
exit (if right && refused then 0 else 1)
