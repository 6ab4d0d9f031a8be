using BuckGen.Dxf.Tags;
using BuckGen.Dxf.Writing.Planning;

namespace BuckGen.Dxf.Writing.R2000;

/// <summary>HEADER of an AC1015 file: version, units, extents and the names of the defaults.</summary>
internal static class R2000Header
{
    public static void Write(WritePlan plan, IDxfTagSink sink)
    {
        sink.Variable("$ACADVER", 1, "AC1015");
        sink.Variable("$DWGCODEPAGE", 3, "ANSI_1252");
        sink.PlacingVariables(plan.Extents);
        sink.Write(9, "$LIMMIN");
        sink.Flat(10, plan.Extents.MinX, plan.Extents.MinY);
        sink.Write(9, "$LIMMAX");
        sink.Flat(10, plan.Extents.MaxX, plan.Extents.MaxY);
        sink.Variable("$LTSCALE", 1.0);
        sink.Variable("$TEXTSTYLE", 7, "Standard");
        sink.Variable("$CLAYER", 8, "0");
        sink.Variable("$CELTYPE", 6, "ByLayer");
        sink.Variable("$CECOLOR", 62, 256);
        sink.Variable("$DIMSTYLE", 2, "Standard");
        sink.Variable("$LUNITS", 70, 2);
        sink.Variable("$LUPREC", 70, 4);
        sink.Variable("$AUNITS", 70, 0);
        sink.Variable("$AUPREC", 70, 2);
        sink.Variable("$HANDSEED", 5, Handle.FirstFree(plan));
        sink.Variable("$TILEMODE", 70, 1);
        sink.Variable("$MEASUREMENT", 70, plan.Measurement);
        sink.Variable("$CMLSTYLE", 2, "STANDARD");
        sink.Variable("$INSUNITS", 70, plan.Units);
        sink.Variable("$PSTYLEMODE", 290, 1);
    }
}
