using System.Globalization;
using MomentArm.Exam;

namespace MomentArm.Web.Pages.Exam;

/// <summary>Answers to the items of a questionnaire as they are typed: "3244-1" in a row, or "10 7 - 4" where answers may have two digits.</summary>
public static class ExamItemsText
{
    /// <summary>Whether every answer is one key.</summary>
    public static bool IsSingle(QuestionnaireSetUp form)
    {
        ArgumentNullException.ThrowIfNull(form);
        return form.ItemLow >= 0 && form.ItemHigh <= 9;
    }

    /// <summary>Reads what is typed so far; null is an item left out. What is no number counts as a wrong answer of -1, so that the score says where it is.</summary>
    public static IReadOnlyList<int?> Read(string typed, QuestionnaireSetUp form)
    {
        ArgumentNullException.ThrowIfNull(typed);
        var parts = IsSingle(form)
            ? typed.Where(c => !char.IsWhiteSpace(c) && c != ',').Select(c => c.ToString())
            : typed.Split([' ', ',', ';'], StringSplitOptions.RemoveEmptyEntries);
        return [.. parts.Select(Answer)];
    }

    /// <summary>Answers as they are typed.</summary>
    public static string Write(IEnumerable<int?> answers, QuestionnaireSetUp form) =>
        string.Join(IsSingle(form) ? "" : " ", answers.Select(a => a?.ToString(CultureInfo.InvariantCulture) ?? "-"));

    private static int? Answer(string part) =>
        part is "-" or "x" or "." ? null : int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var value) ? value : -1;
}
