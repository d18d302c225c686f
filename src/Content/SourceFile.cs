namespace MomentArm.Content;

/// <summary>One entry of content/sources.json.</summary>
/// <param name="Text">The citation.</param>
/// <param name="Confirmation">How far it was confirmed: read, read in a summary, from memory, common practice.</param>
public sealed record Source(string Text, string Confirmation);
