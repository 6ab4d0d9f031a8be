using BuckGen.Output.Folders;
using Xunit;

namespace BuckGen.Tests.Output.Folders;

/// <summary>What goes wrong.</summary>
public enum Fault
{
    /// <summary>The power goes: nothing more happens, and a file that is being written stays half.</summary>
    PowerCut,

    /// <summary>One step fails, as on a full or failing disk; those after it work.</summary>
    Error,

    /// <summary>From one step on all fail, as when a disk is pulled out.</summary>
    Pulled,
}

/// <summary>A power cut: nothing of the program may catch it.</summary>
internal sealed class PowerCutException : Exception;

/// <summary>The disk, without waiting for it to flush, on which something goes wrong at one step.</summary>
/// <param name="step">Which step, counted from 1.</param>
/// <param name="fault">What goes wrong.</param>
/// <param name="exchanges">True when folders can be exchanged.</param>
/// <param name="links">True when files can have second names.</param>
internal sealed class FaultyDisk(int step, Fault fault, bool exchanges = true, bool links = true) : IDisk
{
    private readonly Disk disk = new();
    private int taken;

    /// <summary>A disk on which nothing goes wrong.</summary>
    public static FaultyDisk Sound => new(int.MaxValue, Fault.Error);

    /// <summary>How many steps have been taken.</summary>
    public int Steps => taken;

    /// <summary>True when it came to the step.</summary>
    public bool Failed => taken >= step;

    /// <summary>Is called before every step; others may work in the folder meanwhile.</summary>
    public Action<int>? Meanwhile { get; init; }

    public void MakeFolder(string path, string? like = null) => Do(() => disk.MakeFolder(path, like));

    public void Write(string path, ReadOnlySpan<byte> content)
    {
        var bytes = content.ToArray();
        Do(() => WriteNew(path, bytes), () => File.WriteAllBytes(path, bytes[..(bytes.Length / 2)]));
    }

    public void Link(string path, string second) => Do(() =>
    {
        if (!links) throw new IOException("No second names here.");
        disk.Link(path, second);
    });

    public void Move(string from, string to) => Do(() => disk.Move(from, to));

    public bool Exchange(string one, string other)
    {
        var done = false;
        Do(() => done = exchanges && disk.Exchange(one, other));
        return done;
    }

    public void Delete(string path) => Do(() => disk.Delete(path));

    public void DeleteFolder(string path) => Do(() => disk.DeleteFolder(path));

    public void Flush(string folder) => Do(() => Assert.True(Directory.Exists(folder)));

    private static void WriteNew(string path, byte[] content)
    {
        using var file = new FileStream(path, FileMode.CreateNew);
        file.Write(content);
    }

    private void Do(Action work, Action? half = null)
    {
        taken++;
        Meanwhile?.Invoke(taken);
        if (taken == step) half?.Invoke();
        if (fault == Fault.PowerCut && taken >= step) throw new PowerCutException();
        if (taken == step || (fault == Fault.Pulled && taken > step)) throw new IOException("The disk fails.");
        work();
    }
}
