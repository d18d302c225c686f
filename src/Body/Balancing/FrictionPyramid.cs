namespace MomentArm.Body;

/// <summary>The directions of friction and the columns of contact forces in the balance of the whole body.</summary>
internal static class FrictionPyramid
{
    /// <summary>
    /// Two tangents of a surface, the first along the direction in which the body faces as far as that lies in the surface: a body turned
    /// in the room with its surfaces then carries the same forces.
    /// </summary>
    internal static (Vec3 Ahead, Vec3 Aside) Tangents(BodyState state, Vec3 normal)
    {
        var heading = state.Rotations[0] * Vec3.UnitX;
        var level = heading - heading.Dot(normal) * normal;
        if (level.Length < 0.1)
        {
            // Facing the surface or away from it: the way from feet to head serves as well.
            var up = state.Rotations[0] * Vec3.UnitY;
            level = up - up.Dot(normal) * normal;
        }

        var ahead = level.Normalized();
        return (ahead, normal.Cross(ahead));
    }

    /// <summary>
    /// The six entries of a force on the whole body: the force in units of the weight, its moment in the unit of moment,
    /// given as weight over unit of moment.
    /// </summary>
    internal static void AddRoot(SeparableProgram program, int row, Vec3 arm, Vec3 force, double weightOverMoment)
    {
        var moment = weightOverMoment * arm.Cross(force);
        program.AddEntry(row, force.X);
        program.AddEntry(row + 1, force.Y);
        program.AddEntry(row + 2, force.Z);
        program.AddEntry(row + 3, moment.X);
        program.AddEntry(row + 4, moment.Y);
        program.AddEntry(row + 5, moment.Z);
    }
}
