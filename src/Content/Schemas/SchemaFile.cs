namespace MomentArm.Content;

/// <summary>One JSON schema, as it lies in content/schemas.</summary>
/// <param name="Name">File name, such as exercise.schema.json.</param>
/// <param name="Text">The file's text.</param>
public sealed record SchemaFile(string Name, string Text);
