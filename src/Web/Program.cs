using MomentArm.Records;
using MomentArm.Web.Account;
using MomentArm.Web.Clinic;
using MomentArm.Web.Hosting;
using MomentArm.Web.Security;

var builder = WebApplication.CreateBuilder(AppHome.Options(args));
var settings = HouseSettings.Read(builder.Configuration);
builder.Services.AddSingleton(settings);
builder.Services.AddSingleton(TimeProvider.System);
var accounts = builder.Services.AddRecords(settings.DatabasePath);
builder.Services.AddHostedService<DatabaseStart>();
builder.Services.AddClinicWork(settings);
builder.Services.AddLook(settings);
builder.Services.AddSignIn(accounts, settings);
builder.Services.AddHealth();

var app = builder.Build();
app.UseSecurityHeaders();
app.UseHouseErrors();
app.UseRouting();
app.UseRateLimiter();
app.UseAuthentication();
app.UseAuthorization();
app.UseAntiforgery();
app.MapLook();
app.MapAccount();
app.MapHealth();
app.Run();
