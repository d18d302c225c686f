namespace MomentArm.Content.Tests;

public sealed class ReadingGradeTests
{
    /// <summary>
    /// An often reprinted worked example of the formula: 13 words and 24 syllables in one sentence give grade 11.3
    /// (recalled from an encyclopedia's article on the formula). By hand: 0.39 * 13 + 11.8 * 24 / 13 - 15.59 = 11.26.
    /// </summary>
    [Fact]
    public void A_worked_example_gives_its_published_grade()
    {
        const string sentence = "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.";

        Assert.Equal(11.3, ReadingGrade.Of(sentence), 1);
    }

    /// <summary>By hand: 2 sentences, 8 words, 8 syllables: 0.39 * 4 + 11.8 * 1 - 15.59 = -2.23.</summary>
    [Fact]
    public void Short_words_in_short_sentences_give_a_grade_below_zero() =>
        Assert.Equal(-2.23, ReadingGrade.Of("Lift your left leg. Hold it for ten."), 2);

    [Theory]
    [InlineData("hip", 1)]
    [InlineData("knee", 1)]
    [InlineData("side", 1)]
    [InlineData("muscle", 2)]
    [InlineData("forearm", 2)]
    [InlineData("exercise", 3)]
    [InlineData("belly", 2)]
    public void Syllables_are_vowel_groups_without_a_silent_last_e(string word, int syllables) =>
        Assert.Equal(syllables, ReadingGrade.Syllables(word));

    /// <summary>
    /// By hand: 2 sentences, 8 words, 14 syllables (Su-ba la pier-na rec-ta. Ba-je muy des-pa-cio ya.):
    /// 0.049 * 175 - 0.205 * 25 - 3.407 = 0.043. Formula: Crawford 1984, as reprinted on public pages.
    /// </summary>
    [Fact]
    public void Spanish_is_graded_by_its_own_formula() =>
        Assert.Equal(0.043, ReadingGrade.Of("Suba la pierna recta. Baje muy despacio ya.", "es"), 3);

    [Theory]
    [InlineData("pierna", 2)]
    [InlineData("pie", 1)]
    [InlineData("despacio", 3)]
    [InlineData("rodilla", 3)]
    [InlineData("cuádriceps", 3)]
    [InlineData("guíe", 2)]
    [InlineData("aún", 2)]
    [InlineData("muy", 1)]
    [InlineData("quede", 2)]
    public void Spanish_syllables_are_strong_vowels_and_lone_weak_ones(string word, int syllables) =>
        Assert.Equal(syllables, ReadingGrade.SpanishSyllables(word));

    [Fact]
    public void A_language_without_a_formula_is_refused() => Assert.Throws<ArgumentException>(() => ReadingGrade.Of("Bonjour.", "fr"));

    [Fact]
    public void The_longest_sentence_is_counted_over_all_sentences() =>
        Assert.Equal(6, ReadingGrade.LongestSentence("Sit. Press both feet into the floor! Stand up."));

    [Fact]
    public void A_text_without_words_has_grade_zero() => Assert.Equal(0, ReadingGrade.Of(" ... "));
}
