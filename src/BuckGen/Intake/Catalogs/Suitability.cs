using System.Text.Json.Serialization;

namespace BuckGen.Intake.Catalogs;

/// <summary>Whether a machine may cut a material.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Suitability>))]
public enum Suitability
{
    /// <summary>Yes, within the machine maker's limits.</summary>
    [JsonStringEnumMemberName("yes")]
    Yes,

    /// <summary>No.</summary>
    [JsonStringEnumMemberName("no")]
    No,

    /// <summary>Ask the machine's maker or whoever runs it first.</summary>
    [JsonStringEnumMemberName("ask")]
    Ask,
}
