using MomentArm.Body;

namespace MomentArm.Prescribing.Tests;

/// <summary>Sides in the patient's words.</summary>
public class SideWordsTests
{
    [Fact]
    public void Words_say_the_person_s_own_side()
    {
        var words = new SideWords("left", "right");
        const string text = "{Other} side down. Lift your {side} leg over the {other}. {Side} hand on the floor.";
        Assert.Equal("Left side down. Lift your right leg over the left. Right hand on the floor.", words.Fill(text, Side.Right));
        Assert.Equal("Right side down. Lift your left leg over the right. Left hand on the floor.", words.Fill(text, Side.Left));
        Assert.Equal("No marks.", words.Fill("No marks.", Side.Left));
    }
}
