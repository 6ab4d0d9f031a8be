using BuckGen.Geometry;

namespace BuckGen.Intake.Measuring;

/// <summary>Which of several equal places is named: where a loop starts shall not matter.</summary>
internal static class PlaceOrder
{
    /// <summary>What puts the lowest place first, then the leftmost; to a hundred-thousandth of a millimetre.</summary>
    public static (double Y, double X) SortKey(Vec2 place) => (Math.Round(place.Y, 5), Math.Round(place.X, 5));
}
