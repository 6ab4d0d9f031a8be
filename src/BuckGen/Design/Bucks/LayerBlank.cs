using BuckGen.Geometry;

namespace BuckGen.Design.Bucks;

/// <summary>A layer's wood before dowels and marks.</summary>
/// <param name="Number">1 for the lowest.</param>
/// <param name="Role">What it is for.</param>
/// <param name="Stock">The stock it is cut from.</param>
/// <param name="Bottom">Height of its lower face, mm above the bottom of the stack.</param>
/// <param name="Top">Height of its upper face, mm.</param>
/// <param name="Wood">Its pieces.</param>
public sealed record LayerBlank(int Number, LayerRole Role, Stock Stock, double Bottom, double Top, Region Wood);
