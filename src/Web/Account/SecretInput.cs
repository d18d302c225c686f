using System.Diagnostics.CodeAnalysis;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.AspNetCore.Components.Rendering;

namespace MomentArm.Web.Account;

/// <summary>A password field. What was typed is taken from the form but never written back into a page.</summary>
public sealed class SecretInput : InputBase<string?>
{
    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.OpenElement(0, "input");
        builder.AddMultipleAttributes(1, AdditionalAttributes);
        builder.AddAttribute(2, "type", "password");
        builder.AddAttribute(3, "name", NameAttributeValue);
        builder.AddAttribute(4, "class", CssClass);
        builder.CloseElement();
    }

    protected override bool TryParseValueFromString(
        string? value, out string? result, [NotNullWhen(false)] out string? validationErrorMessage)
    {
        result = value;
        validationErrorMessage = null;
        return true;
    }
}
