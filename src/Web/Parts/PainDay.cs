namespace MomentArm.Web.Parts;

/// <summary>One day on the pain chart.</summary>
/// <param name="Day">The day.</param>
/// <param name="Planned">Whether a session was planned.</param>
/// <param name="Done">Whether a session was done.</param>
/// <param name="PainDuring">Worst pain in that day's session, 0 to 10; null when not answered or no session.</param>
/// <param name="Morning">Pain on that day's morning, 0 to 10; null when not answered.</param>
public sealed record PainDay(DateOnly Day, bool Planned, bool Done, int? PainDuring, int? Morning);
