using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Geometry;
using BuckGen.Physics.Air;

namespace BuckGen.Design.Prediction;

/// <summary>All that a prediction depends on.</summary>
/// <param name="Wood">What the sheet is formed over.</param>
/// <param name="Sheet">The sheet.</param>
/// <param name="Air">The vacuum.</param>
/// <param name="Blank">The frame.</param>
/// <param name="Former">The former; of it the plug.</param>
/// <param name="Forming">The settings of the simulation.</param>
internal sealed record FormingInputs(
    FormedWood Wood, SheetSpec Sheet, AirFlowSpec Air, Blank Blank, FormerSpec Former, FormingSpec Forming);

/// <summary>The wood over which the sheet is formed.</summary>
/// <param name="Solid">The drafted wall.</param>
/// <param name="Layers">The layers as they are cut.</param>
/// <param name="Footprint">Where the part meets its flange.</param>
/// <param name="CutHeight">Where the part is cut, on the wood, from the plane of the flange, mm; 0 or less for no cut.</param>
internal sealed record FormedWood(
    StackedSolid Solid, IReadOnlyList<Layer> Layers, Region Footprint, double CutHeight);
