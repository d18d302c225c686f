using System.CommandLine;
using System.Globalization;
using System.Text;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Prescribing;

namespace MomentArm.Cli;

/// <summary>exercise settle: how the poses of an exercise come to lie on their contacts, for an author at work.</summary>
internal static class SettleCommand
{
    private const double Degree = Math.PI / 180;

    internal static Command Build(Argument<string> id, Option<Side> workingSide)
    {
        var person = new PersonOptions();
        var settle = new Command("settle", "Says how each pose settles: gaps, the joints that gave way, what rests where, or why it cannot be.\nExample: momentarm exercise settle bridge --sex female --stature 150 --mass 52")
        {
            id, workingSide,
        };
        person.AddTo(settle);
        settle.SetAction(parse =>
        {
            var output = Output.For(parse);
            if (output.Library(parse) is not { } library)
                return 1;
            if (library.Exercise(parse.GetValue(id)!) is not { } exercise)
                return output.Faults([ExerciseCommands.NoSuch(parse.GetValue(id)!)]);
            var (physique, fault) = person.Read(parse);
            if (physique is null)
                return output.Faults([fault!]);
            try
            {
                var poses = Poses(exercise, library.Body.PersonOf(physique), parse.GetValue(workingSide));
                output.Write(new { exercise.Id, poses }, Text(exercise, poses));
                return poses.Any(p => p.Refusal is not null) ? 1 : 0;
            }
            catch (ArgumentOutOfRangeException error)
            {
                return output.Faults([PersonOptions.Sentence(error)]);
            }
        });
        return settle;
    }

    private static Pose[] Poses(Exercise exercise, PersonBody person, Side side)
    {
        var loader = new PoseLoader(person);
        return [.. exercise.Movement.Frames.Select(frame =>
        {
            var settled = Settling.Settle(person.Model, person.Points, frame, side);
            return new Pose(
                frame.Name, Math.Round(settled.LargestGapM * 100, 2), Settling.Refusal(person.Model, settled),
                [.. settled.Changes.Select(c => new Change(c.Motion, c.Side, Math.Round(c.From / Degree, 1), Math.Round(c.To / Degree, 1)))],
                Resting(loader, settled),
                [.. settled.Ties.Select(t => new Tied(t.Tie.Kind, t.Tie.From, t.Tie.FromLimb, t.Tie.To, t.Tie.ToLimb, Math.Round(t.LengthM * 100, 1)))]);
        })];
    }

    /// <summary>Kilograms on each named contact, as the balance of the whole body has them; none when it cannot be held.</summary>
    private static Rest[] Resting(PoseLoader loader, PlacedBody settled) =>
    [
        .. loader.Hold(settled, []).Supports.Select(s => new Rest(s.Contact.Point, s.Contact.Limb, Math.Round(s.Kilograms, 1))),
    ];

    private static string Text(Exercise exercise, IEnumerable<Pose> poses)
    {
        var text = new StringBuilder();
        foreach (var pose in poses)
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"{exercise.Id}, {pose.Name}: {(pose.Refusal is null ? "settles" : "refused")}, largest gap {pose.LargestGapCm:0.00} cm");
            if (pose.Refusal is { } refusal)
                text.AppendLine("  " + refusal);
            foreach (var change in pose.Changes)
                text.AppendLine(CultureInfo.InvariantCulture, $"  gave way: {change.Motion} {change.Side?.ToString() ?? "midline"} from {change.FromDeg:0.0} to {change.ToDeg:0.0} degrees (model sign)");
            foreach (var tie in pose.Ties)
                text.AppendLine(CultureInfo.InvariantCulture, $"  {(tie.Kind == TieKind.Strap ? "strap" : "hold")}: {tie.From}{Whose(tie.FromLimb)} to {tie.To}{Whose(tie.ToLimb)}, {tie.LengthCm:0.0} cm apart");
            foreach (var rest in pose.Resting)
                text.AppendLine(CultureInfo.InvariantCulture, $"  rests: {rest.Point}{Whose(rest.Limb)} {rest.Kilograms:0.0} kg");
        }

        return text.Append("  Where contacts leave the split open it is a guess at least effort.").ToString();
    }

    private static string Whose(Limb? limb) => limb is { } whose ? ", " + whose.ToString().ToLowerInvariant() : "";

    private sealed record Pose(string Name, double LargestGapCm, string? Refusal, Change[] Changes, Rest[] Resting, Tied[] Ties);

    private sealed record Tied(TieKind Kind, string From, Limb? FromLimb, string To, Limb? ToLimb, double LengthCm);

    private sealed record Change(Motion Motion, Side? Side, double FromDeg, double ToDeg);

    private sealed record Rest(string Point, Limb? Limb, double Kilograms);
}
