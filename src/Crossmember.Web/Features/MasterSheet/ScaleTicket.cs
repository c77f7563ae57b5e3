using System.Text.Json;
using System.Text.Json.Nodes;
using Crossmember.Builds.Folding;
using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Features.MasterSheet;

/// <summary>Scale readings as somebody writes them into the form.</summary>
public sealed class ScaleTicket
{
    public string Date { get; set; } = "";

    /// <summary>Whether each wheel stands on a scale of its own; else each axle.</summary>
    public bool ByWheel { get; set; } = true;

    /// <summary>By <c>front</c> or <c>front.left</c>, as typed.</summary>
    public Dictionary<string, string> Readings { get; } = new(StringComparer.Ordinal);

    public string Wheelbase { get; set; } = "";

    /// <summary>Center of gravity over the ground; empty: not measured.</summary>
    public string Height { get; set; } = "";

    /// <summary>Frame datum plane over the ground; empty: not measured.</summary>
    public string DatumHeight { get; set; } = "";

    public string Condition { get; set; } = "";

    /// <summary>What one reading may be off by; empty: nobody said.</summary>
    public string ReadingError { get; set; } = "";

    /// <summary>The axle that was lifted while the other stayed on the scale; empty: neither.</summary>
    public string Lifted { get; set; } = "";

    public string LiftedBy { get; set; } = "";

    public string RaisedReading { get; set; } = "";

    public string WheelRadiusFront { get; set; } = "";

    public string WheelRadiusRear { get; set; } = "";

    /// <summary>As the journal keeps it, or null with faults that name the field by its pointer, such as <c>/wheels/front.left</c>.</summary>
    /// <param name="places">Where a reading is due.</param>
    /// <param name="fitted">What differed from as found on the scale.</param>
    public JsonObject? Payload(IEnumerable<string> places, IReadOnlyDictionary<string, string> fitted, Faults faults)
    {
        var list = ByWheel ? "wheels" : "axles";
        var payload = new JsonObject
        {
            ["date"] = Date,
            [list] = new JsonObject(places.Select(p => KeyValuePair.Create(p, (JsonNode?)Readings.GetValueOrDefault(p, "").Trim()))),
            ["wheelbase"] = Wheelbase.Trim(),
            ["fitted"] = new JsonObject(fitted.OrderBy(f => f.Key, StringComparer.Ordinal).Select(f => KeyValuePair.Create(f.Key, (JsonNode?)f.Value))),
        };
        if (Condition.Length > 0) payload["condition"] = Condition;
        if (Height.Trim().Length > 0) payload["height"] = Height.Trim();
        if (DatumHeight.Trim().Length > 0) payload["datumHeight"] = DatumHeight.Trim();
        if (ReadingError.Trim().Length > 0) payload["readingError"] = ReadingError.Trim();
        if (Lifted.Length > 0)
            payload["raised"] = new JsonObject
            {
                ["lifted"] = Lifted, ["by"] = LiftedBy.Trim(), ["reading"] = RaisedReading.Trim(),
                ["wheelRadius"] = new JsonObject { ["front"] = WheelRadiusFront.Trim(), ["rear"] = WheelRadiusRear.Trim() },
            };
        if (Lifted.Length > 0 && DatumHeight.Trim().Length == 0) faults.Add("/datumHeight", "nobody said how high the frame stood over the ground", "tape it at the center of gravity: the height of the weight is kept over the frame");
        WeighingReader.Read(new(JsonSerializer.SerializeToElement(payload), "", faults));
        return faults.Any ? null : payload;
    }
}
