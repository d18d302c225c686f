using MomentArm.Body;

namespace MomentArm.Records.Tests;

public sealed class PatientStoreTests
{
    [Theory]
    [InlineData("ozil", true)]
    [InlineData("ÖZ ann", true)]
    [InlineData("ann xx", false)]
    [InlineData("%", false)]
    [InlineData("", true)]
    public async Task Search_finds_every_typed_word_whatever_case_and_accents(string typed, bool found)
    {
        await using var records = await TestRecords.CreateAsync();
        (await records.Stores.Patients.AddAsync(records.Ana, new PatientDetails("Anne-Özil (invented)"))).Require();
        Assert.Equal(found ? 1 : 0, (await records.Stores.Patients.ListAsync(records.Ana, typed)).Count);
    }

    [Fact]
    public async Task Only_a_name_is_needed_and_numbers_out_of_range_are_refused_with_the_range()
    {
        await using var records = await TestRecords.CreateAsync();
        var patients = records.Stores.Patients;
        Samples.Refused(await patients.AddAsync(records.Ana, new PatientDetails("  ")));
        Assert.Contains("0.8 to 2.4", Samples.Refused(await patients.AddAsync(records.Ana, new PatientDetails("A", StatureM: 170))), StringComparison.Ordinal);
        Samples.Refused(await patients.AddAsync(records.Ana, new PatientDetails("A", MassKg: double.NaN)));
        Samples.Refused(await patients.AddAsync(records.Ana, new PatientDetails("A", BirthYear: 2027)));
        (await patients.AddAsync(records.Ana, new PatientDetails("A"))).Require();
    }

    [Fact]
    public async Task Age_counts_whole_years_and_a_leap_day_birthday_counts_from_the_last_of_February()
    {
        await using var records = await TestRecords.CreateAsync();
        var row = (await records.Stores.Patients.AddAsync(
            records.Ana, new PatientDetails("A", BirthDate: new DateOnly(2000, 2, 29), Sex: Sex.Female, StatureM: 1.7))).Require();
        Assert.Equal(25, row.AgeOn(new DateOnly(2026, 2, 27)));
        Assert.Equal(26, row.AgeOn(new DateOnly(2026, 2, 28)));
        Assert.Equal(new Physique(Sex.Female, 26, 1.7, null), row.PhysiqueOn(new DateOnly(2026, 3, 2)));
        Assert.Equal(2000, row.BirthYear);
    }

    [Fact]
    public async Task An_edit_based_on_an_older_version_conflicts()
    {
        await using var records = await TestRecords.CreateAsync();
        var row = (await records.Stores.Patients.AddAsync(records.Ana, new PatientDetails("A"))).Require();
        (await records.Stores.Patients.EditAsync(records.Ana, row.Id, new PatientDetails("A", MassKg: 70), row.RowVersion)).Require();
        var theirs = Samples.Conflict(
            await records.Stores.Patients.EditAsync(records.Ben, row.Id, new PatientDetails("A", MassKg: 80), row.RowVersion), out _);
        Assert.Equal(70, theirs.MassKg);
    }
}
