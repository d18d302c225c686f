using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>A frame made ready for placing and settling: its pose, its contact points with their planes, and its ties.</summary>
internal sealed class Laid
{
    private readonly SurfaceContact[] contacts;
    private readonly Tie[] ties;

    private Laid(BodyPose pose, SurfaceContact[] contacts, (int Segment, Vec3 Local)[] at, Tie[] ties, (int Segment, Vec3 Local)[] ends)
    {
        Pose = pose;
        this.contacts = contacts;
        At = at;
        Points = new Vec3[at.Length];
        Planes = new Plane[at.Length];
        Normals = new Vec3[at.Length];
        this.ties = ties;
        TieEnds = ends;
    }

    internal BodyPose Pose { get; }

    /// <summary>Segment and local point of each contact point.</summary>
    internal (int Segment, Vec3 Local)[] At { get; }

    /// <summary>The contact points in the room, as of the last update.</summary>
    internal Vec3[] Points { get; }

    internal Plane[] Planes { get; }

    /// <summary>The surfaces' unit normals, into the body; of a board also where its height is held.</summary>
    internal Vec3[] Normals { get; }

    /// <summary>Distance of each wall along its normal from the room's origin, metres.</summary>
    internal double[] WallsAt { get; private set; } = [];

    /// <summary>The walls' normals.</summary>
    internal Vec3[] WallNormals { get; private set; } = [];

    /// <summary>How many contact points are on walls.</summary>
    internal int WallContacts { get; private set; }

    internal ReadOnlySpan<Tie> Ties => ties;

    /// <summary>Segment and local point of both ends of each tie: from, to, from, to.</summary>
    internal (int Segment, Vec3 Local)[] TieEnds { get; }

    /// <summary>The frame in the author's angles, the pelvis at the room's origin.</summary>
    internal static Laid Of(BodyState state, SurfacePoints points, PosedFrame frame, Side working)
    {
        var model = state.Model;
        var pose = ClinicalPose.Of(model, frame, working);
        state.Update(pose);
        var count = 0;
        foreach (var contact in frame.Contacts)
            count += points.Resolve(contact.Point).Length;
        var contacts = new SurfaceContact[count];
        var at = new (int Segment, Vec3 Local)[count];
        var next = 0;
        foreach (var contact in frame.Contacts)
        {
            foreach (var point in points.Resolve(contact.Point))
            {
                contacts[next] = contact;
                at[next++] = point.On(model, contact.Limb?.On(working));
            }
        }

        var ends = new (int Segment, Vec3 Local)[2 * frame.Ties.Length];
        for (var i = 0; i < frame.Ties.Length; i++)
        {
            var tie = frame.Ties[i];
            ends[2 * i] = Middle(model, points.Resolve(tie.From), tie.FromLimb?.On(working));
            ends[2 * i + 1] = Middle(model, points.Resolve(tie.To), tie.ToLimb?.On(working));
        }

        var laid = new Laid(pose, contacts, at, [.. frame.Ties], ends);
        laid.UpdatePoints(state);
        laid.SetPlanes(state, frame.Orientation, working);
        return laid;
    }

    internal void UpdatePoints(BodyState state)
    {
        for (var i = 0; i < Points.Length; i++)
            Points[i] = state.Point(At[i].Segment, At[i].Local);
    }

    /// <summary>Each wall goes through the middle of what touches it.</summary>
    internal void UpdateWalls()
    {
        for (var wall = 0; wall < WallsAt.Length; wall++)
        {
            var sum = 0.0;
            var count = 0;
            for (var i = 0; i < Planes.Length; i++)
            {
                if (Planes[i].Wall != wall)
                    continue;
                sum += Planes[i].Normal.Dot(Points[i]);
                count++;
            }

            WallsAt[wall] = sum / count;
        }
    }

    /// <summary>How far a contact point is from its surface, metres, positive off it.</summary>
    internal double Gap(int contact)
    {
        ref readonly var plane = ref Planes[contact];
        var from = plane.Reference < 0 ? Vec3.Zero : Points[plane.Reference];
        return plane.Normal.Dot(Points[contact] - from) - plane.Offset - (plane.Wall < 0 ? 0 : WallsAt[plane.Wall]);
    }

    internal void MoveAnchorToOrigin(BodyState state)
    {
        if (Points.Length == 0)
            return;
        var anchor = new Vec3(Points[0].X, 0, Points[0].Z);
        Pose.PelvisPosition -= anchor;
        for (var wall = 0; wall < WallsAt.Length; wall++)
            WallsAt[wall] -= WallNormals[wall].Dot(anchor);
        state.Update(Pose);
        UpdatePoints(state);
    }

    /// <summary>What is shown of it: contacts, ties and the largest gap in the room.</summary>
    internal PlacedBody Body(BodyState state, ImmutableArray<JointChange> changes)
    {
        var placed = ImmutableArray.CreateBuilder<PlacedContact>(contacts.Length);
        var largest = 0.0;
        for (var i = 0; i < contacts.Length; i++)
        {
            var gap = Gap(i);
            largest = Math.Max(largest, Math.Abs(gap));
            placed.Add(new PlacedContact(contacts[i], At[i].Segment, At[i].Local, Points[i], Normals[i], gap));
        }

        var tied = ImmutableArray.CreateBuilder<PlacedTie>(ties.Length);
        for (var i = 0; i < ties.Length; i++)
        {
            var ((fromSegment, fromLocal), (toSegment, toLocal)) = (TieEnds[2 * i], TieEnds[2 * i + 1]);
            var tie = new PlacedTie(
                ties[i], fromSegment, fromLocal, state.Point(fromSegment, fromLocal), toSegment, toLocal, state.Point(toSegment, toLocal));
            largest = Math.Max(largest, Math.Abs(tie.Gap));
            tied.Add(tie);
        }

        return new PlacedBody(Pose, placed.MoveToImmutable(), largest, changes) { Ties = tied.MoveToImmutable() };
    }

    private static (int Segment, Vec3 Local) Middle(BodyModel model, ImmutableArray<SurfacePoint> points, Side? side)
    {
        var sum = Vec3.Zero;
        foreach (var point in points)
            sum += point.On(model, side).Local;
        return (points[0].On(model, side).Segment, (1.0 / points.Length) * sum);
    }

    private void SetPlanes(BodyState state, Orientation orientation, Side working)
    {
        var open = OpenWall(state, orientation, working);
        List<WallPlace>? walls = null;
        for (var i = 0; i < contacts.Length; i++)
        {
            var contact = contacts[i];
            if (contact.Surface == SurfaceKind.Wall)
            {
                var place = contact.Wall ?? open;
                walls ??= [];
                if (!walls.Contains(place))
                    walls.Add(place);
                Planes[i] = new Plane(Walls.Normal(orientation, place, working), 0, -1, walls.IndexOf(place));
                WallContacts++;
            }
            else if (contact.Surface == SurfaceKind.Board)
            {
                var (sin, cos) = Math.SinCos(contact.Tilt);
                var first = FirstOnBoard(contact);
                Planes[i] = first == i
                    ? new Plane(Vec3.UnitY, contact.HeightM, -1, -1)
                    : new Plane(new Vec3(sin, cos, 0), 0, first, -1);
                Normals[i] = new Vec3(sin, cos, 0);
                continue;
            }
            else
            {
                Planes[i] = new Plane(Vec3.UnitY, contact.HeightM, -1, -1);
            }

            Normals[i] = Planes[i].Normal;
        }

        if (walls is null)
            return;
        WallsAt = new double[walls.Count];
        WallNormals = [.. walls.Select(place => Walls.Normal(orientation, place, working))];
    }

    /// <summary>The place of the contacts whose wall was left open: the one wall that was named, else what the touching skin faces.</summary>
    private WallPlace OpenWall(BodyState state, Orientation orientation, Side working)
    {
        WallPlace? named = null;
        var several = false;
        var evidence = Vec3.Zero;
        for (var i = 0; i < contacts.Length; i++)
        {
            if (contacts[i].Surface != SurfaceKind.Wall)
                continue;
            if (contacts[i].Wall is not { } place)
                evidence += Walls.Facing(state, At[i].Segment, At[i].Local);
            else if (named is null)
                named = place;
            else
                several |= named != place;
        }

        return named is { } one && !several ? one : Walls.Derive(orientation, working, evidence);
    }

    private int FirstOnBoard(SurfaceContact board)
    {
        for (var i = 0; i < contacts.Length; i++)
        {
            if (contacts[i].Surface == SurfaceKind.Board && contacts[i].HeightM == board.HeightM && contacts[i].Tilt == board.Tilt)
                return i;
        }

        return -1;
    }
}
