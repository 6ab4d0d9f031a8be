using BuckGen.Settings;

namespace BuckGen.Design.Prediction;

/// <summary>The settings of the predicted wall.</summary>
internal static class FormingSettings
{
    public static readonly ChoiceSetting<FormingDetail> Detail = new("detail", FormingDetail.Quick,
        "quick: in about a second; fine: a mesh of many more triangles, and the error of the quick one")
    { Option = "--detail" };

    public static readonly FlagSetting
        Predict = new("predict", true, "false: the wall is not predicted"),
        CompareInputs = new("compare-inputs", false,
            "true: a table shows what each uncertain input does to the thinnest wall; takes some seconds")
        { Option = "--compare-inputs" },
        Stepped = new("stepped", false,
            "true: over the layers with their steps; false: over the wall after sanding")
        { Option = "--stepped" };

    public static readonly NumberSetting
        CornerBall = new("corner-ball", "ball for inside corners", 2, 0.5, 50,
            "the thinnest wall is measured where a ball of this radius can touch it")
        {
            Option = "--corner-ball",
            Source = Setting.Practice
        },
        Modulus = new("modulus", "stiffness of the hot sheet", null, 0.001, 10,
            "stiffness of the hot sheet (shear modulus); if omitted: the range of the plastic")
        {
            Kind = QuantityKind.Number,
            Unit = "MPa",
            Example = 0.2,
            Source = Setting.Practice,
        },
        Friction = new("friction", "friction between sheet and buck", null, 0, 10,
            "friction between sheet and buck; if omitted: the sheet sticks where it touches")
        {
            Kind = QuantityKind.Number,
            Example = 0.3,
            Source = Setting.Practice,
        },
        Stiffening =
            new("stiffening", "stiffening of the hot sheet", 0.1, 0, 10, "how much it stiffens as it is drawn; 0: not at all")
            {
                Kind = QuantityKind.Number,
                Source = Setting.Practice,
            },
        Sag = new("sag", "sag of the hot sheet", 0, 0, 500,
            "how far the middle of the hot sheet hangs below the frame; measure it on your former")
        {
            Source = Setting.Practice,
        },
        EdgeStiffness = new("edge-stiffness", "stiffness at the frame", 1, 1, 20,
            "how much stiffer the sheet stays at the colder frame than in its middle; 1: evenly hot")
        {
            Kind = QuantityKind.Number,
            Source = Setting.Practice,
        },
        EdgeWidth = new("edge-width", "width of the colder edge", 30, 1, 500,
            "how far in from the frame the sheet is colder; it has an effect only with edge-stiffness")
        {
            Source = Setting.Practice,
        };

    public static readonly SettingTable Table =
        new("forming", "The wall of the formed part, predicted before wood is cut (it needs [sheet])",
        [Predict, Detail, Stepped, CornerBall, Modulus, Friction, Stiffening, Sag, EdgeStiffness, EdgeWidth, CompareInputs]);
}
