namespace BuckGen.Design.Bucks;

/// <summary>Cuts the solid into layers.</summary>
internal static class LayerStack
{
    /// <summary>The layers, lowest first; the stack ends early where no wood is left.</summary>
    public static List<LayerBlank> Build(StackedSolid solid, BuckSpec spec, StackPlan plan, CancellationToken cancellation)
    {
        var layers = new List<LayerBlank>();
        var bottom = 0.0;
        foreach (var (role, stock) in Plates(spec))
        {
            layers.Add(new(layers.Count + 1, role, stock, bottom, bottom + stock.Thickness, solid.BasePlate(spec.Base!)));
            bottom += stock.Thickness;
        }

        foreach (var stock in plan.LayerStocks)
        {
            cancellation.ThrowIfCancellationRequested();
            var top = bottom + stock.Thickness;
            var wood = solid.At(CutHeight(spec, bottom, top));
            if (wood.IsEmpty) break;
            layers.Add(new(layers.Count + 1, LayerRole.Wall, stock, bottom, top, wood));
            bottom = top;
        }

        StackNesting.Require(layers, spec.Draft, spec.Tolerance);
        return layers;
    }

    /// <summary>What lies under the drafted layers, lowest first.</summary>
    public static IEnumerable<(LayerRole Role, Stock Stock)> Plates(BuckSpec spec)
    {
        if (spec.Plenum is { } plenum) yield return (LayerRole.Plenum, plenum.Stock);
        if (spec.Base?.Under is { } under) yield return (LayerRole.Base, under);
        if (spec.Base is { } plate) yield return (LayerRole.Base, plate.Stock);
    }

    /// <summary>
    /// The height whose outline a straight-cut layer is given: there is more wood lower down, unless the walls lean the wrong
    /// way.
    /// </summary>
    private static double CutHeight(BuckSpec spec, double bottom, double top)
    {
        var (larger, smaller) = spec.Draft >= 0 ? (bottom, top) : (top, bottom);
        return spec.Steps switch
        {
            Steps.Outside => larger,
            Steps.Inside => smaller,
            _ => (bottom + top) / 2,
        };
    }
}
