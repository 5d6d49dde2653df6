using Panside.Journal;

namespace Panside.Tests.Records;

/// <summary>
/// A folder in memory with disks that fail: a write is refused whole or half way, a flush, a cut; a file is deleted or another one takes
/// its place; programs die and the power goes. Only what was flushed outlives the power; of the rest as much as chance will.
/// </summary>
internal sealed class SimulatedFolder(Random chance)
{
    private readonly Dictionary<string, Inode> _files = new(StringComparer.Ordinal);

    /// <summary>So many of the next operations fail.</summary>
    public int Failing { get; set; }

    /// <summary>Whether nothing can be made or written.</summary>
    public bool IsReadOnly { get; set; }

    public IEnumerable<string> Names => _files.Keys;

    public bool Exists(string name) => _files.ContainsKey(name);

    public byte[] Bytes(string name) => [.. _files[name].Bytes];

    /// <summary>Opens a record as the real disk does: for one writer.</summary>
    public JournalFile Open(string name)
    {
        if (IsReadOnly)
        {
            throw new UnauthorizedAccessException("Read-only file system");
        }

        if (_files.TryGetValue(name, out var there) && there.IsOpen)
        {
            throw new IOException("used by another process");
        }

        var file = there ?? (_files[name] = new());
        file.IsOpen = true;
        return JournalFile.On(name, new Disk(this, name, file));
    }

    public void Delete(string name) => _files.Remove(name);

    public void Replace(string name, byte[] bytes) => _files[name] = new(bytes);

    public void Flip(string name)
    {
        var bytes = _files[name].Bytes;
        if (bytes.Count > 0)
        {
            bytes[chance.Next(bytes.Count)] ^= (byte)(1 << chance.Next(8));
        }
    }

    /// <summary>Every program is gone; of what was not flushed a part is left, or, where only the programs died, all.</summary>
    public void Die(bool powerCut)
    {
        foreach (var file in _files.Values)
        {
            file.IsOpen = false;
            if (powerCut && file.Bytes.Count > file.Flushed)
            {
                var left = chance.Next(file.Flushed, file.Bytes.Count + 1);
                file.Bytes.RemoveRange(left, file.Bytes.Count - left);
            }

            file.Flushed = file.Bytes.Count;
        }
    }

    private bool Fails()
    {
        Failing = int.Max(Failing - 1, 0);
        return Failing > 0;
    }

    private sealed class Inode(params byte[] bytes)
    {
        public List<byte> Bytes { get; } = [.. bytes];

        public int Flushed { get; set; } = bytes.Length;

        public bool IsOpen { get; set; }
    }

    private sealed class Disk(SimulatedFolder folder, string name, Inode file) : IDisk
    {
        private Inode _file = file;

        public long Length => _file.Bytes.Count;

        public int Read(long at, Span<byte> to)
        {
            var count = (int)long.Clamp(_file.Bytes.Count - at, 0, to.Length);
            _file.Bytes.Skip((int)at).Take(count).ToArray().CopyTo(to);
            return count;
        }

        public void Write(ReadOnlySpan<byte> bytes)
        {
            DemandPlace();
            if (folder.IsReadOnly)
            {
                throw new UnauthorizedAccessException("Read-only file system");
            }

            if (folder.Fails())
            {
                _file.Bytes.AddRange(bytes[..folder.Part(bytes.Length)]);
                throw new IOException("No space left on device");
            }

            _file.Bytes.AddRange(bytes);
        }

        public void FlushThrough()
        {
            if (folder.IsReadOnly || folder.Fails())
            {
                throw new IOException("Input/output error");
            }

            _file.Flushed = _file.Bytes.Count;
            DemandPlace();
        }

        public void CutTo(long length)
        {
            if (folder.Fails())
            {
                throw new IOException("Input/output error");
            }

            if (length < _file.Bytes.Count)
            {
                _file.Bytes.RemoveRange((int)length, _file.Bytes.Count - (int)length);
                _file.Flushed = int.Min(_file.Flushed, (int)length);
            }
        }

        /// <summary>As the real disk does it: another file of the name is not ours to delete.</summary>
        public void Discard()
        {
            _file.IsOpen = false;
            if (folder._files.TryGetValue(name, out var there) && there.Bytes.SequenceEqual(_file.Bytes))
            {
                folder._files.Remove(name);
            }
        }

        public void Dispose() => _file.IsOpen = false;

        /// <summary>As the real disk does it: a deleted file is put back, one of another length is another file.</summary>
        private void DemandPlace()
        {
            if (!folder._files.TryGetValue(name, out var there))
            {
                if (folder.IsReadOnly)
                {
                    throw new UnauthorizedAccessException("Read-only file system");
                }

                _file = folder._files[name] = new([.. _file.Bytes]) { IsOpen = true };
            }
            else if (there.Bytes.Count != _file.Bytes.Count)
            {
                throw new ReplacedException();
            }
        }
    }

    private int Part(int below) => chance.Next(below + 1);
}
