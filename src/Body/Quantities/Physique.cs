namespace MomentArm.Body;

/// <summary>
/// What is known of a person's build. Every part may be missing: defaults then apply, intervals get wider, and both are said.
/// </summary>
/// <param name="Sex">Sex of the tables to use; null uses the mean of both.</param>
/// <param name="AgeYears">Age in years, 0 to 120; null is taken as a young adult and said so.</param>
/// <param name="StatureM">Standing height in metres, 0.8 to 2.4.</param>
/// <param name="MassKg">Body mass in kilograms, 15 to 350.</param>
public sealed record Physique(Sex? Sex = null, double? AgeYears = null, double? StatureM = null, double? MassKg = null);
