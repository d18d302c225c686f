using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>The danger-sign screen: answers in, gate out. The rules are our choice, see docs/models/exam.md section 8.</summary>
public static class DangerScreen
{
    /// <summary>Judges the answers.</summary>
    /// <param name="signs">The signs of the screen.</param>
    /// <param name="answers">Answers by sign id; a sign that is missing here has not been asked.</param>
    /// <param name="decisions">Recorded decisions; the latest one about a sign counts.</param>
    /// <returns>The gate.</returns>
    public static DangerGate Judge(
        IReadOnlyList<DangerSign> signs,
        IReadOnlyDictionary<string, DangerAnswer> answers,
        IReadOnlyList<DangerDecision> decisions)
    {
        ArgumentNullException.ThrowIfNull(signs);
        ArgumentNullException.ThrowIfNull(answers);
        ArgumentNullException.ThrowIfNull(decisions);
        var unasked = signs.Where(s => AnswerTo(s, answers) == DangerAnswer.NotAsked).ToImmutableArray();
        var present = signs
            .Where(s => AnswerTo(s, answers) == DangerAnswer.Yes)
            .OrderByDescending(s => s.Urgency)
            .ThenBy(s => s.Id, StringComparer.Ordinal)
            .Select(s => new PresentSign(s, decisions.LastOrDefault(d => d.SignId == s.Id)))
            .ToImmutableArray();
        var unknown = answers
            .Where(a => a.Value == DangerAnswer.Yes && signs.All(s => s.Id != a.Key))
            .Select(a => a.Key)
            .Order(StringComparer.Ordinal)
            .ToImmutableArray();
        var state = StateOf(present, unasked, unknown);
        return new DangerGate
        {
            State = state,
            PrescribingStopped = state is not (GateState.Clear or GateState.ProceedWithCare),
            Headline = Headline(state, unasked.Length),
            WhatToDo = WhatToDo(present, unasked, unknown),
            Unasked = unasked,
            Present = present,
            UnknownYes = unknown,
        };
    }

    private static DangerAnswer AnswerTo(DangerSign sign, IReadOnlyDictionary<string, DangerAnswer> answers) =>
        answers.TryGetValue(sign.Id, out var answer) ? answer : DangerAnswer.NotAsked;

    private static GateState StateOf(
        ImmutableArray<PresentSign> present, ImmutableArray<DangerSign> unasked, ImmutableArray<string> unknown)
    {
        var state = present.IsEmpty ? GateState.Clear : GateState.ProceedWithCare;
        if (!unasked.IsEmpty)
            state = GateState.Unfinished;
        if (!unknown.IsEmpty)
            state = GateState.ReferBeforeExercise;
        foreach (var sign in present.Where(p => p.Decision is null))
            state = (GateState)Math.Max((int)state, (int)StateFor(sign.Sign.Urgency, state));
        return state;
    }

    private static GateState StateFor(Urgency urgency, GateState otherwise) => urgency switch
    {
        Urgency.ProceedWithCare => otherwise,
        Urgency.ReferBeforeExercise => GateState.ReferBeforeExercise,
        Urgency.SameDay => GateState.SameDay,
        Urgency.EmergencyNow => GateState.Emergency,
    };

    private static string Headline(GateState state, int unasked) => state switch
    {
        GateState.Clear => "All danger signs asked, none present.",
        GateState.ProceedWithCare => "Go on with care: a sign is on record.",
        GateState.Unfinished => $"{unasked} danger {(unasked == 1 ? "sign has" : "signs have")} not been asked. Not asked is not no.",
        GateState.ReferBeforeExercise => "Refer before exercise: no new loading until a clinician records who cleared it.",
        GateState.SameDay => "Medical contact today; exercise waits.",
        GateState.Emergency => "Stop and call the emergency service.",
    };

    private static ImmutableArray<string> WhatToDo(
        ImmutableArray<PresentSign> present, ImmutableArray<DangerSign> unasked, ImmutableArray<string> unknown)
    {
        var list = present.Where(p => p.Decision is null).Select(p => p.Sign.Action).ToList();
        list.AddRange(unknown.Select(id => $"The answer yes to \"{id}\" belongs to a question that is no longer in the list: ask what it was."));
        if (!unasked.IsEmpty)
            list.Add("Ask the open questions: " + string.Join(" ", unasked.Select(s => s.Question)));
        list.AddRange(present.Where(p => p.Decision is not null)
            .Select(p => $"On record: {p.Sign.MayMean}. Cleared by {p.Decision!.Who}: {p.Decision.Reason}"));
        return [.. list];
    }
}
