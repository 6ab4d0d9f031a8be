using System.Collections.Immutable;
using static BuckGen.Intake.Catalogs.FigureKind;

namespace BuckGen.Intake.Catalogs;

/// <summary>
/// The figures a stock and a plastic can have, in the order in which they are shown. The limits only catch typing errors.
/// </summary>
/// <param name="Title">The name of the table in catalog files.</param>
/// <param name="All">The figures.</param>
/// <param name="Rising">Rows of keys whose figures must not fall from one to the next.</param>
internal sealed record FigureKinds(string Title, ImmutableArray<FigureKind> All, ImmutableArray<ImmutableArray<string>> Rising)
{
    public static FigureKinds Stock { get; } = new("stock",
        [
            Number("thickness", "real thickness, average", "mm", 0.2, 100) with { Required = true },
            Number("lower", "minimum thickness in tolerance", "mm", 0.2, 100),
            Number("upper", "maximum thickness in tolerance", "mm", 0.2, 100),
            Range("density", "density", "kg/m3", 20, 3000),
            Range("conductivity", "thermal conductivity through the board", "W/(m K)", 0.01, 500),
            Range("heat-capacity", "heat capacity", "J/(kg K)", 100, 10_000),
            Choice("laser", "laser", "yes", "no", "ask"),
            Remark("laser-reason", "why"),
            Number("kerf", "CO2 laser's kerf to start from", "mm", 0, 5),
            Choice("router", "router", "yes", "no", "ask"),
            Number("cut-feed", "how fast the shop's machine cuts it", "mm a minute", 1, 1e6),
            Number("price", "price of a whole board", "in the shop's money", 0, 1e6),
            Range("expansion", "expansion", "millionths per degree C", 0, 500),
            Choice("grain", "grain shows on a thin sheet", "yes", "no"),
            Remark("dust", "dust"),
            Remark("fume", "fume"),
            Remark("caution", "caution"),
        ],
        [["lower", "thickness", "upper"]]);

    public static FigureKinds Plastic { get; } = new("plastic",
        [
            Number("forming-lower", "forming, coldest core", "degrees C", 40, 400),
            Range("forming-normal", "forming, usual", "degrees C", 40, 400),
            Number("forming-upper", "forming, hottest face", "degrees C", 40, 400),
            Number("set-temperature", "take off the buck below", "degrees C", 20, 300),
            Range("heat-deflection", "heat deflection at 1.8 MPa", "degrees C", 20, 400),
            Range("heat-deflection-light", "heat deflection at 0.45 MPa", "degrees C", 20, 400),
            Range("shrinkage", "shrinkage, male buck", "%", 0.01, 10) with { Required = true },
            Range("shrinkage-female", "shrinkage, female buck", "%", 0.01, 10),
            Number("draft-male", "draft advised, male", "degrees", 0.5, 15) with { Required = true },
            Number("min-draft-male", "minimum draft, male", "degrees", 0, 15),
            Range("draft-male-published", "range of sources, male", "degrees", 0, 15),
            Number("draft-female", "draft advised, female", "degrees", 0, 15),
            Number("min-draft-female", "minimum draft, female", "degrees", 0, 15),
            Range("draft-female-published", "range of sources, female", "degrees", 0, 15),
            Number("depth-male", "maximum depth, straight male forming", "times the width", 0.1, 10),
            Number("depth-female", "maximum depth, straight female forming", "times the width", 0.1, 10),
            Number("vent-thin", "maximum vent, sheet under 3 mm", "mm", 0.1, 5),
            Number("vent-heavy", "maximum vent, sheet from 3 mm", "mm", 0.1, 5),
            Range("density", "density", "kg/m3", 20, 3000),
            Range("conductivity", "thermal conductivity", "W/(m K)", 0.01, 500),
            Range("heat-capacity", "heat capacity, room to forming", "J/(kg K)", 100, 10_000),
            Range("melting-heat", "heat of melting", "kJ/kg", 0, 500),
            Range("emissivity", "emissivity", "", 0.01, 1),
            Range("expansion", "expansion", "millionths per degree C", 1, 500),
            Range("hot-modulus", "stiffness when hot (shear modulus), hot to cold end", "MPa", 0.001, 10),
            Number("price", "price of a square metre", "in the shop's money", 0, 1e6),
            Remark("drying", "drying"),
            Choice("laser", "laser", "yes", "no", "ask"),
            Remark("laser-reason", "why"),
            Remark("fume", "fume when forming"),
            Remark("food", "food contact"),
            Remark("caution", "caution"),
        ],
        [
            ["set-temperature", "forming-lower", "forming-normal", "forming-upper"], ["min-draft-male", "draft-male"],
            ["min-draft-female", "draft-female"],
        ]);
}
