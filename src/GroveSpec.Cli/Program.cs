using GroveSpec.Cli;
using GroveSpec.Cli.Terminals;

using var terminal = Terminal.OfProcess();
return (int)GroveProgram.Run(args, terminal);
