namespace Saponify;

/// <summary>Student's t distribution for whole degrees of freedom, by its finite sums.</summary>
internal static class StudentT
{
    /// <summary>t with this probability between -t and t.</summary>
    internal static double TwoSided(int freedom, double probability)
    {
        (double low, double high) = (0, 1e9);
        for (int i = 0; i < 200; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Between(freedom, middle) < probability ? (middle, high) : (low, middle);
        }
        return (low + high) / 2;
    }

    /// <summary>Probability between -t and t. Odd: 2/pi (a + sin a (cos a + 2/3 cos^3 a + ...)), even: sin a (1 + 1/2 cos^2 a + ...), a = atan(t/sqrt(freedom)).</summary>
    private static double Between(int freedom, double t)
    {
        double angle = Math.Atan(t / Math.Sqrt(freedom)), cos = Math.Cos(angle), sum = 0, term = freedom % 2 == 0 ? 1 : cos;
        for (int power = freedom % 2 == 0 ? 0 : 1; power <= freedom - 2; power += 2)
        {
            sum += term;
            term *= cos * cos * (power + 1) / (power + 2);
        }
        return freedom % 2 == 0 ? Math.Sin(angle) * sum : 2 / Math.PI * (angle + (Math.Sin(angle) * sum));
    }
}
