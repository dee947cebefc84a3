using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace PlantSurvey;

/// <summary>Lays strip on a surface of the shape that it stands beside.</summary>
internal delegate ILay LayBy(Surface surface, StripStock strip, Length lap, LayChoices options);
