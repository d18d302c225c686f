namespace MomentArm.Body;

/// <summary>
/// From an author's joint angles, named contacts and ties to a body whose contacts meet their surfaces and whose chains close.
/// First the body is laid down as one rigid piece (<see cref="Placing"/>); what still misses is closed by the smallest weighted
/// change of joint angles inside their usual ranges (least squares with the analytic Jacobian). It says what it changed and
/// refuses what cannot be (<see cref="Refusal"/>). See docs/models/body.md, section 4.
/// </summary>
public static class Settling
{
    /// <summary>A contact this near its surface counts as meeting it, metres.</summary>
    public const double Meets = 0.001;

    /// <summary>A contact farther than this from its surface after settling is refused, metres.</summary>
    public const double Refused = 0.005;

    /// <summary>Changes smaller than this are not told, radians (half a degree).</summary>
    public const double Told = 0.5 * Math.PI / 180;

    /// <summary>Settles a frame.</summary>
    /// <param name="model">The body.</param>
    /// <param name="points">The named surface points.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="working">The side that works.</param>
    /// <returns>The settled body; the first contact lies at x = z = 0 so that frames of one movement fit together.</returns>
    /// <exception cref="ArgumentException">The frame has faults: angles no joint has, unknown points, absurd heights; all are listed.</exception>
    public static PlacedBody Settle(BodyModel model, SurfacePoints points, PosedFrame frame, Side working) =>
        Settle(model, points, frame, working, null);

    /// <summary>Settles a frame from a neighbor's start; for many frames of one body use a <see cref="Settler"/>.</summary>
    /// <param name="model">The body.</param>
    /// <param name="points">The named surface points.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="working">The side that works.</param>
    /// <param name="near">A settled neighbor of the same movement to start from; null to start from the author's angles.</param>
    /// <returns>The settled body.</returns>
    /// <exception cref="ArgumentException">The frame has faults; all are listed.</exception>
    public static PlacedBody Settle(BodyModel model, SurfacePoints points, PosedFrame frame, Side working, PlacedBody? near)
    {
        ArgumentNullException.ThrowIfNull(frame);
        return new Settler(model, points).Settle(frame, working, near);
    }

    /// <summary>
    /// Why a settled pose can't be, in words; null when it can. Surfaces that contradict each other first, then contacts and ties (the farthest off first), then standing.
    /// </summary>
    /// <param name="model">The body.</param>
    /// <param name="settled">The settled body.</param>
    /// <param name="mostGapM">Gap from which a contact counts as not met, metres.</param>
    /// <returns>A sentence that says what is wrong and what would help.</returns>
    public static string? Refusal(BodyModel model, PlacedBody settled, double mostGapM = Refused)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(settled);
        if (Contradiction(settled) is { } contradiction)
            return contradiction;

        // What is farther off is the cause more often than what it drags along.
        var (contact, tie) = (settled.Contacts.Select(c => Math.Abs(c.Gap)), settled.Ties.Select(t => Math.Abs(t.Gap)));
        return (tie.DefaultIfEmpty(0).Max() > contact.DefaultIfEmpty(0).Max()
                ? Untied(settled, mostGapM) ?? Missing(settled, mostGapM)
                : Missing(settled, mostGapM) ?? Untied(settled, mostGapM))
            ?? Unheld(model, settled);
    }

    /// <summary>Why the contacts cannot hold the body, in words; null when they can. A tilted board too steep for its contact is named.</summary>
    private static string? Unheld(BodyModel model, PlacedBody settled)
    {
        var state = new BodyState(model);
        state.Update(settled.Pose);
        var contacts = SupportPoints.Of(model, settled);
        var why = Standing.Refusal(state, contacts, []);
        if (why is null || !why.StartsWith("Slips", StringComparison.Ordinal))
            return why;
        foreach (var (placed, point) in settled.Contacts.Where(c => c.Contact.BearsWeight).Zip(contacts).OrderByDescending(c => Math.Abs(c.First.Contact.Tilt)))
        {
            var on = placed.Contact;
            if (on.Surface == SurfaceKind.Board && Math.Tan(Math.Abs(on.Tilt)) > point.Friction)
            {
                return FormattableString.Invariant(
                    $"Slips off: {on.Point}{Words.Whose(on.Limb)} does not hold on a board tilted {Math.Abs(on.Tilt) * 180 / Math.PI:0} degrees (friction {point.Friction:0.0}). It needs a flatter board or another contact.");
            }
        }

        return why;
    }

    /// <summary>Which point is said to touch two surfaces at once, in words; null when none is.</summary>
    /// <param name="settled">The settled body.</param>
    /// <returns>A sentence about the first such point.</returns>
    public static string? Contradiction(PlacedBody settled)
    {
        ArgumentNullException.ThrowIfNull(settled);
        var contacts = settled.Contacts;
        for (var i = 0; i < contacts.Length; i++)
        {
            for (var j = i + 1; j < contacts.Length; j++)
            {
                var (a, b) = (contacts[i], contacts[j]);
                if (a.Segment != b.Segment || (a.Local - b.Local).Length > 1e-9 || !Contradict(a, b))
                    continue;
                return FormattableString.Invariant(
                    $"{b.Contact.Point}{Words.Whose(b.Contact.Limb)} is said to touch the {Surface(a.Contact)} and the {Surface(b.Contact)} at once. Leave one of the two contacts out.");
            }
        }

        return null;
    }

    /// <summary>Which contact does not meet its surface, in words; null when all do.</summary>
    /// <param name="settled">The settled body.</param>
    /// <param name="mostGapM">Gap from which a contact counts as not met, metres.</param>
    /// <returns>A sentence about the worst contact.</returns>
    public static string? Missing(PlacedBody settled, double mostGapM = Refused)
    {
        ArgumentNullException.ThrowIfNull(settled);
        var worst = settled.Contacts.MaxBy(c => Math.Abs(c.Gap));
        if (worst is null || Math.Abs(worst.Gap) <= mostGapM)
            return null;
        var off = worst.Contact.Surface == SurfaceKind.Wall
            ? worst.Gap > 0 ? "away from it while another contact touches" : "behind its face"
            : worst.Gap > 0 ? "above" : "below";
        return FormattableString.Invariant(
            $"{worst.Contact.Point}{Words.Whose(worst.Contact.Limb)} cannot reach the {Words.Of(worst.Contact.Surface)}: it stays {Math.Abs(worst.Gap) * 100:0.0} cm {off}.{AtTheirEnd(settled)} Change the pose, the height or the contact.");
    }

    /// <summary>Which strap or hold does not close, in words; null when all do.</summary>
    /// <param name="settled">The settled body.</param>
    /// <param name="mostGapM">Gap from which a tie counts as open, metres.</param>
    /// <returns>A sentence about the worst tie.</returns>
    public static string? Untied(PlacedBody settled, double mostGapM = Refused)
    {
        ArgumentNullException.ThrowIfNull(settled);
        var worst = settled.Ties.MaxBy(t => Math.Abs(t.Gap));
        if (worst is null || Math.Abs(worst.Gap) <= mostGapM)
            return null;
        var (tie, from, to) = (worst.Tie, worst.Tie.From + Words.Whose(worst.Tie.FromLimb), worst.Tie.To + Words.Whose(worst.Tie.ToLimb));
        var what = tie.Kind == TieKind.Hold
            ? $"{from} cannot hold {to}: {Cm(worst.Gap)} stay between them."
            : worst.Gap > 0
                ? $"The strap from {from} to {to} is {Cm(worst.Gap)} too short: at {Cm(tie.LengthM!.Value)} it does not reach."
                : $"The strap from {from} to {to} is {Cm(worst.Gap)} too long: at {Cm(tie.LengthM!.Value)} it hangs loose.";
        return $"{what}{AtTheirEnd(settled)} Change the pose{(tie.Kind == TieKind.Hold ? " or what is held" : " or the length of the strap")}.";

        static string Cm(double meters) => FormattableString.Invariant($"{Math.Abs(meters) * 100:0.0} cm");
    }

    private static bool Contradict(PlacedContact a, PlacedContact b)
    {
        // A wall and a level surface can meet in a corner; two level surfaces, two walls side by side or a board and a floor cannot be touched by one point.
        var (x, y) = (a.Contact, b.Contact);
        if (x.Surface == SurfaceKind.Wall != (y.Surface == SurfaceKind.Wall))
            return false;
        if (x.Surface == SurfaceKind.Wall)
            return a.Normal.Dot(b.Normal) < -0.5;
        return x.Surface != y.Surface || x.HeightM != y.HeightM || x.Tilt != y.Tilt;
    }

    private static string Surface(SurfaceContact contact) => contact.Surface is SurfaceKind.Wall or SurfaceKind.Floor && contact.HeightM == 0
        ? Words.Of(contact.Surface)
        : contact.Tilt != 0
            ? FormattableString.Invariant($"{Words.Of(contact.Surface)} at {contact.HeightM:0.##} m tilted {contact.Tilt * 180 / Math.PI:0} degrees")
            : FormattableString.Invariant($"{Words.Of(contact.Surface)} at {contact.HeightM:0.##} m");

    /// <summary>The two joints that held most against it, in a sentence with a space before; empty when none did.</summary>
    private static string AtTheirEnd(PlacedBody settled)
    {
        if (settled.Ends.IsEmpty)
            return "";
        var ends = string.Join(" and ", settled.Ends.Take(2));
        return $" {char.ToUpperInvariant(ends[0])}{ends[1..]}.";
    }
}
