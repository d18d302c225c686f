namespace MomentArm.Body;

/// <summary>
/// The effort a person states at the end of a set or a hold, from 5 to 10 of 10 (10 = not one more). Repetitions left in
/// reserve by Zourdos et al. 2016: 10 leaves 0, 9 leaves 1, 8 leaves 2, 7 leaves 3, 6 leaves 4, 5 leaves 6 (between: evenly, our choice).
/// </summary>
public readonly record struct StatedEffort
{
    private const double Least = 5;

    private StatedEffort(double ofTen) => OfTen = ofTen;

    /// <summary>To the very end: 10 of 10.</summary>
    public static StatedEffort ToTheEnd => new(10);

    /// <summary>The effort, 5 to 10 of 10.</summary>
    public double OfTen { get; }

    /// <summary>Repetitions that were left, 0 to 6.</summary>
    public double InReserve => OfTen >= 6 ? 10 - OfTen : 4 + 2 * (6 - OfTen);

    /// <summary>Whether an effort was given at all.</summary>
    internal bool IsGiven => OfTen >= Least;

    /// <summary>Makes the effort from a rating.</summary>
    /// <param name="rating">Rating of effort, 5 to 10; below 5 the end of strength is too far away to be told.</param>
    /// <returns>The effort.</returns>
    /// <exception cref="ArgumentOutOfRangeException">NaN, or not from 5 to 10.</exception>
    public static StatedEffort FromRating(double rating) =>
        double.IsFinite(rating) && rating is >= Least and <= 10
            ? new StatedEffort(rating)
            : throw new ArgumentOutOfRangeException(
                nameof(rating),
                FormattableString.Invariant(
                    $"An effort of {rating} of 10 says too little about capacity: go on until at least 5 of 10 (better 7), and give 5 to 10."));

    /// <summary>Makes the effort from repetitions left in reserve.</summary>
    /// <param name="repetitions">Repetitions the person thinks were left, 0 to 6.</param>
    /// <returns>The effort.</returns>
    /// <exception cref="ArgumentOutOfRangeException">NaN, or not from 0 to 6.</exception>
    public static StatedEffort FromReserve(double repetitions) =>
        double.IsFinite(repetitions) && repetitions is >= 0 and <= 6
            ? new StatedEffort(repetitions <= 4 ? 10 - repetitions : 6 - (repetitions - 4) / 2)
            : throw new ArgumentOutOfRangeException(
                nameof(repetitions),
                FormattableString.Invariant(
                    $"{repetitions} repetitions in reserve say too little about capacity: go on until at most 6 are left, and give 0 to 6."));
}
