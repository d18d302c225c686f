using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>Turns knobs: gives a movement with one thing changed. Pure; the movement given is not changed.</summary>
public static class Knobs
{
    /// <summary>The movement with a knob turned to a value.</summary>
    /// <param name="movement">The movement.</param>
    /// <param name="knob">What is turned.</param>
    /// <param name="value">To which value, in the unit of the knob's kind.</param>
    /// <returns>The changed movement. A weight of 0 is one whose mass the dose sets: load it with no added mass.</returns>
    /// <exception cref="ArgumentException">The movement has no such thing (see <see cref="Missing"/>), or the value is not usable.</exception>
    public static Movement Apply(Movement movement, Knob knob, double value)
    {
        ArgumentNullException.ThrowIfNull(movement);
        ArgumentNullException.ThrowIfNull(knob);
        if (Missing(movement, knob) is { } missing)
            throw new ArgumentException(missing, nameof(knob));
        return knob.Kind switch
        {
            KnobKind.Weight => WithLoad(movement, knob, l => l with { MassKg = Quantity.Within(value, 0, 240, "kg") }),
            KnobKind.Lever => WithLoad(movement, knob, l => l with
            {
                At = knob.From ?? l.At,
                Toward = knob.To ?? l.Toward,
                Fraction = Quantity.Within(value, 0, 1, "of the way"),
            }),
            KnobKind.BandF100 => WithBand(movement, knob, b => b with { F100N = Quantity.Within(value, 0.1, 2000, "N"), F200N = null, Readings = [] }),
            KnobKind.BandRestLength => WithBand(movement, knob, b => b with
            {
                RestLengthM = Quantity.Within(value, ElasticBand.LeastRestLengthM, ElasticBand.MostRestLengthM, "m"),
            }),
            KnobKind.BandPreStretch => WithBand(movement, knob, b => b with { RestLengthM = null, PreStretch = Quantity.Within(value, -0.9, ElasticBand.MostElongation, "of the rest length") }),
            KnobKind.HelpForce => WithPull(movement, Nth<HelpPull>(movement, knob.Index), p => (HelpPull)p with { ForceN = Quantity.Within(value, -2000, 2000, "N") }),
            KnobKind.SurfaceHeight => WithHeight(movement, Quantity.Within(value, 0, 1.5, "m")),
            KnobKind.Depth => UpTo(movement, Quantity.Within(value, 0, 1, "of the way")),
        };
    }

    /// <summary>Why a movement has no such knob, in words; null when it has.</summary>
    /// <param name="movement">The movement.</param>
    /// <param name="knob">The knob.</param>
    /// <returns>A sentence that says what is missing and what would help.</returns>
    public static string? Missing(Movement movement, Knob knob)
    {
        ArgumentNullException.ThrowIfNull(movement);
        ArgumentNullException.ThrowIfNull(knob);
        return knob.Kind switch
        {
            KnobKind.Weight => knob.Index < movement.Loads.Length ? null : "The exercise takes no added weight. Turn another knob, or add a load to the exercise file.",
            KnobKind.Lever when knob.Index >= movement.Loads.Length => "The exercise takes no added weight whose place could be changed. Turn another knob.",
            KnobKind.Lever => (knob.To ?? movement.Loads[knob.Index].Toward) is null ? "The weight has no second point to move toward. Name two points of one segment, such as kneeFront and ankle." : null,
            KnobKind.BandF100 or KnobKind.BandRestLength or KnobKind.BandPreStretch =>
                Nth<BandPull>(movement, knob.Index) < 0 ? "The exercise has no band. Turn another knob, or add a pull to the exercise file." : null,
            KnobKind.HelpForce => Nth<HelpPull>(movement, knob.Index) < 0 ? "The exercise has no help to change. Turn another knob, or add a pull of kind help to the exercise file." : null,
            KnobKind.SurfaceHeight => Raised(movement) is null ? "The exercise has neither step nor seat. Turn another knob." : null,
            KnobKind.Depth => movement.Frames.Length < 2 ? "The exercise is a hold and goes nowhere. Turn another knob." : null,
        };
    }

    /// <summary>The value a knob stands at.</summary>
    /// <param name="movement">The movement.</param>
    /// <param name="knob">The knob.</param>
    /// <returns>The value; null when the movement has no such knob, or leaves it to the dose or to the start pose.</returns>
    public static double? Present(Movement movement, Knob knob)
    {
        if (Missing(movement, knob) is not null)
            return null;
        return knob.Kind switch
        {
            KnobKind.Weight => movement.Loads[knob.Index].MassKg is > 0 and var mass ? mass : null,
            KnobKind.Lever => movement.Loads[knob.Index].Fraction,
            KnobKind.BandF100 => Band(movement, knob).F100N,
            KnobKind.BandRestLength => Band(movement, knob).RestLengthM,
            KnobKind.BandPreStretch => Band(movement, knob).RestLengthM is null ? Band(movement, knob).PreStretch : null,
            KnobKind.HelpForce => ((HelpPull)movement.Pulls[Nth<HelpPull>(movement, knob.Index)]).ForceN,
            KnobKind.SurfaceHeight => Raised(movement)!.Value.HeightM,
            KnobKind.Depth => 1,
        };
    }

    /// <summary>Which contact of which pose misses its surface so far that numbers are doubtful, in words; null when all meet.</summary>
    /// <param name="model">The person's body.</param>
    /// <param name="points">The named points.</param>
    /// <param name="movement">The movement, for example with a changed height.</param>
    /// <param name="working">The side that works.</param>
    /// <returns>A sentence about the first pose that does not fit.</returns>
    public static string? Misfit(BodyModel model, SurfacePoints points, Movement movement, Side working)
    {
        ArgumentNullException.ThrowIfNull(movement);
        return movement.Frames
            .Select(frame => Settling.Missing(Settling.Settle(model, points, frame, working), Loading.DoubtfulGapM))
            .FirstOrDefault(missing => missing is not null);
    }

    private static BandDose Band(Movement movement, Knob knob) => ((BandPull)movement.Pulls[Nth<BandPull>(movement, knob.Index)]).Band;

    private static Movement WithLoad(Movement movement, Knob knob, Func<AddedLoad, AddedLoad> change) =>
        movement with { Loads = movement.Loads.SetItem(knob.Index, change(movement.Loads[knob.Index])) };

    private static Movement WithBand(Movement movement, Knob knob, Func<BandDose, BandDose> change) =>
        WithPull(movement, Nth<BandPull>(movement, knob.Index), p => (BandPull)p with { Band = change(((BandPull)p).Band) });

    private static Movement WithPull(Movement movement, int index, Func<Pull, Pull> change) =>
        movement with { Pulls = movement.Pulls.SetItem(index, change(movement.Pulls[index])) };

    /// <summary>Index of the n-th pull of a kind; -1 when there are not so many.</summary>
    private static int Nth<T>(Movement movement, int n)
    {
        for (var i = 0; i < movement.Pulls.Length; i++)
        {
            if (movement.Pulls[i] is T && n-- == 0)
                return i;
        }

        return -1;
    }

    /// <summary>The surface whose height can be changed: the step if there is one, else the seat or another raised one; with its height in the first pose that has it.</summary>
    private static (SurfaceKind Kind, double HeightM)? Raised(Movement movement)
    {
        // A roller's height is its thickness, and a wall has none.
        var kinds = Enum.GetValues<SurfaceKind>().Where(k => k is not (SurfaceKind.Floor or SurfaceKind.Wall or SurfaceKind.Roller or SurfaceKind.Pillow));
        foreach (var kind in kinds.OrderBy(k => k == SurfaceKind.Step ? 0 : 1))
        {
            if (movement.Frames.SelectMany(f => f.Contacts).FirstOrDefault(c => c.Surface == kind) is { } contact)
                return (kind, contact.HeightM);
        }

        return null;
    }

    /// <summary>Every contact and prop of that surface is raised by the same amount.</summary>
    private static Movement WithHeight(Movement movement, double value)
    {
        var (kind, height) = Raised(movement)!.Value;
        var rise = value - height;
        var prop = kind == SurfaceKind.Step ? PropKind.Step : PropKind.Chair;
        return movement with
        {
            Frames =
            [
                .. movement.Frames.Select(f => f with
                {
                    Contacts = [.. f.Contacts.Select(c => c.Surface == kind ? c with { HeightM = c.HeightM + rise } : c)],
                }),
            ],
            Props = [.. movement.Props.Select(p => p.Kind == prop ? p with { HeightM = p.HeightM + rise } : p)],
        };
    }

    /// <summary>The movement ends part of the way; poses beyond are left out.</summary>
    private static Movement UpTo(Movement movement, double fraction)
    {
        var last = movement.Frames.Length - 1;
        var kept = movement.Frames.Where((_, i) => i == 0 || i < fraction * last - 1e-12).ToImmutableArray();
        return fraction <= 0
            ? movement with { Frames = [movement.Frames[0]] }
            : movement with { Frames = kept.Add(FrameBetween.At(movement, fraction) with { Name = movement.Frames[last].Name }) };
    }
}
