using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;

namespace Evil;

/// <summary>What this plug-in is to do wrong: a file Evil.txt beside it names the deeds, a line each, as "check: exit".</summary>
internal static class Deed
{
    private static readonly string Folder = Path.GetDirectoryName(typeof(Deed).Assembly.Location)!;

    /// <summary>The deed of a part; empty for none.</summary>
    public static string Read(string part)
    {
        var file = Path.Combine(Folder, "Evil.txt");
        var line = File.Exists(file)
            ? File.ReadAllLines(file).FirstOrDefault(l => l.StartsWith(part + ": ", StringComparison.Ordinal)) : null;
        return line is null ? "" : line[(part.Length + 2)..];
    }

    /// <summary>Does what ends, hangs or fills a process; nothing for other deeds.</summary>
    public static void Do(string deed)
    {
        switch (deed)
        {
            case "throw": throw new InvalidOperationException("it fell apart");
            case "throw a stranger": throw new StrangeException();
            case "cancel": throw new TaskCanceledException("the server did not answer");
            case "exit": Environment.Exit(0); break;
            case "exit elsewhere": OnThread(() => Environment.Exit(0)); Thread.Sleep(Timeout.Infinite); break;
            case "fail fast": Environment.FailFast("enough"); break;
            case "overflow the stack": _ = Deeper(1); break;
            case "throw elsewhere":
                OnThread(() => throw new InvalidOperationException("a thread fell apart")); Thread
                .Sleep(300); break;
            case "throw in the pool":
                ThreadPool
                .QueueUserWorkItem(_ => throw new InvalidOperationException("the pool fell apart")); Thread.Sleep(300); break;
            case "throw later": Later(); Thread.Sleep(300); break;
            case "hang": Thread.Sleep(Timeout.Infinite); break;
            case "tell the process and hang":
                File.WriteAllText(Path.Combine(Folder, "process.new"), FormattableString.Invariant($"{Environment.ProcessId}"));
                File.Move(Path.Combine(Folder, "process.new"), Path.Combine(Folder, "process"));
                Thread.Sleep(Timeout.Infinite);
                break;
            case "spin": while (true) Thread.SpinWait(1000);
            case "stay": new Thread(() => Thread.Sleep(Timeout.Infinite)).Start(); break;
            case "fill the memory": Fill(); break;
            case "print": Console.WriteLine("printed by a plug-in"); break;
            case "print without end": while (true) Console.WriteLine(new string('x', 10_000));
        }
    }

    private static void OnThread(Action what) => new Thread(() => what()).Start();

    [SuppressMessage("Usage", "VSTHRD100:Avoid async void methods", Justification = "It is the deed.")]
    private static async void Later()
    {
        await Task.Yield();
        throw new InvalidOperationException("an event fell apart");
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static int Deeper(int depth) => Deeper(depth + 1) + depth;

    private static void Fill()
    {
        var all = new List<byte[]>();
        while (true)
        {
            var block = new byte[64 << 20];
            for (var i = 0; i < block.Length; i += 4096) block[i] = 1;
            all.Add(block);
        }
    }
}

/// <summary>An exception that can't say what it is.</summary>
internal sealed class StrangeException : Exception
{
    public override string Message => throw new InvalidOperationException("no words");
}
