using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace MomentArm.Records.Migrations
{
    /// <inheritdoc />
    public partial class WholeExam : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Conditions",
                table: "Measurements",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Moment",
                table: "Measurements",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Headline",
                table: "FindingDecisions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Impairment",
                table: "FindingDecisions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Rank",
                table: "FindingDecisions",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "ShowUnverified",
                table: "Clinics",
                type: "INTEGER",
                nullable: false,
                defaultValue: true);

            migrationBuilder.CreateTable(
                name: "Attachments",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    VisitId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    MediaType = table.Column<string>(type: "TEXT", nullable: false),
                    Length = table.Column<long>(type: "INTEGER", nullable: false),
                    Sha256 = table.Column<string>(type: "TEXT", nullable: false),
                    Caption = table.Column<string>(type: "TEXT", nullable: true),
                    Content = table.Column<byte[]>(type: "BLOB", nullable: false),
                    AtUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    RowVersion = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Attachments", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_Attachments_Visits_ClinicId_VisitId",
                        columns: x => new { x.ClinicId, x.VisitId },
                        principalTable: "Visits",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Goals",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    EpisodeId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: false),
                    MeasureId = table.Column<string>(type: "TEXT", nullable: true),
                    Side = table.Column<string>(type: "TEXT", maxLength: 40, nullable: true),
                    Activity = table.Column<string>(type: "TEXT", nullable: true),
                    Baseline = table.Column<double>(type: "REAL", nullable: true),
                    Target = table.Column<double>(type: "REAL", nullable: true),
                    TargetReason = table.Column<string>(type: "TEXT", nullable: true),
                    SetOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    DueOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    State = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Outcome = table.Column<string>(type: "TEXT", nullable: true),
                    RowVersion = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Goals", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_Goals_Episodes_ClinicId_EpisodeId",
                        columns: x => new { x.ClinicId, x.EpisodeId },
                        principalTable: "Episodes",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "NoteAmendments",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    VisitId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: false),
                    ById = table.Column<Guid>(type: "TEXT", nullable: false),
                    ByName = table.Column<string>(type: "TEXT", nullable: false),
                    AtUtc = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_NoteAmendments", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_NoteAmendments_Clinicians_ClinicId_ById",
                        columns: x => new { x.ClinicId, x.ById },
                        principalTable: "Clinicians",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_NoteAmendments_Visits_ClinicId_VisitId",
                        columns: x => new { x.ClinicId, x.VisitId },
                        principalTable: "Visits",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "VisitAnswers",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    VisitId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Cell = table.Column<string>(type: "TEXT", nullable: false),
                    Sheet = table.Column<string>(type: "TEXT", nullable: false),
                    Item = table.Column<string>(type: "TEXT", nullable: false),
                    Side = table.Column<string>(type: "TEXT", maxLength: 40, nullable: true),
                    Value = table.Column<string>(type: "TEXT", nullable: false),
                    AtUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    RowVersion = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_VisitAnswers", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_VisitAnswers_Visits_ClinicId_VisitId",
                        columns: x => new { x.ClinicId, x.VisitId },
                        principalTable: "Visits",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Attachments_ClinicId_VisitId",
                table: "Attachments",
                columns: new[] { "ClinicId", "VisitId" });

            migrationBuilder.CreateIndex(
                name: "IX_Goals_ClinicId_EpisodeId",
                table: "Goals",
                columns: new[] { "ClinicId", "EpisodeId" });

            migrationBuilder.CreateIndex(
                name: "IX_NoteAmendments_ClinicId_ById",
                table: "NoteAmendments",
                columns: new[] { "ClinicId", "ById" });

            migrationBuilder.CreateIndex(
                name: "IX_NoteAmendments_ClinicId_VisitId",
                table: "NoteAmendments",
                columns: new[] { "ClinicId", "VisitId" });

            migrationBuilder.CreateIndex(
                name: "IX_VisitAnswers_ClinicId_VisitId_Cell",
                table: "VisitAnswers",
                columns: new[] { "ClinicId", "VisitId", "Cell" },
                unique: true);

            foreach (var trigger in Triggers.CreateForExam())
            {
                migrationBuilder.Sql(trigger);
            }
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Attachments");

            migrationBuilder.DropTable(
                name: "Goals");

            migrationBuilder.DropTable(
                name: "NoteAmendments");

            migrationBuilder.DropTable(
                name: "VisitAnswers");

            migrationBuilder.DropColumn(
                name: "Conditions",
                table: "Measurements");

            migrationBuilder.DropColumn(
                name: "Moment",
                table: "Measurements");

            migrationBuilder.DropColumn(
                name: "Headline",
                table: "FindingDecisions");

            migrationBuilder.DropColumn(
                name: "Impairment",
                table: "FindingDecisions");

            migrationBuilder.DropColumn(
                name: "Rank",
                table: "FindingDecisions");

            migrationBuilder.DropColumn(
                name: "ShowUnverified",
                table: "Clinics");
        }
    }
}
