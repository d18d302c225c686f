using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records;

/// <summary>
/// Keys and references. Every key starts with the clinic and every reference carries it, so that the database itself
/// refuses a row of one clinic that points into another.
/// </summary>
internal static class RecordsModel
{
    private const string ClinicId = nameof(IClinicRow.ClinicId);
    private const string Id = nameof(IAuditedRow.Id);

    internal static void Build(ModelBuilder builder)
    {
        BuildSignIn(builder);
        BuildPeople(builder);
        BuildVisits(builder);
        BuildPrograms(builder);
        BuildForms(builder);
        BuildTrail(builder);
        foreach (var type in builder.Model.GetEntityTypes().Where(t => typeof(IVersionedRow).IsAssignableFrom(t.ClrType)))
            builder.Entity(type.ClrType).Property(nameof(IVersionedRow.RowVersion)).IsConcurrencyToken();
    }

    private static void BuildSignIn(ModelBuilder builder)
    {
        builder.Entity<Clinician>(row =>
        {
            row.ToTable("Clinicians");
            row.HasAlternateKey(ClinicId, Id);
            row.Property(c => c.DisplayName).HasMaxLength(200);
            row.HasOne<Clinic>().WithMany().HasForeignKey(ClinicId).OnDelete(DeleteBehavior.Restrict);
        });
        builder.Entity<IdentityRole<Guid>>().ToTable("Roles");
        builder.Entity<IdentityUserRole<Guid>>().ToTable("ClinicianRoles");
        builder.Entity<IdentityUserClaim<Guid>>().ToTable("ClinicianClaims");
        builder.Entity<IdentityUserLogin<Guid>>().ToTable("ClinicianLogins");
        builder.Entity<IdentityUserToken<Guid>>().ToTable("ClinicianTokens");
        builder.Entity<IdentityRoleClaim<Guid>>().ToTable("RoleClaims");
        builder.Entity<IdentityUserPasskey<Guid>>().ToTable("ClinicianPasskeys");
    }

    private static void BuildPeople(ModelBuilder builder)
    {
        builder.Entity<Clinic>().HasKey(Id);
        Keyed<Patient>(builder);
        builder.Entity<Patient>().HasOne<Clinic>().WithMany().HasForeignKey(ClinicId).OnDelete(DeleteBehavior.Restrict);
        builder.Entity<Patient>().Property(p => p.DisplayName).HasMaxLength(200);
        Keyed<Episode>(builder);
        Refers<Episode, Patient>(builder, nameof(Episode.PatientId));
        builder.Entity<Clinic>().Property(c => c.ShowUnverified).HasDefaultValue(true);
        Keyed<Goal>(builder);
        Refers<Goal, Episode>(builder, nameof(Goal.EpisodeId));
    }

    private static void BuildVisits(ModelBuilder builder)
    {
        Keyed<Visit>(builder);
        Refers<Visit, Episode>(builder, nameof(Visit.EpisodeId));
        Refers<Visit, Clinician>(builder, nameof(Visit.SignedById), required: false);
        Unique<Visit>(builder, nameof(Visit.EpisodeId), nameof(Visit.Number));
        PartOfVisit<DangerAnswerRow>(builder, nameof(DangerAnswerRow.SignId));
        PartOfVisit<DangerDecision>(builder, nameof(DangerDecision.SignId));
        Refers<DangerDecision, Clinician>(builder, nameof(DangerDecision.ById));
        PartOfVisit<MeasurementRow>(builder, nameof(MeasurementRow.Cell));
        PartOfVisit<ObservationRow>(builder, nameof(ObservationRow.Cell));
        PartOfVisit<FindingDecision>(builder, nameof(FindingDecision.FindingId));
        PartOfVisit<VisitAnswerRow>(builder, nameof(VisitAnswerRow.Cell));
        Keyed<Attachment>(builder);
        Refers<Attachment, Visit>(builder, nameof(Attachment.VisitId));
        Keyed<NoteAmendment>(builder);
        Refers<NoteAmendment, Visit>(builder, nameof(NoteAmendment.VisitId));
        Refers<NoteAmendment, Clinician>(builder, nameof(NoteAmendment.ById));
    }

    private static void BuildPrograms(ModelBuilder builder)
    {
        Keyed<ProgramVersion>(builder);
        Refers<ProgramVersion, Episode>(builder, nameof(ProgramVersion.EpisodeId));
        Refers<ProgramVersion, Clinician>(builder, nameof(ProgramVersion.CreatedById));
        Unique<ProgramVersion>(builder, nameof(ProgramVersion.EpisodeId), nameof(ProgramVersion.Number));
        Keyed<TeachBack>(builder);
        Refers<TeachBack, ProgramVersion>(builder, nameof(TeachBack.ProgramVersionId));
        Keyed<PatientLink>(builder);
        Refers<PatientLink, Episode>(builder, nameof(PatientLink.EpisodeId));
        builder.Entity<PatientLink>().HasIndex(link => link.TokenHash).IsUnique();
        Keyed<SessionLogRow>(builder);
        Refers<SessionLogRow, Episode>(builder, nameof(SessionLogRow.EpisodeId));
        Refers<SessionLogRow, ProgramVersion>(builder, nameof(SessionLogRow.ProgramVersionId), required: false);
        builder.Entity<SessionLogRow>().HasIndex(ClinicId, nameof(SessionLogRow.EpisodeId), nameof(SessionLogRow.Day));
        Keyed<MorningLogRow>(builder);
        Refers<MorningLogRow, Episode>(builder, nameof(MorningLogRow.EpisodeId));
        builder.Entity<MorningLogRow>().HasIndex(ClinicId, nameof(MorningLogRow.EpisodeId), nameof(MorningLogRow.Day));
    }

    private static void BuildForms(ModelBuilder builder)
    {
        Keyed<ClinicForm>(builder);
        Refers<ClinicForm, Clinician>(builder, nameof(ClinicForm.CreatedById));
        builder.Entity<ClinicForm>().Property(f => f.FormId).HasMaxLength(100);
        builder.Entity<ClinicForm>().Property(f => f.Name).HasMaxLength(200);
        Unique<ClinicForm>(builder, nameof(ClinicForm.FormId), nameof(ClinicForm.Number));
    }

    private static void BuildTrail(ModelBuilder builder)
    {
        builder.Entity<DraftRow>().HasKey(ClinicId, nameof(DraftRow.ClinicianId), nameof(DraftRow.Key));
        Refers<DraftRow, Clinician>(builder, nameof(DraftRow.ClinicianId));
        builder.Entity<AuditEntry>().HasKey(ClinicId, nameof(AuditEntry.Sequence));
        builder.Entity<AuditEntry>().Property(entry => entry.Sequence).ValueGeneratedNever();
        builder.Entity<AuditEntry>().HasOne<Clinic>().WithMany().HasForeignKey(ClinicId).OnDelete(DeleteBehavior.Restrict);
        builder.Entity<AuditEntry>().HasIndex(ClinicId, nameof(AuditEntry.PatientId), nameof(AuditEntry.Sequence));
        builder.Entity<AuditEntry>().HasIndex(ClinicId, nameof(AuditEntry.SubjectId), nameof(AuditEntry.Sequence));
    }

    private static void PartOfVisit<TRow>(ModelBuilder builder, string what)
        where TRow : class, IVisitRow
    {
        Keyed<TRow>(builder);
        Refers<TRow, Visit>(builder, nameof(IVisitRow.VisitId));
        Unique<TRow>(builder, nameof(IVisitRow.VisitId), what);
    }

    private static void Keyed<TRow>(ModelBuilder builder)
        where TRow : class
    {
        builder.Entity<TRow>().HasKey(ClinicId, Id);
        builder.Entity<TRow>().Property(Id).ValueGeneratedNever();
    }

    private static void Unique<TRow>(ModelBuilder builder, string parent, string what)
        where TRow : class =>
        builder.Entity<TRow>().HasIndex(ClinicId, parent, what).IsUnique();

    private static void Refers<TRow, TTo>(ModelBuilder builder, string column, bool required = true)
        where TRow : class
        where TTo : class =>
        builder.Entity<TRow>().HasOne<TTo>().WithMany()
            .HasForeignKey(ClinicId, column).HasPrincipalKey(ClinicId, Id)
            .IsRequired(required).OnDelete(DeleteBehavior.Restrict);
}
