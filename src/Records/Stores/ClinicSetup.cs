using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records;

/// <summary>What can be typed about a clinic.</summary>
/// <param name="Name">Name of the clinic.</param>
/// <param name="TimeZone">IANA name, for example America/Chicago.</param>
/// <param name="Phone">The number a patient calls.</param>
/// <param name="IsDemo">Whether it is the invented clinic that may be entered without an account.</param>
public sealed record ClinicDetails(string Name, string TimeZone, string? Phone = null, bool IsDemo = false);

/// <summary>Someone who is to sign in.</summary>
public sealed record ClinicianDetails(string DisplayName, string Email, string Password);

/// <summary>How setting up ended.</summary>
/// <param name="Clinician">The new clinician; null when it did not work.</param>
/// <param name="Faults">What is wrong, in sentences; empty when it worked.</param>
public sealed record SetUpOutcome(Clinician? Clinician, IReadOnlyList<string> Faults)
{
    /// <summary>Whether it worked.</summary>
    public bool Worked => Clinician is not null;
}

/// <summary>Clinics and the people in them. Scoped, because sign-in's own classes are.</summary>
public sealed class ClinicSetup(RecordsContext db, UserManager<Clinician> users, TimeProvider clock)
{
    /// <summary>Whether any clinic exists: a fresh database has none and no account.</summary>
    public Task<bool> IsSetUpAsync(CancellationToken cancellationToken = default) =>
        db.Clinics.IgnoreQueryFilters([RecordsContext.ClinicFilter]).AnyAsync(cancellationToken);

    /// <summary>Makes the first clinic and its owner. Refused once a clinic exists, however many try at once.</summary>
    public async Task<SetUpOutcome> CreateFirstAsync(
        ClinicDetails clinic, ClinicianDetails owner, CancellationToken cancellationToken = default)
    {
        if (FaultsOf(clinic, owner) is { Count: > 0 } faults)
            return new SetUpOutcome(null, faults);
        await using var transaction = await db.Database.BeginTransactionAsync(cancellationToken);
        if (await IsSetUpAsync(cancellationToken))
            return new SetUpOutcome(null, ["This installation is set up already. Sign in instead."]);
        var row = new Clinic
        {
            Id = Guid.CreateVersion7(clock.GetUtcNow()),
            Name = clinic.Name.Trim(),
            Phone = clinic.Phone,
            TimeZone = clinic.TimeZone,
            IsDemo = clinic.IsDemo,
        };
        var ownerId = Guid.CreateVersion7(clock.GetUtcNow());
        db.ActAs(new Acting(row.Id, ownerId, owner.DisplayName), clock);
        db.Clinics.Add(row);
        await db.SaveChangesAsync(cancellationToken);
        var outcome = await AddUserAsync(row.Id, ownerId, owner, ClinicianRole.Owner, cancellationToken);
        if (outcome.Worked)
            await transaction.CommitAsync(cancellationToken);
        return outcome;
    }

    /// <summary>Adds a clinician to the acting person's clinic.</summary>
    public async Task<SetUpOutcome> AddClinicianAsync(
        Acting who, ClinicianDetails details, ClinicianRole role, CancellationToken cancellationToken = default)
    {
        if (string.IsNullOrWhiteSpace(details.DisplayName))
            return new SetUpOutcome(null, [NameFault]);
        await using var transaction = await db.Database.BeginTransactionAsync(cancellationToken);
        db.ActAs(who, clock);
        var outcome = await AddUserAsync(
            who.ClinicId, Guid.CreateVersion7(clock.GetUtcNow()), details, role, cancellationToken);
        if (outcome.Worked)
            await transaction.CommitAsync(cancellationToken);
        return outcome;
    }

    /// <summary>The acting person's clinic.</summary>
    public async Task<Clinic> GetClinicAsync(Acting who, CancellationToken cancellationToken = default)
    {
        db.ActAs(who, clock);
        return await db.Clinics.AsNoTracking().FirstAsync(cancellationToken);
    }

    /// <summary>The people of the acting person's clinic, in order of name.</summary>
    public async Task<IReadOnlyList<Clinician>> CliniciansAsync(Acting who, CancellationToken cancellationToken = default) =>
        await db.Users.AsNoTracking().Where(c => c.ClinicId == who.ClinicId)
            .OrderBy(c => c.DisplayName).ThenBy(c => c.Id).ToListAsync(cancellationToken);

    private const string NameFault = "Type the name that others shall see.";

    private async Task<SetUpOutcome> AddUserAsync(
        Guid clinicId, Guid id, ClinicianDetails details, ClinicianRole role, CancellationToken cancellationToken)
    {
        var clinician = new Clinician
        {
            Id = id,
            ClinicId = clinicId,
            DisplayName = details.DisplayName.Trim(),
            Role = role,
            UserName = details.Email.Trim(),
            Email = details.Email.Trim(),
        };
        var result = await users.CreateAsync(clinician, details.Password);
        if (!result.Succeeded)
            return new SetUpOutcome(null, [.. result.Errors.Select(error => error.Description)]);
        await AuditWriter.AppendAsync(
            db, [new AuditLine(null, $"added as {role}", "clinician", id.ToString("D"))], cancellationToken);
        await db.SaveChangesAsync(cancellationToken);
        return new SetUpOutcome(clinician, []);
    }

    private static List<string> FaultsOf(ClinicDetails clinic, ClinicianDetails owner)
    {
        var faults = new List<string>();
        if (string.IsNullOrWhiteSpace(clinic.Name))
            faults.Add("Type the name of the clinic.");
        if (!TimeZoneInfo.TryFindSystemTimeZoneById(clinic.TimeZone, out _))
            faults.Add("Choose a time zone from the list, for example America/Chicago.");
        if (string.IsNullOrWhiteSpace(owner.DisplayName))
            faults.Add(NameFault);
        return faults;
    }
}
