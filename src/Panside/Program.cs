using Panside.Commands;
using Panside.Faces;

StandardStreams.Settle();
return CommandLine.Run(args);
