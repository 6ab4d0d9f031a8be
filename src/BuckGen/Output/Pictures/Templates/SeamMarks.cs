using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures.Templates;

/// <summary>Where pages meet: a dashed line to cut along, and crosses in rings that both neighbours show.</summary>
internal static class SeamMarks
{
    private const double Reach = 4;
    private const double Ring = 2;

    private static readonly Ink Seam = new(PictureColours.Measure, 0.13) { Dashes = [3, 2] };
    private static readonly Ink Mark = new(PictureColours.Measure, 0.18);

    public static IEnumerable<PictureItem> Draw(TileGrid grid, Bounds view)
    {
        foreach (var x in grid.SeamsAcross.Where(x => x > view.MinX && x < view.MaxX))
            yield return PictureShape.Line(new(x, view.MinY), new(x, view.MaxY), Seam);
        foreach (var y in grid.SeamsDown.Where(y => y > view.MinY && y < view.MaxY))
            yield return PictureShape.Line(new(view.MinX, y), new(view.MaxX, y), Seam);
        foreach (var place in grid.Crosses().Where(view.Contains))
        {
            yield return PictureShape.Circle(place, Ring, Mark);
            yield return PictureShape.Line(place - new Vec2(Reach, 0), place + new Vec2(Reach, 0), Mark);
            yield return PictureShape.Line(place - new Vec2(0, Reach), place + new Vec2(0, Reach), Mark);
        }
    }
}
