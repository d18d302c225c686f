namespace MomentArm.Content;

/// <summary>
/// School grade that a text asks of its reader. English: Flesch-Kincaid, 0.39 words per sentence + 11.8 syllables per word - 15.59
/// (Kincaid, Fishburne, Rogers and Chissom 1975, Navy report RBR-8-75). Spanish: Crawford, 0.049 syllables per 100 words - 0.205
/// sentences per 100 words - 3.407 (Crawford 1984, Lectura y Vida 5(4), made for grades 1 to 6).
/// </summary>
public static class ReadingGrade
{
    /// <summary>The grade of a text; higher is harder. 0 for a text without words.</summary>
    /// <param name="text">The text.</param>
    /// <param name="language">"en" or "es".</param>
    /// <exception cref="ArgumentException">There is no formula for the language.</exception>
    public static double Of(string text, string language = "en")
    {
        ArgumentNullException.ThrowIfNull(text);
        double words = WordsOf(text).Count();
        if (words == 0)
            return 0;
        var sentences = Math.Max(1, Sentences(text).Count(s => s.Any(char.IsLetter)));
        return language switch
        {
            "en" => 0.39 * words / sentences + 11.8 * WordsOf(text).Sum(Syllables) / words - 15.59,
            "es" => 0.049 * (100 * WordsOf(text).Sum(SpanishSyllables) / words) - 0.205 * (100 * sentences / words) - 3.407,
            _ => throw new ArgumentException($"There is no reading formula for the language \"{language}\".", nameof(language)),
        };
    }

    /// <summary>Number of words in the longest sentence.</summary>
    public static int LongestSentence(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Sentences(text).Select(s => WordsOf(s).Count()).DefaultIfEmpty(0).Max();
    }

    /// <summary>Syllables of an English word: groups of vowels, a silent final e not counted, at least one.</summary>
    public static int Syllables(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        var count = 0;
        var inVowels = false;
        foreach (var letter in word)
        {
            var vowel = "aeiouyAEIOUY".Contains(letter, StringComparison.Ordinal);
            if (vowel && !inVowels)
                count++;
            inVowels = vowel;
        }

        var silentE = word.Length > 2 && word[^1] is 'e' or 'E' && !word.EndsWith("le", StringComparison.OrdinalIgnoreCase);
        return Math.Max(1, count - (silentE && count > 1 ? 1 : 0));
    }

    /// <summary>
    /// Syllables of a Spanish word: strong vowels (a, e, o and any accented i or u) each make one; a weak vowel (i, u, a final y)
    /// joins a neighboring vowel.
    /// </summary>
    public static int SpanishSyllables(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        var count = 0;
        var before = ' ';
        for (var i = 0; i < word.Length; i++)
        {
            var letter = char.ToLowerInvariant(word[i]);
            var strong = "aeoáéóíú".Contains(letter, StringComparison.Ordinal);
            var weak = letter is 'i' or 'u' or 'ü' || (letter == 'y' && i == word.Length - 1);
            var vowelBefore = "aeoáéóíúiuü".Contains(before, StringComparison.Ordinal);
            var strongBefore = "aeoáéóíú".Contains(before, StringComparison.Ordinal);
            if ((strong && (!vowelBefore || strongBefore)) || (weak && !vowelBefore))
                count++;
            before = letter;
        }

        return Math.Max(1, count);
    }

    private static string[] Sentences(string text) => text.Split(['.', '!', '?', ':'], StringSplitOptions.RemoveEmptyEntries);

    private static IEnumerable<string> WordsOf(string text) =>
        text.Split([' ', ',', '.', '!', '?', ':', ';', '(', ')', '"', '¿', '¡', '/', '\n', '{', '}'], StringSplitOptions.RemoveEmptyEntries)
            .Where(w => w.Any(char.IsLetterOrDigit));
}
