using BuckGen.Geometry;

namespace BuckGen.Tests.Cutting.Drilling.Rs274;

/// <summary>
/// A small strict interpreter of RS274/NGC, written from NISTIR 6556: the order of execution of its table 8, canned cycles of its
/// section 3.5.16 taken apart into straight moves. It starts in no useful state, so that a program must say all it leans on.
/// </summary>
internal sealed class Rs274Machine
{
    /// <summary>How far above the ground a peck slows down: 0.010 inch in the report's interpreter.</summary>
    private const double PeckRoom = 0.254;

    private readonly List<Move> moves = [];
    private readonly HashSet<string> said = [];
    private Vec2 place = new(-37, 21);
    private double height = 3.0001;
    private double feed;
    private double speed;
    private bool spindleTurns;
    private string? motion;
    private double? cycleBottom;
    private double? cycleRetract;
    private double clearHeight;
    private bool ended;

    /// <summary>Runs a program and returns its moves.</summary>
    /// <exception cref="Rs274Exception">A line breaks a rule; the message starts with its number.</exception>
    public static IReadOnlyList<Move> Run(string program)
    {
        var machine = new Rs274Machine();
        foreach (var (index, text) in program.Split('\n').Index())
        {
            try
            {
                machine.Execute(new(text));
            }
            catch (Rs274Exception problem)
            {
                throw new Rs274Exception($"line {index + 1}, \"{text}\": {problem.Message}");
            }
        }

        Require(machine.ended, "the program has no end");
        Require(!machine.spindleTurns, "the spindle still turns at the end");
        return machine.moves;
    }

    private void Execute(Rs274Line line)
    {
        if (ended) return;
        foreach (var mode in (string[])["G21", "G90", "G17", "G94"]) if (line.Has(mode)) said.Add(mode);
        feed = line['F'] ?? feed;
        speed = line['S'] ?? speed;
        Require(feed >= 0 && speed >= 0, "a speed is negative");
        if (line.Has("M3")) spindleTurns = speed > 0 ? true : throw new Rs274Exception("the spindle has no speed");
        if (line.Has("M5")) spindleTurns = false;
        foreach (var mode in (string[])["G98", "G99"])
        {
            if (!line.Has(mode)) continue;
            said.ExceptWith(["G98", "G99"]);
            said.Add(mode);
        }

        MoveBy(line);
        ended = line.Has("M2") || line.Has("M30");
    }

    private void MoveBy(Rs274Line line)
    {
        var before = motion;
        motion = line.Motion ?? motion;
        var isCycle = motion is "G81" or "G83";
        Require(isCycle || (!line.Has('R') && !line.Has('Q')), "R or Q without a cycle");
        if (!line.HasAxes)
        {
            Require(line.Motion is null or "G80", "a motion without axis words");
            return;
        }

        Require(said.IsSupersetOf(["G21", "G90", "G17", "G94"]), "motion before units, distance, plane and feed modes are said");
        Require(motion is not (null or "G80"), "axis words without a motion");
        if (isCycle) Cycle(line, isFirst: before != motion);
        else Straight(motion == "G0", new(line['X'] ?? place.X, line['Y'] ?? place.Y), line['Z'] ?? height);
    }

    private void Cycle(Rs274Line line, bool isFirst)
    {
        Require(said.Contains("G98") || said.Contains("G99"), "a cycle before its return mode is said");
        Require(line.Has('X') || line.Has('Y'), "a cycle without X and Y");
        if (isFirst) (cycleBottom, clearHeight) = (null, height);
        cycleBottom = line['Z'] ?? cycleBottom;
        cycleRetract = line['R'] ?? cycleRetract;
        if (cycleBottom is not { } bottom || cycleRetract is not { } retract) throw new Rs274Exception("a cycle without Z or R");
        Require(bottom <= retract, "Z above R");
        var peck = motion == "G83" ? line['Q'] ?? 0 : bottom == retract ? 1 : retract - bottom;
        Require(peck > 0, "G83 without a Q above 0");

        Vec2 hole = new(line['X'] ?? place.X, line['Y'] ?? place.Y);
        if (height < retract) Straight(true, place, retract);
        Straight(true, hole, height);
        Straight(true, hole, retract);
        for (var ground = retract; ground > bottom;)
        {
            if (ground < retract)
            {
                Straight(true, hole, retract);
                Straight(true, hole, ground + PeckRoom);
            }

            ground = Math.Max(bottom, ground - peck);
            Straight(false, hole, ground);
        }

        Straight(true, hole, said.Contains("G98") ? Math.Max(clearHeight, retract) : retract);
    }

    private void Straight(bool isRapid, Vec2 to, double toZ)
    {
        Require(isRapid || feed > 0, "a feed move without a feed");
        Require(isRapid || spindleTurns, "a feed move while the spindle stands");
        if (to != place || toZ != height) moves.Add(new(isRapid, place, height, to, toZ));
        (place, height) = (to, toZ);
    }

    private static void Require(bool holds, string problem)
    {
        if (!holds) throw new Rs274Exception(problem);
    }
}
