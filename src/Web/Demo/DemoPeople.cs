using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.FollowUp;

namespace MomentArm.Web.Demo;

/// <summary>The people of the demo clinic. All invented; any likeness is chance.</summary>
internal static class DemoPeople
{
    internal static DemoPatient[] All { get; } = [Rosa(), Mateo(), Hanne(), Piet()];

    /// <summary>Getting better: sessions done, pain falling, ready for a step up.</summary>
    private static DemoPatient Rosa() => new()
    {
        Name = "Rosa Lindqvist",
        Age = 41,
        Sex = Sex.Female,
        StatureM = 1.67,
        MassKg = 66,
        Occupation = "ferry deckhand",
        Title = "left hip, outer side",
        Region = "hip",
        Side = Side.Left,
        Goal = "Climb the ladders at work without the hip aching.",
        Irritability = Irritability.Moderate,
        Visits =
        [
            new DemoVisit(
                28,
                ["hip abd L 108 N at 36 cm pain 4, R 147 at 36 cm", "knee ext strength L 236 N at 34 cm, R 244 N at 34 cm", "SLR L 70 R 73",
                    "hip IR L 31 R 34", "hip flexion L 118 R 121", "pain now 3", "pain worst 6"],
                true, true, "Aches on the outer left hip when lying on it and on ladders. Began after a double shift in autumn.",
                "Hip strength at home four days a week, sleep with a pillow between the knees."),
            new DemoVisit(
                12, ["hip abd L 116 N at 36 cm pain 3, R 149 at 36 cm", "SLR L 72 R 74", "pain now 2", "pain worst 5"],
                true, true, "Nights are better. Ladders still ache toward the end of a shift.", "Same program, lift a little higher."),
            new DemoVisit(
                0, ["hip abd L 126 N at 36 cm pain 1, R 152 at 36 cm", "SLR L 73 R 74", "pain now 1", "pain worst 3"],
                true, false, "Two shifts without waking at night.", null),
        ],
        Programs =
        [
            new DemoProgram(28, ["clam", "bridge"], 4, true, null),
            new DemoProgram(12, ["side-lying-leg-raise", "bridge", "sit-to-stand"], 4, true, "Clam had become too easy; next rung."),
        ],
        Sessions =
        [
            new DemoSession(27, 4, 5, 4), new DemoSession(26, 4, 5, 3), new DemoSession(24, 3, 5, 3), new DemoSession(22, 3, 5, 3),
            new DemoSession(20, 3, 4, 2), new DemoSession(19, 2, 4, 2, ExerciseReport.TooEasy), new DemoSession(17, 2, 4, 2),
            new DemoSession(15, 2, 3, 2, ExerciseReport.TooEasy), new DemoSession(13, 2, 3, 2), new DemoSession(11, 3, 6, 3),
            new DemoSession(9, 3, 6, 2), new DemoSession(8, 2, 6, 2), new DemoSession(6, 2, 5, 2), new DemoSession(5, 2, 5, 1),
            new DemoSession(3, 2, 5, 1), new DemoSession(1, 1, 5, 1, ExerciseReport.Done, "Felt steady on the ladder today."),
        ],
    };

    /// <summary>Flaring: too much too soon, needs a call.</summary>
    private static DemoPatient Mateo() => new()
    {
        Name = "Mateo Brandt",
        Age = 29,
        Sex = Sex.Male,
        StatureM = 1.79,
        MassKg = 74,
        Occupation = "bicycle courier, runs",
        Title = "right knee, outer side",
        Region = "knee",
        Side = Side.Right,
        Goal = "Run 10 km along the river again.",
        Irritability = Irritability.Moderate,
        Visits =
        [
            new DemoVisit(
                16,
                ["hip abd R 152 N at 41 cm pain 1, L 188 at 41 cm", "knee ext strength R 402 N at 37 cm, L 411 N at 37 cm", "modified ober R 18 L 23",
                    "knee flexion R 138 L 140", "pain now 1", "pain worst 5"],
                true, true, "Pain on the outer right knee from kilometer 4, worse downhill.",
                "Outer-hip strength, no downhill runs for now."),
            new DemoVisit(6, ["hip abd R 161 N at 41 cm pain 2, L 190 at 41 cm", "pain now 2", "pain worst 4"], true, true,
                "Ran once more than agreed.", "Hold the program as it is."),
        ],
        Programs = [new DemoProgram(16, ["side-lying-leg-raise", "outer-thigh-roll", "lateral-step-down"], 3, true, null)],
        Sessions =
        [
            new DemoSession(15, 2, 6, 2), new DemoSession(13, 2, 6, 1), new DemoSession(11, 3, 6, 2), new DemoSession(8, 3, 7, 2),
            new DemoSession(5, 4, 7, 3), new DemoSession(3, 6, 7, 5, ExerciseReport.Hurt, "Knee sharp on the step."),
            new DemoSession(1, 6, 6, null, ExerciseReport.Hurt),
        ],
    };

    /// <summary>Quiet for more than a week, with a new version waiting to be taught.</summary>
    private static DemoPatient Hanne() => new()
    {
        Name = "Hanne Okoro",
        Age = 63,
        Sex = Sex.Female,
        StatureM = 1.62,
        MassKg = 78,
        Occupation = "school cook",
        Title = "right knee, stairs",
        Region = "knee",
        Side = Side.Right,
        Goal = "Carry trays up the stairs to the hall.",
        Irritability = Irritability.Low,
        Visits =
        [
            new DemoVisit(
                35,
                ["knee ext strength R 168 N at 33 cm pain 2, L 226 N at 33 cm", "knee flexion R 112 L 128", "SLR R 68 L 70", "pain now 2", "pain worst 5"],
                true, true, "Stiff after sitting, aches on stairs for about a year.", "Chair stands and knee straightening three days a week."),
            new DemoVisit(
                14, ["knee ext strength R 192 N at 33 cm pain 1, L 229 N at 33 cm", "knee flexion R 118 L 128", "pain now 1", "pain worst 4"],
                true, true, "Stairs up are easier, down still aches.", "Step-down next."),
        ],
        Programs =
        [
            new DemoProgram(35, ["seated-knee-extension", "sit-to-stand"], 3, true, null),
            new DemoProgram(14, ["sit-to-stand", "lateral-step-down", "hamstring-strap-stretch"], 3, false, "Ready for the step."),
        ],
        Sessions =
        [
            new DemoSession(33, 3, 6, 2), new DemoSession(31, 3, 6, 2), new DemoSession(28, 2, 5, 2), new DemoSession(26, 2, 5, 1),
            new DemoSession(24, 2, 5, 2), new DemoSession(21, 2, 5, 1), new DemoSession(19, 1, 4, 1), new DemoSession(17, 1, 4, 1),
            new DemoSession(10, 1, 4, 1),
        ],
    };

    /// <summary>First visit today: danger signs not asked yet, nothing known of stature and mass.</summary>
    private static DemoPatient Piet() => new()
    {
        Name = "Piet Salvador",
        Age = 52,
        Sex = Sex.Male,
        Occupation = "piano tuner",
        Title = "left hip, front",
        Region = "hip",
        Side = Side.Left,
        Goal = "Kneel at the pedals without the hip catching.",
        Visits = [new DemoVisit(0, ["hip flexion L 104 R 119"], false, false, "Catches at the front of the left hip when kneeling.", null)],
    };
}
