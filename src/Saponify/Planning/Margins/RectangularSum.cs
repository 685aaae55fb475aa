namespace Saponify;

/// <summary>
/// The distribution of a sum of independent rectangular errors around 0, by convolution on a fixed grid. Each convolution with a rectangle is a
/// moving mean of the distribution function, exact for a function that is linear in each cell.
/// </summary>
internal sealed class RectangularSum
{
    private const int Cells = 512;

    private readonly double[] _function = new double[Cells + 1];
    private readonly double _half;

    /// <param name="halfWidths">Half widths of the rectangles; zeros are passed over.</param>
    internal RectangularSum(ReadOnlySpan<double> halfWidths)
    {
        double largest = 0;
        foreach (double width in halfWidths)
        {
            _half += width;
            largest = Math.Max(largest, width);
        }
        for (int i = 0; i <= Cells; i++)
            _function[i] = largest > 0 ? Math.Clamp((At(i) + largest) / (2 * largest), 0, 1) : At(i) >= 0 ? 1 : 0;
        if (_half <= 0)
            return;
        Span<double> sum = stackalloc double[Cells + 1];
        bool passedLargest = false;
        foreach (double width in halfWidths)
        {
            if (width == largest && !passedLargest)
                passedLargest = true;
            else if (width > _half * 1e-6)
                Convolve(width, sum);
        }
    }

    internal bool HasWidth => _half > 0;

    private double Step => 2 * _half / Cells;

    /// <summary>The probability that the sum is below a value.</summary>
    internal double Below(double value)
    {
        if (_half <= 0)
            return value > 0 ? 1 : 0;
        double place = (value + _half) / Step;
        if (place <= 0)
            return 0;
        if (place >= Cells)
            return 1;
        int cell = (int)place;
        return _function[cell] + ((place - cell) * (_function[cell + 1] - _function[cell]));
    }

    /// <summary>The sum in slices: the middle of each and the probability that it falls there. One slice when nothing is in doubt.</summary>
    internal (double Middle, double Probability)[] Slices()
    {
        if (_half <= 0)
            return [(0, 1)];
        var slices = new (double, double)[Cells];
        for (int i = 0; i < Cells; i++)
            slices[i] = (At(i) + (Step / 2), Math.Max(0, _function[i + 1] - _function[i]));
        return slices;
    }

    private double At(int node) => -_half + (node * Step);

    /// <summary>New function at x: the mean of the old one over x - width to x + width, from its integral.</summary>
    private void Convolve(double width, Span<double> integral)
    {
        double step = Step;
        integral[0] = 0;
        for (int i = 1; i <= Cells; i++)
            integral[i] = integral[i - 1] + ((_function[i - 1] + _function[i]) / 2 * step);
        Span<double> next = stackalloc double[Cells + 1];
        for (int i = 0; i <= Cells; i++)
            next[i] = Math.Clamp((Integral(At(i) + width, integral) - Integral(At(i) - width, integral)) / (2 * width), 0, 1);
        next.CopyTo(_function);
    }

    private double Integral(double value, ReadOnlySpan<double> integral)
    {
        double step = Step, place = (value + _half) / step;
        if (place <= 0)
            return 0;
        if (place >= Cells)
            return integral[Cells] + ((place - Cells) * step);
        int cell = (int)place;
        double part = place - cell, low = _function[cell], high = _function[cell + 1];
        return integral[cell] + (step * part * (low + (part * (high - low) / 2)));
    }
}
