using BuckGen.Design.Bucks;
using BuckGen.Design.Parts;
using BuckGen.Design.Venting;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Jobs;
using BuckGen.Physics.Air;
using BuckGen.Settings;
using Xunit;

namespace BuckGen.Tests.Jobs;

/// <summary>
/// Every setting that is declared is read from a job file, stands in the template, and refuses what is out of range.
/// </summary>
public class SettingTests
{
    private static readonly (string Table, Setting Setting)[] All =
        [.. JobSettings.Tables.SelectMany(t => t.Settings.Select(s => (t.Heading, s)))];

    public static TheoryData<string, string> Numbers => Keys(s => s is NumberSetting);

    public static TheoryData<string, string> Sizes => Keys(s => s is SizeSetting);

    public static TheoryData<string, string> Others => Keys(s => s is not (NumberSetting or SizeSetting or TextSetting));

    /// <summary>A job with every setting as the template shows it, but one; and the line of that one.</summary>
    private static (string Job, int Line) With(Setting? changed = null, string value = "")
    {
        var (lines, at) = (new List<string>(), 0);
        // A job orders the part or the buck.
        Setting[] ofBuck = [StackSettings.Depth, StackSettings.OutlineAt];
        var isBuck = ofBuck.Contains(changed);
        // One draft or several, and of a stretch the draft or the inset.
        var isStraight = changed == StackSettings.Draft;
        // The outline has a size or a scale.
        Setting[] ofOutline =
            changed == OutlineSettings.Scale ? [OutlineSettings.Width, OutlineSettings.Height] : [OutlineSettings.Scale];
        Setting[] left = [changed == SideSettings.Inset ? SideSettings.Draft : SideSettings.Inset, .. ofOutline];
        foreach (var table in JobSettings.Tables.Where(t => !isBuck || t != PartSettings.Table))
        {
            if (table == SideSettings.Table)
            {
                if (isStraight) continue;
                lines.AddRange([table.Heading, "draft = 5"]);
            }

            if (table.Heading.Length > 0) lines.Add(table.Heading);
            foreach (var setting in table.Settings.Where(s =>
                (isBuck || !ofBuck.Contains(s)) && !left.Contains(s) && (isStraight || s != StackSettings.Draft)))
            {
                lines.Add($"{setting.Key} = {(setting == changed ? value : setting.Shown)}");
                if (setting == changed) at = lines.Count;
            }
        }

        return (string.Join('\n', lines), at);
    }

    [Fact]
    public void Every_setting_is_read()
    {
        Assert.InRange(All.Length, 120, 200);
        // A key that is not read is refused as unknown.
        JobFile.Read(With().Job, "job.toml", Catalog.BuiltIn);
    }

    [Fact]
    public void Every_setting_stands_in_the_template_with_its_meaning()
    {
        var template = JobTemplate.Text("outline.svg").Split('\n');

        Assert.All(All, s => Assert.Contains(template, l =>
            l.TrimStart('#', ' ').StartsWith($"{s.Setting.Key} = {s.Setting.Shown} ", StringComparison.Ordinal)
            && l.EndsWith($" # {s.Setting.Meaning}", StringComparison.Ordinal)));
        Assert.All(template, l => Assert.InRange(l.Length, 0, 130));
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void A_number_past_either_end_is_refused_with_its_line_and_range(string table, string key)
    {
        var setting = (NumberSetting)Find(table, key);

        Assert.Equal(setting.AboveMin, setting.Refusal(setting.Min) is not null);
        Assert.Null(setting.Refusal(setting.Max));
        foreach (var beyond in (double[])[setting.Min - setting.Kind.Scale, setting.Max + setting.Kind.Scale])
        {
            var fault = Fault(setting, setting.Kind.Toml(beyond));
            Assert.Contains($": the {setting.Name} is ", fault);
            Assert.EndsWith($"; it must be {(setting.AboveMin || setting.ZeroIsNone ? "" : "from ")}{setting.Allowed}"
                + $"{(setting.Because.Length > 0 ? $": {setting.Because}" : "")}.", fault);
        }

        Assert.Contains($"\"{key}\" is \"much\"; it must be {setting.Kind.InJob}", Fault(setting, "\"much\""));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void A_size_past_either_end_is_refused_with_its_line_and_range(string table, string key)
    {
        var setting = (SizeSetting)Find(table, key);
        foreach (var (width, height) in ((double, double)[])[(setting.Min - 1, setting.Min), (setting.Max, setting.Max + 1)])
        {
            var pair = FormattableString.Invariant($"[{width}, {height}]");
            var side = width < setting.Min ? $"width of {setting.Name} is" : $"height of {setting.Name} is";
            Assert.Contains($": the {side}", Fault(setting, setting.IsList ? $"[{pair}]" : pair));
        }
    }

    [Theory]
    [MemberData(nameof(Others))]
    public void A_word_outside_the_choices_is_refused_with_its_line(string table, string key)
    {
        var setting = Find(table, key);

        Assert.Contains(setting.Allowed, Fault(setting, "\"perhaps\""));
    }

    [Fact]
    public void Every_mistake_of_a_job_is_named_with_its_line()
    {
        var refused = Assert.Throws<JobFileException>(() => JobFile.Read(
            """
            [outline]
            file = "sign.svg"
            [buck]
            depth = "2m"
            draft = "steep"
            corner = "round"
            [[stock]]
            catalog = "cheese"
            [vents]
            spacing = "1mm"
            [vacuum]
            seconds = 100
            [panle]
            stock = "x"
            """, "job.toml"));

        Assert.Equal(
            [
                "job.toml, line 4: the depth is 2000 mm; it must be above 0 and at most 1000 mm.",
                "job.toml, line 5: \"draft\" is \"steep\"; it must be an angle such as \"5deg\".",
                "job.toml, line 6: in [buck] \"corner\" is not known; the nearest known is \"corners\".",
                "job.toml, line 8: the stock \"cheese\" is not in the catalog; see 'buckgen catalog'.",
                "job.toml, line 10: the spacing of vents is 1 mm; it must be from 5 to 500 mm.",
                "job.toml, line 12: the time for the air to leave is 100 s; it must be from 0.01 to 60 s.",
                "job.toml, line 13: the table [panle] is not known; the nearest known is [panel].",
            ],
            refused.Faults.Select(f => f.Message));
        Assert.Equal([4, 5, 6, 8, 10, 12, 13], refused.Faults.Select(f => f.Line));
        Assert.Equal(string.Join('\n', refused.Faults.Select(f => f.Message)), refused.Message);
    }

    [Fact]
    public void Every_mistake_that_the_TOML_reader_finds_is_named() =>
        Assert.Equal([1, 3], Assert.Throws<JobFileException>(() => JobFile.Read("title = \nx = 1\ny = = 2\n", "job.toml")).Faults
            .Select(f => f.Line).Distinct());

    /// <summary>The ranges of the maker's settings are those of the physics behind them.</summary>
    [Fact]
    public void The_physics_of_air_takes_what_the_settings_take()
    {
        var usual = new AirFlowSpec();
        foreach (var (setting, with) in ((NumberSetting, Func<double, AirFlowSpec>)[])
            [
                (VentSettings.Pump, v => usual with { PumpDisplacement = v }),
                (VentSettings.Tank, v => usual with { ReservoirVolume = v }),
                (VentSettings.Seconds, v => usual with { WantedTime = v }),
                (VentSettings.Vacuum, v => usual with { ReservoirPressure = usual.AmbientPressure - v }),
            ])
        {
            with(setting.Min).Validate();
            with(setting.Max).Validate();
            Assert.Throws<ArgumentOutOfRangeException>(with(setting.Min - 1e-3).Validate);
            Assert.Throws<ArgumentOutOfRangeException>(with(setting.Max + 1e-3).Validate);
        }
    }

    private static Setting Find(string table, string key) => All.Single(s => s.Table == table && s.Setting.Key == key).Setting;

    /// <summary>The one mistake of a job in which this setting has this value.</summary>
    private static string Fault(Setting setting, string value)
    {
        var (job, line) = With(setting, value);
        var fault = Assert.Single(Assert.Throws<JobFileException>(() => JobFile.Read(job, "job.toml", Catalog.BuiltIn)).Faults);
        Assert.Equal(line, fault.Line);
        Assert.StartsWith($"job.toml, line {line}: ", fault.Message);
        return fault.Message;
    }

    private static TheoryData<string, string> Keys(Func<Setting, bool> which)
    {
        var keys = new TheoryData<string, string>();
        foreach (var (table, setting) in All.Where(s => which(s.Setting))) keys.Add(table, setting.Key);
        return keys;
    }
}
