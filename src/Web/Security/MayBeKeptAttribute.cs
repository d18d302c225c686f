namespace MomentArm.Web.Security;

/// <summary>Marks an endpoint whose answers hold nothing personal, so that a browser may keep them as their own header says.</summary>
[AttributeUsage(AttributeTargets.Method | AttributeTargets.Class)]
public sealed class MayBeKeptAttribute : Attribute;
