using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("Panside.Reckoning.Tests")]
[assembly: InternalsVisibleTo("Panside.Benchmarks")]
[assembly: InternalsVisibleTo("panside-workshop")]
