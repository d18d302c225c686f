namespace MomentArm.Web.Shell;

/// <summary>The style sheets of every page, in the order in which they count.</summary>
public static class Styles
{
    public static IReadOnlyList<string> Sheets { get; } =
    [
        "css/tokens.css", "css/base.css", "css/frame.css", "css/forms.css", "css/parts.css", "css/tables.css", "css/people.css",
        "css/exam.css", "css/reasoning.css", "css/program.css", "css/library.css", "css/designer.css", "css/print.css",
    ];
}
