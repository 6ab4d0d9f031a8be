namespace BuckGen.Dxf;

/// <summary>A row of the layer table.</summary>
/// <param name="Name">Name as in the file; names are compared without regard to case.</param>
/// <param name="Colour">Colour index from 1 to 255 (without its sign, which means off).</param>
/// <param name="Frozen">True when the layer is frozen, so that nothing on it is seen.</param>
/// <param name="Off">True when the layer is switched off.</param>
/// <param name="Plotted">False when the layer is seen on screen but left out on paper.</param>
public sealed record DxfLayer(string Name, int Colour = 7, bool Frozen = false, bool Off = false, bool Plotted = true);
