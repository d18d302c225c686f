using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>The skeleton as published, unscaled, right side and midline; the left side is mirrored from it.</summary>
/// <param name="Segments">Segments, each parent before its children.</param>
/// <param name="ReferenceLengths">Lengths of the published model to which a patient's segments are scaled.</param>
public sealed record SkeletonData(ImmutableArray<SegmentData> Segments, ReferenceLengths ReferenceLengths);

/// <summary>One segment and the joint that ties it to its parent.</summary>
/// <param name="Kind">Which segment.</param>
/// <param name="Parent">Its parent; null for the pelvis.</param>
/// <param name="BothSides">Whether it exists on both sides.</param>
/// <param name="Offset">Joint centre in the parent's frame at the neutral pose, metres.</param>
/// <param name="Coordinates">Its joint coordinates in the order of turning.</param>
/// <param name="TranslationX">Forward slide of the joint centre in the parent's frame over the first coordinate, metres; null for none.</param>
/// <param name="TranslationY">Upward slide likewise.</param>
public sealed record SegmentData(
    SegmentKind Kind,
    SegmentKind? Parent,
    bool BothSides,
    Vec3 Offset,
    ImmutableArray<CoordinateData> Coordinates,
    CubicSpline? TranslationX,
    CubicSpline? TranslationY);

/// <summary>One joint coordinate of the published skeleton.</summary>
/// <param name="Motion">Which motion.</param>
/// <param name="Axis">Unit axis in the frame already turned by the earlier coordinates of the joint, right side.</param>
/// <param name="NormalLeast">Least value of the usual range, radians.</param>
/// <param name="NormalMost">Largest value of the usual range, radians.</param>
public sealed record CoordinateData(Motion Motion, Vec3 Axis, double NormalLeast, double NormalMost);

/// <summary>Lengths of the published model in metres.</summary>
/// <param name="Thigh">Hip centre to knee.</param>
/// <param name="Shank">Knee to ankle.</param>
/// <param name="Foot">Heel to longest toe tip.</param>
/// <param name="Trunk">Hip line to shoulder line.</param>
/// <param name="Head">Neck joint to vertex.</param>
/// <param name="UpperArm">Shoulder to elbow.</param>
/// <param name="Forearm">Elbow to wrist.</param>
/// <param name="Hand">Wrist to third knuckle.</param>
public sealed record ReferenceLengths(
    double Thigh, double Shank, double Foot, double Trunk, double Head, double UpperArm, double Forearm, double Hand);
