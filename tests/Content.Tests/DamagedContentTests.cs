namespace MomentArm.Content.Tests;

/// <summary>Many files broken at once: every fault is told in one go, each with file, place and what to do.</summary>
public sealed class DamagedContentTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("damaged-content").FullName;

    public DamagedContentTests() => Copy(Shipped.Folder, folder);

    public void Dispose() => Directory.Delete(folder, true);

    [Fact]
    public void An_undamaged_copy_has_no_faults() => Assert.Empty(ContentLibrary.TryRead(folder).Faults);

    /// <summary>"A right angle" became "a left angle" in a reader's eye: sides are written by marks only.</summary>
    [Theory]
    [InlineData("en", "Bend your knee to a right angle.", "right")]
    [InlineData("es", "Párese derecho.", "derecho")]
    public void A_word_that_can_be_taken_for_a_side_is_refused(string language, string text, string word)
    {
        var file = $"words/{language}/exercises/outer-thigh-roll.json";
        var path = Path.Combine(folder, file);
        var title = System.Text.Json.JsonDocument.Parse(File.ReadAllText(path)).RootElement.GetProperty("title").GetString()!;
        Change(file, $"\"title\": \"{title}\"", $"\"title\": \"{text}\"");
        AssertFault(ContentLibrary.TryRead(folder, settle: false).Faults, file, null, "title", $"\"{word}\" can be taken for a side", "{side}");
    }

    [Fact]
    public void Ten_damages_are_told_at_once_with_file_place_and_mend()
    {
        Change("exercises/clam.json", "\"rung\"", "\"colour\": \"blue\", \"rung\"");
        Change("exercises/bridge.json", "\"ladder\": \"hip-extensors\",", "");
        Change("exercises/hamstring-strap-stretch.json", "\"rung\": 2", "\"rung\": 2, \"rung\": 3");
        Change("exercises/side-lying-leg-raise.json", "\"hipFlexionDeg\": -5", "\"hipFlexionDeg\": 200");
        Change("exercises/single-leg-bridge.json", "\"headBack\"", "\"headBak\"");
        Change("exercises/sit-to-stand.json", "\"acsm-2009\"", "\"acsm-1909\"");
        Change("exercises/standing-quadriceps-stretch.json", "\"rung\": 2,", "\"rung\": 1,");
        Change("words/en/exercises/outer-thigh-roll.json", "Breathe out as you go.", string.Join(' ', Enumerable.Repeat("go", 16)) + ".");
        File.Delete(Path.Combine(folder, "words/en/exercises/quadriceps-strap-stretch.json"));
        File.WriteAllText(Path.Combine(folder, "exercises/band-side-step.json"), "{\n  \"id\": \"band-side-step\",\n  \"name");

        var (library, faults) = ContentLibrary.TryRead(folder);

        Assert.Null(library);
        AssertFault(faults, "exercises/clam.json", LineOf("exercises/clam.json", "colour"), "colour", "colour", "Remove the key");
        AssertFault(faults, "exercises/bridge.json", null, "", "ladder", "Add the missing keys");
        AssertFault(
            faults, "exercises/hamstring-strap-stretch.json", LineOf("exercises/hamstring-strap-stretch.json", "\"rung\": 2"), "rung", "rung",
            "Keep one of the two");
        AssertFault(faults, "exercises/side-lying-leg-raise.json", null, "poses[0].working.hipFlexionDeg", "200 degrees lies outside -40 to 140", "Correct");
        AssertFault(faults, "exercises/single-leg-bridge.json", null, "poses[0].contacts", "headBak", "surface-points.json");
        AssertFault(faults, "exercises/sit-to-stand.json", null, "dose.source", "acsm-1909", "sources.json");
        AssertFault(faults, "exercises", null, "quadriceps-stretch", "Rung 1 is held by quadriceps-strap-stretch and standing-quadriceps-stretch", "own rung");
        AssertFault(faults, "words/en/exercises/outer-thigh-roll.json", null, "steps[4]", "16 words", "at most 15");
        AssertFault(faults, "words/en/exercises/quadriceps-strap-stretch.json", null, "", "no words", "Write the file");
        AssertFault(faults, "exercises/band-side-step.json", 3, "", "", "Correct");
    }

    [Fact]
    public void A_pose_that_falls_is_refused_with_the_direction()
    {
        Change("exercises/lateral-step-down.json", "\"hipFlexionDeg\": 66", "\"hipFlexionDeg\": 10");

        // Told once for each build that is checked: usual, small, tall.
        var faults = ContentLibrary.TryRead(folder).Faults;

        Assert.Equal(3, faults.Count);
        Assert.All(faults, fault =>
        {
            Assert.Equal("exercises/lateral-step-down.json", fault.File);
            Assert.StartsWith("poses.end at ", fault.Path, StringComparison.Ordinal);
            Assert.Contains("Falls backward", fault.What, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void A_length_test_that_reads_a_joint_its_group_does_not_cross_is_refused()
    {
        Change("measures/modified-ober.json", "\"measured\": \"hipAdduction\"", "\"measured\": \"ankleDorsiflexion\"");
        AssertFault(ContentLibrary.TryRead(folder).Faults, "measures/modified-ober.json", null, "length.measured", "does not cross", "group crosses");
    }

    [Fact]
    public void A_length_test_without_its_pose_is_refused()
    {
        Change("measures/straight-leg-raise.json", "\"kind\": \"muscleLength\"", "\"kind\": \"rangeOfMotion\"");
        AssertFault(ContentLibrary.TryRead(folder).Faults, "measures/straight-leg-raise.json", null, "length", "has no length set-up", "muscle length only");
    }

    [Fact]
    public void A_contact_that_misses_its_surface_is_refused_with_the_distance()
    {
        Change("exercises/seated-knee-extension.json", "\"heightM\": 0.40", "\"heightM\": 0.61");

        var faults = ContentLibrary.TryRead(folder).Faults;

        Assert.Contains(faults, f => f.Path.StartsWith("poses.start at ", StringComparison.Ordinal) && f.What.Contains("cannot reach the", StringComparison.Ordinal) && f.What.Contains(" cm ", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Lift your affected leg.", "affected")]
    [InlineData("Lift your {leg} leg.", "unknown mark")]
    [InlineData(" ", "empty")]
    public void Words_that_a_patient_should_not_read_are_refused(string text, string told)
    {
        Change("words/en/exercises/bridge.json", "Lower your hips slowly.", text);

        Assert.Contains(
            ContentLibrary.TryRead(folder).Faults,
            f => f.File == "words/en/exercises/bridge.json" && f.Path == "steps[3]" && f.What.Contains(told, StringComparison.Ordinal));
    }

    [Fact]
    public void Hard_words_are_refused_with_the_grade()
    {
        Change("words/en/exercises/bridge.json", "Lower your hips slowly.", "Neuromuscular stabilization necessitates proprioceptive coordination.");
        Change("words/en/exercises/bridge.json", "Press your heels down.", "Simultaneously activate abdominal musculature isometrically.");
        Change("words/en/exercises/bridge.json", "Rest your arms at your sides.", "Maintain horizontal positioning of upper extremities.");
        Change("words/en/exercises/bridge.json", "Tuck your tail under.", "Posteriorly reposition lumbopelvic articulations appropriately.");

        Assert.Contains(
            ContentLibrary.TryRead(folder).Faults,
            f => f.File == "words/en/exercises/bridge.json" && f.What.Contains("is above 6", StringComparison.Ordinal));
    }

    [Fact]
    public void Faults_of_surfaces_and_ties_are_told_at_once_with_their_place()
    {
        const string file = "exercises/quadriceps-strap-stretch.json";
        Change(file, "\"point\": \"pelvisFront\", \"limb\": \"working\", \"surface\": \"floor\"", "\"point\": \"pelvisFront\", \"limb\": \"working\", \"surface\": \"board\", \"tiltDeg\": 50");
        Change(file, "\"point\": \"pelvisFront\", \"limb\": \"other\", \"surface\": \"floor\"", "\"point\": \"pelvisFront\", \"limb\": \"other\", \"surface\": \"bench\", \"heightM\": -0.4");
        Change(file, "\"point\": \"chestFront\", \"limb\": \"working\", \"surface\": \"floor\"", "\"point\": \"chestFront\", \"limb\": \"working\", \"surface\": \"wall\", \"wall\": \"behind\"");
        Change(file, "\"to\": \"instep\", \"toLimb\": \"working\"", "\"to\": \"instep\", \"toLimb\": \"working\", \"lengthM\": 12");
        Change(file, "\"to\": \"forehead\"", "\"to\": \"forhead\"");

        var faults = ContentLibrary.TryRead(folder).Faults.Where(f => f.File == file).ToArray();

        AssertFault(faults, file, null, "poses[0].contacts[0].tiltDeg", "50 degrees lies outside -45 to 45", "toes down");
        AssertFault(faults, file, null, "poses[0].contacts[1].heightM", "-0.4 m lies outside 0 to 1.5", "over the floor");
        AssertFault(faults, file, null, "poses[0].contacts[2].wall", "would be the floor or the ceiling", "atFeet");
        AssertFault(faults, file, null, "poses[0].ties[0].lengthM", "12 m lies outside 0.02 to 3", "meters");
        AssertFault(faults, file, null, "poses[0].ties[1].to", "forhead", "surface-points.json");
        Assert.Equal(5, faults.Length);
    }

    [Fact]
    public void An_angle_no_joint_has_is_told_for_a_test_position_too()
    {
        Change("measures/knee-extension-strength.json", "\"kneeFlexionDeg\": 90", "\"kneeFlexionDeg\": 900");

        Assert.Contains(
            ContentLibrary.TryRead(folder).Faults,
            f => f.Path.StartsWith("strength.", StringComparison.Ordinal) && f.What.Contains("900 degrees lies outside -10 to 155", StringComparison.Ordinal));
    }

    [Fact]
    public void A_missing_folder_is_told()
    {
        var fault = Assert.Single(ContentLibrary.TryRead(Path.Combine(folder, "nowhere")).Faults);

        Assert.Contains("does not exist", fault.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_throws_one_exception_that_lists_every_fault()
    {
        Change("exercises/sit-to-stand.json", "\"acsm-2009\"", "\"acsm-1909\"");
        Change("exercises/clam.json", "\"mckay-2020\"", "\"mckay-1920\"");

        var error = Assert.Throws<ContentException>(() => ContentLibrary.Read(folder));

        Assert.Contains("acsm-1909", error.Message, StringComparison.Ordinal);
        Assert.Contains("mckay-1920", error.Message, StringComparison.Ordinal);
    }

    private static void AssertFault(IReadOnlyList<ContentFault> faults, string file, int? line, string path, string what, string mend)
    {
        Assert.True(
            faults.Any(f => f.File == file && (line is null || f.Line == line)
                && f.Path.StartsWith(path, StringComparison.Ordinal)
                && f.What.Contains(what, StringComparison.Ordinal)
                && f.Mend.Contains(mend, StringComparison.Ordinal)),
            $"Not told: {file}:{line} {path} {what}. Told:{Environment.NewLine}{string.Join(Environment.NewLine, faults)}");
    }

    private static void Copy(string from, string to)
    {
        Directory.CreateDirectory(to);
        foreach (var file in Directory.EnumerateFiles(from))
            File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
        foreach (var inner in Directory.EnumerateDirectories(from))
            Copy(inner, Path.Combine(to, Path.GetFileName(inner)));
    }

    private int LineOf(string file, string text) =>
        Array.FindIndex(File.ReadAllLines(Path.Combine(folder, file)), l => l.Contains(text, StringComparison.Ordinal)) + 1;

    private void Change(string file, string old, string changed)
    {
        var path = Path.Combine(folder, file);
        var text = File.ReadAllText(path);
        var at = text.IndexOf(old, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{file} does not hold {old}.");
        File.WriteAllText(path, text[..at] + changed + text[(at + old.Length)..]);
    }
}
