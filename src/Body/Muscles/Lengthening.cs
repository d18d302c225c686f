namespace MomentArm.Body;

/// <summary>How far a pose lengthens a muscle, three ways.</summary>
/// <param name="ChangeM">Path length less that of the neutral pose, metres; negative when shorter.</param>
/// <param name="PercentOfRange">0 at the shortest path over the usual joint ranges, 100 at the longest; not held inside.</param>
/// <param name="ChangeInFibers">Change divided by the optimal fiber length. Compares muscles, with care: short fibers exaggerate.</param>
public readonly record struct Lengthening(double ChangeM, double PercentOfRange, double ChangeInFibers);

/// <summary>The shortest and longest path of a muscle over the usual joint ranges.</summary>
/// <param name="ShortestM">Shortest path, metres.</param>
/// <param name="LongestM">Longest path, metres.</param>
public readonly record struct PathRange(double ShortestM, double LongestM);
