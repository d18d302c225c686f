using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace MomentArm.Architecture.Tests;

/// <summary>A member named ToX gives an X, or text: the name is a promise.</summary>
public sealed class NamingTests
{
    public static TheoryData<string> Rooms { get; } = [.. House.Arrows.Keys];

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_member_named_ToX_gives_an_X_or_text(string room)
    {
        var broken =
            from type in House.Room(room).GetTypes()
            where type.Namespace?.EndsWith(".Migrations", StringComparison.Ordinal) != true && !type.Name.Contains('<', StringComparison.Ordinal)
            from method in type.GetMethods(BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
            where method.Name is ['T', 'o', >= 'A' and <= 'Z', ..] && !method.IsDefined(typeof(CompilerGeneratedAttribute))
            where !Gives(method.ReturnType, method.Name[2..])
            select $"{type.Name}.{method.Name} gives {method.ReturnType}";
        Assert.Empty(broken);
    }

    [Fact]
    public void The_check_can_fail()
    {
        Assert.True(Gives(typeof(IReadOnlyList<Body.SegmentTable>), "Tables"));
        Assert.True(Gives(typeof(Body.Vec3?), "Vec3"));
        Assert.False(Gives(typeof(int), "Measure"));
    }

    private static bool Gives(Type type, string name)
    {
        type = Nullable.GetUnderlyingType(type) ?? type;
        if (type == typeof(string) || type.Name.Split('`')[0].Contains(name, StringComparison.OrdinalIgnoreCase))
            return true;
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Task<>))
            return Gives(type.GetGenericArguments()[0], name);

        // ToStored, ToRadians, ToUtc: numbers and instants have no types of their own, the name says the unit.
        if (type == typeof(double) || type == typeof(DateTime))
            return name is "Stored" or "Radians" or "Degrees" or "Utc" or "Local";
        return typeof(IEnumerable).IsAssignableFrom(type) && type.IsGenericType && Gives(type.GetGenericArguments()[^1], name.TrimEnd('s'));
    }
}
