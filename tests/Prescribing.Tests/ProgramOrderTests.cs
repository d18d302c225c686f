using CsCheck;
using MomentArm.Body;

namespace MomentArm.Prescribing.Tests;

/// <summary>The usual order of a session.</summary>
public class ProgramOrderTests
{
    [Fact]
    public void Release_then_stretch_then_strengthen_then_functional_each_from_the_floor_up()
    {
        var library = new[]
        {
            Samples.Exercise("squat", Purpose.Functional, BodyPosition.Standing),
            Samples.Exercise("side-step", Purpose.Strengthen, BodyPosition.Standing),
            Samples.Exercise("bridge", Purpose.Strengthen, BodyPosition.Supine),
            Samples.Exercise("raise", Purpose.Strengthen, BodyPosition.SideLying),
            Samples.Exercise("lunge-stretch", Purpose.Stretch, BodyPosition.Kneeling),
            Samples.Exercise("roll", Purpose.Release, BodyPosition.SideLying),
        }.ToDictionary(e => e.Id);
        var sorted = ProgramOrder.Sort(
            [Samples.Item("unknown"), .. library.Keys.Select(id => Samples.Item(id))], library.GetValueOrDefault);
        Assert.Equal(
            ["roll", "lunge-stretch", "bridge", "raise", "side-step", "squat", "unknown"], sorted.Select(i => i.ExerciseId));
    }

    [Fact]
    public void Sorting_loses_nothing_and_items_of_one_rank_keep_their_order() => Gen.Int[0, 5].Array[0, 8].Sample(ranks =>
    {
        var items = ranks.Select((rank, i) => Samples.Item($"{rank}-{i}")).ToArray();
        Exercise Find(string id) => Samples.Exercise(id, position: (BodyPosition)(id[0] - '0'));
        var sorted = ProgramOrder.Sort([.. items], Find).Select(i => i.ExerciseId).ToArray();
        Assert.Equal(items.Select(i => i.ExerciseId).OrderBy(id => id[0]), sorted);
    });
}
