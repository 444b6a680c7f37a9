using GroveSpec.Cli;
using GroveSpec.Cli.Files;
using GroveSpec.Cli.Terminals;

LittleMemory.BeginAgain();
using var terminal = Terminal.OfProcess();
return (int)GroveProgram.Run(args, terminal);
