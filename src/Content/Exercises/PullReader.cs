using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Content;

/// <summary>Turns the pulls of an exercise file into pulls and tells every fault of meaning.</summary>
internal sealed class PullReader(SurfacePoints points, ISet<string> sources, string file, FaultList faults)
{
    /// <summary>Reads the pulls; what is faulty is told and left out.</summary>
    internal ImmutableArray<Pull> Read(IReadOnlyList<PullFile> raw)
    {
        var pulls = ImmutableArray.CreateBuilder<Pull>(raw.Count);
        for (var i = 0; i < raw.Count; i++)
        {
            var before = faults.Faults.Count;
            var path = $"pulls[{i}]";
            CheckKeys(raw[i], path);
            CheckPlace(PlaceOf(raw[i]), path);
            if (raw[i].To is { } to)
                CheckPlace(PlaceOf(to), path + ".to");
            if (raw[i].Anchor is { } anchor)
                CheckAnchor(anchor, path + ".anchor");
            if (raw[i].Band is { } band)
                CheckBand(band, path + ".band");
            CheckHelp(raw[i], path);
            if (faults.Faults.Count == before)
                pulls.Add(Make(raw[i]));
        }

        return pulls.ToImmutable();
    }

    /// <summary>A place must be named by points of one segment, with the limb where there are two.</summary>
    internal void CheckPlace(BodyPlace place, string path)
    {
        var before = faults.Faults.Count;
        foreach (var (name, key) in new[] { (place.At, ".at"), (place.Toward, ".toward") })
        {
            if (name is null)
                continue;
            if (!points.Has(name))
                Fault(path + key, $"The body has no point \"{name}\".", "Use a name of body/surface-points.json.");
            else if (points.Resolve(name) is var found && found.Length > 1)
                Fault(path + key, $"\"{name}\" stands for {found.Length} points.", "Name one point.");
            else if (place.Limb is null && found[0].BothSides)
                Fault(path + ".limb", $"\"{name}\" is there on both sides.", "Say whose: working or other.");
        }

        Range(place.Fraction, 0, 1, path + ".fraction", "");
        if (place.Toward is null && place.Fraction > 0)
            Fault(path + ".toward", "There is a fraction, but no second point.", "Name the point toward which it goes, or leave the fraction out.");
        if (faults.Faults.Count == before && place.Toward is { } toward && points.Resolve(place.At)[0].Segment != points.Resolve(toward)[0].Segment)
            Fault(path + ".toward", $"\"{place.At}\" and \"{toward}\" lie on different segments.", "Name two points of one segment.");
    }

    /// <summary>Each kind has its own keys; a key that would do nothing is a fault.</summary>
    private void CheckKeys(PullFile raw, string path)
    {
        var (loop, link, anchored, help) = (raw.Kind == PullKind.Loop, raw.Kind == PullKind.Link, raw.Kind == PullKind.Anchored, raw.Kind == PullKind.Help);
        Key(raw.Band is not null, needed: !help, allowed: !help, "band");
        Key(raw.LimbRadiusM is not null, needed: loop, allowed: loop, "limbRadiusM");
        Key(raw.To is not null, needed: link, allowed: link || help, "to");
        Key(raw.Anchor is not null, needed: anchored, allowed: anchored || help, "anchor");
        Key(raw.ForceN is not null, needed: help, allowed: help, "forceN");
        Key(raw.Source is not null, needed: help, allowed: help, "source");
        Key(raw.Direction is not null, needed: help && raw.Anchor is null, allowed: help && raw.Anchor is null, "direction");
        Key(raw.Limb is not null, needed: false, allowed: !loop, "limb");
        if (help && raw.Anchor is not null && raw.To is not null)
            Fault(path + ".to", "A rope to a fixed point is not held by the person's own hand.", "Leave out to or anchor.");

        void Key(bool there, bool needed, bool allowed, string key)
        {
            if (needed && !there)
                Fault($"{path}.{key}", $"A pull of kind {Word(raw.Kind)} needs \"{key}\".", "Add it.");
            if (there && !allowed)
                Fault($"{path}.{key}", $"A pull of kind {Word(raw.Kind)} has no use for \"{key}\" here.", "Remove it.");
        }
    }

    private void CheckAnchor(AnchorFile anchor, string path)
    {
        Range(anchor.DistanceM, 0, 5, path + ".distanceM", "m");
        Range(anchor.HeightM, 0, 3, path + ".heightM", "m");
        if (anchor.DistanceM > 0 && anchor.Direction is BodyDirection.Up or BodyDirection.Down)
            Fault(path + ".direction", $"Going {anchor.Direction.Words()} is no way along the floor.", "Give the way along the floor; heightM says how high.");
    }

    private void CheckBand(ElasticFile band, string path)
    {
        Range(band.F100N, 0.1, 2000, path + ".f100N", "N");
        if (band.F200N is { } f200)
            Range(f200, 0.1, 2000, path + ".f200N", "N");
        if (band.RestLengthM is { } rest)
            Range(rest, ElasticBand.LeastRestLengthM, ElasticBand.MostRestLengthM, path + ".restLengthM", "m");
        if (band.PreStretchPercent is { } stretch)
            Range(stretch, 0, 100 * ElasticBand.MostElongation, path + ".preStretchPercent", "%");
        Range(band.Strands, 1, ElasticBand.MostStrands, path + ".strands", "");
        if (band.RestLengthM is null == band.PreStretchPercent is null)
            Fault(path, "The rest length is not settled by exactly one number.", "Give either restLengthM or preStretchPercent.");
        CheckSource(band.Source, path + ".source");
        if (band.F200N is { } at200 && band.F100N > 0 && at200 > 0)
        {
            try
            {
                _ = ElasticBand.FromF100AndF200(band.F100N, at200, 1);
            }
            catch (ArgumentException error)
            {
                Fault(path + ".f200N", error.Message.Split(" (Parameter", 2)[0], "Correct one of the two.");
            }
        }
    }

    private void CheckHelp(PullFile raw, string path)
    {
        if (raw.ForceN is { } force)
            Range(force, -2000, 2000, path + ".forceN", "N");
        if (raw.Source is { } source)
            CheckSource(source, path + ".source");
        if (raw.LimbRadiusM is { } radius)
            Range(radius, 0, 0.2, path + ".limbRadiusM", "m");
    }

    private static Pull Make(PullFile raw) => raw.Kind switch
    {
        PullKind.Loop => new LoopPull(PlaceOf(raw), raw.LimbRadiusM!.Value, BandOf(raw.Band!)),
        PullKind.Link => new LinkPull(PlaceOf(raw), PlaceOf(raw.To!), BandOf(raw.Band!)),
        PullKind.Anchored => new AnchorPull(PlaceOf(raw), AnchorOf(raw.Anchor!), BandOf(raw.Band!)),
        PullKind.Help => new HelpPull(
            PlaceOf(raw), raw.ForceN!.Value, raw.Direction ?? BodyDirection.Up, raw.Anchor is { } anchor ? AnchorOf(anchor) : null,
            raw.To is { } by ? PlaceOf(by) : null),
    };

    private static BodyPlace PlaceOf(PullFile raw) =>
        new(raw.At, raw.Kind == PullKind.Loop ? Limb.Working : raw.Limb, raw.Toward, raw.Fraction);

    private static BodyPlace PlaceOf(PlaceFile raw) => new(raw.At, raw.Limb, raw.Toward, raw.Fraction);

    private static RoomAnchor AnchorOf(AnchorFile raw) => new(raw.Direction, raw.DistanceM, raw.HeightM);

    private static BandDose BandOf(ElasticFile raw) => new()
    {
        F100N = raw.F100N,
        F200N = raw.F200N,
        RestLengthM = raw.RestLengthM,
        PreStretch = (raw.PreStretchPercent ?? 0) / 100,
        Strands = raw.Strands,
    };

    private static string Word(PullKind kind) => kind.ToString().ToLowerInvariant();

    private void CheckSource(string key, string path)
    {
        if (!sources.Contains(key))
            Fault(path, $"There is no source \"{key}\".", "Add it to sources.json or correct the key.");
    }

    private void Range(double value, double least, double most, string path, string unit)
    {
        if (!(value >= least && value <= most))
            Fault(path, FormattableString.Invariant($"{value} {unit} lies outside {least} to {most}.").Replace("  ", " ", StringComparison.Ordinal), "Correct the number.");
    }

    private void Fault(string path, string what, string mend) => faults.Add(file, null, path, what, mend);
}
