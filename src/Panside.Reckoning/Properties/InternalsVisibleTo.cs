using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("Panside.Reckoning.Tests")]
