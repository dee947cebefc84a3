global using SacrificialTape.TakeOff;
global using UnitsNet;
global using Xunit;
