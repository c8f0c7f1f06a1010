namespace BuildLog.Data.Moving;

/// <summary>Stops a stream that goes on for longer than anybody said it would: a zip of a few bytes can unpack to more than any disk holds. The stream is its own.</summary>
internal sealed class BoundedStream(Stream inner, long longest, Func<Exception> tooLong) : Stream
{
    private long count;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position { get => count; set => throw new NotSupportedException(); }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        var read = inner.Read(buffer);
        count += read;
        return count <= longest ? read : throw tooLong();
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing) inner.Dispose();
        base.Dispose(disposing);
    }

    public override void Flush() { }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
