using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace MomentArm.Records.Migrations
{
    /// <inheritdoc />
    public partial class ClinicForms : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "ClinicForms",
                columns: table => new
                {
                    ClinicId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    FormId = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    State = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Format = table.Column<int>(type: "INTEGER", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    CreatedById = table.Column<Guid>(type: "TEXT", nullable: false),
                    CreatedByName = table.Column<string>(type: "TEXT", nullable: false),
                    CreatedAtUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    RowVersion = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ClinicForms", x => new { x.ClinicId, x.Id });
                    table.ForeignKey(
                        name: "FK_ClinicForms_Clinicians_ClinicId_CreatedById",
                        columns: x => new { x.ClinicId, x.CreatedById },
                        principalTable: "Clinicians",
                        principalColumns: new[] { "ClinicId", "Id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_ClinicForms_ClinicId_CreatedById",
                table: "ClinicForms",
                columns: new[] { "ClinicId", "CreatedById" });

            migrationBuilder.CreateIndex(
                name: "IX_ClinicForms_ClinicId_FormId_Number",
                table: "ClinicForms",
                columns: new[] { "ClinicId", "FormId", "Number" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "ClinicForms");
        }
    }
}
