namespace BuckGen.Design.Bucks;

/// <summary>A plate under the whole stack.</summary>
/// <param name="Stock">Stock it is cut from.</param>
/// <param name="Margin">How far it reaches beyond the foot of the buck on every side, mm.</param>
/// <param name="Under">Stock of a second plate below it, which carries the relief bores of the vents; null for none.</param>
public sealed record BasePlate(Stock Stock, double Margin = 20, Stock? Under = null);
