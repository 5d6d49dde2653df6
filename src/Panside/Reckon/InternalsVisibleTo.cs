using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("Panside.Tests")]
