using System.CommandLine;
using System.Globalization;
using MomentArm.Body;

namespace MomentArm.Cli;

/// <summary>The options that describe a person, shared by the commands that need one.</summary>
internal sealed class PersonOptions
{
    private readonly Option<Sex?> sex = new("--sex") { Description = "female or male." };
    private readonly Option<double?> age = new("--age") { Description = "Age in years." };
    private readonly Option<double?> stature = new("--stature") { Description = "Stature in centimeters." };
    private readonly Option<double?> mass = new("--mass") { Description = "Body mass in kilograms." };

    internal PersonOptions AddTo(Command command)
    {
        sex.AcceptOnlyFromAmong("female", "male");
        foreach (var option in new Option[] { sex, age, stature, mass })
            command.Options.Add(option);
        return this;
    }

    /// <summary>What was typed about the person; a sentence when an age cannot be.</summary>
    internal (Physique? Physique, string? Fault) Read(ParseResult parse) =>
        parse.GetValue(age) is { } years && !(years is >= 0 and <= 120)
            ? (null, string.Create(CultureInfo.InvariantCulture, $"{years} years is not usable: give an age from 0 to 120."))
            : (new Physique(parse.GetValue(sex), parse.GetValue(age), parse.GetValue(stature) / 100, parse.GetValue(mass)), null);

    /// <summary>What a quantity says of itself, without the name of a parameter; stature is typed in centimeters.</summary>
    internal static string Sentence(ArgumentOutOfRangeException error)
    {
        var sentence = error.Message.Split(" (Parameter", 2)[0];
        return error.ParamName is "stature" ? $"Stature: {sentence} Type it in centimeters." : sentence;
    }
}
