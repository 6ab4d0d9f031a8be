namespace BuckGen.Design.Bucks;

/// <summary>Cuts the solid into layers.</summary>
internal static class LayerStack
{
    /// <summary>The layers, lowest first; the stack ends early where no wood is left.</summary>
    /// <param name="solid">The solid.</param>
    /// <param name="spec">What is wanted.</param>
    /// <param name="plenum">The stock of the plenum; null for none.</param>
    /// <param name="plan">The boards chosen.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static List<LayerBlank> Build(
        StackedSolid solid, StackSpec spec, Stock? plenum, StackPlan plan, CancellationToken cancellation)
    {
        var layers = new List<LayerBlank>();
        var bottom = 0.0;
        foreach (var (role, stock) in Plates(spec, plenum))
        {
            layers.Add(new(layers.Count + 1, role, stock, bottom, bottom + stock.Thickness, solid.BasePlate(spec.Base!)));
            bottom += stock.Thickness;
        }

        foreach (var stock in plan.LayerStocks)
        {
            cancellation.ThrowIfCancellationRequested();
            var top = bottom + stock.Thickness;
            var wood = solid.At(CutHeight(spec, solid.Shape.Above(bottom), solid.Shape.Below(top)));
            if (wood.IsEmpty) break;
            layers.Add(new(layers.Count + 1, LayerRole.Wall, stock, bottom, top, wood));
            bottom = top;
        }

        StackNesting.Require(layers, spec.IsWiderBelow ? 1 : -1, spec.Tolerance);
        return layers;
    }

    /// <summary>What lies under the drafted layers, lowest first.</summary>
    public static IEnumerable<(LayerRole Role, Stock Stock)> Plates(StackSpec spec, Stock? plenum)
    {
        if (plenum is not null) yield return (LayerRole.Plenum, plenum);
        if (spec.Base?.Under is { } under) yield return (LayerRole.Base, under);
        if (spec.Base is { } plate) yield return (LayerRole.Base, plate.Stock);
    }

    /// <summary>
    /// The height whose outline a straight-cut layer is given: there is more wood lower down, unless the walls lean the wrong
    /// way.
    /// </summary>
    private static double CutHeight(StackSpec spec, double bottom, double top)
    {
        var (larger, smaller) = spec.IsWiderBelow ? (bottom, top) : (top, bottom);
        return spec.Steps switch
        {
            Steps.Outside => larger,
            Steps.Inside => smaller,
            _ => (bottom + top) / 2,
        };
    }
}
