namespace MomentArm.Records;

/// <summary>A clock that stands at one instant: for tests and for entering the past.</summary>
public sealed class FixedClock(DateTime utc) : TimeProvider
{
    private readonly DateTimeOffset now = new(DateTime.SpecifyKind(utc, DateTimeKind.Utc));

    public override DateTimeOffset GetUtcNow() => now;
}
