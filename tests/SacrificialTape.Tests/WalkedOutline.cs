namespace SacrificialTape.Tests;

/// <summary>
/// An outline walked round from its corners in the plane: where each flat face begins and ends along the way. The places
/// where a round corner touches its faces come from its middle on the bisector, its length from the angle between them.
/// </summary>
internal sealed class WalkedOutline
{
    internal WalkedOutline((double X, double Y, double Radius)[] corners)
    {
        int n = corners.Length;
        var touches = new (double BackX, double BackY, double OnX, double OnY, double Arc, bool Left)[n];
        for (int i = 0; i < n; i++)
        {
            (double x, double y, double r) = corners[i];
            (double bx, double by) = Unit(corners[(i + n - 1) % n], corners[i]);
            (double fx, double fy) = Unit(corners[(i + 1) % n], corners[i]);
            double half = Math.Acos(Math.Clamp((bx * fx) + (by * fy), -1, 1)) / 2;
            double reach = r / Math.Tan(half);
            touches[i] = (x + (bx * reach), y + (by * reach), x + (fx * reach), y + (fy * reach), r * (Math.PI - (2 * half)), (fx * by) - (fy * bx) > 0);
        }

        this.Faces = new (double Start, double End)[n];
        this.Left = new bool[n];
        double at = 0;
        for (int i = 0; i < n; i++)
        {
            int next = (i + 1) % n;
            double face = Math.Sqrt(Math.Pow(touches[next].BackX - touches[i].OnX, 2) + Math.Pow(touches[next].BackY - touches[i].OnY, 2));
            this.Faces[i] = (at, at + face);
            this.Left[i] = touches[next].Left;
            at += face + touches[next].Arc;
        }

        this.Perimeter = at;
    }

    internal (double Start, double End)[] Faces { get; }

    /// <summary>Whether the outline turns to the left, round the steel, after each face.</summary>
    internal bool[] Left { get; }

    internal double Perimeter { get; }

    /// <summary>How far a place is from the nearest fold; negative within one.</summary>
    internal double Clear(double place)
    {
        double at = ((place % this.Perimeter) + this.Perimeter) % this.Perimeter;
        return this.Faces.Max(face => Math.Max(Math.Min(at - face.Start, face.End - at), Math.Min(at - this.Perimeter - face.Start, face.End - at + this.Perimeter)));
    }

    private static (double X, double Y) Unit((double X, double Y, double Radius) to, (double X, double Y, double Radius) from)
    {
        double length = Math.Sqrt(((to.X - from.X) * (to.X - from.X)) + ((to.Y - from.Y) * (to.Y - from.Y)));
        return ((to.X - from.X) / length, (to.Y - from.Y) / length);
    }
}
