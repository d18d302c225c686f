using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Components;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Exam;
using MomentArm.Prescribing;
using MomentArm.Records;
using MomentArm.Web.Account;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.Pages.Library;

/// <summary>The library: what is looked for stands in the address, so a search can be kept and sent on.</summary>
public sealed partial class ExerciseList
{
    private readonly List<string> faults = [];
    private IReadOnlyList<Patient> patients = [];
    private PatientCase? chosen;
    private IReadOnlyList<Exercise> shown = [];
    private ImmutableDictionary<string, LibraryLine> numbers = ImmutableDictionary<string, LibraryLine>.Empty;

    [SupplyParameterFromQuery]
    private string? Q { get; set; }

    [SupplyParameterFromQuery(Name = "region")]
    private string? RegionText { get; set; }

    [SupplyParameterFromQuery(Name = "purpose")]
    private string? PurposeText { get; set; }

    [SupplyParameterFromQuery(Name = "acts")]
    private string? ActsText { get; set; }

    [SupplyParameterFromQuery(Name = "position")]
    private string? PositionText { get; set; }

    [SupplyParameterFromQuery(Name = "have")]
    private string[]? Have { get; set; }

    [SupplyParameterFromQuery(Name = "minutes")]
    private string? MinutesText { get; set; }

    [SupplyParameterFromQuery(Name = "from")]
    private string? FromText { get; set; }

    [SupplyParameterFromQuery(Name = "to")]
    private string? ToText { get; set; }

    [SupplyParameterFromQuery(Name = "patient")]
    private string? PatientText { get; set; }

    [CascadingParameter]
    private HttpContext Http { get; set; } = null!;

    [Inject]
    private CaseDesk Desk { get; set; } = null!;

    [Inject]
    private LibraryNumbers Numbers { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    private ClinicLibrary Content { get; set; } = null!;

    private LibraryWish Wish { get; set; } = new();

    private Side Working => chosen?.WorkingSide ?? Side.Right;

    private string PatientQuery => chosen is null ? "" : $"?patient={chosen.Patient.Id}&side={ExerciseText.Path(Working)}";

    private string Window => Navigation.GetUriWithQueryParameters(new Dictionary<string, object?>
    {
        ["from"] = Say.Number(100 * chosen!.Reading.Irritability.Window.Low, 0),
        ["to"] = Say.Number(100 * chosen.Reading.Irritability.Window.High, 0),
    });

    private IEnumerable<(string Value, string Text)> Targets =>
        Content.Exercises.SelectMany(e => e.Loads).Distinct().Order().Select(a => (Text(a), "Loads " + ExerciseText.Words(a)))
            .Concat(Content.Exercises.SelectMany(e => e.Groups).Distinct().Order().Select(g => (Text(g), "Lengthens or presses " + ExerciseText.Words(g))));

    protected override async Task OnInitializedAsync()
    {
        var who = Http.User.Acting();
        Content = await Desk.LibraryAsync(who);
        patients = await Desk.Stores.Patients.InCareAsync(who);
        if (!string.IsNullOrEmpty(PatientText))
        {
            // A patient of another clinic is not there, for this clinic.
            var patient = Guid.TryParse(PatientText, out var id) ? await Desk.Stores.Patients.GetAsync(who, id) : null;
            if (patient is null)
            {
                Navigation.NotFound();
                return;
            }

            chosen = await Desk.LoadAsync(who, patient.Id);
            if (patients.All(p => p.Id != patient.Id))
                patients = [patient, .. patients];
        }

        Wish = new LibraryWish
        {
            Words = Q,
            Region = Parsed<BodyRegion>(RegionText),
            Purpose = Parsed<Purpose>(PurposeText),
            Action = Parsed<JointAction>(ActsText),
            Group = Parsed<MuscleGroup>(ActsText),
            Position = Parsed<BodyPosition>(PositionText),
            AtHand = Have is { Length: > 0 } ? [.. Have.Select(Parsed<Equipment>).OfType<Equipment>()] : null,
            Minutes = Number(MinutesText, "Minutes at most"),
            ShareFrom = Number(FromText, "Share from"),
            ShareTo = Number(ToText, "Share to"),
        };
        numbers = Numbers.Of(Content, chosen, Working);
        shown = [.. Content.Exercises.Where(e => Wish.Fits(e, numbers[e.Id]))];
    }

    private static string Text<T>(T value)
        where T : struct, Enum => ExerciseText.Words(value).Replace(' ', '-');

    private static T? Parsed<T>(string? text)
        where T : struct, Enum =>
        Enum.GetValues<T>().Where(v => Text(v) == text).Select(v => (T?)v).FirstOrDefault();

    private double? Number(string? text, string name)
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        if (double.TryParse(text.Trim().Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && value is >= 0 and <= 1000)
            return value;
        faults.Add($"{name}: “{text}” is no number from 0 to 1000, so it was left out.");
        return null;
    }

    private static RenderFragment Choice(string name, string label, IEnumerable<(string Value, string Text)> options, string? selected) => builder =>
    {
        builder.OpenElement(0, "div");
        builder.AddAttribute(1, "class", "field");
        builder.OpenElement(2, "label");
        builder.AddAttribute(3, "for", name);
        builder.AddContent(4, label);
        builder.CloseElement();
        builder.OpenElement(5, "select");
        builder.AddAttribute(6, "id", name);
        builder.AddAttribute(7, "name", name);
        builder.OpenElement(8, "option");
        builder.AddAttribute(9, "value", "");
        builder.AddContent(10, "Any");
        builder.CloseElement();
        foreach (var (value, text) in options)
        {
            builder.OpenElement(11, "option");
            builder.AddAttribute(12, "value", value);
            builder.AddAttribute(13, "selected", value == selected);
            builder.AddContent(14, text);
            builder.CloseElement();
        }

        builder.CloseElement();
        builder.CloseElement();
    };
}
