namespace SacrificialTape.Sweeps.Grids;

/// <summary>Works out stages over rows of some factors; one for each thread.</summary>
internal sealed class GridWork
{
    // So many rows that follow one another outweigh the start of a stage: then nothing is copied, and what does not change in them
    // comes as one number. Shorter runs are gathered into blocks.
    internal const int LeastRun = 64;
    internal const int Block = 1024;

    private readonly GridPlaces places;
    private readonly (GridStage Stage, GridSource[] Needs)[] stages;
    private readonly StageRows[] rows;
    private readonly double[][][] gathered;

    internal GridWork(GridPlaces places, (GridStage Stage, GridSource[] Needs)[] stages)
    {
        this.places = places;
        this.stages = stages;
        this.rows = [.. stages.Select(static one => new StageRows(one.Stage))];
        this.gathered = [.. stages.Select(static one => one.Needs.Select(static _ => new double[Block]).ToArray())];
    }

    /// <summary>Works out rows into a block of all answers, from a place in it on.</summary>
    internal void Fill(AnswerBlock all, long firstRow, int place, int count)
    {
        AnswerBlock[] views = [.. this.stages.Select(one => new AnswerBlock(one.Stage.Answers, all))];
        bool runs = this.places.Run >= LeastRun;
        for (int done = 0; done < count;)
        {
            long row = firstRow + done;
            int most = Math.Min(Block, count - done);
            int some = runs ? (int)Math.Min(most, this.places.Run - (row % this.places.Run)) : most;
            for (int i = 0; i < this.stages.Length; i++)
            {
                this.rows[i].Rows = some;
                for (int need = 0; need < this.stages[i].Needs.Length; need++)
                {
                    this.Give(i, need, all, row, place + done, some, runs);
                }

                views[i].Begin(place + done, some);
                this.stages[i].Stage.Model(this.rows[i], views[i]);
            }

            done += some;
        }
    }

    /// <summary>Copies what a source has for some rows.</summary>
    internal void Copy(GridSource source, long firstRow, Span<double> to)
    {
        for (int i = 0; i < to.Length;)
        {
            long row = firstRow + i;
            int some = (int)Math.Min(to.Length - i, this.places.Run - (row % this.places.Run));
            int place = this.places.Place(source, row);
            if (this.places.Follows(source))
            {
                source.Memory.AsSpan(place, some).CopyTo(to[i..]);
            }
            else
            {
                to.Slice(i, some).Fill(source.Memory![place]);
            }

            i += some;
        }
    }

    private void Give(int stage, int need, AnswerBlock all, long row, int place, int count, bool runs)
    {
        GridSource source = this.stages[stage].Needs[need];
        if (source.Memory is not { } memory)
        {
            this.rows[stage].Set(need, all.Memory(source.Answer), place, isSingle: false);
        }
        else if (runs)
        {
            this.rows[stage].Set(need, memory, this.places.Place(source, row), !this.places.Follows(source));
        }
        else
        {
            this.Copy(source, row, this.gathered[stage][need].AsSpan(0, count));
            this.rows[stage].Set(need, this.gathered[stage][need], 0, isSingle: false);
        }
    }
}
