using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;

namespace BuckGen.Tests.Plugins;

/// <summary>The plug-ins that are built beside the tests.</summary>
internal static class PluginFiles
{
    public static string Pegboard => File("examples/plugins", "Pegboard");

    public static string LineProgram => File("examples/plugins", "LineProgram");

    public static string Evil => File("tests/plugins", "Evil");

    public static string Faulty => File("tests/plugins", "Faulty");

    public static string Hanging => File("tests/plugins", "Hanging");

    /// <summary>A copy that says it was built against another version of the library.</summary>
    public static string BuiltAgainst(Version version, string plugin, string folder)
    {
        var bytes = System.IO.File.ReadAllBytes(plugin);
        using (var reader = new PEReader(new MemoryStream(bytes)))
        {
            var metadata = reader.GetMetadataReader();
            var row = metadata.AssemblyReferences
                .Single(r => metadata.GetString(metadata.GetAssemblyReference(r).Name) == "BuckGen.Core");
            var offset = reader.PEHeaders.MetadataStartOffset + metadata.GetTableMetadataOffset(TableIndex.AssemblyRef)
                + (MetadataTokens.GetRowNumber(row) - 1) * metadata.GetTableRowSize(TableIndex.AssemblyRef);
            foreach (var (number, i) in new[] { version.Major, version.Minor, version.Build, 0 }.Select((n, i) => (n, i)))
                BitConverter.TryWriteBytes(bytes.AsSpan(offset + 2 * i, 2), (ushort)number);
        }

        var copy = Path.Combine(folder, Path.GetFileName(plugin));
        System.IO.File.WriteAllBytes(copy, bytes);
        return copy;
    }

    // Built in the same configuration as the tests: .../bin/Debug/net10.0.
    private static string File(string below, string name)
    {
        var built = new DirectoryInfo(AppContext.BaseDirectory);
        return Path.Combine(Conventions.Repository.Root, below, name, "bin", built.Parent!.Name, built.Name, name + ".dll");
    }
}
