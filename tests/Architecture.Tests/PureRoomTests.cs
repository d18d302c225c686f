using System.Collections.Immutable;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace MomentArm.Architecture.Tests;

/// <summary>Values in, values out: a pure room brings no package along and keeps nothing between two calls.</summary>
public sealed class PureRoomTests
{
    /// <summary>Packages a pure room may use when it runs. Prescribing may use a solver, once it does.</summary>
    private static readonly Dictionary<string, string[]> Packages = new() { ["Prescribing"] = ["Google.OrTools"] };

    public static TheoryData<string> Rooms { get; } = [.. House.PureRooms];

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_pure_room_says_so_and_documents_its_public_members(string room)
    {
        var project = House.Project(room);
        Assert.Equal("true", project.Descendants("PureRoom").Single().Value);

        // In the project itself: the SDK has read the switch before it reads Directory.Build.targets.
        Assert.Equal("true", project.Descendants("GenerateDocumentationFile").Single().Value);
        Assert.True(File.Exists(Path.ChangeExtension(House.Room(room).Location, ".xml")), "The compiler wrote no documentation, so it checked none.");
        Assert.Contains(room, House.Lines(".editorconfig").Single(l => l.StartsWith("[src/{Body", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_pure_room_uses_no_package_when_it_runs(string room)
    {
        var allowed = Packages.GetValueOrDefault(room, []);
        Assert.Empty(House.Project(room).Descendants("PackageReference").Select(p => p.Attribute("Include")!.Value).Except(allowed));
        Assert.Empty(House.Project(room).Descendants("FrameworkReference"));
        var foreign = House.Room(room).GetReferencedAssemblies().Select(a => a.Name!)
            .Where(n => !n.StartsWith("MomentArm.", StringComparison.Ordinal) && !allowed.Contains(n))
            .Where(n => !OfTheRuntime(n));
        Assert.Empty(foreign);
    }

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_pure_room_keeps_nothing_between_two_calls(string room)
    {
        var kept =
            from type in House.Room(room).GetTypes()
            where !type.Name.Contains('<', StringComparison.Ordinal) && !type.IsDefined(typeof(CompilerGeneratedAttribute))
            from field in type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
            where !field.IsLiteral && !(field.IsInitOnly && CannotChange(field.FieldType, []))
            select $"{type.Name}.{field.Name}: {field.FieldType}";
        Assert.Empty(kept);
    }

    [Fact]
    public void The_check_for_kept_values_can_fail()
    {
        Assert.False(CannotChange(typeof(List<int>), []));
        Assert.False(CannotChange(typeof(double[]), []));
        Assert.False(CannotChange(typeof(Changing), []));
        Assert.True(CannotChange(typeof(Body.Vec3), []));
        Assert.True(CannotChange(typeof(ImmutableArray<string>), []));
    }

    private static bool OfTheRuntime(string name) =>
        File.Exists(Path.Combine(Path.GetDirectoryName(typeof(object).Assembly.Location)!, name + ".dll"));

    /// <summary>A value of the type stays as it is: simple values, text, immutable collections, and records of those.</summary>
    private static bool CannotChange(Type type, HashSet<Type> seen)
    {
        if (type.IsPrimitive || type.IsEnum || type == typeof(string) || type == typeof(DateOnly) || type == typeof(decimal) || !seen.Add(type))
            return true;
        if (Nullable.GetUnderlyingType(type) is { } inner)
            return CannotChange(inner, seen);
        if (type.Namespace is "System.Collections.Immutable" or "System.Collections.Frozen")
            return type.GetGenericArguments().All(a => CannotChange(a, seen));
        if (typeof(Delegate).IsAssignableFrom(type) || type == typeof(System.Text.RegularExpressions.Regex) || type.FullName!.StartsWith("System.Buffers.SearchValues", StringComparison.Ordinal))
            return true;
        if (type.FullName!.StartsWith("System.ValueTuple", StringComparison.Ordinal))
            return type.GetGenericArguments().All(a => CannotChange(a, seen));
        return type.Namespace?.StartsWith("MomentArm.", StringComparison.Ordinal) == true && !type.IsInterface
            && type.GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic)
                .All(f => f.IsInitOnly && CannotChange(f.FieldType, seen));
    }

    private sealed class Changing
    {
        public int Count { get; set; }
    }
}
