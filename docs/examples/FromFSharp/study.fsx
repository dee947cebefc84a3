#r "nuget: SacrificialTape.Sweeps"

// Zinc tape on a pipe near an invented coast. No climate, price or spread here was measured anywhere.
open SacrificialTape.Costing
open SacrificialTape.Exposure
open SacrificialTape.Quantities
open SacrificialTape.ServiceLife
open SacrificialTape.Surfaces
open SacrificialTape.Tapes
open SacrificialTape.Wrapping
open SacrificialTape.Sweeps
open SacrificialTape.Sweeps.Answers
open SacrificialTape.Sweeps.Batch
open SacrificialTape.Sweeps.Grids
open SacrificialTape.Sweeps.Sampling
open UnitsNet

let years (value: float) = Lifetime.Of(Duration.FromYears365 value)

// One life: numbers of units are floats, 11.0 and not 11. Lives compare as numbers do.
let air =
    AnnualAtmosphere(
        Temperature.FromDegreesCelsius 11.0,
        RelativeHumidity.FromPercent 76.0,
        DepositionRate.FromMilligramsPerSquareMeterDay 6.0,
        DepositionRate.FromMilligramsPerSquareMeterDay 25.0)
let exposure = ZincExposure.From(FirstYearRate.From(DoseResponse(Metal.Zinc, air)))
let foil = Foil(Length.FromMicrometers 100.0)
let laws = ValueList<ILossLaw> [ LinearLoss.Law; PowerLawLoss.ZincMean ]
let life = LifeEstimate(foil, 1, exposure, Utilisation.FromFraction 0.8, laws)
printfn $"{life}, long enough: {life.Earliest >= years 25.0}"

// Columns of numbers. The answer is named too, for nothing may follow a named argument without a name.
let temperature = [| 8.0; 11.0; 14.0 |]
let rate = Array.zeroCreate<float> 3
let lives = Array.zeroCreate<float> 3
FirstYearRateRows.Zinc(
    temperature, humidityPercent = 76.0, sulfurDioxideMgPerM2Day = 6.0, chlorideMgPerM2Day = 25.0, rateUmPerYear = rate)
LifeRows.PowerLaw(zincUm = 80.0, firstYearUmPerYear = rate, timeExponent = 0.813, lifeYears = lives)
printfn "%s" (lives |> Array.map (sprintf "%.1f a") |> String.concat ", ")

// A grid: three places by two foils, as a table.
let place =
    GridFactor(
        "place",
        [ SweepInput("chloride", "mg/(m2.d)", ListedValues [| 5.0; 25.0; 120.0 |])
          SweepInput("humidity", "%", ListedValues [ 74.0; 76.0; 80.0 ]) ],
        [ "inland"; "town"; "coast" ])
let grid =
    FactoredStudy(
        [ place; GridFactor(SweepInput("foil", "um", ListedValues [ 80.0; 150.0 ])) ],
        [ GridStage([ "chloride"; "humidity" ], [ "rate" ], fun rows answers ->
              FirstYearRateRows.Zinc(11.0, rows["humidity"], 6.0, rows["chloride"], answers["rate"]))
          GridStage([ "foil"; "rate" ], [ "life" ], fun rows answers ->
              let zinc = Array.init rows.Rows (fun row -> 0.8 * rows["foil"][row])
              LifeRows.PowerLaw(zinc, rows["rate"], 0.813, answers["life"])) ])
let table = grid.Work(0L, int grid.Rows)
printfn $"""{table.ToTable(dict [ "rate", "um/a"; "life", "a" ] |> System.Collections.Generic.Dictionary)}"""

// A study: inputs that go together for the spread of lives, the same inputs apart for their shares.
let inputs =
    [ SweepInput("temperature", "degC", TruncatedValues(NormalValues(11.0, 2.0), 5.0, 17.0))
      SweepInput("humidity", "%", TriangularValues(68.0, 76.0, 84.0))
      SweepInput("chloride", "mg/(m2.d)", LogNormalValues(25.0, 0.5)) ]
let model =
    SweepModel(fun rows answers ->
        LifeFromClimateRows.Zinc(rows["temperature"], rows["humidity"], 6.0, rows["chloride"], 80.0, 0.813, answers["life"]))
let together = SweepInputs(inputs, [ InputCorrelation("temperature", "humidity", -0.4) ])
let study = Study(together, SobolDesign(seed = 1UL, rows = 16_384L), [ "life" ], model)
let longer = study.Summarize("life", Exceedance [ 75.0; 100.0 ])
printfn $"{longer}"

let apart = SweepInputs inputs
let points = PickFreezeDesign(SobolDesign(1UL, 8192L))
let shares = Study(apart, points, [ "life" ], model).Summarize("life", SobolIndices(points, apart))
printfn $"{shares}"

// Strip and money: decimals for money, and the cheapest by the value itself.
let pipe = StraightPipe(Length.FromMillimeters 168.3, Length.FromMeters 24.0)
let tape = Tape(foil, Adhesive(Length.FromMicrometers 25.0))
let tried =
    [ for width, price in [ 50.0, 1.50m; 100.0, 2.75m ] do
        let stock = StripStock(tape, Length.FromMillimeters width, Length.FromMeters 33.0)
        let lay = SpiralLay(pipe, stock, SpiralSetting.FromTrueLap(Length.FromMillimeters 15.0))
        let strip = lay.StripLength()
        yield width, lay.Turns, strip, Money(price, "EUR") * decimal strip.Meters ]
for width, turns, strip, money in tried do
    printfn $"{width} mm: {turns:F1} turns, {strip.Meters:F1} m, {money.Rounded()}"
let cheapest, _, _, _ = tried |> List.minBy (fun (_, _, _, money) -> money)
printfn $"cheapest: {cheapest} mm"
