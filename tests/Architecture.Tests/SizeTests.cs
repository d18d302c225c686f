namespace MomentArm.Architecture.Tests;

/// <summary>Files at most 500 lines (we aim under 300), methods at most 80 (we aim under 40). Migrations are generated.</summary>
public sealed class SizeTests(ITestOutputHelper output)
{
    /// <summary>Longer for a reason, each with it.</summary>
    private static readonly Dictionary<string, string> Exempt = [];

    private static IEnumerable<string> Code(params string[] endings) => House.Files("", endings)
        .Where(f => !f.StartsWith("src/Records/Migrations/", StringComparison.Ordinal));

    [Fact]
    public void No_file_is_longer_than_500_lines()
    {
        var sizes = Code(".cs", ".razor", ".js", ".mjs", ".css").Select(f => (File: f, Lines: House.Lines(f).Length)).OrderByDescending(f => f.Lines).ToArray();
        Assert.True(sizes.Length > 200);
        foreach (var (file, lines) in sizes.Where(s => s.Lines > 300))
            output.WriteLine($"over the aim of 300 lines: {file}, {lines}");
        Assert.DoesNotContain(sizes, s => s.Lines > 500 && !Exempt.ContainsKey(s.File));
    }

    [Fact]
    public void No_method_is_longer_than_80_lines()
    {
        var sizes = Code(".cs", ".razor").SelectMany(f => MemberSizes.Of(f, CSharp(f))).OrderByDescending(m => m.Lines).ToArray();
        Assert.True(sizes.Length > 2000);
        foreach (var member in sizes.Where(m => m.Lines > 40))
            output.WriteLine($"over the aim of 40 lines: {member.File}:{member.Line}, {member.Lines}: {member.Name}");
        Assert.DoesNotContain(sizes, m => m.Lines > 80 && !Exempt.ContainsKey(m.File));
    }

    [Fact]
    public void The_counting_finds_methods_of_every_kind()
    {
        const string Source = """"
            namespace A;
            /// <summary>A { brace in a comment.</summary>
            public sealed record B(int X, string Y = "{")
            {
                private static readonly int[] Table =
                [
                    1,
                ];
                public int One() => 1;
                public T Two<T>(T value = default)
                    where T : class
                {
                    var text = $"{value}}}{'}'}" + @"""{";
                    return value;
                }
                public int Three { get; init; }
                public object Four() => new C
                {
                    D = 1,
                };
                public static bool operator ==(B a, C b)
                {
                    return true;
                }
            }
            """";
        Assert.Equal(
            [("namespace A", 1), ("private static readonly int[] Table = [ 1, ]", 4), ("public int One() => 1", 1),
             ("public T Two<T>(T value = default) where T : class", 6), ("public int Three", 1), ("public object Four() => new C", 4),
             ("public static bool operator ==(B a, C b)", 4)],
            MemberSizes.Of("x", Source).Select(m => (m.Name, m.Lines)));
    }

    /// <summary>The C# of a file; of a page only its code block.</summary>
    private static string CSharp(string file)
    {
        var text = House.Read(file);
        if (!file.EndsWith(".razor", StringComparison.Ordinal))
            return text;
        var at = text.IndexOf("@code", StringComparison.Ordinal);
        return at < 0 ? "" : new string('\n', text[..at].Count(c => c == '\n')) + text[at..];
    }
}
