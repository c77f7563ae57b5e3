namespace Crossmember.Planning;

/// <summary>An uncertain amount (hours, days, money) as people state it. The kinds and their keys are those of the firm formats.</summary>
public abstract record Distribution
{
    private Distribution() { }

    public abstract double Mean { get; }

    public abstract string Kind { get; }

    public sealed record Fixed(double Value) : Distribution
    {
        public override double Mean => Value;

        public override string Kind => "fixed";
    }

    public sealed record Uniform(double Low, double High) : Distribution
    {
        public override double Mean => (Low + High) / 2;

        public override string Kind => "uniform";
    }

    public sealed record Triangular(double Low, double Mode, double High) : Distribution
    {
        public override double Mean => (Low + Mode + High) / 3;

        public override string Kind => "triangular";
    }

    /// <summary>Beta with shape weight lambda = 4: mean (low + 4 mode + high) / 6.</summary>
    public sealed record Pert(double Low, double Mode, double High) : Distribution
    {
        public override double Mean => (Low + (4 * Mode) + High) / 6;

        public override string Kind => "pert";
    }

    /// <summary>Half lie below the median; <c>factor</c> = exp(sigma), about five in six lie below median x factor.</summary>
    public sealed record Lognormal(double Median, double Factor) : Distribution
    {
        public override double Mean => Median * Math.Exp(Math.Log(Factor) * Math.Log(Factor) / 2);

        public override string Kind => "lognormal";
    }
}
