using System.CommandLine;
using System.Globalization;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Prescribing;

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

    internal static Option<string?> CaseFile() => new("--case") { Description = "A case file whose person and tests count." };

    /// <summary>The person of a case file, or as typed; a case file says it all, so both together are refused.</summary>
    internal (CaseReading? Reading, IEnumerable<string> Faults) Reading(ParseResult parse, ContentLibrary library, string? file)
    {
        var (physique, fault) = Read(parse);
        if (physique is null)
            return (null, [fault!]);
        if (file is null)
        {
            try
            {
                return (CaseReading.Of(library.Basis, new CaseFacts(physique, null, [], null)), []);
            }
            catch (ArgumentOutOfRangeException error)
            {
                return (null, [Sentence(error)]);
            }
        }

        if (physique != new Physique())
            return (null, ["The case file says who the person is: leave out --sex, --age, --stature and --mass."]);
        var (input, faults) = CaseFileReader.ReadFile(file, library);
        return input is null ? (null, faults.Select(f => f.ToString())) : (CaseReading.Of(library.Basis, input.Facts), []);
    }

    /// <summary>What a quantity says of itself, without the name of a parameter; stature is typed in centimeters.</summary>
    internal static string Sentence(ArgumentOutOfRangeException error)
    {
        var sentence = error.Message.Split(" (Parameter", 2)[0];
        return error.ParamName is "stature" ? $"Stature: {sentence} Type it in centimeters." : sentence;
    }
}
