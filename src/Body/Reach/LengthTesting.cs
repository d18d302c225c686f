namespace MomentArm.Body;

/// <summary>What a muscle length test must fulfil before it is replayed.</summary>
internal static class LengthTesting
{
    /// <summary>Readings replayed on each side of the middle one, so that no turning point inside the interval is missed.</summary>
    internal const int Steps = 4;

    private const double Degree = Math.PI / 180;

    /// <summary>The coordinate that is read and the sign of the reading on it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Reading or error cannot be.</exception>
    /// <exception cref="ArgumentException">The joint that is read is not crossed by the group.</exception>
    internal static (int Coordinate, int Sign) Checked(LengthTest test, MuscleSet set, ReadOnlySpan<int> lines)
    {
        Quantity.Within(test.Reading / Degree, Shown(test.Least), Shown(test.Most), "degrees", test.Name);
        Quantity.Within(test.Error / Degree, 0, 45, "degrees", test.Name + ", error");
        if (test.Basis == LimitBasis.UsualRange || !Enum.IsDefined(test.Basis))
            throw new ArgumentException($"{test.Name}: a test cannot rest on {test.Basis}.", nameof(test));
        var (coordinate, sign) = test.Measured.On(set.Model, test.Side);
        foreach (var line in lines)
        {
            var muscle = set.Muscles[line];
            if (set.ArmCoordinates.Slice(muscle.FirstArm, muscle.ArmCount).Contains(coordinate))
                return (coordinate, sign);
        }

        throw new ArgumentException(
            $"{test.Name} reads {test.Measured}, a joint that the group {test.Group} does not cross: name the right group or joint.",
            nameof(test));
    }

    /// <summary>Degrees of a bound that was written in degrees, without the rounding of the way there and back.</summary>
    private static double Shown(double radians) => Math.Round(radians / Degree, 9);
}
