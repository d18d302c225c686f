using System.Net;
using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using MomentArm.Records;

namespace MomentArm.Web.People;

/// <summary>The app with its clock standing, a signed-in browser, and the records behind it.</summary>
internal sealed partial class PeopleClinic : IAsyncDisposable
{
    /// <summary>Noon in Chicago.</summary>
    private static readonly DateTime Now = new(2026, 3, 25, 17, 0, 0, DateTimeKind.Utc);

    public static readonly DateOnly Today = new(2026, 3, 25);

    private PeopleClinic(ClinicApp app) => App = app;

    public ClinicApp App { get; }

    public HttpClient Browser { get; private set; } = null!;

    public RecordsStores Stores => App.Services.GetRequiredService<RecordsStores>();

    public Acting Ada { get; private set; } = null!;

    public static async Task<PeopleClinic> OpenAsync()
    {
        var clinic = new PeopleClinic(new ClinicApp { Now = Now });
        await clinic.App.SetUpAsync();
        clinic.Browser = await clinic.App.SignedInBrowserAsync();
        await using var scope = clinic.App.Services.CreateAsyncScope();
        var db = scope.ServiceProvider.GetRequiredService<RecordsContext>();
        clinic.Ada = Acting.As(await db.Users.AsNoTracking().SingleAsync());
        return clinic;
    }

    public async Task<InventedClinic> FillAsync()
    {
        var people = new InventedClinic(Stores, Ada, Today);
        await people.FillAsync();
        return people;
    }

    /// <summary>A page's text as a person would read it.</summary>
    public async Task<string> PageAsync(string path)
    {
        var answer = await Browser.GetAsync(path);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return Readable(await answer.Content.ReadAsStringAsync());
    }

    public static async Task<string> ReadAsync(HttpResponseMessage answer) => Readable(await answer.Content.ReadAsStringAsync());

    /// <summary>A patient of another clinic on the same server.</summary>
    public async Task<Patient> StrangerAsync()
    {
        var other = new Acting(Guid.NewGuid(), Guid.NewGuid(), "Cleo (invented)");
        await using (var scope = App.Services.CreateAsyncScope())
        {
            var db = scope.ServiceProvider.GetRequiredService<RecordsContext>().ActAs(other);
            await using var transaction = await db.Database.BeginTransactionAsync();
            db.Clinics.Add(new Records.Clinic { Id = other.ClinicId, Name = "Other clinic (invented)", TimeZone = "Europe/Oslo" });
            await db.SaveChangesAsync();
            await transaction.CommitAsync();
        }

        var patient = (await Stores.Patients.AddAsync(other, new PatientDetails("Sol Reidar (invented)"))).Require();
        (await Stores.Episodes.AddAsync(other, patient.Id, new EpisodeDetails("right hip", Today))).Require();
        return patient;
    }

    /// <summary>What the fields of a page's form hold, hidden ones included, ready to be sent back.</summary>
    public static Dictionary<string, string> FieldsOf(string html)
    {
        var fields = new Dictionary<string, string>();
        foreach (Match input in Inputs().Matches(html))
        {
            if (Name().Match(input.Value) is { Success: true } name && name.Groups[1].Value.Contains('.', StringComparison.Ordinal)
                && !input.Value.Contains("type=\"radio\"", StringComparison.Ordinal))
                fields[name.Groups[1].Value] = WebUtility.HtmlDecode(ValueOf().Match(input.Value).Groups[1].Value);
        }

        foreach (Match area in Areas().Matches(html))
            fields[area.Groups[1].Value] = WebUtility.HtmlDecode(area.Groups[2].Value);
        foreach (Match select in Selects().Matches(html))
            fields[select.Groups[1].Value] = WebUtility.HtmlDecode(Chosen().Match(select.Groups[2].Value).Groups[1].Value);
        return fields;
    }

    public async ValueTask DisposeAsync() => await App.DisposeAsync();

    private static string Readable(string html) =>
        Spaces().Replace(WebUtility.HtmlDecode(Tags().Replace(html, " ")), " ");

    [GeneratedRegex("<input [^>]*>")]
    private static partial Regex Inputs();

    [GeneratedRegex("name=\"([^\"]+)\"")]
    private static partial Regex Name();

    [GeneratedRegex("value=\"([^\"]*)\"")]
    private static partial Regex ValueOf();

    [GeneratedRegex("<textarea [^>]*name=\"([^\"]+)\"[^>]*>([^<]*)</textarea>")]
    private static partial Regex Areas();

    [GeneratedRegex("<select [^>]*name=\"([^\"]+)\"[^>]*>(.*?)</select>", RegexOptions.Singleline)]
    private static partial Regex Selects();

    [GeneratedRegex("<option value=\"([^\"]*)\"[^>]* selected")]
    private static partial Regex Chosen();

    [GeneratedRegex("<[^>]+>")]
    private static partial Regex Tags();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
