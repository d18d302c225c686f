using System.Text;

namespace MomentArm.Web;

/// <summary>Bodies damaged at random, from a fixed seed: refused in words or taken, never a fault of the server.</summary>
public sealed class PatientLinkDamageTests
{
    private const int Rounds = 400;

    [Fact]
    public async Task Damaged_bodies_are_answered_in_words_and_never_break_the_server()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        await made.HandOverAsync();
        var browser = app.Browser();
        var random = new Random(20260302);
        var today = made.Desk.Today(await made.Stores.Patients.ClinicAsync(made.Who));
        var refused = 0;
        string token = "";
        for (var round = 0; round < Rounds; round++)
        {
            if (round % 60 == 0)
                token = (await made.LinkAsync()).Token;
            var (what, body) = round % 2 == 0
                ? ("session", PatientLinkCalls.Session(token, today))
                : ("morning", PatientLinkCalls.Morning(token, today));
            var damaged = Damage(Encoding.UTF8.GetBytes(body.ToJsonString()), random);
            var (status, text, _) = await PatientLinkCalls.SendAsync(browser, what, damaged);
            Assert.True(status is 200 or 400 or 404, $"round {round}: {status} for {Encoding.UTF8.GetString(damaged)}");
            if (status == 400)
            {
                refused++;
                Assert.NotEmpty(PatientLinkCalls.Word(text, "detail"));
            }
        }

        Assert.True(refused > Rounds / 2, $"only {refused} of {Rounds} were refused: the damage does not damage");
    }

    private static byte[] Damage(byte[] body, Random random)
    {
        var bytes = body.ToList();
        for (var wounds = random.Next(1, 5); wounds > 0 && bytes.Count > 0; wounds--)
        {
            var at = random.Next(bytes.Count);
            switch (random.Next(6))
            {
                case 0: bytes[at] = (byte)random.Next(256); break;
                case 1: bytes.RemoveAt(at); break;
                case 2: bytes.Insert(at, (byte)random.Next(256)); break;
                case 3: bytes.RemoveRange(at, random.Next(bytes.Count - at)); break;
                case 4: bytes.InsertRange(at, bytes.GetRange(at, Math.Min(20, bytes.Count - at))); break;
                default: bytes.InsertRange(at, Encoding.UTF8.GetBytes("\\ud800")); break;
            }
        }

        return [.. bytes];
    }
}
