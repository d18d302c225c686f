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
        // Twelve general questions and those of the region and age.
        Assert.InRange(signs, 13, 40);
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
            for (var steps = 0; steps < 250 && !await IsAtAsync(cell); steps++)
                await PressAsync("Enter");
            Assert.True(await IsAtAsync(cell), $"Enter never reached {cell}.");
            await TypeAsync(text);
        }

        await PressAsync("Enter");
        await Expect(page.Locator("#exam-status")).ToContainTextAsync("saved");
    }

    /// <summary>Starts a program from the draft, shortens each dose to one set of two, and saves it to be taught.</summary>
    internal async Task BuildProgramAsync(string patient)
    {
        await page.GotoAsync(patient + "/program");
        await ProgramLiveAsync();
        await page.Locator("#start-draft").FocusAsync();
        await PressAsync("Enter");
        await Expect(page.Locator("li.program-item").First).ToBeVisibleAsync();
        await Expect(page.Locator("li.program-item").First).ToContainTextAsync("%");
        var items = await page.Locator("li.program-item").CountAsync();
        for (var i = 1; i <= items; i++)
        {
            await page.Locator($"li.program-item:nth-of-type({i}) details summary").FocusAsync();
            await PressAsync("Enter");
            await SetNumberAsync($"#item-{i}-sets", "1");
            await SetNumberAsync($"#item-{i}-reps", "2");
            await SetNumberAsync($"#item-{i}-repsto", "");
        }

        await page.Locator("#save-teach").FocusAsync();
        await PressAsync("Enter");
        await page.WaitForURLAsync(new Regex("/teach"));
    }

    /// <summary>Ticks what the patient showed and said back, and hands the program over.</summary>
    internal async Task TeachAsync()
    {
        await Expect(page.Locator(".teach-card").First).ToBeVisibleAsync();
        var cards = await page.Locator(".teach-card").CountAsync();
        for (var i = 0; i < cards; i++)
        {
            foreach (var box in new[] { "shown", "said" })
            {
                await page.Locator($"#{box}-{i}").FocusAsync();
                await PressAsync("Space");
            }
        }

        await page.Locator("#hand-over").FocusAsync();
        await PressAsync("Enter");
    }

    /// <summary>Changes one dose of the program and says why.</summary>
    internal async Task ChangeProgramAsync(string patient, string reason)
    {
        await page.GotoAsync(patient + "/program");
        await ProgramLiveAsync();
        await page.Locator("li.program-item:nth-of-type(1) details summary").FocusAsync();
        await PressAsync("Enter");
        await SetNumberAsync("#item-1-reps", "3");
        await page.Locator("#reason").FocusAsync();
        await TypeAsync(reason);
        await page.Locator("#save").FocusAsync();
        await PressAsync("Enter");
        await Expect(page.Locator("#save")).ToBeDisabledAsync();
    }

    private async Task ProgramLiveAsync() => await Expect(page.Locator("#start-draft")).ToBeEnabledAsync();

    private async Task SetNumberAsync(string field, string value)
    {
        await page.Locator(field).FocusAsync();
        await PressAsync("Control+A");
        await PressAsync("Delete");
        await TypeAsync(value);
        await PressAsync("Tab");
    }

    /// <summary>Waits until the live parts of the page answer.</summary>
    internal async Task LiveAsync()
    {
        await Expect(page.Locator(".asks[data-keys=on]")).ToBeVisibleAsync(new() { Timeout = 20_000 });
        await Expect(page.Locator(".exam-columns[data-keys=on]")).ToBeVisibleAsync(new() { Timeout = 20_000 });
    }

    private async Task<bool> IsAtAsync(string cell) =>
        await page.EvaluateAsync<string?>("document.activeElement && document.activeElement.id") == cell;
}
