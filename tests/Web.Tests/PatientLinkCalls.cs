using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace MomentArm.Web;

/// <summary>Calls as the patient's page makes them.</summary>
internal static class PatientLinkCalls
{
    /// <summary>Sends a body as it is, with the page's headers unless told otherwise.</summary>
    public static async Task<(int Status, string Body, HttpResponseMessage Answer)> SendAsync(
        HttpClient browser, string what, byte[] body, bool header = true, string type = "application/json")
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/patient/" + what) { Content = new ByteArrayContent(body) };
        request.Content.Headers.ContentType = MediaTypeHeaderValue.Parse(type);
        if (header)
            request.Headers.Add("X-Requested-With", "momentarm");
        var answer = await browser.SendAsync(request);
        return ((int)answer.StatusCode, await answer.Content.ReadAsStringAsync(), answer);
    }

    public static Task<(int Status, string Body, HttpResponseMessage Answer)> SendAsync(HttpClient browser, string what, JsonNode body) =>
        SendAsync(browser, what, Encoding.UTF8.GetBytes(body.ToJsonString()));

    public static Task<(int Status, string Body, HttpResponseMessage Answer)> OpenAsync(HttpClient browser, string token) =>
        SendAsync(browser, "open", new JsonObject { ["token"] = token });

    /// <summary>A session as the phone writes it.</summary>
    public static JsonObject Session(string token, DateOnly day, Guid? id = null) => new()
    {
        ["token"] = token,
        ["session"] = new JsonObject
        {
            ["id"] = (id ?? Guid.CreateVersion7()).ToString(),
            ["day"] = day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture),
            ["exercises"] = new JsonArray(new JsonObject
            {
                ["exerciseId"] = "clam", ["side"] = "left", ["setsDone"] = 2, ["repetitionsDone"] = 20, ["report"] = "tooEasy",
            }),
            ["effort"] = 5,
            ["painDuring"] = 2,
            ["painAfter"] = null,
            ["note"] = "stairs were fine",
        },
    };

    public static JsonObject Morning(string token, DateOnly day) => new()
    {
        ["token"] = token,
        ["morning"] = new JsonObject
        {
            ["id"] = Guid.CreateVersion7().ToString(),
            ["day"] = day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture),
            ["pain"] = 1,
            ["compared"] = "same",
        },
    };

    public static string Word(string body, string name) => JsonDocument.Parse(body).RootElement.GetProperty(name).GetString()!;
}
