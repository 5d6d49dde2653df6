using Panside.Workshop.Commands;

return WorkshopLine.Run(args);
