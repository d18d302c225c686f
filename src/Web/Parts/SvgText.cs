using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace MomentArm.Web.Parts;

/// <summary>A text element inside an SVG picture. (Razor keeps the tag "text" for itself.) Its content is encoded.</summary>
public sealed class SvgText : ComponentBase
{
    [Parameter, EditorRequired]
    public string X { get; set; } = "0";

    [Parameter, EditorRequired]
    public string Y { get; set; } = "0";

    [Parameter, EditorRequired]
    public string Class { get; set; } = "";

    [Parameter, EditorRequired]
    public string Content { get; set; } = "";

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.OpenElement(0, "text");
        builder.AddAttribute(1, "x", X);
        builder.AddAttribute(2, "y", Y);
        builder.AddAttribute(3, "class", Class);
        builder.AddContent(4, Content);
        builder.CloseElement();
    }
}
