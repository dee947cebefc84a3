namespace SacrificialTape.Sweeps.Files.Tests;

/// <summary>A file system on which one file does not go well.</summary>
internal sealed class FailingStore(string ending, long room, Func<Stream>? instead = null) : FileStore
{
    internal const string Words = "No space left on device";

    internal override Stream Create(string path) => !path.EndsWith(ending + Unfinished, StringComparison.Ordinal)
        ? base.Create(path)
        : instead?.Invoke() ?? new FullStream(base.Create(path), room);

    private sealed class FullStream(Stream inner, long room) : Stream
    {
        private long left = room;

        public override bool CanRead => false;

        public override bool CanSeek => false;

        public override bool CanWrite => true;

        public override long Length => inner.Length;

        public override long Position
        {
            get => inner.Position;
            set => throw new NotSupportedException();
        }

        public override void Flush() => inner.Flush();

        public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count)
        {
            int fits = (int)Math.Min(count, this.left);
            inner.Write(buffer, offset, fits);
            inner.Flush();
            this.left -= fits;
            if (fits < count)
            {
                throw new IOException(Words);
            }
        }

        protected override void Dispose(bool disposing)
        {
            inner.Dispose();
            base.Dispose(disposing);
        }
    }
}
