using System.Security.Cryptography;
using System.Text;

namespace MomentArm.Web.Account;

/// <summary>
/// The code that proves, at first start, that whoever sets the clinic up also runs the computer: it is written only to the
/// console. It works once. After a number of wrong tries it is replaced, so that it can't be guessed.
/// </summary>
public sealed class SetUpCode
{
    /// <summary>Wrong tries after which a new code replaces the old.</summary>
    public const int TriesPerCode = 10;

    // No letters or digits that are taken for one another. 31 symbols, 10 places: 49 bits.
    private const string Symbols = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";

    private readonly Lock gate = new();
    private readonly Action<string> announce;
    private string? code;
    private int wrong;

    public SetUpCode(Action<string> announce) => this.announce = announce;

    /// <summary>Makes a code, when there is none, and announces it.</summary>
    public void Begin()
    {
        lock (gate)
        {
            if (code is null)
            {
                Renew();
            }
        }
    }

    /// <summary>Whether a typed code is the current one. Blanks, hyphens and small letters don't matter.</summary>
    public bool Matches(string? typed)
    {
        var given = new string([.. (typed ?? "").Where(char.IsLetterOrDigit)]).ToUpperInvariant();
        lock (gate)
        {
            if (code is null)
            {
                return false;
            }

            if (CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(given), Encoding.UTF8.GetBytes(code)))
            {
                return true;
            }

            if (++wrong >= TriesPerCode)
            {
                Renew();
            }

            return false;
        }
    }

    /// <summary>Ends the code: nothing matches any more.</summary>
    public void Retire()
    {
        lock (gate)
        {
            code = null;
        }
    }

    private void Renew()
    {
        code = RandomNumberGenerator.GetString(Symbols, 10);
        wrong = 0;
        announce(code.Insert(5, "-"));
    }
}
