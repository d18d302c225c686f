using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Identity.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records;

/// <summary>
/// The database. It shows nothing and takes nothing until <see cref="ActAs"/> says who acts in which clinic; from then
/// on it shows and takes that clinic's rows only.
/// </summary>
public sealed class RecordsContext(DbContextOptions<RecordsContext> options)
    : IdentityDbContext<Clinician, IdentityRole<Guid>, Guid>(options)
{
    /// <summary>Name of the query filter that keeps clinics apart.</summary>
    public const string ClinicFilter = "clinic";

    public DbSet<Clinic> Clinics => Set<Clinic>();

    public DbSet<Patient> Patients => Set<Patient>();

    public DbSet<Episode> Episodes => Set<Episode>();

    public DbSet<Visit> Visits => Set<Visit>();

    public DbSet<DangerAnswerRow> DangerAnswers => Set<DangerAnswerRow>();

    public DbSet<DangerDecision> DangerDecisions => Set<DangerDecision>();

    public DbSet<MeasurementRow> Measurements => Set<MeasurementRow>();

    public DbSet<ObservationRow> Observations => Set<ObservationRow>();

    public DbSet<FindingDecision> FindingDecisions => Set<FindingDecision>();

    public DbSet<VisitAnswerRow> VisitAnswers => Set<VisitAnswerRow>();

    public DbSet<Attachment> Attachments => Set<Attachment>();

    public DbSet<NoteAmendment> NoteAmendments => Set<NoteAmendment>();

    public DbSet<Goal> Goals => Set<Goal>();

    public DbSet<ProgramVersion> ProgramVersions => Set<ProgramVersion>();

    public DbSet<TeachBack> TeachBacks => Set<TeachBack>();

    public DbSet<PatientLink> PatientLinks => Set<PatientLink>();

    public DbSet<SessionLogRow> SessionLogs => Set<SessionLogRow>();

    public DbSet<MorningLogRow> MorningLogs => Set<MorningLogRow>();

    public DbSet<ClinicForm> ClinicForms => Set<ClinicForm>();

    public DbSet<DraftRow> Drafts => Set<DraftRow>();

    public DbSet<AuditEntry> AuditEntries => Set<AuditEntry>();

    /// <summary>The clinic whose rows are shown; empty shows none.</summary>
    public Guid Clinic { get; private set; }

    internal Acting? Who { get; private set; }

    internal TimeProvider Clock { get; private set; } = TimeProvider.System;

    internal DateTime UtcNow => Clock.GetUtcNow().UtcDateTime;

    internal Guid? PatientId { get; private set; }

    private (string Action, IAuditedRow? Row)? doing;

    /// <summary>Binds the context to a clinic and names who acts.</summary>
    public RecordsContext ActAs(Acting who, TimeProvider? clock = null)
    {
        if (Who is not null && Who.ClinicId != who.ClinicId)
            throw new InvalidOperationException("A context serves one clinic only; make a new one.");
        Who = who;
        Clinic = who.ClinicId;
        Clock = clock ?? TimeProvider.System;
        return this;
    }

    /// <summary>Names the patient whom the coming changes concern, for the audit trail.</summary>
    internal void About(Guid patientId) => PatientId = patientId;

    /// <summary>Names what is being done to a row, or to all, where "added", "changed" or "removed" would say too little.</summary>
    internal void Doing(string action, IAuditedRow? row = null) => doing = (action, row);

    internal string? ActionOn(IAuditedRow row) =>
        doing is { } named && (named.Row is null || ReferenceEquals(named.Row, row)) ? named.Action : null;

    internal Guid NewId() => Guid.CreateVersion7(Clock.GetUtcNow());

    protected override void OnConfiguring(DbContextOptionsBuilder optionsBuilder) =>
        optionsBuilder.AddInterceptors(SqliteSettings.Instance, SaveRules.Instance);

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        configurationBuilder.Properties<Enum>().HaveConversion<string>().HaveMaxLength(40);
        configurationBuilder.Properties<DateTime>().HaveConversion<UtcConverter>();
    }

    protected override void OnModelCreating(ModelBuilder builder)
    {
        base.OnModelCreating(builder);
        RecordsModel.Build(builder);
        builder.Entity<Clinic>().HasQueryFilter(ClinicFilter, clinic => clinic.Id == Clinic);
        Scope<Patient>(builder);
        Scope<Episode>(builder);
        Scope<Visit>(builder);
        Scope<DangerAnswerRow>(builder);
        Scope<DangerDecision>(builder);
        Scope<MeasurementRow>(builder);
        Scope<ObservationRow>(builder);
        Scope<FindingDecision>(builder);
        Scope<VisitAnswerRow>(builder);
        Scope<Attachment>(builder);
        Scope<NoteAmendment>(builder);
        Scope<Goal>(builder);
        Scope<ProgramVersion>(builder);
        Scope<TeachBack>(builder);
        Scope<PatientLink>(builder);
        Scope<SessionLogRow>(builder);
        Scope<MorningLogRow>(builder);
        Scope<ClinicForm>(builder);
        Scope<DraftRow>(builder);
        Scope<AuditEntry>(builder);
    }

    private void Scope<TRow>(ModelBuilder builder)
        where TRow : class, IClinicRow =>
        builder.Entity<TRow>().HasQueryFilter(ClinicFilter, row => EF.Property<Guid>(row, nameof(IClinicRow.ClinicId)) == Clinic);
}
