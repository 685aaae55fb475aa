using UnitsNet;

namespace Saponify;

/// <summary>One step of a process plan: what to do, how warm it is then, how long it takes. Immutable; equality by content.</summary>
public sealed record ProcessStep
{
    internal ProcessStep(ProcessStepKind kind, string what, Temperature? temperature, Claim claim, ValueList<string> notes, Figure<Duration>? time = null)
    {
        Kind = kind;
        What = what;
        Temperature = temperature;
        Claim = claim;
        Notes = notes;
        Time = time;
    }

    /// <summary>Which step.</summary>
    public ProcessStepKind Kind { get; }

    /// <summary>What to do, in English.</summary>
    public string What { get; }

    /// <summary>How warm it is at the end of the step; null when that could not be computed.</summary>
    public Temperature? Temperature { get; }

    /// <summary>What kind of statement <see cref="Temperature"/> is.</summary>
    public Claim Claim { get; }

    /// <summary>How long it takes, an estimate with its range; null when no time was computed.</summary>
    public Figure<Duration>? Time { get; }

    /// <summary>What to know, one sentence each, in English and in the plan's unit of temperature; invariant.</summary>
    public ValueList<string> Notes { get; }
}
