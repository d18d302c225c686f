using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>The danger-sign screen: answers in, gate out. The rules are our choice, see docs/models/exam.md section 8.</summary>
public static class DangerScreen
{
    /// <summary>Up to so many open questions are repeated in full in what to do.</summary>
    private const int ListedQuestions = 4;

    /// <summary>
    /// Judges the answers of a person: the general questions, those of the regions of the complaint, and every sign that was
    /// answered yes whether it is asked of this person or not.
    /// </summary>
    /// <param name="signs">All signs.</param>
    /// <param name="person">Whom they are asked of.</param>
    /// <param name="answers">Answers by sign id; a sign that is missing here has not been asked.</param>
    /// <param name="decisions">Recorded decisions; the latest one about a sign counts.</param>
    /// <returns>The gate; while no region is named the questions of every region are open.</returns>
    public static DangerGate Judge(
        IReadOnlyList<DangerSign> signs,
        ScreenedPerson person,
        IReadOnlyDictionary<string, DangerAnswer> answers,
        IReadOnlyList<DangerDecision> decisions)
    {
        ArgumentNullException.ThrowIfNull(signs);
        ArgumentNullException.ThrowIfNull(person);
        ArgumentNullException.ThrowIfNull(answers);
        ArgumentNullException.ThrowIfNull(decisions);
        DangerSign[] asked = [.. signs.Where(s => s.IsAskedOf(person) || AnswerTo(s, answers) == DangerAnswer.Yes)];
        return Judge(asked, answers, decisions, person.Regions.IsEmpty);
    }

    /// <summary>Judges the answers to a list of signs, every one of which is asked.</summary>
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
        return Judge(signs, answers, decisions, regionUnknown: false);
    }

    private static DangerGate Judge(
        IReadOnlyList<DangerSign> signs,
        IReadOnlyDictionary<string, DangerAnswer> answers,
        IReadOnlyList<DangerDecision> decisions,
        bool regionUnknown)
    {
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
        regionUnknown &= unasked.Any(s => !s.IsGeneral());
        var state = StateOf(present, !unasked.IsEmpty, unknown);
        return new DangerGate
        {
            State = state,
            PrescribingStopped = state is not (GateState.Clear or GateState.ProceedWithCare),
            Headline = Headline(state, unasked.Length, regionUnknown),
            WhatToDo = WhatToDo(present, unasked, unknown, regionUnknown),
            RegionUnknown = regionUnknown,
            Unasked = unasked,
            Present = present,
            UnknownYes = unknown,
        };
    }

    private static DangerAnswer AnswerTo(DangerSign sign, IReadOnlyDictionary<string, DangerAnswer> answers) =>
        answers.TryGetValue(sign.Id, out var answer) ? answer : DangerAnswer.NotAsked;

    private static GateState StateOf(
        ImmutableArray<PresentSign> present, bool unfinished, ImmutableArray<string> unknown)
    {
        var state = present.IsEmpty ? GateState.Clear : GateState.ProceedWithCare;
        if (unfinished)
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

    private static string Headline(GateState state, int unasked, bool regionUnknown) => state switch
    {
        GateState.Clear => "All danger signs asked, none present.",
        GateState.ProceedWithCare => "Go on with care: a sign is on record.",
        GateState.Unfinished when regionUnknown => "No part of the body is named, so its danger signs have not been asked. Not asked is not no.",
        GateState.Unfinished => $"{unasked} danger {(unasked == 1 ? "sign has" : "signs have")} not been asked. Not asked is not no.",
        GateState.ReferBeforeExercise => "Refer before exercise: no new loading until a clinician records who cleared it.",
        GateState.SameDay => "Medical contact today; exercise waits.",
        GateState.Emergency => "Stop and call the emergency service.",
    };

    private static ImmutableArray<string> WhatToDo(
        ImmutableArray<PresentSign> present, ImmutableArray<DangerSign> unasked, ImmutableArray<string> unknown, bool regionUnknown)
    {
        var list = present.Where(p => p.Decision is null).Select(p => p.Sign.Action).ToList();
        list.AddRange(unknown.Select(id => $"The answer yes to \"{id}\" belongs to a question that is no longer in the list: ask what it was."));
        if (regionUnknown)
            list.Add("Name the region of the complaint, so that its questions can be asked.");
        var open = unasked.Where(s => !regionUnknown || s.IsGeneral()).Select(s => s.Question).ToArray();
        if (open.Length > ListedQuestions)
            list.Add($"Ask the {Say.Number(open.Length, 0)} open questions.");
        else if (open.Length > 0)
            list.Add("Ask the open questions: " + string.Join(" ", open));
        list.AddRange(present.Where(p => p.Decision is not null)
            .Select(p => $"On record: {p.Sign.MayMean}. Cleared by {p.Decision!.Who}: {p.Decision.Reason}"));
        return [.. list];
    }
}
