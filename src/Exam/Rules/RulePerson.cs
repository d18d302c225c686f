using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>What the record knows of a person, for rules.</summary>
/// <param name="AgeYears">Age in years; null when not known.</param>
/// <param name="Sex">Sex; null when not known.</param>
public sealed record RulePerson(double? AgeYears, Sex? Sex)
{
    /// <summary>The answer that a fact gives.</summary>
    /// <param name="fact">The fact.</param>
    /// <returns>The answer; null when the record does not know.</returns>
    public RuleValue? Says(RuleFact fact) => fact switch
    {
        RuleFact.AgeYears => AgeYears is { } age && double.IsFinite(age) ? RuleValue.Of(age) : null,
        RuleFact.Female => Sex is { } sex ? RuleValue.Of(sex == Body.Sex.Female) : null,
    };
}
