namespace MomentArm.Records;

/// <summary>
/// Marks a field whose change the audit trail notes by name without the value: names, contact details, free text and
/// whole documents. The trail then holds nothing that would have to be erased from it.
/// </summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class NameOnlyAttribute : Attribute;
