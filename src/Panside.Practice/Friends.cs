using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("Panside.Tests")]
[assembly: InternalsVisibleTo("panside-workshop")]
