using System.Security.Cryptography;

namespace SacrificialTape.Sweeps.Files.Folders;

/// <summary>Passes on what is written and hashes it on the way: so the hash is of what was meant, not of what the disk made of it.</summary>
internal sealed class HashingStream(Stream inner) : Stream
{
    private readonly IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private long written;

    public override bool CanRead => false;

    // The Arrow writer asks for a stream that can, and then only asks where it stands.
    public override bool CanSeek => true;

    public override bool CanWrite => true;

    public override long Length => this.written;

    public override long Position
    {
        get => this.written;
        set => throw new NotSupportedException();
    }

    public override void Write(byte[] buffer, int offset, int count) => this.Write(buffer.AsSpan(offset, count));

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        inner.Write(buffer);
        this.hash.AppendData(buffer);
        this.written += buffer.Length;
    }

    public override void Flush() => inner.Flush();

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    internal string Hash() => Convert.ToHexStringLower(this.hash.GetCurrentHash());

    protected override void Dispose(bool disposing)
    {
        this.hash.Dispose();
        base.Dispose(disposing);
    }
}
