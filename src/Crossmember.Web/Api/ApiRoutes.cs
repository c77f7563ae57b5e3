namespace Crossmember.Web.Api;

/// <summary>The door for other programs; described in <c>docs/guide/decisions.md</c>.</summary>
public static class ApiRoutes
{
    public static void MapApi(this WebApplication app)
    {
        var api = app.MapGroup("/api");
        api.MapGet("/builds", BuildsApi.List);
        api.MapGet("/builds/{id}/check", BuildsApi.Check);
        api.MapGet("/builds/{id}/ripple", BuildsApi.Ripple);
        api.MapGet("/builds/{id}/export", BuildsApi.Export);
        api.MapGet("/builds/{id}/curves/{file}", CurvesApi.Get);
        api.MapGet("/builds/{id}/report/{file}", ReportsApi.OfBuild);
        api.MapGet("/report/{file}", ReportsApi.OfInput);
        api.MapPost("/report/{file}", ReportsApi.OfBody);
        api.MapGet("/papers/{file}", PapersApi.Get);
        api.MapGet("/calc/{id}/{file}", CalculationCurvesApi.Get);
        api.MapGet("/builds/{id}/drawing.svg", DrawingApi.Get);
        api.MapGet("/builds/{id}/masses.svg", MassesApi.Drawing);
        api.MapGet("/builds/{id}/ledger.csv", MassesApi.Ledger);
        api.MapPost("/builds/{id}/facts", FactsApi.Post).TakesLargeBodies();
        api.MapGet("/builds/{id}/customer.json", CustomersApi.Json);
        api.MapGet("/builds/{id}/customer.html", CustomersApi.Html);
        api.MapGet("/shop/stock.csv", ShopApi.Stock);
        api.MapPost("/import", BuildsApi.Import).TakesLargeBodies();
        api.MapPost("/attachments", AttachmentsApi.Post).TakesLargeBodies();
        api.MapGet("/attachments/{hash}", AttachmentsApi.Get);
        api.Map("{**rest}", (string rest) => Answers.Faults([new("", $"/api/{rest} is no address here", "see the guide to Decisions")], status: StatusCodes.Status404NotFound));
    }
}
