using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace MomentArm.Records.Migrations
{
    /// <inheritdoc />
    public partial class Initial : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Clinics",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Phone = table.Column<string>(type: "TEXT", nullable: true),
                    TimeZone = table.Column<string>(type: "TEXT", nullable: false),
                    IsDemo = table.Column<bool>(type: "INTEGER", nullable: false),
                    RowVersion = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Clinics", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Roles",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    NormalizedName = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    ConcurrencyStamp = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Roles", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "AuditEntries",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Sequence = table.Column<long>(type: "INTEGER", nullable: false),
                    AtUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    WhoId = table.Column<Guid>(type: "TEXT", nullable: true),
                    WhoName = table.Column<string>(type: "TEXT", nullable: false),
                    PatientId = table.Column<Guid>(type: "TEXT", nullable: true),
                    Action = table.Column<string>(type: "TEXT", nullable: false),
                    SubjectType = table.Column<string>(type: "TEXT", nullable: false),
                    SubjectId = table.Column<string>(type: "TEXT", nullable: false),
                    Changes = table.Column<string>(type: "TEXT", nullable: false),
                    Hash = table.Column<byte[]>(type: "BLOB", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AuditEntries", x => new { x.ClinicId, x.Sequence });
                    table.ForeignKey(
                        name: "FK_AuditEntries_Clinics_ClinicId",
                        column: x => x.ClinicId,
                        principalTable: "Clinics",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Clinicians",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    DisplayName = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    Role = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    UserName = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    NormalizedUserName = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    Email = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    NormalizedEmail = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    EmailConfirmed = table.Column<bool>(type: "INTEGER", nullable: false),
                    PasswordHash = table.Column<string>(type: "TEXT", nullable: true),
                    SecurityStamp = table.Column<string>(type: "TEXT", nullable: true),
                    ConcurrencyStamp = table.Column<string>(type: "TEXT", nullable: true),
                    PhoneNumber = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    PhoneNumberConfirmed = table.Column<bool>(type: "INTEGER", nullable: false),
                    TwoFactorEnabled = table.Column<bool>(type: "INTEGER", nullable: false),
                    LockoutEnd = table.Column<DateTimeOffset>(type: "TEXT", nullable: true),
                    LockoutEnabled = table.Column<bool>(type: "INTEGER", nullable: false),
                    AccessFailedCount = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Clinicians", x => x.Id);
                    table.UniqueConstraint("AK_Clinicians_ClinicId_Id", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_Clinicians_Clinics_ClinicId",
                        column: x => x.ClinicId,
                        principalTable: "Clinics",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Patients",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    DisplayName = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    GivenName = table.Column<string>(type: "TEXT", nullable: true),
                    FamilyName = table.Column<string>(type: "TEXT", nullable: true),
                    SearchText = table.Column<string>(type: "TEXT", nullable: false),
                    BirthYear = table.Column<int>(type: "INTEGER", nullable: true),
                    BirthDate = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Sex = table.Column<string>(type: "TEXT", maxLength: 40, nullable: true),
                    StatureM = table.Column<double>(type: "REAL", nullable: true),
                    MassKg = table.Column<double>(type: "REAL", nullable: true),
                    Occupation = table.Column<string>(type: "TEXT", nullable: true),
                    Note = table.Column<string>(type: "TEXT", nullable: true),
                    RowVersion = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Patients", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_Patients_Clinics_ClinicId",
                        column: x => x.ClinicId,
                        principalTable: "Clinics",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "RoleClaims",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    RoleId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ClaimType = table.Column<string>(type: "TEXT", nullable: true),
                    ClaimValue = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_RoleClaims", x => x.Id);
                    table.ForeignKey(
                        name: "FK_RoleClaims_Roles_RoleId",
                        column: x => x.RoleId,
                        principalTable: "Roles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "ClinicianClaims",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    UserId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ClaimType = table.Column<string>(type: "TEXT", nullable: true),
                    ClaimValue = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClinicianClaims", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ClinicianClaims_Clinicians_UserId",
                        column: x => x.UserId,
                        principalTable: "Clinicians",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "ClinicianLogins",
                columns: table => new
                {
                    LoginProvider = table.Column<string>(type: "TEXT", maxLength: 128, nullable: false),
                    ProviderKey = table.Column<string>(type: "TEXT", maxLength: 128, nullable: false),
                    ProviderDisplayName = table.Column<string>(type: "TEXT", nullable: true),
                    UserId = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClinicianLogins", x => new { x.LoginProvider, x.ProviderKey });
                    table.ForeignKey(
                        name: "FK_ClinicianLogins_Clinicians_UserId",
                        column: x => x.UserId,
                        principalTable: "Clinicians",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "ClinicianPasskeys",
                columns: table => new
                {
                    CredentialId = table.Column<byte[]>(type: "BLOB", maxLength: 1024, nullable: false),
                    UserId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Data = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClinicianPasskeys", x => x.CredentialId);
                    table.ForeignKey(
                        name: "FK_ClinicianPasskeys_Clinicians_UserId",
                        column: x => x.UserId,
                        principalTable: "Clinicians",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "ClinicianRoles",
                columns: table => new
                {
                    UserId = table.Column<Guid>(type: "TEXT", nullable: false),
                    RoleId = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClinicianRoles", x => new { x.UserId, x.RoleId });
                    table.ForeignKey(
                        name: "FK_ClinicianRoles_Clinicians_UserId",
                        column: x => x.UserId,
                        principalTable: "Clinicians",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_ClinicianRoles_Roles_RoleId",
                        column: x => x.RoleId,
                        principalTable: "Roles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "ClinicianTokens",
                columns: table => new
                {
                    UserId = table.Column<Guid>(type: "TEXT", nullable: false),
                    LoginProvider = table.Column<string>(type: "TEXT", maxLength: 128, nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 128, nullable: false),
                    Value = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClinicianTokens", x => new { x.UserId, x.LoginProvider, x.Name });
                    table.ForeignKey(
                        name: "FK_ClinicianTokens_Clinicians_UserId",
                        column: x => x.UserId,
                        principalTable: "Clinicians",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "Drafts",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ClinicianId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Key = table.Column<string>(type: "TEXT", nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: false),
                    UpdatedAtUtc = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Drafts", x => new { x.ClinicId, x.ClinicianId, x.Key });
                    table.ForeignKey(
                        name: "FK_Drafts_Clinicians_ClinicId_ClinicianId",
                        columns: x => new { x.ClinicId, x.ClinicianId },
                        principalTable: "Clinicians",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Episodes",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    PatientId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Title = table.Column<string>(type: "TEXT", nullable: false),
                    Region = table.Column<string>(type: "TEXT", nullable: true),
                    AffectedSide = table.Column<string>(type: "TEXT", maxLength: 40, nullable: true),
                    StartedOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Goal = table.Column<string>(type: "TEXT", nullable: true),
                    Irritability = table.Column<string>(type: "TEXT", maxLength: 40, nullable: true),
                    ClosedOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    ClosedReason = table.Column<string>(type: "TEXT", nullable: true),
                    RowVersion = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Episodes", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_Episodes_Patients_ClinicId_PatientId",
                        columns: x => new { x.ClinicId, x.PatientId },
                        principalTable: "Patients",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "MorningLogs",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    EpisodeId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    ReceivedAtUtc = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_MorningLogs", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_MorningLogs_Episodes_ClinicId_EpisodeId",
                        columns: x => new { x.ClinicId, x.EpisodeId },
                        principalTable: "Episodes",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PatientLinks",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    EpisodeId = table.Column<Guid>(type: "TEXT", nullable: false),
                    TokenHash = table.Column<byte[]>(type: "BLOB", nullable: false),
                    CreatedAtUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ExpiresAtUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    RevokedAtUtc = table.Column<DateTime>(type: "TEXT", nullable: true),
                    LastOpenedAtUtc = table.Column<DateTime>(type: "TEXT", nullable: true),
                    RowVersion = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PatientLinks", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_PatientLinks_Episodes_ClinicId_EpisodeId",
                        columns: x => new { x.ClinicId, x.EpisodeId },
                        principalTable: "Episodes",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ProgramVersions",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    EpisodeId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    State = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    CreatedById = table.Column<Guid>(type: "TEXT", nullable: false),
                    CreatedByName = table.Column<string>(type: "TEXT", nullable: false),
                    CreatedAtUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", nullable: true),
                    HandedOverAtUtc = table.Column<DateTime>(type: "TEXT", nullable: true),
                    RowVersion = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ProgramVersions", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_ProgramVersions_Clinicians_ClinicId_CreatedById",
                        columns: x => new { x.ClinicId, x.CreatedById },
                        principalTable: "Clinicians",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ProgramVersions_Episodes_ClinicId_EpisodeId",
                        columns: x => new { x.ClinicId, x.EpisodeId },
                        principalTable: "Episodes",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Visits",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    EpisodeId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    State = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Subjective = table.Column<string>(type: "TEXT", nullable: true),
                    Objective = table.Column<string>(type: "TEXT", nullable: true),
                    Assessment = table.Column<string>(type: "TEXT", nullable: true),
                    Plan = table.Column<string>(type: "TEXT", nullable: true),
                    SignedById = table.Column<Guid>(type: "TEXT", nullable: true),
                    SignedAtUtc = table.Column<DateTime>(type: "TEXT", nullable: true),
                    RowVersion = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Visits", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_Visits_Clinicians_ClinicId_SignedById",
                        columns: x => new { x.ClinicId, x.SignedById },
                        principalTable: "Clinicians",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Visits_Episodes_ClinicId_EpisodeId",
                        columns: x => new { x.ClinicId, x.EpisodeId },
                        principalTable: "Episodes",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SessionLogs",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    EpisodeId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ProgramVersionId = table.Column<Guid>(type: "TEXT", nullable: true),
                    Day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    ReceivedAtUtc = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SessionLogs", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_SessionLogs_Episodes_ClinicId_EpisodeId",
                        columns: x => new { x.ClinicId, x.EpisodeId },
                        principalTable: "Episodes",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_SessionLogs_ProgramVersions_ClinicId_ProgramVersionId",
                        columns: x => new { x.ClinicId, x.ProgramVersionId },
                        principalTable: "ProgramVersions",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "TeachBacks",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ProgramVersionId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ExerciseId = table.Column<string>(type: "TEXT", nullable: false),
                    Side = table.Column<string>(type: "TEXT", maxLength: 40, nullable: true),
                    Shown = table.Column<bool>(type: "INTEGER", nullable: false),
                    SaidBack = table.Column<bool>(type: "INTEGER", nullable: false),
                    Missed = table.Column<string>(type: "TEXT", nullable: true),
                    AtUtc = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_TeachBacks", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_TeachBacks_ProgramVersions_ClinicId_ProgramVersionId",
                        columns: x => new { x.ClinicId, x.ProgramVersionId },
                        principalTable: "ProgramVersions",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "DangerAnswers",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    VisitId = table.Column<Guid>(type: "TEXT", nullable: false),
                    SignId = table.Column<string>(type: "TEXT", nullable: false),
                    Answer = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    AtUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    RowVersion = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_DangerAnswers", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_DangerAnswers_Visits_ClinicId_VisitId",
                        columns: x => new { x.ClinicId, x.VisitId },
                        principalTable: "Visits",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "DangerDecisions",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    VisitId = table.Column<Guid>(type: "TEXT", nullable: false),
                    SignId = table.Column<string>(type: "TEXT", nullable: false),
                    ById = table.Column<Guid>(type: "TEXT", nullable: false),
                    ByName = table.Column<string>(type: "TEXT", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", nullable: false),
                    AtUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    RowVersion = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_DangerDecisions", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_DangerDecisions_Clinicians_ClinicId_ById",
                        columns: x => new { x.ClinicId, x.ById },
                        principalTable: "Clinicians",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_DangerDecisions_Visits_ClinicId_VisitId",
                        columns: x => new { x.ClinicId, x.VisitId },
                        principalTable: "Visits",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "FindingDecisions",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    VisitId = table.Column<Guid>(type: "TEXT", nullable: false),
                    FindingId = table.Column<string>(type: "TEXT", nullable: false),
                    Accepted = table.Column<bool>(type: "INTEGER", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", nullable: true),
                    RowVersion = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FindingDecisions", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_FindingDecisions_Visits_ClinicId_VisitId",
                        columns: x => new { x.ClinicId, x.VisitId },
                        principalTable: "Visits",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Measurements",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    VisitId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Cell = table.Column<string>(type: "TEXT", nullable: false),
                    MeasureId = table.Column<string>(type: "TEXT", nullable: false),
                    Side = table.Column<string>(type: "TEXT", maxLength: 40, nullable: true),
                    Trials = table.Column<string>(type: "TEXT", nullable: false),
                    LeverArmM = table.Column<double>(type: "REAL", nullable: true),
                    PainDuring = table.Column<int>(type: "INTEGER", nullable: true),
                    Activity = table.Column<string>(type: "TEXT", nullable: true),
                    AsTyped = table.Column<string>(type: "TEXT", nullable: true),
                    Note = table.Column<string>(type: "TEXT", nullable: true),
                    AtUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    RowVersion = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Measurements", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_Measurements_Visits_ClinicId_VisitId",
                        columns: x => new { x.ClinicId, x.VisitId },
                        principalTable: "Visits",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Observations",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    VisitId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Cell = table.Column<string>(type: "TEXT", nullable: false),
                    MeasureId = table.Column<string>(type: "TEXT", nullable: false),
                    Side = table.Column<string>(type: "TEXT", maxLength: 40, nullable: true),
                    Text = table.Column<string>(type: "TEXT", nullable: false),
                    Grade = table.Column<string>(type: "TEXT", nullable: true),
                    AsTyped = table.Column<string>(type: "TEXT", nullable: false),
                    AtUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    RowVersion = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Observations", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_Observations_Visits_ClinicId_VisitId",
                        columns: x => new { x.ClinicId, x.VisitId },
                        principalTable: "Visits",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_AuditEntries_ClinicId_PatientId_Sequence",
                table: "AuditEntries",
                columns: new[] { "ClinicId", "PatientId", "Sequence" });

            migrationBuilder.CreateIndex(
                name: "IX_AuditEntries_ClinicId_SubjectId_Sequence",
                table: "AuditEntries",
                columns: new[] { "ClinicId", "SubjectId", "Sequence" });

            migrationBuilder.CreateIndex(
                name: "IX_ClinicianClaims_UserId",
                table: "ClinicianClaims",
                column: "UserId");

            migrationBuilder.CreateIndex(
                name: "IX_ClinicianLogins_UserId",
                table: "ClinicianLogins",
                column: "UserId");

            migrationBuilder.CreateIndex(
                name: "IX_ClinicianPasskeys_UserId",
                table: "ClinicianPasskeys",
                column: "UserId");

            migrationBuilder.CreateIndex(
                name: "IX_ClinicianRoles_RoleId",
                table: "ClinicianRoles",
                column: "RoleId");

            migrationBuilder.CreateIndex(
                name: "EmailIndex",
                table: "Clinicians",
                column: "NormalizedEmail");

            migrationBuilder.CreateIndex(
                name: "UserNameIndex",
                table: "Clinicians",
                column: "NormalizedUserName",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_DangerAnswers_ClinicId_VisitId_SignId",
                table: "DangerAnswers",
                columns: new[] { "ClinicId", "VisitId", "SignId" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_DangerDecisions_ClinicId_ById",
                table: "DangerDecisions",
                columns: new[] { "ClinicId", "ById" });

            migrationBuilder.CreateIndex(
                name: "IX_DangerDecisions_ClinicId_VisitId_SignId",
                table: "DangerDecisions",
                columns: new[] { "ClinicId", "VisitId", "SignId" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Episodes_ClinicId_PatientId",
                table: "Episodes",
                columns: new[] { "ClinicId", "PatientId" });

            migrationBuilder.CreateIndex(
                name: "IX_FindingDecisions_ClinicId_VisitId_FindingId",
                table: "FindingDecisions",
                columns: new[] { "ClinicId", "VisitId", "FindingId" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Measurements_ClinicId_VisitId_Cell",
                table: "Measurements",
                columns: new[] { "ClinicId", "VisitId", "Cell" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_MorningLogs_ClinicId_EpisodeId_Day",
                table: "MorningLogs",
                columns: new[] { "ClinicId", "EpisodeId", "Day" });

            migrationBuilder.CreateIndex(
                name: "IX_Observations_ClinicId_VisitId_Cell",
                table: "Observations",
                columns: new[] { "ClinicId", "VisitId", "Cell" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_PatientLinks_ClinicId_EpisodeId",
                table: "PatientLinks",
                columns: new[] { "ClinicId", "EpisodeId" });

            migrationBuilder.CreateIndex(
                name: "IX_PatientLinks_TokenHash",
                table: "PatientLinks",
                column: "TokenHash",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ProgramVersions_ClinicId_CreatedById",
                table: "ProgramVersions",
                columns: new[] { "ClinicId", "CreatedById" });

            migrationBuilder.CreateIndex(
                name: "IX_ProgramVersions_ClinicId_EpisodeId_Number",
                table: "ProgramVersions",
                columns: new[] { "ClinicId", "EpisodeId", "Number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_RoleClaims_RoleId",
                table: "RoleClaims",
                column: "RoleId");

            migrationBuilder.CreateIndex(
                name: "RoleNameIndex",
                table: "Roles",
                column: "NormalizedName",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_SessionLogs_ClinicId_EpisodeId_Day",
                table: "SessionLogs",
                columns: new[] { "ClinicId", "EpisodeId", "Day" });

            migrationBuilder.CreateIndex(
                name: "IX_SessionLogs_ClinicId_ProgramVersionId",
                table: "SessionLogs",
                columns: new[] { "ClinicId", "ProgramVersionId" });

            migrationBuilder.CreateIndex(
                name: "IX_TeachBacks_ClinicId_ProgramVersionId",
                table: "TeachBacks",
                columns: new[] { "ClinicId", "ProgramVersionId" });

            migrationBuilder.CreateIndex(
                name: "IX_Visits_ClinicId_EpisodeId_Number",
                table: "Visits",
                columns: new[] { "ClinicId", "EpisodeId", "Number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Visits_ClinicId_SignedById",
                table: "Visits",
                columns: new[] { "ClinicId", "SignedById" });

            foreach (var trigger in Triggers.CreateFirst())
            {
                migrationBuilder.Sql(trigger);
            }
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "AuditEntries");

            migrationBuilder.DropTable(
                name: "ClinicianClaims");

            migrationBuilder.DropTable(
                name: "ClinicianLogins");

            migrationBuilder.DropTable(
                name: "ClinicianPasskeys");

            migrationBuilder.DropTable(
                name: "ClinicianRoles");

            migrationBuilder.DropTable(
                name: "ClinicianTokens");

            migrationBuilder.DropTable(
                name: "DangerAnswers");

            migrationBuilder.DropTable(
                name: "DangerDecisions");

            migrationBuilder.DropTable(
                name: "Drafts");

            migrationBuilder.DropTable(
                name: "FindingDecisions");

            migrationBuilder.DropTable(
                name: "Measurements");

            migrationBuilder.DropTable(
                name: "MorningLogs");

            migrationBuilder.DropTable(
                name: "Observations");

            migrationBuilder.DropTable(
                name: "PatientLinks");

            migrationBuilder.DropTable(
                name: "RoleClaims");

            migrationBuilder.DropTable(
                name: "SessionLogs");

            migrationBuilder.DropTable(
                name: "TeachBacks");

            migrationBuilder.DropTable(
                name: "Visits");

            migrationBuilder.DropTable(
                name: "Roles");

            migrationBuilder.DropTable(
                name: "ProgramVersions");

            migrationBuilder.DropTable(
                name: "Clinicians");

            migrationBuilder.DropTable(
                name: "Episodes");

            migrationBuilder.DropTable(
                name: "Patients");

            migrationBuilder.DropTable(
                name: "Clinics");
        }
    }
}
