namespace BuckGen.Physics.Membranes;

/// <summary>What moves a sheet on its way to the tool.</summary>
/// <param name="FrameHeight">Height of the frame, mm.</param>
/// <param name="GasDepth">Gas let in, over the area inside the frame, mm.</param>
/// <param name="Pressure">Pressure, MPa.</param>
/// <param name="Volume">Volume swept, mm³.</param>
/// <param name="Damping">Share of the velocity that a step removes.</param>
/// <param name="LoadRate">How fast frame or gas move on.</param>
internal readonly record struct LoadState(double FrameHeight, double GasDepth, double Pressure, double Volume, double Damping, double LoadRate);
