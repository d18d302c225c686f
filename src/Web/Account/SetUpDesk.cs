using MomentArm.Records;

namespace MomentArm.Web.Account;

/// <summary>The first set-up: one clinic and its owner, once, with the code from the console.</summary>
public sealed class SetUpDesk(ClinicSetup setup, SetUpCode code, SignInDesk desk)
{
    private const string WrongCode =
        "The set-up code is not the one on the console. After ten wrong tries a new one is written there.";

    /// <summary>Whether the set-up is still to be done.</summary>
    public async Task<bool> IsOpenAsync() => !await setup.IsSetUpAsync();

    /// <summary>Sets the clinic up and signs its owner in. Returns what is wrong, each as a sentence; nothing when all is done.</summary>
    public async Task<IReadOnlyList<string>> SetUpAsync(SetUpForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        if (!code.Matches(form.Code))
        {
            return [WrongCode];
        }

        var phone = string.IsNullOrWhiteSpace(form.Phone) ? null : form.Phone.Trim();
        var outcome = await setup.CreateFirstAsync(
            new ClinicDetails(form.ClinicName!, form.TimeZone!, phone),
            new ClinicianDetails(form.YourName!, form.Email!, form.Password!));
        if (outcome.Clinician is not { } owner)
        {
            return outcome.Faults;
        }

        code.Retire();
        await desk.LetInAsync(owner);
        return [];
    }
}
