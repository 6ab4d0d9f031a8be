using System.Collections.Immutable;
using BuckGen.Dxf.Entities;

namespace BuckGen.Dxf.Writing.Planning;

/// <summary>A drawing that is checked and ready: every form writes these same entities and decides nothing more.</summary>
internal sealed record WritePlan(
    int Units, int Measurement, ImmutableArray<DxfLayer> Layers, ImmutableArray<DxfEntity> Entities, Extents Extents)
{
    public static WritePlan FromDrawing(DxfDrawing drawing)
    {
        if (drawing.Entities.IsDefaultOrEmpty)
            throw new DxfException("the drawing is empty; there is nothing to write");
        foreach (var entity in drawing.Entities)
            WritableCheck.Refuse(entity);
        var entities = drawing.Entities.Select(Cleaned).ToImmutableArray();
        var units = drawing.InsertionUnits ?? DxfUnits.Millimetres;
        return new(units, drawing.Measurement
            ?? Measure(units), LayerTable.Complete(drawing), entities, Extents.FromEntities(entities));
    }

    private static DxfEntity Cleaned(DxfEntity entity) =>
        entity is DxfPolyline polyline ? PolylineCleaning.Clean(polyline) : entity;

    // Inches, feet, yards and their parts are the ones that are not metric.
    private static int Measure(int units) => units is 1 or 2 or 8 or 9 or 10 ? 0 : 1;
}
