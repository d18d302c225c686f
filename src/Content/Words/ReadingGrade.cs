namespace MomentArm.Content;

/// <summary>
/// Flesch-Kincaid grade level of English text: 0.39 words per sentence + 11.8 syllables per word - 15.59
/// (Kincaid, Fishburne, Rogers and Chissom 1975, Navy report RBR-8-75). Syllables are counted by vowel groups.
/// </summary>
public static class ReadingGrade
{
    /// <summary>The grade of a text; higher is harder. 0 for a text without words.</summary>
    public static double Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var sentences = Math.Max(1, text.Split(['.', '!', '?', ':'], StringSplitOptions.RemoveEmptyEntries).Count(s => s.Any(char.IsLetter)));
        var words = WordsOf(text).ToArray();
        return words.Length == 0
            ? 0
            : 0.39 * words.Length / sentences + 11.8 * words.Sum(Syllables) / words.Length - 15.59;
    }

    /// <summary>Number of words in the longest sentence.</summary>
    public static int LongestSentence(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Split(['.', '!', '?', ':'], StringSplitOptions.RemoveEmptyEntries).Select(s => WordsOf(s).Count()).DefaultIfEmpty(0).Max();
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

    private static IEnumerable<string> WordsOf(string text) =>
        text.Split([' ', ',', '.', '!', '?', ':', ';', '(', ')', '"', '/', '\n', '{', '}'], StringSplitOptions.RemoveEmptyEntries)
            .Where(w => w.Any(char.IsLetterOrDigit));
}
