namespace SacrificialTape.Wrapping;

/// <summary>A strip of a lay that is cut to a line on the surface.</summary>
/// <param name="LengthMm">Length of the piece as it is cut from the roll.</param>
/// <param name="Count">Like pieces in one pass.</param>
/// <param name="Whole">Whether it goes all the way round.</param>
/// <param name="EndLapMm">The part that laps on the other end of the same piece.</param>
/// <param name="CoverMm2">What it covers of the surface, first come, first counted.</param>
/// <param name="KeptMm2">What stays of it within the cuts, without the end lap.</param>
internal readonly record struct TrimmedPiece(double LengthMm, int Count, bool Whole, double EndLapMm, double CoverMm2, double KeptMm2);
