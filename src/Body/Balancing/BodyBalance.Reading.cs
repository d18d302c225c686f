namespace MomentArm.Body;

/// <summary>Reading the pose last solved.</summary>
public sealed partial class BodyBalance
{
    /// <summary>The force of a contact on the body, newtons, in the room.</summary>
    /// <param name="index">Index of the contact point as given.</param>
    /// <returns>The force.</returns>
    public Vec3 ContactForce(int index)
    {
        var x = solver.X;
        ref readonly var at = ref contact[index];
        var first = firstEdge[index];
        if (firstEdge[index + 1] - first == 1)
            return weight * x[first] * at.Normal;
        var (ahead, aside) = FrictionPyramid.Tangents(posed!, at.Normal);
        return weight * ((x[first] + x[first + 1] + x[first + 2] + x[first + 3] + x[first + 4]) * at.Normal
            + at.Friction * (x[first + 1] - x[first + 2]) * ahead + at.Friction * (x[first + 3] - x[first + 4]) * aside);
    }

    /// <summary>Tension of a tie, newtons.</summary>
    /// <param name="index">Index of the tie as given.</param>
    /// <returns>The tension, 0 or above.</returns>
    public double Tension(int index) => weight * solver.X[firstTie + index];

    /// <summary>The moment that holds a coordinate against gravity, given forces, contacts and ties, N m, in the model's sign.</summary>
    /// <param name="coordinate">Index of the coordinate.</param>
    /// <returns>The net moment; for the toes, which are left out, 0.</returns>
    public double NetMoment(int coordinate)
    {
        var row = layout.RowOf[coordinate];
        if (row < 0)
            return 0;
        var moment = program.RightSide[row];
        var start = program.Start;
        var rowOf = program.RowOf;
        var value = program.Value;
        for (var j = firstEdge[0]; j < program.Unknowns; j++)
        {
            for (var e = start[j]; e < start[j + 1]; e++)
            {
                if (rowOf[e] == row)
                    moment -= value[e] * solver.X[j];
            }
        }

        return momentUnit * moment;
    }

    /// <summary>
    /// What the muscles of a joint are asked: the net moment, but nothing where it only presses a joint against the end of its range.
    /// </summary>
    /// <param name="coordinate">Index of the coordinate.</param>
    /// <returns>The demand, N m, in the model's sign.</returns>
    public double Demand(int coordinate)
    {
        var net = NetMoment(coordinate);
        return endStop[coordinate] >= 0 && net * program.Value[program.Start[endStop[coordinate]]] > 0 ? 0 : net;
    }

    /// <summary>Moment that the end of a joint's range carries, N m, in the model's sign; 0 inside the range.</summary>
    /// <param name="coordinate">Index of the coordinate.</param>
    /// <returns>The moment.</returns>
    public double EndStop(int coordinate) =>
        endStop[coordinate] < 0 ? 0 : momentUnit * solver.X[endStop[coordinate]] * program.Value[program.Start[endStop[coordinate]]];

    /// <summary>Torque of the actuators of a coordinate without modelled muscles, N m, in the model's sign; 0 where muscles work.</summary>
    /// <param name="coordinate">Index of the coordinate.</param>
    /// <returns>The torque.</returns>
    public double ActuatorTorque(int coordinate)
    {
        if (raisingActuator[coordinate] < 0)
            return 0;
        double Of(int unknown) => solver.X[unknown] * program.Value[program.Start[unknown]];
        return momentUnit * (Of(raisingActuator[coordinate]) + Of(loweringActuator[coordinate]));
    }

    /// <summary>Moment that neither muscles nor actuators explain, N m, in the model's sign.</summary>
    /// <param name="coordinate">Index of the coordinate.</param>
    /// <returns>The reserve used.</returns>
    public double Reserve(int coordinate) => layout.RowOf[coordinate] < 0 ? 0 : momentUnit * solver.Miss(layout.RowOf[coordinate]);

    /// <summary>Force (N) and moment about the pelvis origin (N m) that the supports could not supply; nil for a pose that can be held.</summary>
    public (Vec3 Force, Vec3 Moment) Unbalanced
    {
        get
        {
            return (
                weight * new Vec3(Lacking(0), Lacking(1), Lacking(2)), momentUnit * new Vec3(Lacking(3), Lacking(4), Lacking(5)));
        }
    }

    /// <summary>Activation of a muscle, 0 to 1.</summary>
    /// <param name="muscle">Index into <see cref="Muscles"/>.</param>
    /// <returns>The activation; 0 for lines that share no effort (trunk lines, lines whose force went to the band).</returns>
    public double Activation(int muscle) => LineOf(muscle) is >= 0 and var line ? solver.X[line] : 0;

    /// <summary>Force of a muscle, newtons.</summary>
    /// <param name="muscle">Index into <see cref="Muscles"/>.</param>
    /// <returns>Activation times its scaled strength.</returns>
    public double MuscleForce(int muscle) => LineOf(muscle) is >= 0 and var line ? solver.X[line] * forceN[line] : 0;

    /// <summary>Force of a muscle when fully active, scaled to what this person's joints hold at the angles last solved, newtons.</summary>
    /// <param name="muscle">Index into <see cref="Muscles"/>.</param>
    /// <returns>The strength; 0 for lines that share no effort.</returns>
    public double Strength(int muscle) => LineOf(muscle) is >= 0 and var line ? forceN[line] : 0;

    /// <summary>Effort of a group: the mean of its lines' activations weighted by their strength, 0 to 1. An estimate, second to the joint's load share.</summary>
    /// <param name="function">The group.</param>
    /// <param name="side">The side.</param>
    /// <returns>The effort; 0 for groups without lines in the balance.</returns>
    public double Effort(MuscleFunction function, Side side) => Group(function, side).Effort;

    /// <summary>Effort of a group, and the sum of its lines' forces.</summary>
    /// <param name="function">The group.</param>
    /// <param name="side">The side.</param>
    /// <returns>Effort, 0 to 1, and force, newtons.</returns>
    public (double Effort, double ForceN) Group(MuscleFunction function, Side side)
    {
        double force = 0, most = 0;
        for (var i = 0; i < layout.Lines.Length; i++)
        {
            var muscle = Muscles.Muscles[layout.Lines[i].Muscle];
            if (muscle.Function != function || muscle.Side != side)
                continue;
            force += solver.X[i] * forceN[i];
            most += forceN[i];
        }

        return (most > 0 ? force / most : 0, force);
    }

    /// <summary>
    /// The force that the inner bone puts on the outer one at a joint, newtons, in the room: minus everything that pulls and pushes the
    /// parts beyond, muscles included. Its length over the body's weight is the joint contact force.
    /// </summary>
    /// <param name="joint">Index of the segment the joint turns.</param>
    /// <returns>The force.</returns>
    public Vec3 JointForce(int joint)
    {
        var state = posed ?? throw new InvalidOperationException("No pose has been solved yet.");
        var sum = Vec3.Zero;
        for (var s = joint; s < model.Segments.Length; s++)
        {
            if (IsBeyond(s, joint))
                sum += beyondForce[s] + new Vec3(0, -model.Segments[s].MassKg * BodyModel.Gravity, 0);
        }

        for (var i = 0; i < contacts; i++)
        {
            if (IsBeyond(contact[i].Segment, joint))
                sum += ContactForce(i);
        }

        for (var i = 0; i < ties; i++)
        {
            var along = tie[i].PointB - tie[i].PointA;
            var pull = along.Length < 1e-9 ? Vec3.Zero : (Tension(i) / along.Length) * along;
            sum += (IsBeyond(tie[i].SegmentA, joint) ? pull : Vec3.Zero) - (IsBeyond(tie[i].SegmentB, joint) ? pull : Vec3.Zero);
        }

        for (var i = 0; i < layout.Lines.Length; i++)
        {
            if (solver.X[i] > 0)
                sum -= solver.X[i] * forceN[i] * muscleState.Across(layout.Lines[i].Muscle, joint, state);
        }

        return -sum;
    }

    private bool IsBeyond(int segment, int joint)
    {
        while (segment > joint)
            segment = model.Segments[segment].Parent;
        return segment == joint;
    }

    private int LineOf(int muscle)
    {
        for (var i = 0; i < layout.Lines.Length; i++)
        {
            if (layout.Lines[i].Muscle == muscle)
                return i;
        }

        return -1;
    }
}
