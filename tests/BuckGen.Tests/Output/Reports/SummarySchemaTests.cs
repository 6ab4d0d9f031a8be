using System.Text.Json;
using System.Text.Json.Nodes;
using BuckGen.Tests.Conventions;
using Json.Schema;
using Xunit;

namespace BuckGen.Tests.Output.Reports;

[Trait("Tier", "slow")]
public class SummarySchemaTests
{
    private static readonly string SchemaText = Repository.Text("src", "BuckGen", "Output", "Reports", "summary.schema.json");
    private static readonly JsonSchema Schema = JsonSchema.FromText(SchemaText);

    public static TheoryData<string> Names => SampleJobs.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_summary_keeps_its_schema(string name)
    {
        using var summary = JsonDocument.Parse(SampleJobs.Summary(name));

        var result = Schema.Evaluate(summary.RootElement, new() { OutputFormat = OutputFormat.List });

        Assert.True(result.IsValid, string.Join('\n', (result.Details ?? []).Where(d => d.Errors is not null)
            .SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation}: {e.Value}"))));
    }

    [Theory]
    [InlineData("cutLength", "-1")]
    [InlineData("schema", "\"buckgen-summary/2\"")]
    [InlineData("layers", "[{}]")]
    [InlineData("files", "[]")]
    [InlineData("units", "\"in\"")]
    public void A_summary_with_something_wrong_breaks_it(string property, string value)
    {
        var summary = JsonNode.Parse(SampleJobs.Summary("plain"))!;
        summary[property] = JsonNode.Parse(value);

        Assert.False(Schema.Evaluate(JsonSerializer.SerializeToElement(summary)).IsValid);
    }

    [Fact]
    public void A_summary_with_something_missing_breaks_it()
    {
        foreach (var property in JsonNode.Parse(SampleJobs.Summary("plain"))!.AsObject().Select(p => p.Key).ToArray())
        {
            var summary = JsonNode.Parse(SampleJobs.Summary("plain"))!.AsObject();
            summary.Remove(property);

            Assert.False(Schema.Evaluate(JsonSerializer.SerializeToElement(summary)).IsValid, property);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Nothing_is_written_that_the_schema_does_not_describe(string name)
    {
        using var summary = JsonDocument.Parse(SampleJobs.Summary(name));
        var described = JsonNode.Parse(SchemaText)!.AsObject();

        AssertDescribed(summary.RootElement, described, described, "summary");
    }

    [Fact]
    public void Every_property_has_a_description_and_every_number_a_unit()
    {
        string[] units =
            ["mm", "mm²", "degrees", "per cent", "count", "share", "litres", "seconds", "ratio", "layer number",
                "1 for the lowest", "same unit", "shop's money", "minutes", "grams", "in its unit", "newtons",
                "unit the message names"];
        var seen = 0;
        foreach (var (name, property) in Properties(JsonNode.Parse(SchemaText)!))
        {
            var description = property["description"]?.GetValue<string>();
            Assert.False(string.IsNullOrWhiteSpace(description), name);
            var types = property["type"] is JsonArray list ? list.Select(t => t!.GetValue<string>())
                : [property["type"]?.GetValue<string>() ?? ""];
            if (types.Any(t => t is "number" or "integer"))
                Assert.True(units.Any(description!.Contains), $"{name}: {description}");
            seen++;
        }

        Assert.InRange(seen, 80, int.MaxValue);
    }

    private static void AssertDescribed(JsonElement value, JsonObject schema, JsonObject root, string place)
    {
        if (schema["$ref"]?.GetValue<string>() is { } reference) schema = root["$defs"]![reference.Split('/')[^1]]!.AsObject();
        switch (value.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (var property in value.EnumerateObject())
                {
                    var described = schema["properties"]?[property.Name];
                    Assert.True(described is not null, $"{place}.{property.Name} is not in the schema");
                    Assert.True(schema["required"]!.AsArray().Select(r => r!.GetValue<string>()).Contains(property.Name)
                        || described["description"]!.GetValue<string>().Contains("left out", StringComparison.Ordinal),
                        $"{place}.{property.Name} is neither required nor described as left out");
                    AssertDescribed(property.Value, described.AsObject(), root, $"{place}.{property.Name}");
                }

                break;
            case JsonValueKind.Array:
                foreach (var item in value.EnumerateArray())
                    AssertDescribed(item, schema["items"]!.AsObject(), root, $"{place}[]");
                break;
        }
    }

    private static IEnumerable<(string Name, JsonObject Schema)> Properties(JsonNode node)
    {
        if (node is JsonArray array)
            foreach (var found in array.Where(n => n is not null).SelectMany(n => Properties(n!))) yield return found;
        if (node is not JsonObject schema) yield break;
        if (schema["properties"] is JsonObject properties)
            foreach (var (name, property) in properties) yield return (name, property!.AsObject());
        foreach (var (_, child) in schema)
            if (child is not null)
                foreach (var found in Properties(child)) yield return found;
    }
}
