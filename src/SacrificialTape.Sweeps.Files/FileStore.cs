namespace SacrificialTape.Sweeps.Files;

/// <summary>The few things that are done to a file system, in one place, so that a test can let them fail.</summary>
internal class FileStore
{
    /// <summary>What a file is called before it is whole.</summary>
    internal const string Unfinished = ".part";

    internal static FileStore Disk { get; } = new();

    /// <summary>Writes a file so that under its name there is either the whole new one or what was there before.</summary>
    internal void WriteWhole(string path, Action<Stream> write)
    {
        string part = path + Unfinished;
        try
        {
            using (Stream stream = this.Create(part))
            {
                write(stream);
                this.Flush(stream);
            }

            this.Move(part, path);
        }
        catch (Exception e)
        {
            try
            {
                File.Delete(part);
            }
            catch (Exception also) when (also is IOException or UnauthorizedAccessException)
            {
                // A part under its own name is never taken for a whole file; the first error is the one to tell.
            }

            if (e is IOException)
            {
                throw new IOException($"'{path}' could not be written whole, and nothing of it is kept: {e.Message}", e);
            }

            throw;
        }
    }

    internal virtual Stream Create(string path) => new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None, 1 << 16);

    /// <summary>Down to the disk: a name must not become known before what it stands for.</summary>
    internal virtual void Flush(Stream stream)
    {
        stream.Flush();
        (stream as FileStream)?.Flush(flushToDisk: true);
    }

    internal virtual void Move(string from, string to) => File.Move(from, to, overwrite: true);
}
