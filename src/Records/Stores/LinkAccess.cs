namespace MomentArm.Records;

/// <summary>What a usable patient link opens: one episode, nothing else.</summary>
public sealed record LinkAccess(Guid ClinicId, Guid EpisodeId, Guid LinkId)
{
    /// <summary>The patient as acting person.</summary>
    public Acting Acting => new(ClinicId, null, "patient, by link");
}

/// <summary>A new link. The token is shown this once and kept nowhere.</summary>
public sealed record CreatedLink(Guid LinkId, string Token, DateTime ExpiresAtUtc);

/// <summary>Why a token opens nothing: for the trail and for tests, never for the outside.</summary>
internal enum LinkState
{
    Usable,
    Unknown,
    Expired,
    Revoked,
}
