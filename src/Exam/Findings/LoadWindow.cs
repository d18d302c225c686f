namespace MomentArm.Exam;

/// <summary>The share of measured capacity that strength work may ask, 1 = 100 %.</summary>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end.</param>
/// <param name="Source">Key into content/sources.json, or what the window rests on.</param>
public sealed record LoadWindow(double Low, double High, string Source);
