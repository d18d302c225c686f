namespace MomentArm.Architecture.Tests;

/// <summary>No room uses a room it is not drawn to use.</summary>
public sealed class ArrowTests
{
    public static TheoryData<string> Rooms { get; } = [.. House.Arrows.Keys];

    [Fact]
    public void Every_room_of_the_house_is_drawn() =>
        Assert.Equal(
            House.Arrows.Keys.Order(StringComparer.Ordinal),
            Directory.EnumerateDirectories(Path.Combine(House.Root, "src")).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_project_names_exactly_the_rooms_that_are_drawn(string room)
    {
        var named = House.Project(room).Descendants("ProjectReference")
            .Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value));
        Assert.Equal(House.Arrows[room].Order(StringComparer.Ordinal), named.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Rooms))]
    public void The_compiled_room_uses_no_other_room(string room)
    {
        var used = House.Room(room).GetReferencedAssemblies()
            .Select(a => a.Name!).Where(n => n.StartsWith("MomentArm.", StringComparison.Ordinal)).Select(n => n["MomentArm.".Length..]);
        Assert.Empty(used.Except(House.Arrows[room]));
    }

    [Fact]
    public void No_room_sees_through_another() =>
        Assert.Contains("<DisableTransitiveProjectReferences>true<", House.Read("Directory.Build.props"), StringComparison.Ordinal);
}
