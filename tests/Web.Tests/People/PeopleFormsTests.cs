using System.Net;
using MomentArm.Records;

namespace MomentArm.Web.People;

public sealed class PeopleFormsTests
{
    [Fact]
    public async Task The_same_form_sent_twice_adds_one_patient_and_one_episode()
    {
        await using var clinic = await PeopleClinic.OpenAsync();
        var fields = PeopleClinic.FieldsOf(await clinic.Browser.GetStringAsync("/patients/new"));
        fields["Form.DisplayName"] = "Nils Arvold (invented)";
        fields["Form.Stature"] = "5 ft 6";
        fields["Form.Mass"] = "140 lb";
        fields["Episode.Title"] = "left shoulder, stiff";
        fields["Episode.Side"] = "Left";
        fields["Episode.Irritability"] = "High";
        var answers = await Task.WhenAll(
            ClinicApp.SubmitAsync(clinic.Browser, "/patients/new", "patient", new(fields)),
            ClinicApp.SubmitAsync(clinic.Browser, "/patients/new", "patient", new(fields)));
        Assert.All(answers, answer => Assert.Equal(HttpStatusCode.Found, answer.StatusCode));
        var patient = Assert.Single(await clinic.Stores.Patients.ListAsync(clinic.Ada));
        Assert.Equal(1.6764, patient.StatureM!.Value, 1e-9);
        Assert.Equal(63.502932, patient.MassKg!.Value, 1e-6);
        var episode = Assert.Single(await clinic.Stores.Episodes.ListAsync(clinic.Ada, patient.Id));
        Assert.Equal("left shoulder, stiff", episode.Title);
        Assert.Equal(MomentArm.Exam.Irritability.High, episode.Irritability);
    }

    [Fact]
    public async Task A_form_sent_again_with_other_values_adds_nobody_and_says_so()
    {
        await using var clinic = await PeopleClinic.OpenAsync();
        var fields = PeopleClinic.FieldsOf(await clinic.Browser.GetStringAsync("/patients/new"));
        fields["Form.DisplayName"] = "Nils Arvold (invented)";
        await ClinicApp.SubmitAsync(clinic.Browser, "/patients/new", "patient", new(fields));
        fields["Form.DisplayName"] = "Nora Arvold (invented)";
        var again = await ClinicApp.SubmitAsync(clinic.Browser, "/patients/new", "patient", new(fields));
        Assert.Contains("This form has added its patient already", await PeopleClinic.ReadAsync(again), StringComparison.Ordinal);
        Assert.Equal("Nils Arvold (invented)", Assert.Single(await clinic.Stores.Patients.ListAsync(clinic.Ada)).DisplayName);
    }

    [Fact]
    public async Task Only_the_name_is_needed()
    {
        await using var clinic = await PeopleClinic.OpenAsync();
        var fields = PeopleClinic.FieldsOf(await clinic.Browser.GetStringAsync("/patients/new"));
        var without = await ClinicApp.SubmitAsync(clinic.Browser, "/patients/new", "patient", new(fields));
        Assert.Contains("Give the patient a name to show", await PeopleClinic.ReadAsync(without), StringComparison.Ordinal);
        fields["Form.DisplayName"] = "Ulla (invented)";
        var with = await ClinicApp.SubmitAsync(clinic.Browser, "/patients/new", "patient", new(fields));
        Assert.Equal(HttpStatusCode.Found, with.StatusCode);
        var patient = Assert.Single(await clinic.Stores.Patients.ListAsync(clinic.Ada));
        Assert.Empty(await clinic.Stores.Episodes.ListAsync(clinic.Ada, patient.Id));
    }

    [Fact]
    public async Task A_value_that_cannot_be_read_is_named_and_what_was_typed_stays()
    {
        await using var clinic = await PeopleClinic.OpenAsync();
        var fields = PeopleClinic.FieldsOf(await clinic.Browser.GetStringAsync("/patients/new"));
        fields["Form.DisplayName"] = "Ulla (invented)";
        fields["Form.Stature"] = "tall";
        fields["Form.Birth"] = "31/31/1980";
        var answer = await ClinicApp.SubmitAsync(clinic.Browser, "/patients/new", "patient", new(fields));
        var html = await answer.Content.ReadAsStringAsync();
        var page = await PeopleClinic.ReadAsync(answer);
        Assert.Contains("\"tall\" is not a stature. Write 168 cm, 1.68 m or 5 ft 6.", page, StringComparison.Ordinal);
        Assert.Contains("is not a birth year or date", page, StringComparison.Ordinal);
        Assert.Equal("tall", PeopleClinic.FieldsOf(html)["Form.Stature"]);
        Assert.Equal("Ulla (invented)", PeopleClinic.FieldsOf(html)["Form.DisplayName"]);
        Assert.Empty(await clinic.Stores.Patients.ListAsync(clinic.Ada));
    }

    [Fact]
    public async Task An_unusual_value_is_asked_about_once_and_then_saved()
    {
        await using var clinic = await PeopleClinic.OpenAsync();
        var fields = PeopleClinic.FieldsOf(await clinic.Browser.GetStringAsync("/patients/new"));
        fields["Form.DisplayName"] = "Ulla (invented)";
        fields["Form.Stature"] = "168";
        fields["Form.Mass"] = "140";
        var asked = await ClinicApp.SubmitAsync(clinic.Browser, "/patients/new", "patient", new(fields));
        Assert.Contains("belong together?", await PeopleClinic.ReadAsync(asked), StringComparison.Ordinal);
        var again = PeopleClinic.FieldsOf(await asked.Content.ReadAsStringAsync());
        var saved = await ClinicApp.SubmitAsync(clinic.Browser, "/patients/new", "patient", again);
        Assert.Equal(HttpStatusCode.Found, saved.StatusCode);
        Assert.Equal(140, Assert.Single(await clinic.Stores.Patients.ListAsync(clinic.Ada)).MassKg);
    }

    [Fact]
    public async Task Two_people_editing_one_patient_both_keep_their_work()
    {
        await using var clinic = await PeopleClinic.OpenAsync();
        var patient = (await clinic.Stores.Patients.AddAsync(
            clinic.Ada, new PatientDetails("Ulla (invented)", MassKg: 63.502932, Occupation: "baker"))).Require();
        var path = $"/patients/{patient.Id}/edit";
        var mine = PeopleClinic.FieldsOf(await clinic.Browser.GetStringAsync(path));
        var bo = clinic.Ada with { Name = "Bo Second (invented)" };
        (await clinic.Stores.Patients.EditAsync(
            bo, patient.Id, PatientDetails.Of(patient) with { Occupation = "master baker", Note = "Works nights." }, patient.RowVersion)).Require();

        mine["Form.Occupation"] = "retired baker";
        var answer = await ClinicApp.SubmitAsync(clinic.Browser, path, "patient", new(mine));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var page = await PeopleClinic.ReadAsync(answer);
        Assert.Contains("Bo Second (invented) saved this first", page, StringComparison.Ordinal);
        Assert.Contains("Occupation master baker retired baker", page, StringComparison.Ordinal);
        Assert.Equal("master baker", (await clinic.Stores.Patients.GetAsync(clinic.Ada, patient.Id))!.Occupation);

        var merged = PeopleClinic.FieldsOf(await answer.Content.ReadAsStringAsync());
        Assert.Equal("retired baker", merged["Form.Occupation"]);
        Assert.Equal("Works nights.", merged["Form.Note"].Trim());
        var saved = await ClinicApp.SubmitAsync(clinic.Browser, path, "patient", merged);
        Assert.Equal(HttpStatusCode.Found, saved.StatusCode);
        var now = (await clinic.Stores.Patients.GetAsync(clinic.Ada, patient.Id))!;
        Assert.Equal(("retired baker", "Works nights."), (now.Occupation, now.Note));
        // Not touched, so not rounded on its way through the form.
        Assert.Equal(63.502932, now.MassKg);
    }

    [Fact]
    public async Task Two_people_editing_one_episode_are_told()
    {
        await using var clinic = await PeopleClinic.OpenAsync();
        var patient = (await clinic.Stores.Patients.AddAsync(clinic.Ada, new PatientDetails("Ulla (invented)"))).Require();
        var episode = (await clinic.Stores.Episodes.AddAsync(clinic.Ada, patient.Id, new EpisodeDetails("left hip", PeopleClinic.Today))).Require();
        var path = $"/patients/{patient.Id}/episodes/{episode.Id}/edit";
        var mine = PeopleClinic.FieldsOf(await clinic.Browser.GetStringAsync(path));
        (await clinic.Stores.Episodes.EditAsync(
            clinic.Ada, episode.Id, EpisodeDetails.Of(episode) with { Title = "left hip, outer side" }, episode.RowVersion)).Require();
        mine["Episode.Title"] = "left hip, front";
        var answer = await ClinicApp.SubmitAsync(clinic.Browser, path, "episode", new(mine));
        Assert.Contains("Title left hip, outer side left hip, front", await PeopleClinic.ReadAsync(answer), StringComparison.Ordinal);
    }
}
