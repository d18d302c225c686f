#:project ../../src/Body/Body.csproj
#:project ../../src/Content/Content.csproj
#:project ../../src/Prescribing/Prescribing.csproj
#:property PublishAot=false
#:property RestorePackagesWithLockFile=false
#:property JsonSerializerIsReflectionEnabledByDefault=true
#:property NoWarn=CA1861

// Writes the programs that the engine poses for the shipped exercises as plain numbers, for solve-programs.py:
//   dotnet run posed-programs.cs -- programs.json
// Softness becomes unknowns of their own: A x + e = b, each e with curvature 1/s.
using System.Text.Json;
using MomentArm.Body;
using MomentArm.Content;

var root = new DirectoryInfo(Environment.CurrentDirectory);
while (root is not null && !File.Exists(Path.Combine(root.FullName, "MomentArm.slnx")))
    root = root.Parent;
var library = ContentLibrary.Read(Path.Combine(root!.FullName, "content"));
var people = new[] { new Physique(Sex.Female, 40, 1.68, 64), new Physique(Sex.Male, 66, 1.79, 92) };
var programs = new List<object>();
foreach (var (exercise, index) in library.Exercises.Select((e, i) => (e, i)))
{
    foreach (var (fraction, step) in new[] { 0.0, 0.25, 0.5, 0.75, 1.0 }.Select((f, i) => (f, i)))
    {
        var person = library.Body.PersonOf(people[(index + step) % 2]);
        var placed = Settling.Settle(person.Model, person.Points, FrameBetween.At(exercise.Movement, fraction), Side.Right);
        var loader = new PoseLoader(person);
        loader.Hold(placed, []);
        programs.Add(Plain($"{exercise.Id} at {fraction}", loader.Balance.Program));
    }
}

File.WriteAllText(args[0], JsonSerializer.Serialize(programs));
Console.WriteLine($"{programs.Count} programs");

static object Plain(string name, SeparableProgram p)
{
    var n = p.Unknowns;
    var a = new List<double[]>();
    for (var j = 0; j < n; j++)
    {
        for (var e = p.Start[j]; e < p.Start[j + 1]; e++)
            a.Add([p.RowOf[e], j, Short(p.Value[e])]);
    }

    for (var i = 0; i < p.Equations; i++)
        a.Add([i, n + i, 1]);
    double[] All(ReadOnlySpan<double> own, Func<int, double> ofMiss) =>
        [.. own.ToArray().Select(Short), .. Enumerable.Range(0, p.Equations).Select(ofMiss)];
    var softness = p.Softness.ToArray();
    return new
    {
        name,
        equations = p.Equations,
        unknowns = n,
        d = All(p.Curvature, i => 1 / softness[i]),
        c = All(p.Slope, _ => 0),
        a,
        b = p.RightSide.ToArray().Select(Short).ToArray(),
        lower = p.Lower.ToArray().Select(v => double.IsInfinity(v) ? (double?)null : v).Concat(Enumerable.Repeat((double?)null, p.Equations)).ToArray(),
        upper = p.Upper.ToArray().Select(v => double.IsInfinity(v) ? (double?)null : Short(v)).Concat(Enumerable.Repeat((double?)null, p.Equations)).ToArray(),
    };
}

// Nine digits: the program is what stands in the file, not what the engine had.
static double Short(double value) => value == 0 ? 0 : double.Parse(value.ToString("G9", System.Globalization.CultureInfo.InvariantCulture), System.Globalization.CultureInfo.InvariantCulture);
