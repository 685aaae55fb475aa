namespace Saponify;

/// <summary>What a member of the formula file holds.</summary>
internal enum MemberKind : byte
{
    /// <summary>A text that is not blank.</summary>
    Text,

    /// <summary>A text that may be anything.</summary>
    Note,

    /// <summary>An id of a line.</summary>
    LineId,

    /// <summary>One of a few words.</summary>
    Choice,

    /// <summary>A mass with its unit.</summary>
    Mass,

    /// <summary>A volume with its unit.</summary>
    Volume,

    /// <summary>A share in per cent.</summary>
    Percent,

    /// <summary>Parts to one, such as 2.2 : 1.</summary>
    Parts,

    /// <summary>A temperature with its unit.</summary>
    Temperature,

    /// <summary>A length with its unit.</summary>
    Length,

    /// <summary>How well heat passes, such as 50 W/(m2 K).</summary>
    HeatTransfer,

    /// <summary>A whole number of things, written as a number.</summary>
    Count,

    /// <summary>A saponification value with its unit.</summary>
    Saponification,

    /// <summary>A purity: 98 %, 97 to 100 %, at least 85 %.</summary>
    Purity,

    /// <summary>A date, 2026-11-25.</summary>
    Date,

    /// <summary>true or false.</summary>
    Flag,

    /// <summary>An object of a shape.</summary>
    Object,

    /// <summary>A list of objects of a shape.</summary>
    List,

    /// <summary>A list of texts that are not blank.</summary>
    Texts,

    /// <summary>A list of masses with their units.</summary>
    Masses,
}
