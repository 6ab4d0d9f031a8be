namespace BuckGen.Physics.Membranes;

/// <summary>The state of the load, with the control of damping and load rate.</summary>
/// <param name="FrameHeight">Height of the frame, mm.</param>
/// <param name="GasDepth">Gas let in, over the area inside the frame, mm.</param>
/// <param name="Pressure">Pressure, MPa.</param>
/// <param name="Volume">Swept volume, mm³.</param>
/// <param name="Damping">Share of the velocity that a step removes.</param>
/// <param name="LoadRate">Advance of frame or gas in a step, in characteristic lengths.</param>
internal readonly record struct LoadState(
    double FrameHeight, double GasDepth, double Pressure, double Volume, double Damping, double LoadRate);
