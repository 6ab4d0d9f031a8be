using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.References.Tests.Layers;

/// <summary>One way to make a buck.</summary>
internal sealed record LayerCase(BuckKind Kind, OutlineAt At, Steps Steps, Corners Corners)
{
    public const double Depth = 36;
    public const double Draft = 5;
    public const double Thickness = 12;
    public const double MitreLimit = 5;
    public const double BlockMargin = 25;

    /// <summary>Every combination.</summary>
    public static IReadOnlyList<LayerCase> All { get; } =
    [
        .. from kind in Enum.GetValues<BuckKind>()
           from at in Enum.GetValues<OutlineAt>()
           from steps in Enum.GetValues<Steps>()
           from corners in Enum.GetValues<Corners>()
           select new LayerCase(kind, at, steps, corners),
    ];

    /// <summary>Some of the combinations; neighbours get different ones, and together they get all.</summary>
    public static IEnumerable<LayerCase> Turn(int number, int count) =>
        Enumerable.Range(0, count).Select(i => All[(number * count + i) * 5 % All.Count]);

    public BuckSpec Spec { get; } = new()
    {
        Kind = Kind,
        OutlineAt = At,
        Steps = Steps,
        Corners = new(Corners, MitreLimit),
        BlockMargin = BlockMargin,
        Depth = Depth,
        Draft = Draft,
        Stock = [new("12 mm", Thickness)],
    };

    public override string ToString() => $"{Kind}, outline at {At}, steps {Steps}, corners {Corners}";
}
