using System.Collections.Immutable;
using MomentArm.Exam;

namespace MomentArm.Web.Pages.Exam;

/// <summary>Which sentences of an interpretation stand where.</summary>
public static class RowSays
{
    /// <summary>For the row: what the number became, pain, the other side, a norm that grades, and the change since the last visit.</summary>
    public static ImmutableArray<Statement> Short(Interpretation said)
    {
        ArgumentNullException.ThrowIfNull(said);
        var list = ImmutableArray.CreateBuilder<Statement>();
        if (Torques(said) is { } torques)
            list.Add(new Statement(StatementTopic.Value, null, torques, Tone.Neutral));
        list.AddRange(said.Statements.Where(s => s.Topic == StatementTopic.Value && IsCombined(s)));
        list.AddRange(Judged(said));
        return list.ToImmutable();
    }

    /// <summary>For the note: the values as well.</summary>
    public static ImmutableArray<Statement> ForNote(Interpretation said)
    {
        ArgumentNullException.ThrowIfNull(said);
        return [.. said.Statements.Where(s => s.Topic == StatementTopic.Value), .. Judged(said)];
    }

    private static IEnumerable<Statement> Judged(Interpretation said) => said.Statements.Where(s => s.Topic switch
    {
        StatementTopic.Pain or StatementTopic.OtherSide or StatementTopic.SinceLast => true,
        StatementTopic.Norm => s.Tone != Tone.Neutral,
        StatementTopic.SinceFirst => said.Statements.All(other => other.Topic != StatementTopic.SinceLast || other.Side != s.Side),
        StatementTopic.Value or StatementTopic.Quality => false,
    });

    // "Mean of 2 activities", "72° (mean of 3)": the cell beside it does not say that.
    private static bool IsCombined(Statement one) =>
        one.Text.Contains("mean of ", StringComparison.OrdinalIgnoreCase) || one.Text.Contains("(best of ", StringComparison.Ordinal)
        || one.Text.Contains("no lever arm", StringComparison.Ordinal);

    private static string? Torques(Interpretation said)
    {
        var parts = said.Readings.Where(r => r.TorqueNm is not null).Select(r =>
        {
            var perKg = r.TorquePerKg is { } value ? $" ({Say.Number(value, 2)} N m/kg)" : "";
            return $"{Say.Side(r.Measurement.Side)} {Say.Torque(r.TorqueNm!.Value)}{perKg}";
        }).ToArray();
        var text = string.Join(", ", parts);
        return text.Length == 0 ? null : char.ToUpperInvariant(text[0]) + text[1..] + ".";
    }
}
