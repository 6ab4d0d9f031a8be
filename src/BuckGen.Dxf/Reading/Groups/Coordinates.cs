using System.Globalization;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Tags;

namespace BuckGen.Dxf.Reading.Groups;

/// <summary>Reads points and lengths and refuses those that no drawing can mean.</summary>
internal static class Coordinates
{
    /// <summary>A point whose x has this code, y the code + 10 and z (0 when absent) the code + 20.</summary>
    public static DxfPoint Point(this TagGroup group, int code, ReadContext context) => new(
        Limited(group.Required(code, "x"), code, group, context),
        Limited(group.Required(code + 10, "y"), code + 10, group, context),
        group.Length(code + 20, 0, context));

    /// <summary>As <see cref="Point"/>, but absent coordinates are 0.</summary>
    public static DxfPoint OptionalPoint(this TagGroup group, int code, ReadContext context) => new(
        group.Length(code, 0, context), group.Length(code + 10, 0, context), group.Length(code + 20, 0, context));

    public static double Length(this TagGroup group, int code, double fallback, ReadContext context) =>
        Limited(group.Number(code, fallback), code, group, context);

    public static double RequiredLength(this TagGroup group, int code, string meaning, ReadContext context) =>
        Limited(group.Required(code, meaning), code, group, context);

    public static double Length(this TagGroup group, DxfTag tag, ReadContext context) =>
        Limited(group.Number(tag), tag.Code, group, context, tag.Line);

    private static double Limited(double value, int code, TagGroup group, ReadContext context, int? line = null)
    {
        context.ThrowIfCancelled();
        if (Math.Abs(value) <= context.Limits.MaxCoordinate)
            return value;
        var at = line ?? group.Find(code)?.Line ?? group.Line - 1;
        FormattableString limit =
            $"group code {code} is {value}, beyond the limit of {context.Limits.MaxCoordinate} drawing units";
        throw new DxfException($"{limit.ToString(CultureInfo.InvariantCulture)}; move or repair the drawing", at + 1,
            Excerpt.Shorten(group.Type));
    }
}
