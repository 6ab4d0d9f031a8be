using BuckGen.Cutting.Boards;

namespace BuckGen.Output.Reports.Card;

/// <summary>Empty lines to write down what worked.</summary>
internal sealed class WhatWorked : IReportSection
{
    private static readonly string[] Names =
        ["Date", "Heater setting", "Heating time, s", "Sag before forming, mm", "Vacuum, and held for, s", "Time to cool, s",
            "Thinnest wall, mm", "Notes"];

    public string Title => "What worked";

    public IEnumerable<string> Lines(CutPlan plan) => Names.Select(n => $"{n,-26}{new string('_', 56)}");
}
