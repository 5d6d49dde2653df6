using System.Runtime.InteropServices;

namespace Panside.Faces;

/// <summary>Ctrl-C, a hangup or a wish to end, as a token: the session ends whole. A second Ctrl-C leaves at once.</summary>
internal sealed class Interrupt : IDisposable
{
    private readonly CancellationTokenSource _source = new();
    private readonly List<PosixSignalRegistration> _registrations = [];

    /// <summary>Starts to listen.</summary>
    public Interrupt()
    {
        foreach (var signal in new[] { PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP })
        {
            _registrations.Add(PosixSignalRegistration.Create(signal, Handle));
        }
    }

    /// <summary>Cancelled at the first signal.</summary>
    public CancellationToken Token => _source.Token;

    /// <inheritdoc/>
    public void Dispose()
    {
        _registrations.ForEach(registration => registration.Dispose());
        _source.Dispose();
    }

    private void Handle(PosixSignalContext context)
    {
        if (!_source.IsCancellationRequested)
        {
            context.Cancel = true;
            _source.Cancel();
        }
    }
}
