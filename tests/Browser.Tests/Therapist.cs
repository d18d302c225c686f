using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace MomentArm.Browser.Tests;

/// <summary>What a therapist does in a first visit, by keyboard alone.</summary>
internal sealed class Therapist(IPage page)
{
    private int keys;

    /// <summary>Keys pressed so far.</summary>
    internal int Keys => keys;

    internal async Task TypeAsync(string text)
    {
        keys += text.Length;
        await page.Keyboard.TypeAsync(text);
    }

    internal async Task PressAsync(string key)
    {
        keys++;
        await page.Keyboard.PressAsync(key);
    }

    /// <summary>Adds an invented patient; gives the address of the patient's timeline.</summary>
    internal async Task<string> AddPatientAsync(string name, string title, string side)
    {
        await page.GotoAsync("/patients/new");
        await page.Locator("#name").FocusAsync();
        await TypeAsync(name);
        await PressAsync("Tab");
        await TypeAsync("1985");
        await page.Locator("#sex").SelectOptionAsync("Female");
        await page.Locator("#stature").FocusAsync();
        await TypeAsync("5 ft 6");
        await PressAsync("Tab");
        await TypeAsync("66 kg");
        await page.Locator("#episode-title").FocusAsync();
        await TypeAsync(title);
        await page.Locator("#episode-side").SelectOptionAsync(side);
        await page.Locator("#episode-goal").FocusAsync();
        await TypeAsync("Climb stairs without the hip aching.");
        await page.Locator("#save-patient").FocusAsync();
        await PressAsync("Enter");
        await page.WaitForURLAsync(new Regex("/patients/[0-9a-f-]{36}$"));
        return new Uri(page.Url).AbsolutePath;
    }

    /// <summary>Starts today's visit and answers every danger sign with no, each by its own key.</summary>
    internal async Task StartVisitAsync(string patient)
    {
        await page.GotoAsync(patient + "/exam");
        await page.Locator("#start-visit").FocusAsync();
        await PressAsync("Enter");
        await LiveAsync();
        var signs = await page.Locator("fieldset.ask").CountAsync();
        Assert.Equal(10, signs);
        await page.Locator("fieldset.ask input").First.FocusAsync();
        for (var i = 0; i < signs; i++)
        {
            await PressAsync("n");
            await Expect(page.Locator("#danger-state")).ToContainTextAsync($"{i + 1} of {signs} asked");
        }
    }

    /// <summary>Types a list of cells in exam order: each begins at its cell and ends with Enter.</summary>
    internal async Task TypeCellsAsync(IEnumerable<(string Cell, string Text)> cells)
    {
        foreach (var (cell, text) in cells)
        {
            // Down the column by Enter until the cell is reached: no mouse, no jump.
            for (var steps = 0; steps < 60 && !await IsAtAsync(cell); steps++)
                await PressAsync("Enter");
            Assert.True(await IsAtAsync(cell), $"Enter never reached {cell}.");
            await TypeAsync(text);
        }

        await PressAsync("Enter");
        await Expect(page.Locator("#exam-status")).ToContainTextAsync("saved");
    }

    /// <summary>Waits until the live parts of the page answer.</summary>
    internal async Task LiveAsync() =>
        await page.WaitForFunctionAsync("() => !!window.Blazor && !document.querySelector('[readonly]#type-as-you-measure')");

    private async Task<bool> IsAtAsync(string cell) =>
        await page.EvaluateAsync<string?>("document.activeElement && document.activeElement.id") == cell;
}
