using Crossmember.Storage;

namespace Crossmember.Web.Features.Customers;

/// <summary>A card as it is being typed. It stays in the page: a draft kept by the browser could not be erased.</summary>
public sealed class CustomerDraft
{
    public string Name { get; set; } = "";

    public string Phone { get; set; } = "";

    public string Mail { get; set; } = "";

    public string Address { get; set; } = "";

    public string Notes { get; set; } = "";

    public static CustomerDraft Of(CustomerCard? card) =>
        card is null ? new() : new() { Name = card.Name, Phone = card.Phone, Mail = card.Mail, Address = card.Address, Notes = card.Notes };

    public CustomerCard ToCard() => new(Name.Trim(), Phone.Trim(), Mail.Trim(), Address.Trim(), Notes.Trim());
}
