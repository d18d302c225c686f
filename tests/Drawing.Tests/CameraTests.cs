using MomentArm.Body;

namespace MomentArm.Drawing.Tests;

public sealed class CameraTests
{
    [Fact]
    public void Every_camera_has_level_unit_axes_at_right_angles()
    {
        foreach (var view in Enum.GetValues<ViewKind>())
        {
            foreach (var orientation in Enum.GetValues<Orientation>())
            {
                var camera = Camera.For(view, orientation, Side.Right);
                Assert.Equal(1, camera.Right.Length, 12);
                Assert.Equal(1, camera.Up.Length, 12);
                Assert.Equal(0, camera.Right.Dot(camera.Up), 12);
                Assert.Equal(0, camera.Right.Y, 12);
                Assert.True(camera.Up.Y > 0);
                Assert.Equal(1, camera.Right.Cross(camera.Up).Dot(camera.Toward), 12);
            }
        }
    }

    [Fact]
    public void The_camera_for_the_left_sees_the_mirrored_room_the_same()
    {
        var point = new Vec3(0.3, 1.1, -0.7);
        var right = Camera.For(ViewKind.Oblique, Orientation.Upright, Side.Right);
        var left = Camera.For(ViewKind.Oblique, Orientation.Upright, Side.Left);
        Assert.Equal(right.Project(point), left.Project(point.Mirrored));
        Assert.True(left.Flip && !right.Flip);
    }

    [Fact]
    public void From_in_front_the_right_hand_is_at_the_left_of_the_picture()
    {
        var camera = Camera.For(ViewKind.Front, Orientation.Upright, Side.Right);
        Assert.True(camera.Project(new Vec3(0, 1, 0.4)).X < 0);
    }
}
