using System.Collections.Immutable;
using MomentArm.Exam;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>A case file read and understood.</summary>
public sealed record CaseInput
{
    /// <summary>What is known.</summary>
    public required CaseFacts Facts { get; init; }

    /// <summary>The complaint in words; null when not given.</summary>
    public required string? Title { get; init; }

    /// <summary>The danger-sign gate.</summary>
    public required DangerGate Gate { get; init; }

    /// <summary>Time, things and positions.</summary>
    public required AgreedLimits Agreed { get; init; }

    /// <summary>Days a week; null when not asked.</summary>
    public required int? DaysPerWeek { get; init; }

    /// <summary>What the person wants.</summary>
    public required ImmutableArray<string> Wishes { get; init; }

    /// <summary>Exercises chosen by hand; empty for a draft.</summary>
    public required ImmutableArray<ProgramItem> Chosen { get; init; }

    /// <summary>What the reasoning is told, without findings.</summary>
    public required ReasoningInput Reasoning { get; init; }

    /// <summary>Answers to the yellow flags.</summary>
    public required ImmutableDictionary<string, ItemAnswer> YellowFlags { get; init; }

    /// <summary>What was asked about irritability, without pain; null when nothing was.</summary>
    public required CaseIrritability? IrritabilityAsked { get; init; }

    /// <summary>What the reader asks back or kept as words; nothing typed is lost.</summary>
    public required ImmutableArray<string> Questions { get; init; }
}
