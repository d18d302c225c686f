using MomentArm.Web.Hosting;
using MomentArm.Web.Security;

var builder = WebApplication.CreateBuilder(args);
builder.WebHost.UseStaticWebAssets();
var settings = HouseSettings.Read(builder.Configuration);
builder.Services.AddSingleton(settings);
builder.Services.AddSingleton(TimeProvider.System);
builder.Services.AddLook(settings);
builder.Services.AddSignIn(settings);
builder.Services.AddHealth();

var app = builder.Build();
app.UseSecurityHeaders();
app.UseHouseErrors();
app.UseRouting();
app.UseAuthentication();
app.UseAuthorization();
app.UseAntiforgery();
app.MapLook();
app.MapHealth();
app.Run();
