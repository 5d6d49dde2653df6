using Panside.Commands;

return CommandLine.Run(args);
