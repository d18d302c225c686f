using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Content.Tests;

/// <summary>Which part of the body an exercise is for, and so carries the accent of its pictures.</summary>
public sealed class FocusTests
{
    [Theory]
    [InlineData("curl-up", MovementFocus.Trunk)]
    [InlineData("bird-dog", MovementFocus.Trunk)]
    [InlineData("neck-turn", MovementFocus.Neck)]
    [InlineData("chin-nod", MovementFocus.Neck)]
    [InlineData("clam", MovementFocus.Leg)]
    [InlineData("short-foot", MovementFocus.Leg)]
    [InlineData("full-can-raise", MovementFocus.Shoulder)]
    [InlineData("table-slide", MovementFocus.Shoulder)]
    [InlineData("band-elbow-curl", MovementFocus.Arm)]
    [InlineData("grip-squeeze", MovementFocus.Forearm)]
    [InlineData("wrist-extension-weight", MovementFocus.Forearm)]
    public void The_region_tells_and_for_the_arm_the_first_load(string id, MovementFocus focus) =>
        Assert.Equal(focus, Shipped.Exercise(id).Movement.Focus);

    [Fact]
    public void Every_exercise_of_one_region_has_a_focus_and_its_loads_are_the_aims_of_its_movement()
    {
        foreach (var exercise in Shipped.Library.Exercises)
        {
            Assert.Equal(exercise.Loads, exercise.Movement.Aims);
            if (exercise.Region != BodyRegion.WholeBody)
                Assert.NotNull(exercise.Movement.Focus);
        }
    }
}
