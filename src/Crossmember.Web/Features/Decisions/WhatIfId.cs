using Crossmember.Builds.Workshop;

namespace Crossmember.Web.Features.Decisions;

/// <summary>Makes the id of a new what-if from the name people give it.</summary>
public static class WhatIfId
{
    /// <summary>Lower-case words joined by dashes, told apart by a number; null where the name holds no letter or digit.</summary>
    public static string? Of(string title, IEnumerable<string> taken) => NewId.Of(title, taken);
}
